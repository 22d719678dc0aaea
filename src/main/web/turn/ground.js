import {BufferAttribute, CanvasTexture, Group, Mesh, MeshBasicMaterial, PlaneGeometry, SRGBColorSpace} from 'three';
import {along, Shape} from './shape.js';

/** Trunk, stand and the soft shadow on the floor. */
export function ground(tree, material) {
  const group = new Group();
  group.add(new Mesh(plain(woodwork(tree)), material), shadow(tree));
  return group;
}

function woodwork(tree) {
  const shape = new Shape();
  const r = Math.max(0.03, tree.height * 0.017);
  const top = tree.height * 0.9;
  const cup = Math.max(0.07, tree.lowestBranch * 0.38);
  shape.own('#4a3426').turned((t) => [r * (0.25 + 0.75 * t), top + (0.03 - top) * t], 9, 6, (t) => 0.7 + 0.3 * t);
  shape.own('#26302b').turned(along([[r * 1.1, cup], [r * 1.5, cup * 0.96], [r * 1.35, cup * 0.4], [r * 1.25, cup * 0.25]]), 12, 3);
  const reach = Math.min(tree.widestRadius * 0.5, tree.height * 0.13);
  for (let i = 0; i < 4; i++) {
    const a = i * Math.PI / 2 + Math.PI / 4;
    const at = (t) => [Math.sin(a) * (r + reach * t), cup * 0.62 * (1 - t) ** 0.6 + 0.02, Math.cos(a) * (r + reach * t)];
    shape.rod([0, 0.2, 0.45, 0.7, 0.88, 1].map(at), r * 0.34, r * 0.24, 1.1);
  }
  return shape.geometry();
}

/** Gives a geometry that stands alone the attributes that instances bring. */
export function plain(geometry, first = [1, 1, 1], second = first, glow = 0.12) {
  const n = geometry.attributes.position.count;
  const fill = (name, values) => geometry.setAttribute(name, new BufferAttribute(Float32Array.from({length: n * values.length},
    (_, i) => values[i % values.length]), values.length));
  fill('first', first);
  fill('second', second);
  fill('glow', [glow]);
  return geometry;
}

function shadow(tree) {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 128;
  const pen = canvas.getContext('2d');
  const fade = pen.createRadialGradient(64, 64, 2, 64, 64, 64);
  [[0, 0.56], [0.3, 0.4], [0.62, 0.17], [0.85, 0.04], [1, 0]].forEach(([at, a]) => fade.addColorStop(at, `rgba(18, 13, 10, ${a})`));
  pen.fillStyle = fade;
  pen.fillRect(0, 0, 128, 128);
  const map = new CanvasTexture(canvas);
  map.colorSpace = SRGBColorSpace;
  const disc = new Mesh(new PlaneGeometry(1, 1), new MeshBasicMaterial({map, transparent: true, depthWrite: false}));
  disc.rotation.x = -Math.PI / 2;
  disc.position.y = 0.002;
  disc.scale.setScalar(tree.widestRadius * 2.7);
  disc.renderOrder = -1;
  return disc;
}
