// Runs `npm ci` only when package-lock.json differs from the one that was last installed, so that a build
// after the first needs neither the network nor a second.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const wanted = readFileSync('package-lock.json', 'utf8');
const mark = 'node_modules/.installed-lock.json';

if (!existsSync(mark) || readFileSync(mark, 'utf8') !== wanted) {
  const { status } = spawnSync('npm ci --include=dev --loglevel=error', { shell: true, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
  writeFileSync(mark, wanted);
}
