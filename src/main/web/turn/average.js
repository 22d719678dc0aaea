import {AddEquation, ConstantAlphaFactor, CustomBlending, FramebufferTexture, Mesh, OneMinusConstantAlphaFactor, OrthographicCamera, PlaneGeometry, Scene,
  ShaderMaterial, Vector2} from 'three';

/** Halton points, by which the pictures are shifted within a pixel. */
const SHIFTS = [[0, 0], [-0.25, 0.17], [0.25, -0.17], [-0.37, -0.39], [0.12, 0.39], [-0.12, -0.28], [0.37, 0.28], [-0.44, 0.44]];

/**
 * Averages pictures of one view, each shifted by a part of a pixel: edges grow smooth without multisampling, and the
 * work comes in portions that a new movement can cut short.
 */
export class Average {
  #map = null;
  #scene = new Scene();
  #camera = new OrthographicCamera(-1, 1, 1, -1, 0, 1);
  #material = new ShaderMaterial({
    vertexShader: 'varying vec2 at; void main() { at = uv; gl_Position = vec4(position.xy, 0.0, 1.0); }',
    fragmentShader: 'uniform sampler2D map; varying vec2 at; void main() { gl_FragColor = texture2D(map, at); }',
    uniforms: {map: {value: null}}, depthTest: false, depthWrite: false, transparent: true, blending: CustomBlending,
    blendEquation: AddEquation, blendSrc: ConstantAlphaFactor, blendDst: OneMinusConstantAlphaFactor,
  });

  constructor() {
    this.#scene.add(new Mesh(new PlaneGeometry(2, 2), this.#material));
  }

  /** Draws the nth picture and leaves the average of all so far on the canvas. */
  draw(renderer, scene, camera, n) {
    const {width, height} = renderer.getDrawingBufferSize(new Vector2());
    const [dx, dy] = SHIFTS[n % SHIFTS.length];
    camera.setViewOffset(width, height, dx, dy, width, height);
    renderer.render(scene, camera);
    camera.clearViewOffset();
    this.#fit(width, height);
    const drawn = {...renderer.info.render};
    if (n > 0) {
      this.#material.blendAlpha = n / (n + 1);
      renderer.autoClear = false;
      renderer.render(this.#scene, this.#camera);
      renderer.autoClear = true;
    }
    renderer.copyFramebufferToTexture(this.#map, new Vector2(0, 0));
    return drawn;
  }

  dispose() {
    this.#map?.dispose();
    this.#material.dispose();
    this.#scene.children[0].geometry.dispose();
  }

  #fit(width, height) {
    if (this.#map?.image.width !== width || this.#map.image.height !== height) {
      this.#map?.dispose();
      this.#map = new FramebufferTexture(width, height);
      this.#material.uniforms.map.value = this.#map;
    }
  }
}
