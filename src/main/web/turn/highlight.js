import {BufferGeometry, Color, DoubleSide, Group, InstancedBufferAttribute, InstancedMesh, Matrix4, Mesh, MeshBasicMaterial, Vector2} from 'three';
import {instanced} from './batch.js';
import {insert} from './finish.js';

const STEPS = 16;
/** Rings round the piece, widest first: [CSS px, colour, depth]. */
const RINGS = [[5.5, '#94551f', -0.9], [3.2, '#fffdf7', -0.92]];

/** Draws the piece before everything else without losing its own depth. */
const LIFTED = {key: 'lifted', change(shader) {
  insert(shader, 'vertexShader', 'project_vertex', 'gl_Position.z = gl_Position.z * 0.02 - 0.96 * gl_Position.w;');
}};

/**
 * The picked piece, brought out whole with a halo of its own outline. The outline is the piece itself drawn a few pixels
 * off on every side, which suits a fern as well as a ball.
 */
export class Highlight {
  group = new Group();
  #pixel = {value: new Vector2()};
  #halo = this.#haloMaterial();
  #made = [];

  /** The size of the view, CSS px. */
  resize(width, height) {
    this.#pixel.value.set(2 / width, 2 / height);
  }

  clear() {
    this.group.clear();
    this.#made.forEach((thing) => thing.dispose());
    this.#made = [];
  }

  /** @param {object} place of a piece, see Pieces */
  piece(place, pieces) {
    this.clear();
    const {form, finish} = place.piece;
    const geometry = instanced(pieces.geometry(form), 1);
    place.first.toArray(geometry.attributes.first.array);
    place.second.toArray(geometry.attributes.second.array);
    geometry.attributes.glow.array[0] = Math.max(0.45, place.glow);
    const mesh = new InstancedMesh(geometry, pieces.material(form, finish, [LIFTED]), 1);
    mesh.setMatrixAt(0, place.matrix);
    this.#add(geometry, mesh);
    this.#ring(geometry, place.matrix);
  }

  run(run, ribbons) {
    this.clear();
    for (const [geometry, cloth] of ribbons.alone(run)) {
      this.#add(geometry, new Mesh(geometry, ribbons.material(cloth, [LIFTED])));
      this.#ring(geometry, new Matrix4());
    }
  }

  dispose() {
    this.clear();
    this.#halo.dispose();
  }

  #add(geometry, mesh) {
    mesh.frustumCulled = false;
    mesh.renderOrder = 9;
    this.#made.push(geometry);
    if (mesh.isInstancedMesh) {
      this.#made.push(mesh);
    }
    this.group.add(mesh);
  }

  #ring(source, matrix) {
    const n = STEPS * RINGS.length;
    const geometry = new BufferGeometry();
    geometry.setIndex(source.index);
    geometry.setAttribute('position', source.attributes.position);
    const shift = new Float32Array(n * 3);
    const mesh = new InstancedMesh(geometry, this.#halo, n);
    RINGS.forEach(([wide, colour, depth], ring) => {
      for (let i = 0; i < STEPS; i++) {
        const k = ring * STEPS + i;
        const a = i / STEPS * Math.PI * 2;
        shift.set([Math.cos(a) * wide, Math.sin(a) * wide, depth], k * 3);
        mesh.setMatrixAt(k, matrix);
        mesh.setColorAt(k, new Color(colour));
      }
    });
    geometry.setAttribute('shift', new InstancedBufferAttribute(shift, 3));
    this.#add(geometry, mesh);
  }

  #haloMaterial() {
    const made = new MeshBasicMaterial({side: DoubleSide});
    made.onBeforeCompile = (shader) => {
      shader.uniforms.pixel = this.#pixel;
      shader.vertexShader = `attribute vec3 shift;\nuniform vec2 pixel;\n${shader.vertexShader}`;
      insert(shader, 'vertexShader', 'project_vertex',
        'gl_Position.xy += shift.xy * pixel * gl_Position.w;\ngl_Position.z = shift.z * gl_Position.w;');
    };
    return made;
  }
}
