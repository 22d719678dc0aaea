// Bundles the turning tree into the file named on the command line.
import { build } from 'esbuild';

await build({
  entryPoints: ['turn/turn.js'],
  outfile: process.argv[2],
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  legalComments: 'none',
  logLevel: 'warning',
});
