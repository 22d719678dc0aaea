import {dice} from '../random.js';

const HALF = 0.25;
const BEND = 0.09;

/*
 * Stems and sprays, one unit long and about half as wide, growing up +y from the origin, their face to +z. All share the
 * slight arch of `stem`.
 */

const stem = (t) => [BEND * t * t, t, 0.1 * t * t];
const heading = (t) => Math.atan2(2 * BEND * t, 1);

function stalk(shape, to, r, shade = 0.7) {
  const n = 4;
  return shape.rod(Array.from({length: n + 1}, (_, i) => stem(to * i / n)), r, r * 0.5, shade);
}

/** From the point, by the angle clockwise from up, leaning forward by z. */
const off = ([x, y, z], angle, length, forward = 0) => [x + Math.sin(angle) * length, y + Math.cos(angle) * length, z + forward];

const across = (angle, w) => [Math.cos(angle) * w, -Math.sin(angle) * w, 0];

export function berrySpray(shape) {
  const roll = dice(11);
  const r = 0.026;
  stalk(shape.second(), 0.98, 0.008);
  const sides = Math.round(9 * (0.5 + 0.5 * shape.detail));
  for (let i = 0; i <= sides; i++) {
    const t = 0.3 + 0.68 * i / sides;
    const side = i === sides ? 0 : i % 2 ? -1 : 1;
    const a = heading(t) + side * (0.5 + 0.4 * roll());
    const reach = HALF * (1.15 - 0.55 * t) * (i === sides ? 0.3 : 0.75 + 0.35 * roll());
    const forward = (roll() - 0.4) * 0.16;
    const foot = stem(t);
    const end = off(foot, a, reach, forward);
    shape.second().rod([foot, end], 0.005, 0.003, 0.7).main();
    for (let k = 0; k < 4; k++) {
      const s = 0.46 + 0.54 * k / 3;
      const gap = (k % 2 ? -1 : 1) * r * 1.5;
      shape.blob(foot.map((c, d) => c + (end[d] - c) * s + across(a, gap)[d] + (d === 2 ? (roll() - 0.5) * r * 2 : 0)), r, 0.9 + 0.3 * roll());
    }
  }
  return shape;
}

export function leafSpray(shape) {
  const roll = dice(12);
  stalk(shape.second(), 0.96, 0.009).main();
  for (let i = 0; i < 15; i++) {
    const t = 0.2 + 0.8 * i / 14;
    const side = i === 14 ? 0 : i % 2 ? -1 : 1;
    const a = heading(t) + side * (0.62 + 0.3 * roll());
    const l = 0.235 * (1.1 - 0.4 * t) * (0.85 + 0.3 * roll());
    blade(shape, stem(t), {angle: a, length: l, half: l * 0.25, shade: 0.88 + 0.24 * roll(), forward: (roll() - 0.3) * 0.14, outline: POINTED});
  }
  return shape;
}

export function fernSpray(shape) {
  const n = 17;
  stalk(shape.second(), 0.98, 0.007, 0.8).main();
  for (let i = 0; i < n; i++) {
    const t = 0.14 + 0.84 * i / (n - 1);
    const grow = Math.sin(Math.PI * (0.2 + 0.76 * i / (n - 1)));
    const l = HALF * 1.02 * grow + 0.012;
    for (const side of [-1, 1]) {
      const a = heading(t) + side * (1.12 - 0.42 * t);
      const tip = off(stem(t), a, l, -0.16 * l);
      frond(shape, stem(t), tip, a, 0.022 * Math.sqrt(grow), side < 0 ? 1.06 : 0.86);
    }
  }
  return shape;
}

/** A leaflet of two facets, its lower half darker. */
function frond(shape, foot, tip, a, w, shade) {
  const mid = foot.map((c, i) => c + (tip[i] - c) * 0.4);
  const rib = [0, 0, 0.012];
  const s = across(a, w);
  shape.flat([foot, mid.map((c, i) => c + s[i]), tip], [shade * 0.74, shade * 0.92, shade]);
  shape.flat([foot, tip, mid.map((c, i) => c - s[i] + rib[i])], [shade * 0.8, shade * 1.1, shade * 1.08]);
}

