import {Average} from './average.js';
import {Bulbs} from './bulbs.js';
import {Cards} from './cards.js';
import {material} from './finish.js';
import {foliage} from './foliage.js';
import {ground} from './ground.js';
import {Highlight} from './highlight.js';
import {listen} from './keys.js';
import {Lighting} from './lighting.js';
import {Loop} from './loop.js';
import {Picker} from './picker.js';
import {Pieces} from './pieces.js';
import {Ribbons} from './ribbons.js';
import {stage} from './stage.js';
import {View} from './view.js';
import {warmth} from './warmth.js';

/** Beyond this many pieces each is small on the screen and made of fewer facets. */
const MANY = 1500;
const COARSE = 0.6;
/** Seen again after the viewer has gone round by this much, radians. */
const GLANCE = 0.1;
/** The cone's slope: how far its surface looks up. */
const LOOKS_UP = 0.28;
/** How far past its silhouette a piece still shows beside the tree. */
const PAST = -0.34;
const PAST_ROUGH = -0.04;

/**
 * Words, in the reader's language, that the tree speaks with.
 * @typedef {object} Words
 * @property {string} label what the picture is
 * @property {string} hint how to turn it, said after the label
 * @property {string} picked with {title} and {where}
 * @property {string} cleared said when nothing is picked any more
 */

/**
 * Shows a dressed tree that can be turned.
 * @param {HTMLElement} element any block; the tree fills it and follows its size
 * @param {object} scene what stands where, in metres
 * @param {Words} words
 * @param {{onPick?: (id: string|null) => void, onLost?: () => void, evening?: boolean, hidden?: Iterable<string>}} [options]
 *   onLost is told when the graphics are gone for good and the caller should show a picture instead
 * @returns {Turn|null} null where there is no WebGL
 */
export function mount(element, scene, words, options = {}) {
  const lighting = new Lighting();
  try {
    const made = stage(element, lighting);
    return made && new Turn(element, scene, words, options, lighting, made);
  } catch (problem) {
    console.warn(problem);
    element.querySelector('canvas')?.remove();
    return null;
  }
}

class Turn {
  #element;
  #words;
  #options;
  #stage;
  #lighting;
  #view;
  #loop;
  #pieces;
  #ribbons;
  #bulbs;
  #cards;
  #roughBoughs;
  #boughs;
  #average = new Average();
  #rough = null;
  #evening = false;
  #soft;
  #dark;
  #picker;
  #highlight = new Highlight();
  #live = document.createElement('div');
  #hidden;
  #picked = null;
  #targets;
  #glanced = null;
  #stale = true;
  #size = {width: 0, height: 0, ratio: 0};
  #watch;
  #deaf;
  #calm = window.matchMedia('(prefers-reduced-motion: reduce)');
  #solid;
  #drawn = {calls: 0, triangles: 0};

