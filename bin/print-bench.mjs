/**
 * `npm run print-bench`: the manual by the whole way beside the same manual printed from its page for a screen by a headless browser,
 * in turn, so that both meet the same machine. What the figures mean: docs/speed.md.
 *
 * Needs Chromium: `apt-get install chromium` on Debian, or name another in KETTLEBOOK_BROWSER.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { browserPath, quiet } from './browser.mjs';
import { build } from './build.mjs';

/** After one run of each that is not counted. */
const runs = Number(process.argv[2] ?? 3);

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const browser = browserPath();
await build();
const out = mkdtempSync(join(tmpdir(), 'kettlebook-print-'));
const own = join(out, 'marigold', 'owners-manual.pdf');
const printed = join(out, 'printed.pdf');
const page = pathToFileURL(join(out, 'marigold', 'owners-manual.html')).href;
const whole = ['make', join('cars', 'marigold.yaml'), '--paper', 'owners-manual', '--out', out];
const commands = [
  [process.execPath, join(root, 'bin', 'kettlebook.mjs'), ...whole],
  [browser, ...quiet, `--user-data-dir=${join(out, 'profile')}`, `--print-to-pdf=${printed}`, page],
];

try {
  const times = commands.map(() => []);
  for (let run = 0; run <= runs; run += 1) {
    for (const [index, command] of commands.entries()) {
      const milliseconds = wall(command);
      if (run > 0) times[index].push(milliseconds);
    }
  }
  const [made, put] = times.map(median);
  const pages = await Promise.all([own, printed].map(pagesOf));
  console.log(`The manual beside a browser’s print of its page, wall time, medians of ${runs} in turn`);
  console.log(
    `whole way  ${line(made, own, pages[0])}, reading and proving the car and its page for a screen included`,
  );
  console.log(`browser    ${line(put, printed, pages[1])}`);
  console.log(`ratio      ${(put / made).toFixed(2)} (above 1: the whole way is faster)`);
} finally {
  rmSync(out, { recursive: true, force: true, maxRetries: 5 });
}

function wall([command, ...args]) {
  const started = process.hrtime.bigint();
  const { status, stderr } = spawnSync(command, args, { cwd: root, encoding: 'utf8' });
  const milliseconds = Number(process.hrtime.bigint() - started) / 1e6;
  if (status !== 0) throw new Error(`${command} ended with ${status}\n${stderr}`);
  return milliseconds;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

function line(milliseconds, file, pages) {
  return `${milliseconds.toFixed(0)} ms, ${pages} pages, ${(statSync(file).size / 1e3).toFixed(0)} kB`;
}

async function pagesOf(file) {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const data = new Uint8Array(readFileSync(file));
  return (await getDocument({ data, verbosity: 0 }).promise).numPages;
}
