import {lighter, darker, mix} from '../tint.js';
import * as bows from './bows.js';
import * as flowers from './flowers.js';
import * as ornaments from './ornaments.js';
import * as sprays from './sprays.js';

const BRASS = '#c39a4e';
const POLLEN = '#d8ab4c';
const WOOD = '#4a3222';

const asked = (choose) => (colour, second) => second ?? choose(colour);
const wood = (colour, second) => (second ? mix(second, WOOD, 0.3) : mix(colour, WOOD, 0.62));

/** @typedef {'centre'|'hangs'|'perches'|'faces'|'grows'|'tied'} Hold how a piece relates to its point */

const form = (hold, build, second, options = {}) => ({hold, build, second, tall: 1, solid: false, ...options});
const round = (build, tall, second, options) => form('hangs', build, second, {tall, solid: true, ...options});
const flower = (build, second) => form('faces', build, second);
const spray = (build, second) => form('grows', build, second);
const bow = (build) => form('tied', build, asked((c) => lighter(c, 0.45)));

/**
 * Every form: how it is held, what builds it, its second colour from (main, given), `tall` its usual height over its
 * width and whether it is closed, so that its inside need not be drawn.
 */
export const FORMS = {
  'ball': form('centre', ornaments.ball, asked((c) => c), {solid: true}),
  'drop': round(ornaments.drop, 1.5, asked((c) => c)),
  'finial': round(ornaments.finial, 2.7, asked((c) => darker(c, 0.24))),
  'icicle': round(ornaments.icicle, 6, asked((c) => c)),
  'star': round(ornaments.star, 1, asked((c) => c)),
  'snowflake': round(ornaments.snowflake, 1, asked((c) => c), {solid: false}),
  'bird': form('perches', ornaments.bird, asked((c) => lighter(c, 0.62)), {tall: 0.62}),
  'acorn': round(ornaments.acorn, 1.35, asked((c) => mix(c, '#4a3524', 0.62))),
  'pinecone': round(ornaments.pinecone, 1.6, asked((c) => lighter(c, 0.4)), {solid: false}),
  'bell': round(ornaments.bell, 1.05, asked(() => BRASS), {solid: false}),
  'house': round(ornaments.house, 1.25, asked((c) => mix(c, '#5a2f28', 0.55)), {solid: false}),
  'open-flower': flower(flowers.openFlower, asked(() => POLLEN)),
  'magnolia': flower(flowers.magnolia, asked(() => '#a8823f')),
  'poinsettia': flower(flowers.poinsettia, asked(() => '#d9b44a')),
  'rose': flower(flowers.rose, asked((c) => c)),
  'peony': flower(flowers.peony, asked(() => POLLEN)),
  'anemone': flower(flowers.anemone, asked(() => '#2a2530')),
  'dahlia': flower(flowers.dahlia, asked((c) => darker(c, 0.16))),
  'berry-spray': spray(sprays.berrySpray, wood),
  'leaf-spray': spray(sprays.leafSpray, wood),
  'fern-spray': spray(sprays.fernSpray, wood),
  'twig-spray': spray(sprays.twigSpray, asked((c) => lighter(c, 0.3))),
  'pine-spray': spray(sprays.pineSpray, asked((c) => c)),
  'eucalyptus-spray': spray(sprays.eucalyptusSpray, wood),
  'feather-spray': spray(sprays.featherSpray, asked((c) => c)),
  'grass-spray': spray(sprays.grassSpray, asked((c) => lighter(c, 0.3))),
  'curl-spray': spray(sprays.curlSpray, asked((c) => lighter(c, 0.3))),
  'light': form('centre', ornaments.light, asked((c) => c), {solid: true}),
  'tails': bow(bows.tails),
  'one-loop-bow': bow(bows.oneLoopBow),
  'two-loop-bow': bow(bows.twoLoopBow),
};
