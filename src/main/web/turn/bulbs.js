import {AdditiveBlending, BufferGeometry, CanvasTexture, Color, Float32BufferAttribute, Points, PointsMaterial} from 'three';
import {mix} from './tint.js';

/** A glow stands before its bulb by so many metres, on a thin tree by a share of the way to the trunk. */
const PROUD = 0.05;
const PROUD_SHARE = 0.08;

/** The glow round every bulb, all in one call; wider and brighter in the evening. */
export class Bulbs {
  #evening = false;

  constructor(places) {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new Float32BufferAttribute(places.flatMap(({centre, outward}) =>
      centre.clone().addScaledVector(outward, Math.min(PROUD, PROUD_SHARE * Math.hypot(centre.x, centre.z))).toArray()), 3));
    geometry.setAttribute('color', new Float32BufferAttribute(places.flatMap(({piece}) => mix(piece.colour, '#ffb04a', 0.4).toArray()), 3));
    this.points = new Points(geometry, new PointsMaterial({map: halo(), vertexColors: true, transparent: true, depthWrite: false,
      blending: AdditiveBlending}));
    this.points.frustumCulled = false;
    this.points.renderOrder = 6;
  }

  set(evening) {
    this.#evening = evening;
    this.points.material.color = new Color().setScalar(evening ? 1 : 0.55);
  }

  /** Wide glows cost much where every pixel counts: there they are small, and by day left out. */
  show(shown, rough) {
    this.points.visible = shown && (this.#evening || !rough);
    this.points.material.size = this.#evening ? (rough ? 0.24 : 0.62) : 0.2;
  }

  dispose() {
    this.points.geometry.dispose();
    this.points.material.map.dispose();
    this.points.material.dispose();
  }
}

function halo() {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 64;
  const pen = canvas.getContext('2d');
  const fade = pen.createRadialGradient(32, 32, 0, 32, 32, 32);
  [[0, 1], [0.09, 0.95], [0.16, 0.42], [0.4, 0.13], [0.7, 0.03], [1, 0]].forEach(([at, a]) => fade.addColorStop(at, `rgba(255, 255, 255, ${a})`));
  pen.fillStyle = fade;
  pen.fillRect(0, 0, 64, 64);
  return new CanvasTexture(canvas);
}