export function twigSpray(shape) {
  const roll = dice(14);
  const grow = (foot, angle, length, depth) => {
    const bend = angle + (roll() - 0.5) * 0.24;
    const forward = (roll() - 0.45) * length * 0.5;
    const mid = off(foot, angle, length * 0.5, forward * 0.4);
    const end = off(mid, bend, length * 0.5, forward * 0.6);
    const r = 0.0045 + 0.004 * (2 - Math.min(2, depth));
    shape.main().rod(shape.detail < 0.8 ? [foot, end] : [foot, mid, end], r, r * 0.4, 0.95);
    shape.second().blob(end, 0.013);
    if (depth < 2) {
      const side = roll() < 0.5 ? 1 : -1;
      grow(mid, angle + side * (0.4 + 0.22 * roll()), length * 0.52, depth + 1);
      grow(off(foot, angle, length * 0.3), angle - side * (0.4 + 0.2 * roll()), length * 0.44, depth + 1);
      grow(off(mid, bend, length * 0.22), angle - side * (0.3 + 0.2 * roll()), length * 0.36, depth + 2);
    }
  };
  grow([0, 0, 0], 0.04, 0.92, 0);
  grow(stem(0.24), -0.32, 0.6, 0);
  grow(stem(0.3), 0.4, 0.56, 0);
  grow(stem(0.5), -0.14, 0.42, 1);
  return shape.main();
}

export function pineSpray(shape) {
  const roll = dice(15);
  const needles = (at, angle, l, needle, n) => {
    const count = Math.round(n * (0.4 + 0.6 * shape.detail));
    for (let i = 0; i < count; i++) {
      const s = 0.1 + 0.9 * i / count;
      const foot = at(s);
      for (const side of [-1, 1]) {
        const a = angle + side * (0.75 - 0.4 * s) + 0.2 * (roll() - 0.5);
        const forward = (roll() - 0.4) * needle * 0.9;
        shape.needle(foot, off(foot, a, needle, forward), across(a, 0.0075 / (0.5 + 0.5 * shape.detail)), [0, 0.2, 1],
          (side < 0 ? 1.1 : 0.86) * (0.9 + 0.2 * roll()));
      }
    }
  };
  const needle = 0.15;
  shape.own('#5a3d28');
  stalk(shape, 0.96, 0.01, 1);
  shape.main();
  needles(stem, 0.06, 1, needle, 28);
  for (let i = 0; i < 5; i++) {
    const t = 0.2 + 0.13 * i;
    const a = heading(t) + (i % 2 ? -1 : 1) * 0.62;
    const l = HALF * (1.15 - 0.5 * t);
    const end = off(stem(t), a, l, 0.04);
    shape.own('#5a3d28').rod([stem(t), end], 0.006, 0.004).main();
    needles((s) => stem(t).map((c, d) => c + (end[d] - c) * s), a, l, needle * 0.9, 11);
  }
  return shape;
}

export function eucalyptusSpray(shape) {
  const roll = dice(16);
  stalk(shape.second(), 0.99, 0.008, 0.8).main();
  for (let i = 0; i < 10; i++) {
    const t = 0.14 + 0.84 * i / 9;
    const l = 0.14 * (1.08 - 0.62 * i / 10);
    for (const side of [-1, 1]) {
      const a = heading(t) + side * (1 - 0.34 * t + 0.2 * roll());
      blade(shape, stem(t), {angle: a, length: l, half: l * (0.44 + 0.1 * roll()), shade: (side < 0 ? 1.1 : 0.86) + 0.1 * roll(),
        forward: (roll() - 0.5) * 0.1, outline: ROUND});
    }
  }
  return shape;
}

const ROUND = (v) => Math.sqrt(Math.max(0, 1 - (2 * v - 1) ** 2)) * 0.94 + 0.06 * (1 - v);
const POINTED = (v) => Math.sin(Math.PI * v ** 0.8);

