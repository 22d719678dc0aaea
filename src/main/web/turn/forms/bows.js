import {Matrix4} from 'three';

/*
 * Accents tied of ribbon, the length of the tails one unit, the knot at the origin, facing +z. The ribbon is about 0.31
 * wide; its rims are in the second colour.
 */

const RIBBON = 0.31;
const LOOP = 0.62;

/** A length of ribbon with rims: `middle(t)` gives the point, `half(t)` the vector to its rim. */
function band(shape, middle, half, rows, shade) {
  const strip = (from, to) => (u, v) => {
    const k = from + (to - from) * u;
    const h = half(v);
    return middle(v).map((c, d) => c + h[d] * k);
  };
  shape.second().sheet(strip(1, 0.84), 1, rows, shade).sheet(strip(-0.84, -1), 1, rows, shade);
  shape.main().sheet(strip(0.84, -0.84), 2, rows, shade);
}

function tail(shape, length, lean, slant) {
  const sign = Math.sign(lean);
  const middle = (t) => [Math.sin(lean) * length * t + sign * 0.05 * Math.sin(t * 5), -Math.cos(lean) * length * t, 0.02 + 0.07 * Math.sin(t * 4.4)];
  band(shape, middle, (t) => {
    const w = RIBBON * (0.2 + 0.27 * Math.min(1, t * 2.6));
    // The cut: one rim runs on farther than the other.
    return [w, (t > 0.99 ? slant : 0) * w, 0.06 * Math.sin(t * 4)];
  }, 7, (u, v) => 0.4 + 0.5 * Math.min(1, v * 1.6) - 0.24 * Math.max(0, Math.cos(v * 6.5 + 1)));
}

function loop(shape, length, degrees, mirror) {
  const turn = new Matrix4().makeRotationZ(degrees * Math.PI / 180).multiply(new Matrix4().makeRotationX(-0.35));
  shape.at(mirror ? new Matrix4().makeRotationY(Math.PI).multiply(new Matrix4().makeScale(1, 1, -1)).multiply(turn) : turn, () => {
    const middle = (t) => [length * Math.sin(Math.PI * t) ** 0.8, 0.05 * Math.sin(Math.PI * t), 0.03 + 0.21 * Math.sin(2 * Math.PI * (t * 0.96 + 0.01)) * Math.sin(Math.PI * t) ** 0.3];
    band(shape, middle, (t) => [0, RIBBON * (0.16 + 0.36 * Math.sin(Math.PI * t) ** 0.6), 0.02], 12,
      (u, v) => (v > 0.5 ? 0.62 : 1) * (0.6 + 0.55 * Math.sin(Math.PI * Math.min(1, v * 1.4)) ** 0.7));
  });
}

function knot(shape) {
  return shape.main().ellipsoid([0, 0, 0.07], [RIBBON * 0.27, RIBBON * 0.3, 0.08], 8, 5, (v) => 0.9 - 0.3 * v);
}

function tied(shape) {
  tail(shape, 1, 0.42, 0.5);
  tail(shape, 0.9, -0.46, -0.5);
  return knot(shape);
}

export const tails = tied;

export function oneLoopBow(shape) {
  loop(shape, LOOP, 62, false);
  return tied(shape);
}

export function twoLoopBow(shape) {
  loop(shape, LOOP, 20, false);
  loop(shape, LOOP * 0.96, 16, true);
  return tied(shape);
}
