import {BufferGeometry, DynamicDrawUsage, InstancedBufferAttribute, InstancedMesh} from 'three';

/** What differs by instance besides its place: the two colours and how much of the bulbs' light reaches it. */
const PAINT = {first: 3, second: 3, glow: 1};

/**
 * Like things drawn in one call.
 *
 * An entry is {matrix, ...} with a value for each of the attributes, a number or numbers. `show` decides which of the
 * entries are drawn; the others cost nothing.
 */
export class Batch {
  #entries;
  #matrices;
  #values;

  constructor(geometry, material, entries, order = 0, sizes = PAINT) {
    this.#entries = entries;
    const n = entries.length;
    this.#matrices = new Float32Array(n * 16);
    entries.forEach((entry, i) => entry.matrix.toArray(this.#matrices, i * 16));
    this.#values = Object.entries(sizes).map(([name, size]) => {
      const all = new Float32Array(n * size);
      entries.forEach((entry, i) => all.set(numbers(entry[name]), i * size));
      return {name, size, all};
    });
    this.mesh = new InstancedMesh(instanced(geometry, n, sizes), material, n);
    this.mesh.instanceMatrix.setUsage(DynamicDrawUsage);
    this.mesh.frustumCulled = false;
    this.mesh.renderOrder = order;
  }

  /** @param {(entry: object) => boolean} seen */
  show(seen) {
    const {instanceMatrix, geometry} = this.mesh;
    const columns = [{size: 16, all: this.#matrices, attribute: instanceMatrix},
      ...this.#values.map((value) => ({...value, attribute: geometry.attributes[value.name]}))];
    let k = 0;
    this.#entries.forEach((entry, i) => {
      if (seen(entry)) {
        columns.forEach(({size, all, attribute}) => attribute.array.set(all.subarray(i * size, (i + 1) * size), k * size));
        k++;
      }
    });
    this.mesh.count = k;
    columns.forEach(({attribute}) => {
      attribute.needsUpdate = true;
    });
  }

  dispose() {
    this.mesh.geometry.dispose();
    this.mesh.dispose();
  }
}

const numbers = (value) => (typeof value === 'number' ? [value] : value.toArray?.() ?? value);

/** The geometry's own attributes, shared, with room for what differs by instance. */
export function instanced(geometry, n, sizes = PAINT) {
  const own = new BufferGeometry();
  own.setIndex(geometry.index);
  Object.entries(geometry.attributes).forEach(([name, attribute]) => own.setAttribute(name, attribute));
  Object.entries(sizes).forEach(([name, size]) =>
    own.setAttribute(name, new InstancedBufferAttribute(new Float32Array(n * size), size).setUsage(DynamicDrawUsage)));
  return own;
}
