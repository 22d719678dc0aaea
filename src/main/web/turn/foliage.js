import {Color, Matrix4, Mesh, Quaternion, Vector3} from 'three';
import {Batch} from './batch.js';
import {compose} from './pose.js';
import {plain} from './ground.js';
import {dice} from './random.js';
import {radiusAt} from './tree.js';
import {Shape} from './shape.js';

const BODY = ['#0d2219', '#13301f', '#1b402b', '#245138', '#2f6446', '#3f7855'].map((c) => new Color(c));
const LIT = ['#143021', '#1d432c', '#28573c', '#35694a', '#46805c', '#5c9672'].map((c) => new Color(c));
const WOOD = new Color('#3a2a20');
const HEART = '#17352a';
const AROUND = 18;
const ROWS = 24;
/** The geometry is lit once more on its way to the screen, so its paint is made brighter than the picture's. */
const PAINT = 1.6;
const SPLAY = 0.52;
/** The rough twigs have few needles, broad ones, and only the outer twigs are set. */
const FEW = 2;
const STOUT = 2.3;
/** A piece this large beside the tree at its height stands clear of the needles by itself; freeing it would bare the tree. */
const LARGE = 0.3;
/** How much of the cone the dark inside fills. */
const FILL = {sparse: 0, medium: 0.6, full: 0.68};

/** A needled twig one unit long, growing up +y, its upper side to +z; needles in the first colour, the lit ones in the second. */
function sprigShape(needles, seed, stout = 1) {
  const roll = dice(seed);
  const shape = new Shape();
  const bend = (roll() - 0.5) * 0.16;
  const axis = (t) => [2 * bend * t * (1 - t), t * 0.95, -0.06 * t * t];
  const wide = (0.012 + 0.067 / needles) * stout;
  shape.own('#3d2c1e').flat([[-0.012, 0, 0], [0.012, 0, 0], [axis(0.9)[0], 0.9, -0.05]], [0.8, 0.8, 1.2]);
  for (const side of [-1, 0, 1]) {
    const count = side ? needles : Math.round(needles * 0.6);
    for (let i = 0; i < count; i++) {
      const t = (i + 0.3 + 0.6 * roll()) / count;
      const foot = axis(0.04 + 0.92 * t);
      const reach = (0.19 + 0.13 * Math.sin(Math.PI * (0.18 + 0.72 * t))) * (0.82 + 0.36 * roll());
      const angle = (side || (roll() - 0.5) * 0.7) * (0.98 - 0.5 * t + 0.3 * (roll() - 0.5));
      const up = side ? 0.1 + 0.25 * roll() : 0.75;
      const flat = Math.sqrt(1 - up * up) * reach;
      const tip = [foot[0] + Math.sin(angle) * flat, foot[1] + Math.cos(angle) * flat, foot[2] + up * reach];
      const lit = side < 0 ? i % 3 !== 0 : side ? i % 4 === 0 : i % 2 === 0;
      (lit ? shape.second() : shape.main()).needle(foot, tip, [Math.cos(angle) * wide, -Math.sin(angle) * wide, 0],
        [side * 0.35, 0.1, 1], 0.8 + 0.5 * t);
    }
  }
  shape.second().needle(axis(0.9), [axis(1)[0], 1.08, -0.04], [wide, 0, 0], [0, 0.1, 1], 1.2);
  return shape.geometry();
}

/** Sets the sprigs of every bough of the scene. */
class Boughs {
  sprigs = [];
  wood = [];

