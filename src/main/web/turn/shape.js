import {BufferGeometry, Color, Float32BufferAttribute, Matrix3, Matrix4, Vector3} from 'three';

/** What a vertex is painted with: the piece's main colour, its second, one of its own, or its own that glows at night. */
const MAIN = 0;
const SECOND = 1;
const OWN = 2;
const LIT = 3;

const STEP = 1e-3;

/**
 * Collects surfaces into one low-poly geometry. Each vertex carries `tone`: a factor of the colour (or a colour) and
 * which colour is meant, so that a piece of many materials is still one draw call.
 */
export class Shape {
  #positions = [];
  #normals = [];
  #tones = [];
  #index = [];
  #paint = {rgb: [1, 1, 1], part: MAIN};
  #place = new Matrix4();
  #turn = new Matrix3();

  /** @param {number} detail share of the full number of facets, in (0, 1] */
  constructor(detail = 1) {
    this.detail = detail;
  }

  main() {
    this.#paint = {rgb: [1, 1, 1], part: MAIN};
    return this;
  }

  second() {
    this.#paint = {rgb: [1, 1, 1], part: SECOND};
    return this;
  }

  own(colour, lit = false) {
    const c = new Color(colour);
    this.#paint = {rgb: [c.r, c.g, c.b], part: lit ? LIT : OWN};
    return this;
  }

  /** Whatever `draw` adds is moved by the matrix. */
  at(matrix, draw) {
    const before = this.#place;
    this.#place = before.clone().multiply(matrix);
    this.#turn.getNormalMatrix(this.#place);
    draw(this);
    this.#place = before;
    this.#turn.getNormalMatrix(before);
    return this;
  }

  /**
   * A smooth sheet.
   * @param {(u: number, v: number) => number[]} point over u, v in [0, 1]
   * @param {(u: number, v: number) => number} shade factor of the colour
   */
  sheet(point, columns, rows, shade = () => 1) {
    const nu = Math.max(2, Math.round(columns * this.detail));
    const nv = Math.max(1, Math.round(rows * this.detail));
    const first = this.#count();
    for (let j = 0; j <= nv; j++) {
      for (let i = 0; i <= nu; i++) {
        const u = i / nu;
        const v = j / nv;
        this.#vertex(point(u, v), normalAt(point, u, v), shade(u, v));
      }
    }
    for (let j = 0; j < nv; j++) {
      for (let i = 0; i < nu; i++) {
        const a = first + j * (nu + 1) + i;
        this.#index.push(a, a + 1, a + nu + 2, a, a + nu + 2, a + nu + 1);
      }
    }
    return this;
  }

  /** A body turned on the y axis; `profile(t)` gives [radius, y] from the top (t = 0) to the bottom. */
  turned(profile, around, rows, shade = () => 1) {
    return this.sheet((u, v) => {
      const [r, y] = profile(v);
      const a = -u * Math.PI * 2;
      return [Math.sin(a) * r, y, Math.cos(a) * r];
    }, around, rows, (u, v) => shade(v));
  }

  ellipsoid([x, y, z], [rx, ry, rz], around = 10, rows = 6, shade = () => 1) {
    return this.sheet((u, v) => {
      const a = -u * Math.PI * 2;
      const s = Math.sin(v * Math.PI);
      return [x + Math.sin(a) * s * rx, y + Math.cos(v * Math.PI) * ry, z + Math.cos(a) * s * rz];
    }, around, rows, (u, v) => shade(v));
  }

  /** A small round body: a ring with a point before and, where facets are plenty, one behind. */
  blob([x, y, z], r, shade = 1) {
    const first = this.#count();
    const sides = 8;
    const add = (n) => this.#vertex([x + n[0] * r, y + n[1] * r, z + n[2] * r], n, shade * (0.95 + 0.22 * n[1] + 0.14 * n[2]));
    for (let i = 0; i < sides; i++) {
      const a = i / sides * Math.PI * 2;
      add([Math.cos(a), Math.sin(a), 0]);
    }
    add([0, 0, 0.9]);
    add([0, 0, -0.9]);
    for (let i = 0; i < sides; i++) {
      const next = (i + 1) % sides;
      this.#index.push(first + i, first + next, first + sides);
      if (this.detail === 1) {
        this.#index.push(first + next, first + i, first + sides + 1);
      }
    }
    return this;
  }

