/** Running the bundle: is it newer than every source, and start it. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** Where the bundle stands in a checkout. */
export const bundlePath = (root) => join(root, 'dist', 'kettlebook.cjs');

/** Whether the bundle is there and newer than every source file. */
export function isFresh(root) {
  const bundle = bundlePath(root);
  if (!existsSync(bundle)) return false;
  const made = statSync(bundle).mtimeMs;
  // every run looks at every source: paths are put together by hand, which is enough here and half the work
  const isOlder = (folder) =>
    readdirSync(folder, { withFileTypes: true }).every((entry) => {
      const path = `${folder}/${entry.name}`;
      return statSync(path).mtimeMs <= made && (!entry.isDirectory() || isOlder(path));
    });
  return isOlder(join(root, 'src'));
}

/** Run the command with these arguments; gives the exit code. */
export async function run(root, args) {
  const require = createRequire(import.meta.url);
  require(join(root, 'dist', 'engine.cjs'));
  const { main } = require(bundlePath(root));
  return main(args, root, join(root, 'dist', 'mate.cjs'));
}