  constructor(scene, glowAt) {
    this.tree = scene.tree;
    this.sprig = scene.sprig;
    this.glowAt = glowAt;
    this.roll = dice(scene.boughs.length * 31 + 7);
    scene.boughs.forEach((row) => this.#bough(...row));
    this.#leader();
  }

  #bough(tier, around, reach, tipY, rootY, size) {
    const {roll, sprig, tree} = this;
    const grown = sprig * size;
    const drop = rootY - tipY;
    let pairs = reach < sprig * 0.6 ? 1 : reach < sprig * 1.6 ? 2 : 3;
    if (tree.fullness === 'full' && reach > sprig * 2) {
      pairs++;
    }
    for (let i = 0; i < pairs; i++) {
      const s = 1 - (i + 0.55) * Math.min(0.62 * grown / reach, 0.8 / pairs);
      const spot = {tier, around, along: s, foot: Math.max(0, reach * s - grown * 0.5), y: rootY - drop * s ** 1.5};
      const turn = (roll() - 0.5) * 0.36;
      this.#sprig(spot, turn - SPLAY, size * 0.9);
      this.#sprig(spot, turn + SPLAY, size * 0.9);
      this.#sprig({...spot, along: spot.along - 0.05}, (roll() < 0.5 ? 1 : -1) * 0.3 * roll(), size * 0.8, i ? 0.1 : 0.45);
      this.#sprig({...spot, along: Math.min(spot.along, 0.6), foot: spot.foot * 0.8}, turn + (roll() - 0.5) * 1.8, size * 0.8, -0.25);
    }
    const tip = {tier, around, along: 1, foot: Math.max(0, reach - grown * 0.82), y: tipY + drop * 0.12};
    this.#sprig(tip, (roll() - 0.5) * 0.4, size);
    const a = new Vector3(0, rootY, 0);
    const b = new Vector3(Math.sin(around) * reach * 0.86, tipY + drop * 0.22, Math.cos(around) * reach * 0.86);
    const way = b.clone().sub(a);
    this.wood.push({matrix: compose(a, new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), way.clone().normalize()), sprig * 0.08,
      way.length(), sprig * 0.08), first: WOOD, second: WOOD, glow: 0.1, outward: new Vector3(Math.sin(around), 0, Math.cos(around))});
  }

  #sprig({tier, around, along, foot, y}, spread, size, up = 0) {
    const {roll, sprig, tree} = this;
    const young = 1 - Math.min(1, radiusAt(tree, y) / (sprig * 1.5));
    const fall = 0.36 + 0.24 * (roll() - 0.5) - (tier === 0 ? 0.1 : 0) - 1.25 * young - up;
    const heading = around + spread;
    const dir = new Vector3(Math.sin(heading), -fall, Math.cos(heading)).normalize();
    const at = new Vector3(Math.sin(around) * foot, y, Math.cos(around) * foot);
    const light = 1.9 + 3 * (along - 0.62) + 1.3 * (roll() - 0.5) + (tier % 2 ? -0.7 : 0.3) + up;
    this.#set(at, dir, size * sprig, light, around, along > 0.6);
  }

  #set(at, dir, length, light, around, outer = true) {
    const outward = new Vector3(Math.sin(around), 0, Math.cos(around));
    const upper = new Vector3(0, 1, 0).addScaledVector(outward, 0.5);
    upper.addScaledVector(dir, -upper.dot(dir)).normalize();
    const side = new Vector3().crossVectors(dir, upper);
    const turn = new Quaternion().setFromAxisAngle(dir, (this.roll() - 0.5) * 0.9)
      .multiply(new Quaternion().setFromRotationMatrix(new Matrix4().makeBasis(side, dir, upper)));
    const shade = Math.max(0, Math.min(BODY.length - 1, Math.round(light)));
    const middle = at.clone().addScaledVector(dir, length * 0.6);
    this.sprigs.push({matrix: compose(at, turn, length, length, length), middle, length, outward, outer,
      first: BODY[shade].clone().multiplyScalar(PAINT), second: LIT[shade].clone().multiplyScalar(PAINT),
      glow: this.glowAt(middle) * (0.5 + shade * 0.3)});
  }

  /** The upright shoots at the tip: one straight leader and shorter ones that lean from its foot. */
  #leader() {
    const {tree, sprig, roll} = this;
    for (let i = 0; i < 6; i++) {
      const around = i * 2.4;
      const lean = i ? 0.36 + 0.12 * roll() : 0;
      const dir = new Vector3(Math.sin(around) * lean, 1, Math.cos(around) * lean).normalize();
      this.#set(new Vector3(0, tree.height - sprig * (i ? 0.68 : 0.84), 0), dir, sprig * (i ? 0.45 : 0.8), 3, around);
    }
  }
}