  /** A flat polygon, its corners counterclockwise from outside; shades may differ by corner. */
  flat(corners, shades = 1) {
    const first = this.#count();
    const n = new Vector3().subVectors(vec(corners[1]), vec(corners[0]))
      .cross(new Vector3().subVectors(vec(corners[2]), vec(corners[0]))).normalize().toArray();
    corners.forEach((p, i) => this.#vertex(p, n, Array.isArray(shades) ? shades[i] : shades));
    for (let i = 2; i < corners.length; i++) {
      this.#index.push(first, first + i - 1, first + i);
    }
    return this;
  }

  /** One triangle from the foot to the tip, broad in the direction `across`. */
  needle(foot, tip, across, normal, shade = 1) {
    const first = this.#count();
    this.#vertex(foot.map((c, i) => c - across[i]), normal, shade * 0.72);
    this.#vertex(foot.map((c, i) => c + across[i]), normal, shade * 0.72);
    this.#vertex(tip, normal, shade * 1.12);
    this.#index.push(first, first + 1, first + 2);
    return this;
  }

  /** A three-sided rod through the points, tapering from r0 to r1. */
  rod(points, r0, r1 = r0, shade = 1) {
    const first = this.#count();
    points.forEach((p, k) => {
      const ahead = vec(points[Math.min(points.length - 1, k + 1)]).sub(vec(points[Math.max(0, k - 1)])).normalize();
      const side = new Vector3(0, 0, 1).cross(ahead);
      if (side.lengthSq() < 0.01) {
        side.set(1, 0, 0);
      }
      side.normalize();
      const up = new Vector3().crossVectors(ahead, side);
      const r = r0 + (r1 - r0) * k / (points.length - 1);
      for (let i = 0; i < 3; i++) {
        const a = i * Math.PI * 2 / 3 + Math.PI / 2;
        const n = side.clone().multiplyScalar(Math.cos(a)).addScaledVector(up, Math.sin(a));
        this.#vertex(p.map((c, d) => c + n.getComponent(d) * r), n.toArray(), shade);
      }
    });
    for (let k = 0; k + 1 < points.length; k++) {
      for (let i = 0; i < 3; i++) {
        const a = first + k * 3 + i;
        const b = first + k * 3 + (i + 1) % 3;
        this.#index.push(a, b, b + 3, a, b + 3, a + 3);
      }
    }
    return this;
  }

  geometry() {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new Float32BufferAttribute(this.#positions, 3));
    geometry.setAttribute('normal', new Float32BufferAttribute(this.#normals, 3));
    geometry.setAttribute('tone', new Float32BufferAttribute(this.#tones, 4));
    geometry.setIndex(this.#index);
    return geometry;
  }

  #count() {
    return this.#positions.length / 3;
  }

  #vertex(point, normal, shade) {
    const p = vec(point).applyMatrix4(this.#place);
    const n = vec(normal).applyMatrix3(this.#turn).normalize();
    this.#positions.push(p.x, p.y, p.z);
    this.#normals.push(n.x, n.y, n.z);
    const {rgb, part} = this.#paint;
    this.#tones.push(rgb[0] * shade, rgb[1] * shade, rgb[2] * shade, part);
  }
}

const vec = ([x, y, z]) => new Vector3(x, y, z);

/** Found by differences, drawn in a little from the rim so that poles and points have a normal too. */
function normalAt(point, u, v) {
  const u0 = Math.min(Math.max(u, STEP), 1 - STEP);
  const v0 = Math.min(Math.max(v, 0.02), 0.98);
  const du = vec(point(u0 + STEP, v0)).sub(vec(point(u0 - STEP, v0)));
  const dv = vec(point(u0, v0 + STEP)).sub(vec(point(u0, v0 - STEP)));
  return du.cross(dv).normalize().toArray();
}

/** A profile for `turned`: straight lines through the points [r, y]. */
export function along(points) {
  return (t) => {
    const f = Math.min(points.length - 1.0001, Math.max(0, t) * (points.length - 1));
    const i = Math.floor(f);
    return points[i].map((c, d) => c + (points[i + 1][d] - c) * (f - i));
  };
}
