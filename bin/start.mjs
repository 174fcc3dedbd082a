/** `npm start`: installs if needed, builds, and makes all papers of the first demo car, or does what it is told. */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installIfNeeded } from './install.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

try {
  installIfNeeded(root);
  const { build } = await import('./build.mjs');
  await build();
  const { run } = await import('./launch.mjs');
  const asked = process.argv.slice(2);
  const demo = ['make', join('cars', 'marigold.yaml'), '--out', 'out'];
  if (asked.length === 0) process.chdir(root);
  process.exitCode = await run(root, asked.length > 0 ? asked : demo);
} catch (error) {
  console.error(`Kettlebook itself failed: ${error instanceof Error ? error.message : String(error)}`);
  process.exitCode = 1;
}
