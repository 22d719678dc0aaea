import {Matrix4} from 'three';
import {dice} from '../random.js';

const POLLEN = '#d8ab4c';
const LEAF = '#3c6b46';
const TAU = Math.PI * 2;

/* Flower heads, one unit across, centred on the origin and facing +z. */

/**
 * One petal.
 * @param {object} p `angle` clockwise from up, `from` and `to` distances from the middle, `half` the greatest half width
 *   at the share `widest`, `sharp` 0 round .. 1 pointed, `rise` and `curl` how it stands up and rolls back, `cup` how far
 *   its rims stand forward, `ruffle` waves of the rim, `heart` how dark its foot is
 */
function petal(shape, {angle, from = 0.02, to, half, widest = 0.56, sharp = 0.5, rise = 0.1, curl = 0.12, cup = 0.08, ruffle = 0,
  heart = 0.5, z = 0, shade = 1, rows = 5, columns = 4}) {
  const length = to - from;
  const power = 0.42 + 0.6 * sharp;
  const width = (v) => half * (v < widest ? Math.sin(Math.PI / 2 * (0.12 + 0.88 * v / widest)) ** 0.9
    : Math.max(0, Math.cos(Math.PI / 2 * (v - widest) / (1 - widest))) ** power);
  shape.at(new Matrix4().makeRotationZ(-angle), () => shape.sheet((u, v) => {
    const s = 2 * u - 1;
    const w = width(v);
    const wave = ruffle * Math.sin(s * 5 + v * 3) * v;
    return [-s * w, from + length * v, z + rise * v - curl * v * v * v + cup * s * s * (w / half) + wave];
  }, columns, rows, (u, v) => {
    const rib = 1 - 0.1 * Math.max(0, 1 - Math.abs(2 * u - 1) * 4);
    return shade * rib * (1 - heart * Math.max(0, 1 - v * 2.1) ** 1.2 + 0.06 * v + 0.14 * v ** 5);
  }));
}

function whorl(shape, n, offset, options, vary = () => ({})) {
  for (let i = 0; i < n; i++) {
    petal(shape, {...options, angle: i / n * TAU + offset, ...vary(i)});
  }
}

/** A ring of stamens round the middle: threads with a dot at each end. */
function stamens(shape, n, from, to, z, shade = 1) {
  for (let i = 0; i < n; i++) {
    const a = i / n * TAU;
    const r = to * (0.8 + 0.2 * ((i * 7) % 5) / 4);
    const s = Math.sin(a);
    const c = Math.cos(a);
    shape.needle([s * r, c * r, z + 0.05], [s * from, c * from, z], [c * 0.008, -s * 0.008, 0], [0, 0, 1], shade);
    shape.blob([s * r, c * r, z + 0.055], 0.017, shade);
  }
}

export function openFlower(shape) {
  whorl(shape, 5, 0.63, {to: 0.46, half: 0.18, widest: 0.56, sharp: 0.55, rise: 0.06, heart: 0.66, shade: 0.82, z: -0.03});
  whorl(shape, 5, 0.06, {to: 0.5, half: 0.21, widest: 0.54, sharp: 0.6, rise: 0.12, heart: 0.5});
  shape.own('#8d9a4e').ellipsoid([0, 0, 0.03], [0.1, 0.1, 0.035], 10, 4, (v) => 0.8 + 0.3 * v);
  shape.second();
  stamens(shape, 18, 0.07, 0.17, 0.03);
  shape.own('#9aa657').ellipsoid([0, 0, 0.07], [0.045, 0.045, 0.04], 8, 4);
  return shape.main();
}

export function magnolia(shape) {
  whorl(shape, 6, 0.12, {half: 0.19, widest: 0.64, sharp: 0.2, rise: 0.14, curl: 0.1, cup: 0.1, heart: 0.42, shade: 0.94},
    (i) => ({to: i % 2 ? 0.46 : 0.5, z: i % 2 ? 0.02 : 0}));
  whorl(shape, 3, 0.6, {to: 0.35, half: 0.17, widest: 0.6, sharp: 0.15, rise: 0.24, curl: -0.05, cup: 0.14, heart: 0.4, shade: 1.06, z: 0.02});
  shape.own(POLLEN);
  stamens(shape, 14, 0.06, 0.11, 0.05);
  shape.second().at(new Matrix4().makeRotationX(Math.PI / 2), () => shape.ellipsoid([0, 0.1, 0], [0.06, 0.11, 0.06], 8, 6));
  return shape.main();
}