  constructor(element, scene, words, options, lighting, made) {
    this.#element = element;
    this.#words = words;
    this.#options = options;
    this.#lighting = lighting;
    this.#stage = made;
    this.#hidden = new Set(options.hidden ?? []);
    // One sees through a sparse tree to its far side.
    this.#solid = scene.tree.fullness !== 'sparse';
    this.#build(scene);
    this.#address();
    this.#view = new View(made.canvas, scene.tree, bounds(scene, this.#pieces.places), () => this.#calm.matches, () => this.#loop?.ask());
    this.#loop = new Loop(element, made.renderer.getContext(), {
      draw: (time, how) => this.#draw(time, how),
      refine: (sample, ratio) => this.#refine(sample, ratio),
    });
    this.#watch = new ResizeObserver(() => this.#measure());
    this.#watch.observe(element);
    this.#deaf = listen(made.canvas, {
      turn: (right, up) => this.#view.turn(right, up),
      zoom: (factor) => this.#view.zoom(factor),
      home: () => this.#view.home(),
      step: (by) => this.#step(by),
      clear: () => this.#choose(null),
      tap: (x, y) => this.#tap(x, y),
    });
    made.canvas.addEventListener('webglcontextlost', this.#lost);
    this.#measure();
    this.setEvening(Boolean(options.evening));
  }

  /** @param {Iterable<string>} layers not to be shown */
  setHidden(layers) {
    this.#hidden = new Set(layers);
    this.#stale = true;
    const picked = this.#targets.find(({id}) => id === this.#picked);
    if (picked && this.#hidden.has(picked.layer)) {
      this.#mark(null);
    }
    this.#loop.refresh();
  }

  setEvening(evening) {
    this.#evening = evening;
    this.#lighting.set(evening);
    this.#stage.scene.environmentIntensity = this.#lighting.reflections;
    this.#bulbs.set(evening);
    this.#stale = true;
    this.#loop.refresh();
  }

  /** Marks a piece or a run and turns it to the viewer; null marks nothing. The caller is not told. */
  pick(id) {
    const target = this.#mark(id);
    if (target) {
      this.#view.show(target.middle, target.everySide);
    }
  }

  stats() {
    return {drawCalls: this.#drawn.calls, triangles: this.#drawn.triangles, pieces: this.#pieces.places.length,
      frames: this.#loop.frames, framesPerSecond: this.#loop.framesPerSecond,
      pixelRatio: this.#loop.pixelRatio, rough: this.#loop.rough};
  }

  dispose() {
    this.#loop.dispose();
    this.#watch.disconnect();
    this.#deaf();
    this.#view.dispose();
    this.#highlight.dispose();
    [this.#pieces, this.#ribbons, this.#bulbs, this.#cards, this.#average, this.#lighting, this.#stage.mirror, this.#soft, this.#dark,
      this.#roughBoughs, ...this.#boughs].forEach((thing) => thing.dispose());
    this.#stage.scene.traverse((thing) => {
      thing.geometry?.dispose();
      thing.material?.map?.dispose();
      thing.material?.dispose?.();
    });
    this.#stage.canvas.removeEventListener('webglcontextlost', this.#lost);
    this.#stage.renderer.dispose();
    this.#stage.renderer.forceContextLoss();
    this.#stage.canvas.remove();
    this.#live.remove();
  }

  #build(data) {
    const {scene} = this.#stage;
    const lighting = this.#lighting;
    const detail = data.pieces.length > MANY ? COARSE : 1;
    const glowAt = warmth(data.pieces.filter(({form}) => form === 'light'));
    this.#soft = material('foliage', false, lighting.uniforms);
    this.#dark = material('foliage', true, lighting.uniforms);
    this.#pieces = new Pieces(data, lighting, glowAt, detail);
    this.#ribbons = new Ribbons(data, lighting, glowAt, detail < 1 ? 1 : 2);
    const shown = this.#pieces.places.filter(({piece}) => piece.form !== 'light' && !piece.form.endsWith('-spray'));
    const leaves = foliage(data, shown, glowAt, {twigs: this.#soft, inside: this.#dark}, detail);
    this.#boughs = leaves.batches;
    this.#roughBoughs = leaves.rough;
    this.#cards = new Cards(this.#pieces.sitters(), lighting);
    const lamps = this.#pieces.places.filter(({piece}) => piece.form === 'light');
    this.#bulbs = new Bulbs(lamps);
    this.#bulbs.points.userData.layer = lamps[0]?.piece.layer;
    scene.add(ground(data.tree, this.#soft), this.#bulbs.points, this.#highlight.group, ...this.#ribbons.meshes, ...this.#ribbons.rough,
      ...[...this.#pieces.batches, ...this.#boughs, this.#roughBoughs, this.#cards.batch].map(({mesh}) => mesh));
    if (leaves.heart) {
      scene.add(leaves.heart);
    }
    this.#targets = targets(data, this.#pieces.places, this.#ribbons);
    this.#picker = new Picker(this.#targets.filter(({light}) => !light).flatMap((target) => target.spots.map((spot) => ({...target, ...spot}))));
  }

  /** The canvas speaks for itself; what is picked is said in a region of its own. */
  #address() {
    const {canvas} = this.#stage;
    const {label, hint} = this.#words;
    canvas.tabIndex = 0;
    canvas.setAttribute('role', 'application');
    canvas.setAttribute('aria-label', [label, hint].filter(Boolean).join('. '));
    canvas.style.cssText = 'display:block;width:100%;height:100%;touch-action:none';
    this.#live.setAttribute('aria-live', 'polite');
    this.#live.style.cssText = 'position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap';
    this.#element.append(this.#live);
  }

  #measure() {
    const {clientWidth: width, clientHeight: height} = this.#element;
    if (width && height && (width !== this.#size.width || height !== this.#size.height)) {
      this.#size = {width, height, ratio: 0};
      this.#view.resize(width, height);
      this.#highlight.resize(width, height);
      this.#loop.refresh();
    }
  }

  #fit(ratio) {
    if (ratio !== this.#size.ratio && this.#size.width) {
      this.#size.ratio = ratio;
      this.#stage.renderer.setPixelRatio(ratio);
      this.#stage.renderer.setSize(this.#size.width, this.#size.height, false);
    }
  }

  /** One frame of a movement. */
  #draw(time, {ratio, rough}) {
    if (!this.#size.width) {
      return false;
    }
    const {renderer, scene} = this.#stage;
    const more = this.#view.update(time);
    this.#prepare(ratio, rough);
    renderer.render(scene, this.#view.camera);
    this.#drawn = {...renderer.info.render};
    return more;
  }

  /** One of the pictures of which the resting one is the average. */
  #refine(sample, ratio) {
    if (this.#size.width) {
      this.#view.update(performance.now());
      this.#prepare(ratio, false);
      this.#drawn = this.#average.draw(this.#stage.renderer, this.#stage.scene, this.#view.camera, sample);
    }
  }

  #prepare(ratio, rough) {
    if (rough && this.#cards.bake(this.#stage.renderer, this.#stage.scene, this.#lighting, this.#evening)) {
      this.#size.ratio = 0;
    }
    this.#fit(ratio);
    this.#lighting.follow(this.#view.around);
    this.#glance(rough);
  }

  /** Draws only what can be seen from here; worked out anew when the viewer has gone some way round. */
  #glance(rough) {
    const {position} = this.#view.camera;
    const way = position.clone().setY(position.y - 1).normalize();
    if (!this.#stale && this.#rough === rough && this.#glanced?.angleTo(way) < GLANCE) {
      return;
    }
    this.#stale = false;
    this.#rough = rough;
    this.#glanced = way;
    const fine = [...this.#pieces.batches, ...this.#boughs];
    const coarse = [this.#roughBoughs, this.#cards.batch];
    (rough ? fine : coarse).forEach(({mesh}) => {
      mesh.visible = false;
    });
    (rough ? coarse : fine).forEach((batch) => {
      batch.show((thing) => this.#seen(thing));
      batch.mesh.visible = batch.mesh.count > 0;
    });
    const runs = this.#ribbons;
    [...runs.meshes, ...runs.rough].forEach((mesh) => {
      mesh.visible = !this.#hidden.has(mesh.userData.layer) && !(rough ? runs.meshes : runs.rough).includes(mesh);
    });
    this.#bulbs.show(!this.#hidden.has(this.#bulbs.points.userData.layer), rough);
  }

  #seen({piece, layer, outward, everySide}) {
    if (this.#hidden.has(layer ?? piece?.layer)) {
      return false;
    }
    return !this.#solid || everySide || !this.#glanced || outward.dot(this.#glanced) + LOOKS_UP * this.#glanced.y > (this.#rough ? PAST_ROUGH : PAST);
  }

  #tap(x, y) {
    const {width, height} = this.#size;
    const found = this.#picker.at(2 * x / width - 1, 1 - 2 * y / height, this.#view.camera, this.#view.scale(height), (thing) => this.#seen(thing));
    this.#choose(found);
  }

  #choose(id, turning = false) {
    if (id === this.#picked) {
      return;
    }
    const target = this.#mark(id);
    if (target && turning) {
      this.#view.show(target.middle, target.everySide);
    }
    this.#options.onPick?.(id);
  }

  #step(by) {
    const list = this.#targets.filter(({light, layer}) => !light && !this.#hidden.has(layer));
    if (list.length) {
      const at = list.findIndex(({id}) => id === this.#picked);
      const next = at < 0 ? (by > 0 ? 0 : list.length - 1) : (at + by + list.length) % list.length;
      this.#choose(list[next].id, true);
    }
  }

  /** @returns {object|null} the target with the id */
  #mark(id) {
    const target = this.#targets.find((each) => each.id === id) ?? null;
    this.#picked = target?.id ?? null;
    if (!target) {
      this.#highlight.clear();
    } else if (target.run) {
      this.#highlight.run(target.run, this.#ribbons);
    } else {
      this.#highlight.piece(target.place, this.#pieces);
    }
    const {picked, cleared} = this.#words;
    this.#live.textContent = target ? picked.replace('{title}', target.title).replace('{where}', target.where) : cleared ?? '';
    this.#loop.refresh();
    return target;
  }

  #lost = (event) => {
    event.preventDefault();
    this.#loop.dispose();
    this.#options.onLost?.();
  };
}

/** Everything that can be picked, from the scene in its order. */
function targets(data, places, ribbons) {
  const pieces = places.map((place) => {
    const {piece, centre, radius, outward, everySide} = place;
    return {id: piece.id, title: piece.title, where: piece.where, layer: piece.layer, light: piece.form === 'light', place, middle: centre,
      everySide, spots: [{centre, radius, outward, airy: piece.form.endsWith('-spray')}]};
  });
  const runs = data.ribbons.map((run) => {
    const spots = ribbons.spots(run);
    return {id: run.id, title: run.title, where: run.where, layer: run.layer, run, middle: spots[spots.length >> 1], everySide: false,
      spots: spots.map((centre) => ({centre, radius: run.width * 0.45, outward: centre.clone().setY(0).normalize(), airy: false}))};
  });
  return [...pieces, ...runs];
}

function bounds({tree}, places) {
  let {height: top, widestRadius: radius} = tree;
  for (const {centre, radius: r} of places) {
    top = Math.max(top, centre.y + r * 1.1);
    radius = Math.max(radius, Math.hypot(centre.x, centre.z) + r);
  }
  return {top, radius};
}
