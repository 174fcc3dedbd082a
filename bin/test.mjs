/** `npm test`: types, lint, tests; installs first on a fresh machine. Stops at the first that fails. */
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installIfNeeded } from './install.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
installIfNeeded(root);
const { build } = await import('./build.mjs');
await build();

const tool = (name) => join(root, 'node_modules', '.bin', name);
const runs = [
  ['types', tool('tsc'), ['--noEmit']],
  ['lint', tool('biome'), ['check', '.']],
  ['tests', tool('vitest'), ['run']],
];
for (const [what, command, args] of runs) {
  const started = process.hrtime.bigint();
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  const seconds = Number(process.hrtime.bigint() - started) / 1e9;
  console.log(`${what}: ${status === 0 ? 'good' : 'failed'} in ${seconds.toFixed(1)} s`);
  if (status !== 0) process.exit(status ?? 1);
}
