import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..');

/** The floors as `docs/architecture.md` lists them, from the ground up. */
function floorsInDocs(): readonly string[] {
  const text = readFileSync(join(root, 'docs', 'architecture.md'), 'utf8');
  const table = text.slice(text.indexOf('## Floors'), text.indexOf('## Data'));
  return [...table.matchAll(/^\| `([a-z]+)` \|/gm)].map((match) => match[1] ?? '');
}

function sourceFiles(): readonly { readonly floor: string; readonly path: string; readonly text: string }[] {
  return readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      const floor = path.slice(join(root, 'src').length + 1).split(/[/\\]/)[0] ?? '';
      return { floor, path, text: readFileSync(path, 'utf8') };
    });
}

const floors = floorsInDocs();
const files = sourceFiles();

describe('the folders', () => {
  test('are those the architecture page lists', () => {
    const folders = readdirSync(join(root, 'src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect([...floors].sort()).toEqual(folders.sort());
  });

  test('import only from floors below them', () => {
    const wrong = files.flatMap(({ floor, path, text }) =>
      [...text.matchAll(/from '(\.[^']+)'/g)].flatMap((match) => {
        const target =
          join(path, '..', match[1] ?? '')
            .slice(join(root, 'src').length + 1)
            .split(/[/\\]/)[0] ?? '';
        const isFloor = floors.includes(target) && floors.includes(floor);
        return isFloor && floors.indexOf(target) > floors.indexOf(floor)
          ? [`${path.slice(root.length + 1)} imports ${match[1]}`]
          : [];
      }),
    );
    expect(wrong).toEqual([]);
  });

  // inflating and hashing bytes is arithmetic; everything else of Node's own modules touches the machine
  test('keep files, clock and terminal at the edge', () => {
    const edge =
      /from 'node:(?!zlib)(?<!import { createHash } from 'node:)|process\.(?!env)|Date\.now\(\)|new Date\(\)|console\./;
    const wrong = files
      .filter(
        ({ floor, text }) => floor !== 'cli' && edge.test(text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')),
      )
      .map(({ path }) => path.slice(root.length + 1));
    expect(wrong).toEqual([]);
  });
});
