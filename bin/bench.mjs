/**
 * `npm run bench`: start-up, whole sets of papers, the same by one thread and by two, the manual beside a bare script that puts the
 * same lines, growth to 2,000 pages, memory over a fleet; then the benchmarks of single functions. What the figures mean: docs/speed.md.
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
  console.log('Whole processes, wall time, median of 7 (least–most), peak memory');
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
  threads();
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

/** One line of commands run in turn: wall time and processor time apart, never one for the other. */
function besides(what, { wallMs, processorMs, megabytes }) {
  const [wall, processor] = [wallMs, processorMs].map((each) => `${each.toFixed(0).padStart(6)} ms`);
  console.log(
    `${what.padEnd(52)} ${wall} wall ${processor} processor ${megabytes.toFixed(0).padStart(5)} MB`,
  );
}

function ratios(what, ofWall, ofProcessor) {
  console.log(
    `${what.padEnd(52)} ${ofWall.toFixed(2).padStart(6)}    wall ${ofProcessor.toFixed(2).padStart(6)}    processor`,
  );
}

/** The whole set by one thread and by two. */
function threads() {
  const args = [command, 'make', car('marigold'), '--out', out];
  const by = (count) => ({ args, set: { KETTLEBOOK_THREADS: count } });
  const [one, two] = beside([by('1'), by('2')], root, 7);
  console.log('\nEvery paper of marigold, medians of 7 in turn');
  besides('by one thread', one);
  besides('by two threads', two);
  ratios('ratio', two.wallMs / one.wallMs, two.processorMs / one.processorMs);
}

/** The manual by the whole way and its lines by the bare script, in turn, so that both meet the same machine. */
async function floor() {
  const lines = join(out, 'lines.json');
  said([await bundled('lines'), car('marigold'), root, lines]);
  const bare = { args: [join(root, 'bench', 'floor.mjs'), lines, join(out, 'floor.pdf')] };
  const make = [command, 'make', car('marigold'), '--paper', 'owners-manual', '--out', out];
  const whole = (count) => ({ args: make, set: { KETTLEBOOK_THREADS: count } });
  const check = { args: [command, 'check', car('marigold')] };
  const [two, one, checked, put] = beside([whole('2'), whole('1'), check, bare], root, 7);
  console.log('\nThe manual beside the floor (a bare script, one call a line), medians of 7 in turn');
  besides('whole way by two threads', two);
  besides('whole way by one thread', one);
  besides('of which reading and proving the car (check)', checked);
  besides('floor', put);
  ratios('ratio by two threads', two.wallMs / put.wallMs, two.processorMs / put.processorMs);
  ratios('ratio by one thread', one.wallMs / put.wallMs, one.processorMs / put.processorMs);
  ratios(
    'ratio by one thread without reading and proving',
    (one.wallMs - checked.wallMs) / put.wallMs,
    (one.processorMs - checked.processorMs) / put.processorMs,
  );
  const size = (path) => `${(statSync(path).size / 1e3).toFixed(0)} kB`;
  console.log(
    `files: ${size(join(out, 'marigold', 'owners-manual.pdf'))}, floor ${size(join(out, 'floor.pdf'))}`,
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