/** A sprig that would hide more than the rim of a piece set at the tips is left out. */
function clear(sprigs, places) {
  const size = 0.3;
  const cells = new Map();
  const key = (p, i = 0, j = 0, k = 0) => `${Math.floor(p.x / size) + i},${Math.floor(p.y / size) + j},${Math.floor(p.z / size) + k}`;
  for (const place of places) {
    cells.set(key(place.centre), [...(cells.get(key(place.centre)) ?? []), place]);
  }
  const hides = (sprig, place) => {
    const d = sprig.middle.clone().sub(place.centre);
    const ahead = d.dot(place.outward);
    return ahead > -sprig.length * 0.05 && d.addScaledVector(place.outward, -ahead).length() < place.radius * 0.72 + sprig.length * 0.08;
  };
  return sprigs.filter((sprig) => {
    for (let n = 0; n < 27; n++) {
      const near = cells.get(key(sprig.middle, n % 3 - 1, Math.floor(n / 3) % 3 - 1, Math.floor(n / 9) - 1)) ?? [];
      if (near.some((place) => hides(sprig, place))) {
        return false;
      }
    }
    return true;
  });
}

/** The dark inside of a dense tree, ragged and mottled so that it never reads as a cone. */
function heart(tree, sprig) {
  const fill = FILL[tree.fullness];
  const low = tree.lowestBranch;
  const crown = tree.height - low;
  const roll = dice(77);
  const rough = Array.from({length: 997}, () => 0.8 + 0.26 * roll());
  const at = (u, v) => rough[(Math.round(u * AROUND) % AROUND * 31 + Math.round(v * ROWS) * 17) % 997];
  const shape = new Shape();
  shape.own(HEART).sheet((u, v) => {
    const y = low + crown * (0.97 - 0.94 * v);
    const cone = radiusAt(tree, y);
    const r = cone * fill * Math.min(1, 0.25 + cone / (sprig * 3)) * (v > 0.995 ? 0 : at(u, v));
    return [Math.sin(-u * Math.PI * 2) * r, y, Math.cos(u * Math.PI * 2) * r];
  }, AROUND, ROWS, (u, v) => (at(u, v) - 0.74) * 5);
  return shape.geometry();
}

/**
 * The foliage of a scene.
 * @param {object[]} places of the pieces that it must leave free: {centre, radius, outward}
 * @param {{twigs: object, inside: object}} materials
 * @returns {{batches: Batch[], rough: Batch, heart: Mesh|null}} rough stands for the batches where every triangle counts
 */
export function foliage(scene, places, glowAt, {twigs: material, inside: dark}, detail) {
  const boughs = new Boughs(scene, glowAt);
  const needles = Math.round({sparse: 11, medium: 12, full: 13}[scene.tree.fullness] * detail);
  const small = places.filter(({centre, radius}) => radius < LARGE * radiusAt(scene.tree, centre.y));
  const sprigs = clear(boughs.sprigs, small);
  const batches = [1, 2].map((seed, i) => new Batch(sprigShape(needles, seed * 911), material, sprigs.filter((_, k) => k % 2 === i), 2));
  const rough = new Batch(sprigShape(FEW, 911, STOUT), material, sprigs.filter(({outer}, i) => outer && i % 2 === 0), 2);
  if (scene.tree.fullness !== 'full') {
    batches.push(new Batch(new Shape().rod([[0, 0, 0], [0, 1, 0]], 0.5, 0.16).geometry(), material, boughs.wood, 2));
  }
  if (!FILL[scene.tree.fullness]) {
    return {batches, rough, heart: null};
  }
  const inside = new Mesh(plain(heart(scene.tree, scene.sprig)), dark);
  inside.renderOrder = 3;
  return {batches, rough, heart: inside};
}
