/** Pages for looking at in a browser: the sample papers, written out. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readScreenLook } from '../../src/html/look';
import { writeScreenPage } from '../../src/html/page';
import { samples } from './samples';

/** Every page with its name; `root` is the folder of the checkout. */
export async function allPages(root: string): Promise<{ readonly name: string; readonly html: string }[]> {
  const text = (name: string): string => readFileSync(join(root, 'shared', 'screen', name), 'utf8');
  const look = readScreenLook({
    data: text('screen.yaml'),
    style: text('page.css'),
    script: text('page.js'),
  });
  if (!look.ok) throw new Error(JSON.stringify(look.problems, null, 2));
  return samples.map(({ name, blocks, options }) => ({
    name,
    html: writeScreenPage(blocks, { ...options, look: look.value }),
  }));
}
