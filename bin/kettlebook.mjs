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
  process.exitCode = await run(root, process.argv.slice(2));
} catch (error) {
  console.error(`Kettlebook itself failed: ${error instanceof Error ? error.message : String(error)}`);
  process.exitCode = 1;
}
