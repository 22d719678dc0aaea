import {Matrix4, Vector3} from 'three';
import {along} from '../shape.js';

const BRASS = '#c39a4e';
const SNOW = '#fbf8f0';
const PANE = '#f6cf7c';
const TAU = Math.PI * 2;

/*
 * Balls and hanging shapes, one unit across and one unit high; the y axis runs up. A ball is centred on the origin, a
 * hanging shape has the top of its body there, a bird stands on it.
 */

/** Cap and thread; `tall` is the height of the form over its width, which the thread must undo. */
function cap(shape, top, half, tall = 1) {
  shape.own(BRASS);
  shape.turned(along([[0, top + 0.065 / tall], [half, top + 0.05 / tall], [half, top - 0.05 / tall]]), 6, 2);
  shape.rod([[0, top, 0], [0.006, top + 0.16 / tall, 0], [0, top + 0.34 / tall, 0]], 0.012);
  return shape.main();
}

const arc = (from, to, r = 0.5, y = 0, ry = r) => (t) => {
  const a = (from + (to - from) * t) * Math.PI;
  return [Math.sin(a) * r, y + Math.cos(a) * ry];
};

/** Through the points [r, y] in turn, rounded. */
function through(points) {
  return (t) => {
    const f = Math.min(points.length - 1.0001, Math.max(0, t) * (points.length - 1));
    const i = Math.floor(f);
    const s = f - i;
    const p = [-1, 0, 1, 2].map((k) => points[Math.min(points.length - 1, Math.max(0, i + k))]);
    const at = (d) => 0.5 * (2 * p[1][d] + (p[2][d] - p[0][d]) * s + (2 * p[0][d] - 5 * p[1][d] + 4 * p[2][d] - p[3][d]) * s * s
      + (3 * p[1][d] - p[0][d] - 3 * p[2][d] + p[3][d]) * s ** 3);
    return [Math.max(0, at(0)), at(1)];
  };
}

export function ball(shape) {
  shape.turned(arc(0.02, 0.4), 14, 4).second().turned(arc(0.4, 0.58), 14, 2).main().turned(arc(0.58, 1), 14, 4);
  return cap(shape, 0.5, 0.09);
}

export function drop(shape) {
  const profile = through([[0.02, 0], [0.11, -0.14], [0.26, -0.28], [0.42, -0.44], [0.5, -0.64], [0.44, -0.83], [0.27, -0.95], [0, -1]]);
  shape.turned((t) => profile(t * 0.52), 12, 6).second().turned((t) => profile(0.52 + t * 0.13), 12, 1)
    .main().turned((t) => profile(0.65 + t * 0.35), 12, 5);
  return cap(shape, 0, 0.09, 1.5);
}

export function finial(shape) {
  const profile = through([[0.12, -0.14], [0.22, -0.2], [0.42, -0.28], [0.5, -0.38], [0.38, -0.46], [0.16, -0.53], [0.1, -0.6],
    [0.07, -0.74], [0.03, -0.9], [0, -1]]);
  shape.second().ellipsoid([0, -0.08, 0], [0.19, 0.065, 0.19], 10, 5);
  shape.ellipsoid([0, -0.145, 0], [0.17, 0.022, 0.17], 10, 3).ellipsoid([0, -0.575, 0], [0.15, 0.026, 0.15], 10, 3);
  shape.main().turned(profile, 12, 16);
  return cap(shape, -0.01, 0.08, 2.7);
}

export function icicle(shape) {
  shape.sheet((u, v) => {
    const a = -u * TAU;
    const taper = 0.5 * (1 - v) ** 0.8 * Math.min(1, 0.5 + v * 8);
    const r = taper * (0.84 + 0.2 * Math.cos(2 * a - v * 24));
    return [Math.sin(a) * r, -v, Math.cos(a) * r];
  }, 8, 22, (u, v) => 0.92 + 0.28 * Math.cos(-2 * u * TAU - v * 24));
  return cap(shape, 0, 0.2, 6);
}

export function star(shape) {
  const at = (i, r) => [Math.sin(i * TAU / 10) * r, -0.5 + Math.cos(i * TAU / 10) * r, 0];
  for (const side of [1, -1]) {
    const heart = [0, -0.5, 0.13 * side];
    for (let i = 0; i < 10; i++) {
      const a = at(i, i % 2 ? 0.22 : 0.5);
      const b = at(i + 1, i % 2 ? 0.5 : 0.22);
      shape.flat(side > 0 ? [heart, b, a] : [heart, a, b], (i % 2) === (side > 0 ? 1 : 0) ? 1.1 : 0.78);
    }
  }
  return cap(shape, 0, 0.05);
}

