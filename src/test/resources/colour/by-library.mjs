// Reckons colours with the library colorjs.io for ColourLibraryTest. Runs in the folder that holds node_modules. Reads a line a case from
// standard input: two colours as #rrggbb, six numbers that are two CIE Lab colours, three that are an OKLCH colour within or beyond sRGB.
// Writes a line for each: XYZ, Lab, LCH, Oklab, OKLCH of the first colour (all under D65), CIEDE2000 of the two Lab colours, WCAG contrast of the
// two sRGB colours, and the OKLCH colour brought into sRGB by CSS Color 4's method, linear in light. A missing hue is written as 0.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const imported = createRequire(join(process.cwd(), 'package.json'))('colorjs.io');
const Color = imported.default ?? imported;

function lch([l, a, b]) {
  const h = (Math.atan2(b, a) * 180) / Math.PI;
  return [l, Math.hypot(a, b), (h + 360) % 360];
}

const lines = readFileSync(0, 'utf8').trim().split('\n').map((line) => {
  const [one, other, ...numbers] = line.split(' ');
  const [l1, a1, b1, l2, a2, b2, ...oklch] = numbers.map(Number);
  const colour = new Color(one);
  const lab = colour.to('lab-d65').coords;
  return [
    ...colour.to('xyz-d65').coords,
    ...lab,
    ...lch(lab),
    ...colour.to('oklab').coords,
    ...colour.to('oklch').coords,
    // The library's formula takes its numbers from the space "lab"; it asks no white.
    new Color('lab', [l1, a1, b1]).deltaE(new Color('lab', [l2, a2, b2]), '2000'),
    colour.contrast(new Color(other), 'WCAG21'),
    ...new Color('oklch', oklch).toGamut({ space: 'srgb', method: 'css' }).to('srgb-linear').coords,
  ].map((n) => n ?? 0).join(' ');
});
process.stdout.write(lines.join('\n') + '\n');
