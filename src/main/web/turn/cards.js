import {DoubleSide, FramebufferTexture, InstancedMesh, NearestFilter, NearestMipmapNearestFilter, Matrix4, OrthographicCamera, PlaneGeometry,
  Scene, ShaderMaterial, Vector2} from 'three';
import {Batch, instanced} from './batch.js';

const TILE = 128;
const MARGIN = 3;

const VERTEX = /* glsl */`
attribute vec4 box;
attribute vec3 tile;
attribute float glow;
uniform vec3 keyFrom, warmLight;
uniform float tileSize;
varying vec2 vTile;
varying vec3 vLit;

void main() {
  vec3 right = instanceMatrix[0].xyz, up = instanceMatrix[1].xyz, front = normalize(instanceMatrix[2].xyz);
  vec3 middle = (instanceMatrix * vec4(box.xy, 0.0, 1.0)).xyz;
  vec3 look = normalize(cameraPosition - middle);
  bool round = tile.z > 0.5;
  // A round body is the same from every side; a flat one turns a little to the viewer, for its depth that the card lacks.
  vec3 faces = round ? look : normalize(front * sign(dot(front, look) + 1e-4) + 0.5 * look);
  vec3 high = round ? normalize(up - look * dot(look, up)) : normalize(up);
  vec3 wide = normalize(cross(high, faces)) * length(right) * box.z;
  vec3 spot = middle + wide * position.x + high * length(up) * box.w * position.y;
  vTile = tile.xy + (position.xy + 0.5) * tileSize;
  vLit = vec3(0.62 + 0.38 * smoothstep(-0.5, 0.7, dot(front, keyFrom))) + warmLight * (glow - 0.3) * 0.6;
  gl_Position = projectionMatrix * viewMatrix * vec4(spot, 1.0);
}`;

const FRAGMENT = /* glsl */`
uniform sampler2D map;
varying vec2 vTile;
varying vec3 vLit;

void main() {
  vec4 card = texture2D(map, vTile);
  if (card.a < 0.36) discard;
  gl_FragColor = vec4(card.rgb / card.a * vLit, 1.0);
}`;

/**
 * Things as cards, each with the portrait of its kind: what a slow machine shows while the tree turns. All are
 * one draw call of two triangles each.
 */
export class Cards {
  batch;
  #looks;
  #side;
  #map;
  #material;
  #baked = null;

  /**
   * @param {{look: string, round: boolean, geometry: object, material: object, matrix: Matrix4}[]} sitters
   *   those of one look share a portrait
   */
  constructor(sitters, lighting) {
    this.#looks = [...new Map(sitters.map((sitter) => [sitter.look, sitter])).values()];
    this.#side = Math.max(1, Math.ceil(Math.sqrt(this.#looks.length)));
    const size = this.#side * TILE;
    this.#map = Object.assign(new FramebufferTexture(size, size), {generateMipmaps: true, minFilter: NearestMipmapNearestFilter, magFilter: NearestFilter});
    this.#material = new ShaderMaterial({vertexShader: VERTEX, fragmentShader: FRAGMENT, side: DoubleSide,
      uniforms: {...lighting.uniforms, map: {value: this.#map}, tileSize: {value: 1 / this.#side}}});
    const at = new Map(this.#looks.map(({look}, i) => [look, i]));
    const entries = sitters.map((sitter) => ({...sitter, box: boxOf(sitter.geometry), tile: [...this.#corner(at.get(sitter.look)).map((c) => c / size),
      sitter.round ? 1 : 0]}));
    this.batch = new Batch(new PlaneGeometry(1, 1), this.#material, entries, 0, {box: 4, tile: 3, glow: 1});
  }

  /**
   * Takes the portraits anew when the light has changed. Uses the renderer's canvas, whose size it leaves changed.
   * @param {Scene} room holds the lights, which are borrowed for the sitting
   */
  bake(renderer, room, lighting, mood) {
    if (this.#baked === mood || !this.#looks.length) {
      return false;
    }
    this.#baked = mood;
    const size = this.#side * TILE;
    const studio = new Scene();
    studio.environment = room.environment;
    studio.environmentIntensity = room.environmentIntensity;
    studio.add(lighting.lights);
    lighting.follow(0);
    renderer.setPixelRatio(1);
    renderer.setSize(size, size, false);
    renderer.clear();
    renderer.autoClear = false;
    renderer.setScissorTest(true);
    this.#looks.forEach((sitter, i) => this.#portrait(renderer, studio, sitter, i));
    renderer.setScissorTest(false);
    renderer.autoClear = true;
    renderer.copyFramebufferToTexture(this.#map, new Vector2(0, 0));
    this.#shrink(renderer);
    room.add(lighting.lights);
    return true;
  }

  /** Smaller copies of the map, which the renderer does not make of what it copied. */
  #shrink(renderer) {
    const {state, properties} = renderer;
    const gl = renderer.getContext();
    state.bindTexture(gl.TEXTURE_2D, properties.get(this.#map).__webglTexture);
    gl.generateMipmap(gl.TEXTURE_2D);
    state.unbindTexture();
  }

  dispose() {
    this.batch.dispose();
    this.#map.dispose();
    this.#material.dispose();
  }

  /** Where the nth portrait lies in the map, px. */
  #corner(i) {
    return [(i % this.#side) * TILE, Math.floor(i / this.#side) * TILE];
  }

  #portrait(renderer, studio, sitter, i) {
    const [x, y, w, h] = boxOf(sitter.geometry);
    const camera = new OrthographicCamera(x - w / 2, x + w / 2, y + h / 2, y - h / 2, 0.1, 8);
    camera.position.z = 4;
    const geometry = instanced(sitter.geometry, 1);
    sitter.first.toArray(geometry.attributes.first.array);
    sitter.second.toArray(geometry.attributes.second.array);
    geometry.attributes.glow.array[0] = 0.3;
    const mesh = new InstancedMesh(geometry, sitter.material, 1);
    mesh.setMatrixAt(0, new Matrix4());
    mesh.frustumCulled = false;
    studio.add(mesh);
    renderer.setViewport(...this.#corner(i), TILE, TILE);
    renderer.setScissor(...this.#corner(i), TILE, TILE);
    renderer.render(studio, camera);
    studio.remove(mesh);
    mesh.dispose();
    geometry.dispose();
  }
}

/** The middle, width and height of what the geometry covers seen from the front, with a margin. */
function boxOf(geometry) {
  if (!geometry.boundingBox) {
    geometry.computeBoundingBox();
  }
  const {min, max} = geometry.boundingBox;
  const k = 1 + 2 * MARGIN / TILE;
  return [(min.x + max.x) / 2, (min.y + max.y) / 2, (max.x - min.x) * k, (max.y - min.y) * k];
}
