import {PerspectiveCamera, Vector3} from 'three';
import {OrbitControls} from 'three/addons/controls/OrbitControls.js';
import {radiusAt} from './tree.js';

const FIELD = 26;
const HOME_HEIGHT = 0.05;
const GLIDE = 650;
/** The eye stays this far above the floor and off the needles, metres. */
const FLOOR = 0.12;
const NEAREST = 0.42;

const ease = (t) => (t < 0.5 ? 4 * t ** 3 : 1 - (2 - 2 * t) ** 3 / 2);
const half = (radians) => Math.atan2(Math.sin(radians), Math.cos(radians));

/**
 * The viewer's eye, which goes round the trunk and never under the floor.
 */
export class View {
  camera = new PerspectiveCamera(FIELD, 1, 0.1, 60);
  #controls;
  #tree;
  #bounds;
  #glide = null;
  #calm;
  #fit = 5;

  /**
   * @param {HTMLCanvasElement} canvas what is dragged
   * @param {{top: number, radius: number}} bounds of tree and trimmings, metres
   * @param {() => boolean} calm whether motion is to be reduced
   * @param {() => void} moved called when a frame is due
   */
  constructor(canvas, tree, bounds, calm, moved) {
    this.#tree = tree;
    this.#bounds = bounds;
    this.#calm = calm;
    this.#controls = new OrbitControls(this.camera, canvas);
    Object.assign(this.#controls, {dampingFactor: 0.09, rotateSpeed: 0.75, minPolarAngle: 0.1, enableDamping: !calm()});
    this.#controls.addEventListener('change', moved);
    this.#controls.addEventListener('start', () => {
      this.#glide = null;
      this.#controls.enableDamping = !this.#calm();
      moved();
    });
  }

  get around() {
    return this.#controls.getAzimuthalAngle();
  }

  /** Metres of the tree that one pixel of a view of the given height shows. */
  scale(height) {
    return 2 * Math.tan(FIELD * Math.PI / 360) * this.#controls.getDistance() / height;
  }

  resize(width, height) {
    const {top, radius} = this.#bounds;
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    const slope = Math.tan(FIELD * Math.PI / 360);
    const before = this.#fit;
    this.#fit = Math.max((top / 2 + 0.06) / slope, radius * 1.06 / (slope * this.camera.aspect)) + radius * (0.4 + 0.6 * Math.min(1, radius / top));
    Object.assign(this.#controls, {maxDistance: this.#fit * 1.5});
    if (this.camera.position.lengthSq() === 0) {
      this.#stand(this.#front());
    } else {
      const now = this.#now();
      this.#stand({...now, distance: now.distance * this.#fit / before});
    }
  }

  home() {
    this.#go(this.#front());
  }

  turn(right, up) {
    const to = this.#glide?.to ?? this.#now();
    this.#go({...to, around: to.around + right, polar: to.polar - up}, 260);
  }

  zoom(factor) {
    const to = this.#glide?.to ?? this.#now();
    this.#go({...to, distance: to.distance * factor}, 260);
  }

  /** Turns so that what stands at the point, outward of the trunk, faces the viewer. */
  show(point, everySide) {
    const now = this.#glide?.to ?? this.#now();
    const close = now.distance < this.#fit * 0.8;
    this.#go({around: everySide ? now.around : now.around + half(Math.atan2(point.x, point.z) - now.around),
      polar: Math.min(1.52, Math.max(1.25, now.polar)), distance: now.distance, y: close ? point.y : now.y});
  }

  /** Moves on to the time of a frame. @returns {boolean} whether another frame is due */
  update(time) {
    if (this.#glide) {
      const {from, to, start, lasts} = this.#glide;
      const t = Math.min(1, Math.max(0, (time - start) / lasts));
      const k = ease(t);
      this.#stand(Object.fromEntries(Object.keys(to).map((key) => [key, from[key] + (to[key] - from[key]) * k])));
      this.#glide = t < 1 ? this.#glide : null;
      return true;
    }
    this.#limit();
    return this.#controls.update();
  }

  dispose() {
    this.#controls.dispose();
  }

  #front() {
    const y = this.#bounds.top * 0.5;
    return {around: 0, polar: Math.PI / 2 - HOME_HEIGHT, distance: this.#fit, y};
  }

  #now() {
    const {target} = this.#controls;
    return {around: this.around, polar: this.#controls.getPolarAngle(), distance: this.#controls.getDistance(), y: target.y};
  }

  #go(to, lasts = GLIDE) {
    const inside = {...to, polar: Math.min(Math.max(to.polar, 0.1), this.#lowest(to)), distance: Math.min(this.#fit * 1.5,
      Math.max(to.distance, this.#nearest(to.y)))};
    if (this.#calm()) {
      this.#glide = null;
      this.#stand(inside);
      return;
    }
    this.#glide = {from: this.#now(), to: inside, start: performance.now(), lasts};
    this.#controls.dispatchEvent({type: 'change'});
  }

  #stand({around, polar, distance, y}) {
    const {target} = this.#controls;
    target.set(0, y, 0);
    this.camera.position.setFromSphericalCoords(distance, polar, around).add(target);
    this.#limit();
    this.#controls.update();
    this.#controls.dispatchEvent({type: 'change'});
  }

  /** Keeps the middle of the view on the trunk and the eye above the floor and out of the boughs. */
  #limit() {
    const {target} = this.#controls;
    const y = Math.min(this.#bounds.top, Math.max(0.1, target.y));
    const shift = new Vector3(-target.x, y - target.y, -target.z);
    if (shift.lengthSq() > 1e-12) {
      target.add(shift);
      this.camera.position.add(shift);
    }
    this.#controls.minDistance = this.#nearest(y);
    this.#controls.maxPolarAngle = this.#lowest({y, distance: this.#controls.getDistance()});
  }

  #nearest(y) {
    return radiusAt(this.#tree, y) + NEAREST;
  }

  #lowest({y, distance}) {
    return Math.acos(Math.max(-0.99, Math.min(0.99, (FLOOR - y) / distance)));
  }
}