export function snowflake(shape) {
  const bar = (x0, y0, x1, y1, w) => {
    const l = Math.hypot(x1 - x0, y1 - y0);
    const nx = -(y1 - y0) / l * w;
    const ny = (x1 - x0) / l * w;
    // A low ridge along each bar gives it a lit and a shaded flank.
    for (const z of [0.022, -0.022]) {
      shape.flat([[x0 + nx, y0 + ny, 0], [x0, y0, z], [x1, y1, z], [x1 + nx, y1 + ny, 0]], 0.86);
      shape.flat([[x0, y0, z], [x0 - nx, y0 - ny, 0], [x1 - nx, y1 - ny, 0], [x1, y1, z]], 1.12);
    }
  };
  for (let i = 0; i < 6; i++) {
    shape.at(new Matrix4().makeTranslation(0, -0.5, 0).multiply(new Matrix4().makeRotationZ(i * TAU / 6)), () => {
      bar(0, 0, 0, 0.49, 0.022);
      for (const t of [0.36, 0.58, 0.8]) {
        const s = 0.5 * (0.36 - 0.26 * Math.abs(t - 0.5));
        bar(0, 0.5 * t, s * 0.8, 0.5 * t + s * 0.62, 0.017);
        bar(0, 0.5 * t, -s * 0.8, 0.5 * t + s * 0.62, 0.017);
      }
    });
  }
  return cap(shape, 0, 0.03);
}

export function bird(shape) {
  // Drawn about 1 wide and 0.62 high, then stretched to one unit high.
  return shape.at(new Matrix4().makeScale(1, 1 / 0.62, 1), () => {
    shape.at(new Matrix4().makeTranslation(0.05, 0.24, 0).multiply(new Matrix4().makeRotationZ(0.42)), () => {
      shape.ellipsoid([0, 0, 0], [0.33, 0.19, 0.19], 12, 8, (v) => 1.08 - 0.25 * v);
      shape.second().ellipsoid([0.1, -0.035, 0], [0.24, 0.168, 0.172], 12, 8).main();
    });
    shape.ellipsoid([0.29, 0.47, 0], [0.135, 0.125, 0.12], 10, 6);
    shape.second().ellipsoid([0.315, 0.4, 0], [0.105, 0.1, 0.1], 8, 5).main();
    for (const z of [1, -1]) {
      shape.sheet((u, v) => [0.14 - 0.54 * v, 0.37 - 0.24 * v - 0.2 * u * (1 - v) ** 0.6, z * (0.17 + 0.045 * Math.sin(u * 3) - 0.13 * v)],
        3, 5, (u, v) => 0.74 - 0.2 * u + 0.1 * v);
      shape.own('#15110f').blob([0.34, 0.5, z * 0.1], 0.026).main();
    }
    shape.flat([[-0.18, 0.18, 0.07], [-0.18, 0.2, -0.07], [-0.52, 0.04, -0.06], [-0.5, 0.0, 0.06]], 0.66);
    shape.own('#c58a35').ellipsoid([0.44, 0.47, 0], [0.075, 0.03, 0.03], 5, 3);
    shape.own('#4b3a2c').rod([[0.04, 0.1, 0.05], [0.02, 0, 0.05]], 0.012).rod([[0.08, 0.1, -0.05], [0.06, 0, -0.05]], 0.012).main();
  });
}

export function acorn(shape) {
  shape.turned(through([[0.42, -0.34], [0.43, -0.55], [0.36, -0.76], [0.2, -0.91], [0.04, -0.97], [0, -1]]), 12, 7);
  const cup = through([[0, -0.05], [0.26, -0.09], [0.45, -0.2], [0.5, -0.36], [0.44, -0.42], [0.3, -0.4]]);
  shape.second().sheet((u, v) => {
    const [r, y] = cup(v);
    const bump = 1 + 0.035 * Math.cos(u * TAU * 8 + Math.round(v * 8) * Math.PI);
    return [Math.sin(-u * TAU) * r * bump, y, Math.cos(u * TAU) * r * bump];
  }, 16, 8, (u, v) => 0.92 + 0.24 * Math.cos(u * TAU * 8 + Math.round(v * 8) * Math.PI));
  shape.rod([[0, -0.06, 0], [0.02, 0.03, 0]], 0.04, 0.03);
  shape.own(BRASS).rod([[0.02, 0.02, 0], [0, 0.22, 0]], 0.012);
  return shape.main();
}

export function pinecone(shape) {
  shape.turned(arc(0, 1, 0.27, -0.48, 0.44), 8, 6, () => 0.4);
  const rows = 8;
  for (let row = 0; row < rows; row++) {
    const t = (row + 0.5) / rows;
    const half = 0.47 * Math.sin(Math.PI * (0.18 + 0.78 * (1 - t) ** 0.8));
    const n = Math.max(4, Math.round(half * 17));
    for (let i = 0; i < n; i++) {
      const a = (i + row * 0.5) / n * TAU;
      scale(shape, a, -0.06 - 0.86 * t, half, half * 5.6 / n + 0.02);
    }
  }
  return cap(shape, -0.02, 0.09, 1.6);
}

