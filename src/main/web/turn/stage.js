import {Scene, SRGBColorSpace, WebGLRenderer} from 'three';
import {reflections} from './environment.js';

/**
 * Canvas, renderer and the empty scene in its light; null where there is no WebGL.
 * @param {HTMLElement} element
 * @param {import('./lighting.js').Lighting} lighting
 */
export function stage(element, lighting) {
  const canvas = document.createElement('canvas');
  // The fine still picture takes the place of multisampling, which would slow every frame of a turn.
  const gl = canvas.getContext('webgl2', {alpha: true, antialias: false, premultipliedAlpha: true, powerPreference: 'high-performance'});
  if (!gl) {
    return null;
  }
  const renderer = new WebGLRenderer({canvas, context: gl, alpha: true});
  renderer.setClearColor(0, 0);
  renderer.outputColorSpace = SRGBColorSpace;
  const scene = new Scene();
  const mirror = reflections(renderer);
  scene.environment = mirror.texture;
  scene.add(lighting.lights);
  element.append(canvas);
  return {canvas, renderer, scene, mirror};
}
