import {Matrix4, Quaternion, Vector3} from 'three';
import {FORMS} from './forms/index.js';
import {hash} from './random.js';
import {radiusAt} from './tree.js';

const UP = new Vector3(0, 1, 0);
/** Nearer the axis than this, metres, and on a small tree than this share of its height, a piece belongs to the bouquet at the tip. */
const AXIS = 0.06;
const AXIS_SHARE = 0.022;
/** Above this share of the height the stems of the topper belong to the bouquet wherever their feet are. */
const TIP = 0.85;
const GOLDEN = Math.PI * (3 - Math.sqrt(5));
/** Width of a spray one unit long. */
const SPRAY_WIDTH = 0.5;
/** Deeper than this share of the radius a piece would be lost among the needles. */
const DEEPEST = 0.84;

/**
 * Where a piece stands and how large it is.
 * @returns {{matrix: Matrix4, centre: Vector3, radius: number, outward: Vector3, everySide: boolean}} centre and radius
 *   (metres) bound what a finger may touch; a piece on every side is never behind the tree
 */
export function pose(piece, tree, nth) {
  const {hold} = FORMS[piece.form];
  const around = Math.atan2(piece.x, piece.z);
  const outward = new Vector3(Math.sin(around), 0, Math.cos(around));
  const spin = (hash(piece.id) % 1000) / 1000;
  const place = {piece, outward, tangent: new Vector3(outward.z, 0, -outward.x), spin, nth,
    at: inSight(piece, tree), bouquet: inBouquet(piece, tree)};
  const {matrix, centre, radius} = POSES[hold](place);
  return {matrix, centre, radius, outward, everySide: place.bouquet};
}

/** Where the piece is shown: what is set deep is brought out far enough to be seen. */
function inSight(piece, tree) {
  const at = new Vector3(piece.x, piece.y, piece.z);
  const out = Math.hypot(piece.x, piece.z);
  const least = DEEPEST * radiusAt(tree, piece.y);
  const deep = FORMS[piece.form].hold !== 'grows' && piece.form !== 'light' && out > axis(tree) && out < least;
  return deep ? at.multiply(new Vector3(least / out, 1, least / out)) : at;
}

const axis = (tree) => Math.min(AXIS, AXIS_SHARE * tree.height);

function inBouquet(piece, tree) {
  const stem = piece.role === 'height-stem' || piece.role === 'texture-stem';
  return Math.hypot(piece.x, piece.z) < axis(tree) || (stem && piece.y > tree.height * TIP);
}

