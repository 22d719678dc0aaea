/** How far a bulb's light is seen on what hangs round it, metres. */
const REACH = 0.2;

/**
 * Tells how much light of the bulbs reaches a point, about 0 to 1.4. The bulbs do not move, so it is worked out once.
 * @param {{x: number, y: number, z: number}[]} bulbs
 */
export function warmth(bulbs) {
  const cells = new Map();
  const key = (i, j, k) => `${i},${j},${k}`;
  const cell = (v) => Math.floor(v / REACH);
  for (const bulb of bulbs) {
    const at = key(cell(bulb.x), cell(bulb.y), cell(bulb.z));
    cells.set(at, [...(cells.get(at) ?? []), bulb]);
  }
  return (p) => {
    let sum = 0.06;
    for (let i = -1; i <= 1; i++) {
      for (let j = -1; j <= 1; j++) {
        for (let k = -1; k <= 1; k++) {
          for (const b of cells.get(key(cell(p.x) + i, cell(p.y) + j, cell(p.z) + k)) ?? []) {
            const d = Math.hypot(p.x - b.x, p.y - b.y, p.z - b.z) / REACH;
            sum += d < 1 ? (1 - d) ** 2 * 0.9 : 0;
          }
        }
      }
    }
    return Math.min(1.4, sum);
  };
}
