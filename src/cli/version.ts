/** The program's version, from its package file. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** The version as it stands in `package.json` under `root`. Throws if it is not there. */
export async function versionOf(root: string): Promise<string> {
  const file: unknown = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'));
  if (typeof file !== 'object' || file === null || !('version' in file) || typeof file.version !== 'string')
    throw new Error('package.json has no version');
  return file.version;
}
