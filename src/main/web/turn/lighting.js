import {Color, DirectionalLight, Group, HemisphereLight, Vector3} from 'three';

const DAY = {sky: '#fff8ec', skyPower: 0.62, ground: '#b9a27c', groundPower: 0.3, key: '#fff3dc', keyPower: 0.72, reflections: 0.8, warm: 0};
const EVENING = {sky: '#7f7aa8', skyPower: 0.26, ground: '#6b3f26', groundPower: 0.2, key: '#ffc98a', keyPower: 0.34, reflections: 0.42, warm: 1};

/** Where the key light hangs as the viewer sees it: left, up, near. */
const KEY = new Vector3(-0.5, 0.62, 0.6).normalize();

/**
 * The light of the room, by day or in the evening. The key light goes round with the viewer, so that every side of the
 * tree is shown as well as the front. `uniforms` hand the same light to materials that are lit at their corners.
 */
export class Lighting {
  lights = new Group();
  reflections = 1;
  uniforms = {
    skyLight: {value: new Color()},
    groundLight: {value: new Color()},
    keyLight: {value: new Color()},
    keyFrom: {value: KEY.clone()},
    warmLight: {value: new Color()},
  };
  #sky = new HemisphereLight();
  #key = new DirectionalLight();

  constructor() {
    this.lights.add(this.#sky, this.#key);
    this.follow(0);
    this.set(false);
  }

  /** @param {boolean} evening */
  set(evening) {
    const mood = evening ? EVENING : DAY;
    this.uniforms.skyLight.value.set(mood.sky).multiplyScalar(mood.skyPower);
    this.uniforms.groundLight.value.set(mood.ground).multiplyScalar(mood.groundPower);
    this.uniforms.keyLight.value.set(mood.key).multiplyScalar(mood.keyPower);
    this.uniforms.warmLight.value.set('#ffab55').multiplyScalar(mood.warm);
    this.#sky.color.set(mood.sky).multiplyScalar(mood.skyPower);
    this.#sky.groundColor.set(mood.ground).multiplyScalar(mood.groundPower);
    // What reflects takes most of its diffuse light from the reflections, hence little from here.
    this.#sky.intensity = Math.PI * 0.12;
    this.#key.color.set(mood.key);
    this.#key.intensity = Math.PI * mood.keyPower * 0.72;
    this.reflections = mood.reflections;
  }

  /** @param {number} around the viewer's azimuth, radians */
  follow(around) {
    const from = this.uniforms.keyFrom.value.copy(KEY).applyAxisAngle(new Vector3(0, 1, 0), around);
    this.#key.position.copy(from);
  }

  dispose() {
    this.#key.dispose();
    this.#sky.dispose();
  }
}