/** A leaf folded a little along its rib, one half lighter than the other. */
function blade(shape, foot, {angle, length, half, shade, forward, outline}) {
  shape.sheet((u, v) => {
    const s = 2 * u - 1;
    const rim = across(angle, -s * half * outline(v));
    return off(foot, angle, length * v, forward * v).map((c, d) => c + rim[d] + (d === 2 ? half * 0.4 * Math.abs(s) * outline(v) : 0));
  }, 2, 4, (u, v) => shade * (0.74 + 0.3 * v) * (0.9 + 0.24 * u));
}

export function featherSpray(shape) {
  const roll = dice(17);
  const w = HALF * 0.62;
  const vane = (v) => w * 0.8 * Math.sin(Math.PI * (0.08 + 0.88 * v)) ** 0.7;
  shape.sheet((u, v) => {
    const t = 0.16 + 0.82 * v;
    const s = 2 * u - 1;
    const [x, y, z] = stem(t);
    return [x - s * vane(v), y + Math.abs(s) * 0.07, z - 0.05 * s * s];
  }, 2, 10, (u) => 0.9 + 0.2 * u);
  const n = Math.round(34 * (0.4 + 0.6 * shape.detail));
  for (let i = 0; i < n; i++) {
    const t = 0.14 + 0.84 * i / n;
    const l = w * 1.5 * Math.sin(Math.PI * (0.1 + 0.84 * i / n)) * (0.86 + 0.24 * roll());
    for (const side of [-1, 1]) {
      const a = heading(t) + side * (0.86 - 0.34 * t);
      shape.needle(stem(t), off(stem(t), a, l, -0.03 + 0.04 * roll()), across(a, 0.012), [side * 0.2, 0.1, 1], side < 0 ? 1.16 : 0.88);
    }
  }
  return stalk(shape, 0.97, 0.007, 1.3);
}

export function grassSpray(shape) {
  const roll = dice(18);
  for (let i = 0; i < 11; i++) {
    const u = -1 + 2 * i / 10;
    const l = (1 - 0.28 * Math.abs(u)) * (0.86 + 0.14 * roll());
    const forward = (roll() - 0.3) * 0.26;
    const blade = (t) => [u * HALF * 1.1 * t * t, l * t * (1 - 0.16 * u * u * t), forward * t * t];
    shape.main().sheet((s, t) => blade(t).map((c, d) => c + (d ? 0 : (0.5 - s) * 0.022 * (1 - 0.85 * t))), 2, 4,
      (s, t) => (i % 2 ? 0.82 : 1.06) * (0.7 + 0.4 * t));
    if (i % 2 === 0) {
      shape.second();
      for (let k = 0; k < 9; k++) {
        const foot = blade(0.74 + 0.03 * k);
        const side = k % 2 ? -1 : 1;
        shape.needle(foot, [foot[0] + side * 0.022, foot[1] + 0.034, foot[2] + 0.01], [0.008, 0, 0], [0, 0, 1], 1.1);
      }
    }
  }
  return shape.main();
}

export function curlSpray(shape) {
  for (let i = 0; i < 5; i++) {
    const u = -1 + i / 2;
    const l = 0.97 - 0.2 * Math.abs(u) - 0.08 * (i % 2);
    const r0 = HALF * (0.34 - 0.06 * (i % 2));
    const side = u < 0 ? -1 : 1;
    const cx = u * HALF * 0.62;
    const cy = l - r0;
    const z = 0.1 - 0.05 * Math.abs(u);
    const points = [[0, 0, 0], [u * HALF * 0.06, cy * 0.45, z * 0.3], [u * HALF * 0.2, cy * 0.8, z * 0.8]];
    for (let k = 0; k < 16; k++) {
      const a = k * 0.68;
      const r = r0 * (1 - k / 16 * 0.86);
      points.push([cx - side * Math.cos(a) * r, cy + Math.sin(a) * r, z + k * 0.003]);
    }
    shape.main().rod(points, 0.011, 0.008, 1).second().blob(points[points.length - 1], 0.022).main();
  }
  return shape;
}