/** One scale of a cone, pointing out and down, its rim in the second colour. */
function scale(shape, angle, y, r, size) {
  const s = Math.sin(angle);
  const c = Math.cos(angle);
  const at = (out, up, side) => [s * out + c * side, y + up, c * out - s * side];
  shape.main().flat([at(r * 0.45, 0.06, -size * 0.3), at(r, -0.045, -size * 0.5), at(r, -0.045, size * 0.5), at(r * 0.45, 0.06, size * 0.3)],
    [0.5, 1, 1, 0.5]);
  shape.second().flat([at(r, -0.045, -size * 0.5), at(r * 0.97, -0.1, 0), at(r, -0.045, size * 0.5), at(r * 1.05, -0.035, 0)], 0.95);
}

export function bell(shape) {
  const wall = through([[0.03, -0.02], [0.26, -0.06], [0.31, -0.3], [0.33, -0.6], [0.4, -0.76], [0.5, -0.86], [0.5, -0.9]]);
  shape.turned(wall, 14, 9).second().turned((t) => wall(0.58 + t * 0.12).map((c, i) => (i ? c : c * 1.04)), 14, 1);
  shape.main().turned((t) => [0.5 - 0.2 * t, -0.9 + 0.5 * t], 14, 2, () => 0.4);
  shape.own(BRASS).ellipsoid([0, -0.92, 0], [0.09, 0.085, 0.09], 8, 5);
  return cap(shape, -0.02, 0.08);
}

export function house(shape) {
  const w = 0.4;
  const d = 0.3;
  const eaves = -0.46;
  shape.flat([[-w, -1, d], [w, -1, d], [w, eaves, d], [0, -0.12, d], [-w, eaves, d]], [0.86, 0.86, 1.04, 1.1, 1.04]);
  shape.flat([[w, -1, -d], [-w, -1, -d], [-w, eaves, -d], [0, -0.12, -d], [w, eaves, -d]], [0.8, 0.8, 0.9, 1, 0.9]);
  for (const s of [1, -1]) {
    const wall = [[s * w, -1, d], [s * w, -1, -d], [s * w, eaves, -d], [s * w, eaves, d]];
    shape.flat(s > 0 ? wall : wall.reverse(), 0.78);
    roof(shape, s);
    windows(shape, s, d);
  }
  shape.second().flat([[-0.1, -1, d + 0.012], [0.1, -1, d + 0.012], [0.1, -0.8, d + 0.012], [0, -0.74, d + 0.012], [-0.1, -0.8, d + 0.012]], 0.8);
  box(shape, [0.2, -0.12, -0.08], [0.055, 0.13, 0.055]);
  shape.own(SNOW);
  box(shape, [0.2, 0.015, -0.08], [0.07, 0.02, 0.07]);
  shape.ellipsoid([0, -1, 0], [0.49, 0.045, 0.38], 12, 4);
  shape.own(BRASS).rod([[0, 0, 0], [0, 0.24, 0]], 0.012);
  return shape.main();
}

/** One slope of the roof with snow that lies on it down to a wavy edge. */
function roof(shape, side) {
  const slope = (t, z, off) => [side * (0.5 * t - 0.02 * off), -0.02 - 0.5 * t + 0.05 * off, z];
  const sheet = (to, off, front) => (u, v) => slope(v * to(u), (side > 0 ? 1 - 2 * u : 2 * u - 1) * front, off);
  shape.second().sheet(sheet(() => 1, 0, 0.36), 2, 2, (u, v) => 1.05 - 0.25 * v);
  shape.own(SNOW).sheet(sheet((u) => 0.62 + 0.12 * Math.sin(u * 17), 0.7, 0.365), 10, 2, (u, v) => 1 - 0.1 * v).main();
}

function windows(shape, side, d) {
  const pane = (x, y) => {
    const z = side * (d + 0.012);
    const half = side * 0.075;
    shape.own('#4d3020').flat([[x - half * 1.3, y - 0.095, z * 0.99], [x + half * 1.3, y - 0.095, z * 0.99], [x + half * 1.3, y + 0.095, z * 0.99],
      [x - half * 1.3, y + 0.095, z * 0.99]]);
    for (const k of [-0.5, 0.5]) {
      const h = half * 0.42;
      const cx = x + half * k * 1.05;
      shape.own(PANE, true).flat([[cx - h, y - 0.075, z], [cx + h, y - 0.075, z], [cx + h, y + 0.075, z], [cx - h, y + 0.075, z]]);
    }
  };
  pane(-0.24, -0.64);
  pane(0.24, -0.64);
  pane(0, -0.38);
  shape.main();
}

function box(shape, [x, y, z], [w, h, d]) {
  const quad = (n) => {
    const a = new Vector3(...n);
    const b = new Vector3(n[1], n[2], n[0]);
    const c = new Vector3().crossVectors(a, b);
    const at = (i, j) => {
      const p = a.clone().addScaledVector(b, i).addScaledVector(c, j);
      return [x + p.x * w, y + p.y * h, z + p.z * d];
    };
    shape.flat([at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)], 0.9 + 0.15 * n[1]);
  };
  [[1, 0, 0], [-1, 0, 0], [0, 1, 0], [0, 0, 1], [0, 0, -1]].forEach(quad);
}

/** A bulb of a light string. */
export function light(shape) {
  shape.own('#fff4d8', true).blob([0, 0, 0], 0.5, 1);
  return shape.main();
}

