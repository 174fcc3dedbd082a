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
  const sources = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true });
  return sources.every((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs <= made);
}

/** Run the command with these arguments; gives the exit code. */
export async function run(root, args) {
  const { main } = createRequire(import.meta.url)(bundlePath(root));
  return main(args, root);
}
