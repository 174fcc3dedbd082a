/**
 * `npm run bench`: start-up, whole sets of papers, the manual beside a bare script that puts the same lines, growth to 2,000
 * pages, memory over a fleet; then the benchmarks of single functions. What the figures mean: docs/speed.md.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beside, report, timed } from '../bench/runs.mjs';
import { build, bundleOnly } from './build.mjs';

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
  await floor();
  await growth();
} finally {
  rmSync(out, { recursive: true, force: true });
}

const { status } = spawnSync(join(root, 'node_modules', '.bin', 'vitest'), ['bench', '--run'], {
  cwd: root,
  stdio: ['ignore', 'inherit', 'inherit'],
  shell: process.platform === 'win32',
});
process.exitCode = status ?? 1;

/** A script of the folder `bench`, bundled with the sources it looks into. */
async function bundled(name) {
  const outfile = join(out, `${name}.cjs`);
  await bundleOnly(join(root, 'bench', `${name}.ts`), outfile);
  return outfile;
}

/** Runs a script and gives what it says. */
function said(args) {
  const child = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', maxBuffer: 1 << 26 });
  if (child.status !== 0) throw new Error(child.stderr);
  return child.stdout;
}

/** The manual by the whole way and its lines by the bare script, in turn, so that both meet the same machine. */
async function floor() {
  const lines = join(out, 'lines.json');
  said([await bundled('lines'), car('marigold'), root, lines]);
  const bare = [join(root, 'bench', 'floor.mjs'), lines, join(out, 'floor.pdf')];
  const whole = [command, 'make', car('marigold'), '--paper', 'owners-manual', '--out', out];
  const check = [command, 'check', car('marigold')];
  const [made, checked, put] = beside([whole, check, bare], root, 7);
  console.log(
    '\nThe manual beside the floor (a bare script, one call a line), processor time, medians of 7 in turn',
  );
  console.log(
    `whole way  ${made.toFixed(0)} ms, of which reading and proving the car ${checked.toFixed(0)} ms`,
  );
  console.log(`floor      ${put.toFixed(0)} ms`);
  console.log(
    `ratio      ${(made / put).toFixed(2)}; without reading and proving ${((made - checked) / put).toFixed(2)}`,
  );
  const size = (path) => `${(statSync(path).size / 1e3).toFixed(0)} kB`;
  console.log(
    `files      ${size(join(out, 'marigold', 'owners-manual.pdf'))}, floor ${size(join(out, 'floor.pdf'))}`,
  );
}

async function growth() {
  const script = await bundled('growth');
  console.log('\nGrowth: the manual over and over, laid out and written, processor time');
  for (const pages of [200, 500, 1000, 2000]) {
    const grown = JSON.parse(said([script, 'pages', root, String(pages)]));
    const perPage = (grown.milliseconds / grown.pages).toFixed(2);
    console.log(
      `${String(grown.pages).padStart(5)} pages ${grown.milliseconds.toFixed(0).padStart(6)} ms, ${perPage} ms a page, peak ${grown.megabytes.toFixed(0)} MB`,
    );
  }
  const { heapMegabytes, peakMegabytes } = JSON.parse(said(['--expose-gc', script, 'fleet', root, '50']));
  const tenths = heapMegabytes.filter((_, index) => index % 10 === 9).join(', ');
  console.log(
    `\nFifty cars in one process: heap after each ten ${tenths} MB; peak of the process ${peakMegabytes} MB`,
  );
}
