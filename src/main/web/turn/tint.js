import {Color} from 'three';

/** The colour, mixed in coded values with another by the share in [0, 1], as a linear Color. */
export function mix(from, to, share) {
  const a = new Color(from).convertLinearToSRGB();
  const b = new Color(to).convertLinearToSRGB();
  return a.lerp(b, share).convertSRGBToLinear();
}

export const lighter = (colour, share) => mix(colour, '#fffaf0', share);

export const darker = (colour, share) => mix(colour, '#1c1210', share);

/** Lightness in [0, 1] of the coded values. */
export function light(colour) {
  const c = new Color(colour).convertLinearToSRGB();
  return 0.299 * c.r + 0.587 * c.g + 0.114 * c.b;
}
