import {BufferAttribute, BufferGeometry, CanvasTexture, CatmullRomCurve3, Color, Mesh, RepeatWrapping, Vector3} from 'three';
import {material} from './finish.js';
import {dice, hash} from './random.js';
import {darker, light, lighter} from './tint.js';
import {radiusAt} from './tree.js';

const PINCHED = 0.26;
const UP = new Vector3(0, 1, 0);
const COLUMNS = 4;
const ROUGH = {fine: 0.5, columns: 1};
/** How much of its cloth a pattern covers, for a ribbon drawn plain. */
const INKED = {dots: 0.2, stripe: 0.3, plaid: 0.45, metallic: 0.3, leaf: 0.3};

/** The run as samples: where its middle is, half its width as a vector of length 0 to 1, which way is out. */
function samples(run, tree, fine) {
  const curve = new CatmullRomCurve3(run.points.map((p) => new Vector3(...p)), false, 'centripetal');
  const n = Math.round((run.points.length - 1) * fine);
  const middles = Array.from({length: n + 1}, (_, i) => curve.getPoint(i / n));
  const open = openness(middles, tree, fine);
  const roll = dice(hash(run.id));
  const curl = [(roll() - 0.5) * 1.6, (roll() - 0.5) * 1.6];
  let before = null;
  return middles.map((p, i) => {
    const ahead = middles[Math.min(n, i + 1)].clone().sub(middles[Math.max(0, i - 1)]).normalize();
    const out = new Vector3(p.x, 0, p.z).normalize().addScaledVector(UP, 0.25).normalize();
    const across = new Vector3().crossVectors(ahead, out).normalize();
    if (before && across.dot(before) < 0) {
      across.negate();
    }
    before = across.clone();
    const first = Math.max(0, 1 - i / (fine * 9)) * curl[0];
    const last = Math.max(0, 1 - (n - i) / (fine * 9)) * curl[1];
    across.applyAxisAngle(ahead, first + last + 0.16 * Math.sin(i / fine * 0.9));
    const normal = new Vector3().crossVectors(across, ahead).normalize();
    return {p, ahead, across, normal, open: open[i]};
  });
}

/** How far the ribbon is spread at each sample: gathered at the pinches, full in the loops and at the cut ends. */
function openness(middles, tree, fine) {
  const bulge = middles.map((p) => Math.hypot(p.x, p.z) - radiusAt(tree, p.y));
  const low = Math.min(...bulge);
  const mid = low + (Math.max(...bulge) - low) * 0.4;
  const last = middles.length - 1;
  const cuts = [0];
  for (let i = 1; i < last; i++) {
    if (bulge[i] <= mid && bulge[i] <= bulge[i - 1] && bulge[i] < bulge[i + 1] && i - cuts[cuts.length - 1] >= 2 * fine) {
      cuts.push(i);
    }
  }
  cuts.push(last);
  const out = new Array(last + 1).fill(1);
  for (let c = 0; c + 1 < cuts.length; c++) {
    for (let i = cuts[c]; i <= cuts[c + 1]; i++) {
      const s = (i - cuts[c]) / (cuts[c + 1] - cuts[c]);
      const start = c === 0;
      const end = c + 2 === cuts.length;
      const full = start && end ? 1 : start ? Math.min(1, (1 - s) * 2.4) : end ? Math.min(1, s * 2.4) : 1.08 * Math.sin(Math.PI * s) ** 0.6;
      out[i] = PINCHED + (1 - PINCHED) * full;
    }
  }
  return out;
}

/** One ribbon of a run appended to the arrays. */
function lay(out, rows, columns, {width, breadth, colour, ink, slant, glowAt}) {
  const start = out.position.length / 3;
  let length = 0;
  rows.forEach(({p, ahead, across, normal, open}, i) => {
    length += i ? p.distanceTo(rows[i - 1].p) : 0;
    const end = i === 0 ? -1 : i === rows.length - 1 ? 1 : 0;
    // Gathered cloth is in its own shade.
    const shade = 0.5 + 0.5 * Math.min(1, (open - PINCHED) / (0.9 - PINCHED));
    for (let c = 0; c <= columns; c++) {
      const v = 2 * c / columns - 1;
      // Two ribbons laid as one bend as the wider does.
      const arch = (1 - (v * width / breadth) ** 2) * breadth * (0.05 + 0.2 * (1 - Math.min(1, open)));
      const at = p.clone().addScaledVector(across, v * open * width / 2).addScaledVector(normal, arch)
        .addScaledVector(ahead, end * slant * v * width * 0.3);
      const n = normal.clone().addScaledVector(across, v * (0.22 + 0.6 * (1 - Math.min(1, open))));
      out.position.push(at.x, at.y, at.z);
      out.normal.push(n.x, n.y, n.z);
      out.uv.push((v + 1) / 2, length / width);
      const dim = shade * (0.86 + 0.14 * Math.cos(v * 4.5) * open + 0.05);
      out.tone.push(dim, dim, dim, 0);
      out.first.push(colour.r, colour.g, colour.b);
      out.second.push(ink.r, ink.g, ink.b);
      out.glow.push(glowAt(at) * 0.6);
    }
  });
  for (let i = 0; i + 1 < rows.length; i++) {
    for (let c = 0; c < columns; c++) {
      const a = start + i * (columns + 1) + c;
      out.index.push(a, a + 1, a + columns + 2, a, a + columns + 2, a + columns + 1);
    }
  }
}