export function poinsettia(shape) {
  const bract = {widest: 0.46, sharp: 1, rows: 4, heart: 0.32, cup: 0.05, curl: 0.14};
  shape.own(LEAF);
  whorl(shape, 5, 0.3, {...bract, to: 0.5, half: 0.11, rise: -0.02, z: -0.05});
  shape.main();
  whorl(shape, 7, 0, {...bract, to: 0.5, half: 0.135, rise: 0.06, shade: 0.86});
  whorl(shape, 6, 0.4, {...bract, to: 0.39, half: 0.115, rise: 0.13, z: 0.02});
  whorl(shape, 5, 0.1, {...bract, to: 0.26, half: 0.08, rise: 0.16, z: 0.04, shade: 1.12});
  for (let i = 0; i < 7; i++) {
    const r = i ? 0.046 : 0;
    (i % 2 ? shape.own('#93a04d') : shape.second()).blob([Math.cos(i) * r, Math.sin(i) * r, 0.1], 0.028);
  }
  return shape.main();
}

/** A petal that wraps round the middle like the wall of a bowl and rolls out at its rim. */
function wrap(shape, angle, span, low, rim, height, shade) {
  shape.sheet((u, v) => {
    const a = angle + (u - 0.5) * span;
    const edge = Math.sin(Math.PI * (0.12 + 0.76 * u)) ** 0.5;
    const r = low + (rim - low) * v ** 1.6;
    const z = height * Math.sin(v * 1.9) * edge;
    return [Math.sin(a) * r, Math.cos(a) * r, z - 0.06];
  }, 6, 4, (u, v) => shade * (0.34 + 0.6 * v ** 0.8 + 0.24 * v ** 6) * (0.86 + 0.28 * u));
}

export function rose(shape) {
  const rings = [[5, 0.5, 0.1, 1], [5, 0.42, 0.18, 1.02], [4, 0.33, 0.24, 1], [4, 0.24, 0.28, 0.96], [3, 0.15, 0.3, 0.9]];
  rings.forEach(([n, rim, height, shade], k) => {
    for (let i = 0; i < n; i++) {
      wrap(shape, (i + k * 0.47) / n * TAU, TAU / n * 1.5, rim * 0.34, rim, height, shade);
    }
  });
  shape.ellipsoid([0, 0, 0.1], [0.07, 0.07, 0.13], 8, 4, () => 0.6);
  return shape;
}

export function peony(shape) {
  const roll = dice(7);
  const rings = [[6, 0.5, 0.25, 0.04, 0.98], [6, 0.44, 0.22, 0.1, 1.04], [6, 0.36, 0.18, 0.15, 1], [5, 0.27, 0.14, 0.19, 0.94], [5, 0.17, 0.09, 0.2, 0.86]];
  rings.forEach(([n, to, half, rise, shade], k) => whorl(shape, n, k * 0.5, {to, half, rise, shade, widest: 0.72, sharp: 0.02, cup: 0.1,
    curl: 0.06, ruffle: 0.035, heart: 0.66, z: -0.06 + 0.045 * k, columns: 6}, () => ({to: to * (0.95 + 0.07 * roll())})));
  shape.second();
  stamens(shape, 8, 0.01, 0.06, 0.24);
  return shape.main();
}

export function anemone(shape) {
  whorl(shape, 7, 0.45, {to: 0.49, half: 0.2, widest: 0.66, sharp: 0.1, rise: 0.06, heart: 0.45, shade: 0.86, z: -0.03});
  whorl(shape, 6, 0, {to: 0.45, half: 0.2, widest: 0.64, sharp: 0.12, rise: 0.12, heart: 0.34});
  shape.second();
  stamens(shape, 20, 0.08, 0.16, 0.04);
  shape.ellipsoid([0, 0, 0.05], [0.078, 0.078, 0.06], 10, 4);
  return shape.main();
}

export function dahlia(shape) {
  const rings = [[14, 0.5, 0.085], [14, 0.43, 0.08], [12, 0.35, 0.075], [10, 0.27, 0.07], [8, 0.19, 0.06]];
  rings.forEach(([n, to, half], k) => {
    (k >= 3 ? shape.second() : shape.main());
    whorl(shape, n, k * Math.PI / n, {from: to * 0.26, to, half, widest: 0.62, sharp: 0.7, rise: 0.03 + 0.045 * k, curl: 0.04, cup: 0.06,
      z: 0.035 * k - 0.05, heart: 0.6, shade: 1.05 - 0.05 * k, rows: 3, columns: 2});
  });
  shape.second().ellipsoid([0, 0, 0.16], [0.055, 0.055, 0.05], 8, 4);
  return shape.main();
}
