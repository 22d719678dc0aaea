/**
 * A repeatable source of numbers in [0, 1), so that a scene looks the same each time it is shown.
 * @param {number} seed any integer
 * @returns {() => number}
 */
export function dice(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number of the text's own, at least 0. */
export function hash(text) {
  let h = 2166136261;
  for (let i = 0; i < text.length; i++) {
    h = Math.imul(h ^ text.charCodeAt(i), 16777619);
  }
  return (h ^ (h >>> 15)) >>> 0;
}