const SIZES = {position: 3, normal: 3, uv: 2, tone: 4, first: 3, second: 3, glow: 1};

const empty = () => ({position: [], normal: [], uv: [], tone: [], first: [], second: [], glow: [], index: []});

function geometryOf(arrays) {
  const geometry = new BufferGeometry();
  Object.entries(SIZES).forEach(([name, size]) => geometry.setAttribute(name, new BufferAttribute(new Float32Array(arrays[name]), size)));
  geometry.setIndex(arrays.index);
  return geometry;
}

/** Red: how much of the ink lies here. Green: how lit the wired edge is. Blue: cloth or a hole between threads. */
function cloth(pattern) {
  const canvas = document.createElement('canvas');
  canvas.width = 64;
  canvas.height = 128;
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#00f';
  pen.fillRect(0, 0, 64, 128);
  pen.globalCompositeOperation = 'lighter';
  pen.fillStyle = pen.strokeStyle = '#f00';
  PATTERNS[pattern]?.(pen);
  pen.fillStyle = '#0f0';
  pen.fillRect(0, 0, 4, 128);
  pen.fillRect(60, 0, 4, 128);
  const map = new CanvasTexture(canvas);
  map.wrapT = RepeatWrapping;
  map.anisotropy = 4;
  return map;
}

/* One repeat, as wide as the ribbon and twice as long. */
const PATTERNS = {
  dots(pen) {
    for (const [x, y] of [[16, 16], [48, 16], [32, 48], [16, 80], [48, 80], [32, 112]]) {
      pen.beginPath();
      pen.arc(x, y, 6, 0, 7);
      pen.fill();
    }
  },
  stripe(pen) {
    [14, 32, 50].forEach((x) => pen.fillRect(x - 3, 0, 6, 128));
  },
  plaid(pen) {
    pen.globalAlpha = 0.6;
    [18, 46].forEach((x) => pen.fillRect(x - 5, 0, 10, 128));
    [16, 48, 80, 112].forEach((y) => pen.fillRect(0, y - 5, 64, 10));
    pen.globalAlpha = 1;
    pen.fillRect(31, 0, 2, 128);
    [0, 32, 64, 96].forEach((y) => pen.fillRect(0, y, 64, 2));
  },
  metallic(pen) {
    pen.globalAlpha = 0.5;
    for (let y = 0; y < 128; y += 8) {
      pen.fillRect(2, y, 60, 3);
    }
  },
  leaf(pen) {
    for (const y of [0, 42.7, 85.3]) {
      [[y, 1], [y + 21.3, -1]].forEach(([foot, side]) => frond(pen, foot, side));
    }
  },
  /** Open weave: holes between the threads. */
  mesh(pen) {
    pen.globalCompositeOperation = 'source-over';
    pen.fillStyle = '#000';
    for (let y = 0; y < 128; y += 6.4) {
      for (let x = 5; x < 58; x += 6.4) {
        pen.fillRect(x, y, 3.6, 3.6);
      }
    }
    pen.globalCompositeOperation = 'lighter';
  },
};

function frond(pen, y, side) {
  for (const wrap of [0, -128]) {
    pen.beginPath();
    pen.moveTo(32, y + wrap);
    pen.quadraticCurveTo(32 + side * 24, y + 8 + wrap, 32 + side * 23, y + 30 + wrap);
    pen.quadraticCurveTo(32 + side * 3, y + 24 + wrap, 32, y + wrap);
    pen.fill();
  }
}

const WOVEN = {key: 'woven', change: woven};

