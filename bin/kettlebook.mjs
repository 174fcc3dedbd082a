#!/usr/bin/env node
/** The `kettlebook` command: builds the bundle if the sources are newer, then runs it. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isFresh, run } from './launch.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

try {
  if (!isFresh(root)) {
    const { installIfNeeded } = await import('./install.mjs');
    installIfNeeded(root);
    const { build } = await import(join('file://', root, 'bin', 'build.mjs'));
    await build();
  }
  const code = await run(root, process.argv.slice(2));
  // ended here, once all is said, so that the engine does not clear away page by page a memory that the system takes back whole
  await Promise.all([process.stdout, process.stderr].map(allSaid));
  process.exit(code);
} catch (error) {
  console.error(`Kettlebook itself failed: ${error instanceof Error ? error.message : String(error)}`);
  process.exitCode = 1;
}

/** When everything written to a stream so far has left. */
function allSaid(stream) {
  return new Promise((done) => stream.write('', done));
}
