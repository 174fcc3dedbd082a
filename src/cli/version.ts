/** The program's version, from its package file. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';

const packageFile = z.object({ version: z.string() });

/** The version as it stands in `package.json` under `root`. */
export async function versionOf(root: string): Promise<string> {
  return packageFile.parse(JSON.parse(await readFile(join(root, 'package.json'), 'utf8'))).version;
}