function woven(shader) {
  shader.fragmentShader = `varying vec3 vInk;\n${shader.fragmentShader}`
    .replace('#include <map_fragment>', 'vec4 woven = texture2D(map, vMapUv);\nif (woven.b < 0.42) discard;')
    .replace('diffuseColor.rgb *= vTone;', 'diffuseColor.rgb = mix(vTone, vInk, 0.9 * woven.r) * (1.0 + 0.4 * woven.g);');
  const soft = shader.vertexShader.includes('coded');
  shader.vertexShader = `varying vec3 vInk;\n${shader.vertexShader}`
    .replace(/}\s*$/, soft ? 'vInk = coded(second * tone.rgb * light);\n}' : 'vInk = second * tone.rgb;\n}');
}

/**
 * The ribbons of a scene. Runs of one layer and pattern are one mesh.
 */
export class Ribbons {
  /** The same ribbons twice: with their folds, and rough for a machine on which every triangle counts. */
  meshes;
  rough;
  #scene;
  #lighting;
  #glowAt;
  #fine;
  #maps = new Map();
  #materials = new Map();
  #rows = new Map();

  constructor(scene, lighting, glowAt, fine) {
    this.#scene = scene;
    this.#lighting = lighting;
    this.#glowAt = glowAt;
    this.#fine = fine;
    scene.ribbons.forEach((run) => this.#rows.set(run.id, samples(run, scene.tree, fine)));
    this.meshes = this.#meshes((run) => this.#rows.get(run.id), COLUMNS, false);
    this.rough = this.#meshes((run) => samples(run, scene.tree, ROUGH.fine), ROUGH.columns, true);
  }

  #meshes(rowsOf, columns, rough) {
    const groups = new Map();
    for (const run of this.#scene.ribbons) {
      const rows = rowsOf(run);
      for (const part of this.#parts(run)) {
        const key = `${run.layer}|${part.cloth}`;
        const group = groups.get(key) ?? {arrays: empty(), cloth: part.cloth, layer: run.layer};
        lay(group.arrays, rows, columns, rough ? {...part, colour: part.colour.clone().lerp(part.ink, INKED[part.cloth] ?? 0)} : part);
        groups.set(key, group);
      }
    }
    return [...groups.values()].map(({arrays, cloth: kind, layer}) => {
      const mesh = new Mesh(geometryOf(arrays), this.material(kind, [], rough));
      mesh.userData.layer = layer;
      mesh.renderOrder = 1;
      return mesh;
    });
  }

  /** The ribbons of one run alone: [geometry, cloth] each. */
  alone(run) {
    return this.#parts(run).map((part) => {
      const arrays = empty();
      lay(arrays, this.#rows.get(run.id), COLUMNS, part);
      return [geometryOf(arrays), part.cloth];
    });
  }

  /** Points along the run where a finger may touch it. */
  spots(run) {
    return this.#rows.get(run.id).filter((_, i) => i % (2 * this.#fine) === 0).map(({p}) => p);
  }

  material(kind, further = [], rough = false) {
    const key = [kind, rough, ...further.map((change) => change.key)].join();
    if (!this.#materials.has(key)) {
      if (!this.#maps.has(kind)) {
        this.#maps.set(kind, cloth(kind));
      }
      const finish = rough || kind === 'mesh' ? 'natural' : kind === 'metallic' ? 'metallic' : 'satin';
      const made = material(finish, false, this.#lighting.uniforms, rough ? [] : [WOVEN, ...further]);
      // The overlay lies in the base's own surface and is seen from both sides.
      Object.assign(made, {polygonOffset: kind !== 'mesh', polygonOffsetFactor: -2, polygonOffsetUnits: -500});
      made.map = rough ? null : this.#maps.get(kind);
      this.#materials.set(key, made);
    }
    return this.#materials.get(key);
  }

  dispose() {
    [...this.meshes, ...this.rough].forEach((mesh) => mesh.geometry.dispose());
    this.#maps.forEach((map) => map.dispose());
    this.#materials.forEach((made) => made.dispose());
  }

  #parts(run) {
    const slant = hash(run.id) & 1 ? 1 : -1;
    const glowAt = this.#glowAt;
    const part = (cloth, width, colour) => ({cloth, width, breadth: run.width, colour: new Color(colour), slant, glowAt,
      ink: light(colour) < 0.5 ? lighter(colour, 0.5) : darker(colour, 0.4)});
    if (!(run.overWidth > 0)) {
      return [part(run.pattern, run.width, run.overColour ?? run.colour)];
    }
    return [part('mesh', run.width, run.colour), part(run.pattern, run.overWidth, run.overColour)];
  }
}


