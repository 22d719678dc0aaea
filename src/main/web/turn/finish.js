import {DoubleSide, FrontSide, MeshBasicMaterial, MeshStandardMaterial} from 'three';

const SOFT = new Set(['matte', 'natural']);

/** How each finish takes the light; `soft` finishes have no highlight and are lit at their corners, which is cheap. */
const GLOSS = {
  satin: {roughness: 0.46, metalness: 0.18},
  shiny: {roughness: 0.13, metalness: 0.06},
  metallic: {roughness: 0.24, metalness: 0.92},
  glitter: {roughness: 0.55, metalness: 0.35},
  glass: {roughness: 0.06, metalness: 0, transparent: true},
};

const PARS_VERTEX = /* glsl */`
attribute vec4 tone;
attribute vec3 first;
attribute vec3 second;
attribute float glow;
uniform vec3 skyLight, groundLight, keyLight, keyFrom, warmLight;
varying vec3 vTone;
varying vec3 vGlow;
varying vec3 vSpot;
`;

const TONE_VERTEX = /* glsl */`
#ifdef USE_INSTANCING
  mat4 toWorld = modelMatrix * instanceMatrix;
#else
  mat4 toWorld = modelMatrix;
#endif
vSpot = (toWorld * vec4(transformed, 1.0)).xyz;
vec3 paint = tone.rgb * (tone.a > 1.5 ? vec3(1.0) : mix(first, second, tone.a));
vec3 warm = warmLight * (tone.a > 2.5 ? 1.6 : glow);
`;

const GLOSS_VERTEX = /* glsl */`
vTone = paint;
vGlow = paint * warm;
`;

/**
 * The corners are lit here, from whichever of their sides the viewer sees, and coded for the screen: for a renderer in
 * software a power in every pixel costs more than all the rest of a soft finish.
 */
const SOFT_VERTEX = /* glsl */`
mat3 bent = mat3(toWorld);
vec3 facing = normalize(bent * (normal / vec3(dot(bent[0], bent[0]), dot(bent[1], bent[1]), dot(bent[2], bent[2]))));
facing *= sign(dot(facing, cameraPosition - vSpot) + 1e-5);
vec3 light = mix(groundLight, skyLight, 0.5 + 0.5 * facing.y) + keyLight * max(0.0, 0.18 + 0.82 * dot(facing, keyFrom)) + warm;
vTone = coded(paint * light);
`;

const CODED = /* glsl */`
vec3 coded(vec3 c) {
  return mix(1.055 * pow(max(c, vec3(0.0)), vec3(0.41666)) - 0.055, c * 12.92, vec3(lessThanEqual(c, vec3(0.0031308))));
}
`;

/** Flakes that flash one after another as the viewer goes round. */
const GLITTER_FRAGMENT = /* glsl */`
vec3 cell = floor(vSpot * 420.0);
float flake = fract(sin(dot(cell, vec3(12.9898, 78.233, 37.719))) * 43758.5453);
float flash = fract(flake * 57.0 + dot(normalize(vViewPosition), vec3(3.1, 2.3, 1.7)) * 2.0);
totalEmissiveRadiance += (diffuseColor.rgb * 1.2 + 0.14) * step(0.7, flake) * pow(flash, 10.0);
diffuseColor.rgb *= 0.82 + 0.36 * flake;
`;

/** Clear in the middle, coloured and closed toward the rim and where it shines. */
const GLASS_FRAGMENT = /* glsl */`
float rim = 1.0 - abs(dot(normal, normalize(vViewPosition)));
float shine = dot(totalSpecular, vec3(0.4));
diffuseColor.a = clamp(0.26 + 0.62 * rim * rim + shine, 0.0, 1.0);
`;

/**
 * A material that takes its colour from the attributes tone, first and second and its evening light from glow.
 * @param {string} finish one of the catalogue's finishes, or 'foliage'
 * @param {boolean} solid closed bodies need no inside
 * @param {object} uniforms of the lighting
 * @param {{key: string, change: (shader: object) => void}[]} further changes to the shader
 */
export function material(finish, solid, uniforms, further = []) {
  const side = solid ? FrontSide : DoubleSide;
  const soft = SOFT.has(finish) || !GLOSS[finish];
  const made = soft ? new MeshBasicMaterial({side}) : new MeshStandardMaterial({...GLOSS[finish], side});
  made.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, uniforms);
    paint(shader, soft);
    if (finish === 'glitter') {
      insert(shader, 'fragmentShader', 'emissivemap_fragment', GLITTER_FRAGMENT);
    }
    if (finish === 'glass') {
      shader.fragmentShader = shader.fragmentShader.replace('#include <opaque_fragment>', `${GLASS_FRAGMENT}\n#include <opaque_fragment>`);
    }
    further.forEach(({change}) => change(shader));
  };
  made.customProgramCacheKey = () => [soft ? 'soft' : finish, ...further.map(({key}) => key)].join();
  return made;
}

function paint(shader, soft) {
  shader.vertexShader = PARS_VERTEX + (soft ? CODED : '') + shader.vertexShader;
  insert(shader, 'vertexShader', 'project_vertex', TONE_VERTEX + (soft ? SOFT_VERTEX : GLOSS_VERTEX));
  shader.fragmentShader = `varying vec3 vTone;\nvarying vec3 vGlow;\nvarying vec3 vSpot;\n${shader.fragmentShader}`;
  insert(shader, 'fragmentShader', 'color_fragment', 'diffuseColor.rgb *= vTone;');
  if (soft) {
    shader.fragmentShader = shader.fragmentShader.replace('#include <colorspace_fragment>', '');
  } else {
    insert(shader, 'fragmentShader', 'emissivemap_fragment', 'totalEmissiveRadiance += vGlow;');
  }
}

/** Adds GLSL after one of the renderer's chunks. */
export function insert(shader, stage, chunk, code) {
  shader[stage] = shader[stage].replace(`#include <${chunk}>`, `#include <${chunk}>\n${code}`);
}
