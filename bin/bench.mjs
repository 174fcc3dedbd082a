/** `npm run bench`: start-up, whole sets of papers, memory over a fleet; then the benchmarks of single functions. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { report, timed } from '../bench/runs.mjs';
import { build } from './build.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
await build();

const out = mkdtempSync(join(tmpdir(), 'kettlebook-bench-'));
const command = join(root, 'bin', 'kettlebook.mjs');
const car = (name) => join('cars', `${name}.yaml`);
try {
  console.log('Whole processes, median of 7 (least–most), peak memory');
  report('node alone', timed(['-e', '0'], root));
  report('start-up: --version', timed([command, '--version'], root));
  report('check of the first demo car', timed([command, 'check', car('marigold')], root));
  for (const paper of ['card-cold-start', 'range-table', 'owners-manual']) {
    report(
      `${paper} of the first demo car`,
      timed([command, 'make', car('marigold'), '--paper', paper, '--out', out], root),
    );
  }
  for (const name of ['marigold', 'thimble', 'heron']) {
    report(`every paper of ${name}`, timed([command, 'make', car(name), '--out', out], root));
  }
} finally {
  rmSync(out, { recursive: true, force: true });
}

const { status } = spawnSync(join(root, 'node_modules', '.bin', 'vitest'), ['bench', '--run'], {
  cwd: root,
  stdio: ['ignore', 'inherit', 'inherit'],
  shell: process.platform === 'win32',
});
process.exitCode = status ?? 1;