const POSES = {
  centre({piece, outward, at, spin}) {
    const p = at.addScaledVector(outward, piece.form === 'light' ? 0.012 : lift(piece));
    const s = piece.form === 'light' ? Math.max(0.012, piece.width) : piece.width;
    return {matrix: compose(p, facing(outward, spin * 0.6 - 0.3), s, s, s), centre: p.clone(), radius: s / 2};
  },

  hangs({piece, outward, at, spin}) {
    const tall = piece.length || piece.width * FORMS[piece.form].tall;
    const cord = Math.max(0.014, Math.min(0.034, piece.width * 0.34));
    const p = at.addScaledVector(outward, 0.02 + piece.width * 0.3).addScaledVector(UP, -cord);
    const thick = piece.form === 'house' ? 1 : 0.95;
    return {matrix: compose(p, facing(outward, spin * 0.7 - 0.35), piece.width, tall, piece.width * thick),
      centre: p.clone().addScaledVector(UP, -tall / 2), radius: Math.max(piece.width, tall) * 0.46};
  },

  perches({piece, outward, tangent, at, spin}) {
    const p = at.addScaledVector(outward, 0.03 + piece.width * 0.3);
    const way = outward.clone().addScaledVector(tangent, spin > 0.5 ? 0.6 : -0.6).normalize();
    const tall = piece.length > 0 ? Math.min(piece.length, piece.width) : piece.width * FORMS.bird.tall;
    return {matrix: compose(p, facing(way, (spin * 0.5 - 0.25) + (spin > 0.5 ? 0 : Math.PI)), piece.width, tall, piece.width),
      centre: p.clone().addScaledVector(UP, tall * 0.5), radius: piece.width * 0.5};
  },

  faces({piece, outward, at, spin}) {
    const p = at.addScaledVector(outward, lift(piece));
    const out = outward.clone().addScaledVector(UP, 0.26).normalize();
    return {matrix: compose(p, toward(out, UP).multiply(turn(spin * Math.PI * 2)), piece.width, piece.width, piece.width),
      centre: p.clone(), radius: piece.width / 2};
  },

  grows(place) {
    const {piece, outward, at, spin} = place;
    const length = piece.length || piece.width * 2.4;
    const dir = heading(place);
    const front = place.bouquet ? new Vector3(Math.sin(place.nth * GOLDEN), 0, Math.cos(place.nth * GOLDEN)) : outward.clone();
    front.addScaledVector(dir, -front.dot(dir)).normalize();
    const side = new Vector3().crossVectors(dir, front);
    const wide = Math.min(length * 1.5, Math.max(length * 0.6, piece.width / SPRAY_WIDTH));
    const turned = new Quaternion().setFromAxisAngle(dir, (spin - 0.5) * (place.bouquet ? 0.6 : 0.9))
      .multiply(new Quaternion().setFromRotationMatrix(new Matrix4().makeBasis(side, dir, front)));
    return {matrix: compose(at, turned, wide, length, wide),
      centre: at.clone().addScaledVector(dir, length * 0.58), radius: length * 0.36};
  },

  tied({piece, outward, at, spin}) {
    const s = piece.length || Math.max(0.2, piece.width * 2.6);
    const p = at.addScaledVector(outward, 0.035);
    const out = outward.clone().addScaledVector(UP, 0.15).normalize();
    return {matrix: compose(p, toward(out, UP).multiply(turn((spin - 0.5) * 0.3)), s, s, s),
      centre: p.clone().addScaledVector(UP, -0.3 * s), radius: s * 0.5};
  },
};

/** What lies at the tips is brought out before the needles; what lies deep stays there. */
function lift(piece) {
  return piece.depth < 0.75 ? 0 : 0.015 + 0.16 * piece.width;
}

/** Unit vector in which a spray points. */
function heading({piece, outward, tangent, bouquet, nth}) {
  const {lean} = piece;
  if (bouquet) {
    const around = nth * GOLDEN + Math.sign(lean) * 0.5;
    return new Vector3(Math.sin(around) * Math.sin(Math.abs(lean)), Math.max(0.25, Math.cos(lean)), Math.cos(around) * Math.sin(Math.abs(lean)))
      .normalize();
  }
  const out = 0.72 + 0.3 * Math.abs(Math.sin(lean));
  return outward.clone().multiplyScalar(out).addScaledVector(tangent, Math.sin(lean))
    .addScaledVector(UP, Math.max(0.12, Math.cos(lean) * 0.8)).normalize();
}

const turn = (radians) => new Quaternion().setFromAxisAngle(new Vector3(0, 0, 1), radians);

/** Upright, its +z to the horizontal direction, then turned about the vertical. */
function facing(direction, more) {
  return new Quaternion().setFromAxisAngle(UP, Math.atan2(direction.x, direction.z) + more);
}

/** Its +z to the direction, its +y as far up as that allows. */
export function toward(direction, up) {
  const x = new Vector3().crossVectors(up, direction).normalize();
  const y = new Vector3().crossVectors(direction, x);
  return new Quaternion().setFromRotationMatrix(new Matrix4().makeBasis(x, y, direction));
}

export function compose(position, quaternion, sx, sy, sz) {
  return new Matrix4().compose(position, quaternion, new Vector3(sx, sy, sz));
}
