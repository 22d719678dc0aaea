import {Raycaster, Vector2, Vector3} from 'three';

/** A finger is at least this large, CSS px. */
const FINGER = 13;
/** Sprays are airy: what lies behind one wins when the finger is nearer its middle. */
const AIRY = 0.07;

/** Finds what lies under a finger. */
export class Picker {
  #targets;
  #ray = new Raycaster();

  /** @param {{id: string, layer: string, centre: Vector3, radius: number, outward: Vector3, airy: boolean}[]} targets */
  constructor(targets) {
    this.#targets = targets;
  }

  /**
   * @param {number} x across the view, -1 to 1
   * @param {number} y up the view, -1 to 1
   * @param {number} scale metres that a CSS pixel shows
   * @param {(target: object) => boolean} seen
   * @returns {string|null} the id of the piece
   */
  at(x, y, camera, scale, seen) {
    this.#ray.setFromCamera(new Vector2(x, y), camera);
    const {ray} = this.#ray;
    const spot = new Vector3();
    let best = null;
    let least = Infinity;
    for (const target of this.#targets) {
      ray.closestPointToPoint(target.centre, spot);
      const off = spot.distanceTo(target.centre);
      const along = spot.distanceTo(ray.origin);
      const score = along + off * 1.3 + (target.airy ? AIRY : 0);
      if (off < Math.max(target.radius, FINGER * scale) && score < least && seen(target)) {
        least = score;
        best = target.id;
      }
    }
    return best;
  }
}
