/**
 * `npm run pdf-check`: makes every paper of every demo car and gives each file to qpdf, which looks whether it can be read: cross
 * references, objects, streams, their filters. Our own checks of clauses are tests (docs/pdf.md); this is another pair of eyes.
 *
 * Needs qpdf, which is not installed by the project: `apt-get install qpdf` on Debian. Exit code 0 if all is good, 1 if
 * anything is not, 2 if there is no qpdf.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from './build.mjs';
import { carFiles } from './carFiles.mjs';
import { installIfNeeded } from './install.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const run = (command, args) => spawnSync(command, args, { cwd: root, encoding: 'utf8' });

const version = run('qpdf', ['--version']);
if (version.status !== 0) {
  console.error('No qpdf here. Install it: `apt-get install qpdf`.');
  process.exit(2);
}
console.log(version.stdout.split('\n')[0]);
installIfNeeded(root);
await build();

const out = mkdtempSync(join(tmpdir(), 'kettlebook-pdf-'));
let good = 0;
let faults = 0;
try {
  for (const spec of carFiles(root)) {
    const { status, stderr } = run(process.execPath, [
      join(root, 'bin', 'kettlebook.mjs'),
      'make',
      spec,
      '--out',
      out,
    ]);
    if (status === 0) continue;
    faults += 1;
    console.log(`${spec}: its papers cannot be made: ${stderr}`);
  }
  const files = readdirSync(out, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.pdf'),
  );
  for (const file of files.sort()) {
    const { status, stdout, stderr } = run('qpdf', ['--check', join(out, file)]);
    if (status === 0) good += 1;
    else {
      faults += 1;
      console.log(`${file}: ${stdout}${stderr}`);
    }
  }
  if (files.length === 0) faults += 1;
} finally {
  rmSync(out, { recursive: true, force: true });
}
console.log(`pdf-check: ${good} files good, ${faults} faults`);
process.exitCode = faults === 0 ? 0 : 1;
