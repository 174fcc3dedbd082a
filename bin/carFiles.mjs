/** The demo cars: those of the folder `cars`, and those of other languages in folders of two letters. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Paths of their specs. */
export function carFiles(root) {
  return readdirSync(join(root, 'cars'), { recursive: true, encoding: 'utf8' })
    .filter((name) => /^([a-z]{2}[/\\])?[^/\\]+\.yaml$/.test(name))
    .sort()
    .map((name) => join(root, 'cars', name));
}
