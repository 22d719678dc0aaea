import {Color} from 'three';
import {Batch} from './batch.js';
import {material} from './finish.js';
import {FORMS} from './forms/index.js';
import {pose} from './pose.js';
import {Shape} from './shape.js';

/**
 * The pieces of a scene, all of one form and finish in one batch.
 */
export class Pieces {
  /** What stands where: {piece, matrix, centre, radius, outward, everySide, first, second, glow}, in the scene's order. */
  places;
  batches = [];
  #geometries = new Map();
  #materials = new Map();
  #lighting;
  #detail;

  constructor(scene, lighting, glowAt, detail) {
    this.#lighting = lighting;
    this.#detail = detail;
    let stems = 0;
    this.places = scene.pieces.filter((piece) => FORMS[piece.form]).map((piece) => {
      const nth = piece.layer === 'topper' ? stems++ : 0;
      const first = new Color(piece.colour);
      const place = {piece, ...pose(piece, scene.tree, nth), first, second: new Color(FORMS[piece.form].second(piece.colour, piece.second))};
      place.glow = piece.form === 'light' ? 1.4 : glowAt(place.centre);
      return place;
    });
    for (const places of alike(this.places)) {
      const {form, finish} = places[0].piece;
      const order = finish === 'glass' && form !== 'light' ? 5 : 0;
      this.batches.push(new Batch(this.geometry(form), this.material(form, finish), places, order));
    }
  }

  /** The pieces as Cards wants them. */
  sitters() {
    return this.places.filter(({piece}) => piece.form !== 'light').map((place) => {
      const {form, finish, colour, second} = place.piece;
      return {...place, look: [form, finish, colour, second].join(), round: form === 'ball', geometry: this.geometry(form),
        material: this.material(form, finish)};
    });
  }

  geometry(form) {
    if (!this.#geometries.has(form)) {
      this.#geometries.set(form, FORMS[form].build(new Shape(this.#detail)).geometry());
    }
    return this.#geometries.get(form);
  }

  material(form, finish, further = []) {
    const {solid} = FORMS[form];
    const kind = form === 'light' ? 'matte' : finish;
    const key = [kind, solid, ...further.map((change) => change.key)].join();
    if (!this.#materials.has(key)) {
      this.#materials.set(key, material(kind, solid, this.#lighting.uniforms, further));
    }
    return this.#materials.get(key);
  }

  dispose() {
    this.batches.forEach((batch) => batch.dispose());
    this.#geometries.forEach((geometry) => geometry.dispose());
    this.#materials.forEach((made) => made.dispose());
  }
}

/** The places by form and finish. */
function alike(places) {
  const groups = new Map();
  for (const place of places) {
    const key = `${place.piece.form}|${place.piece.finish}`;
    if (!groups.has(key)) {
      groups.set(key, []);
    }
    groups.get(key).push(place);
  }
  return groups.values();
}
