/** Pages for looking at in a browser: the sample papers, and every paper of every demo car that can be made. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { openCar } from '../../src/cli/openCar';
import { readSharedFiles } from '../../src/cli/sharedFiles';
import type { Diagnostic } from '../../src/diagnostic/diagnostic';
import { measureFonts } from '../../src/font/measure';
import { lookInWords, readScreenLook, type ScreenLook } from '../../src/html/look';
import { writeScreenPage } from '../../src/html/page';
import { setOnePaper } from '../../src/kettlebook';
import { english } from '../helpers/english';
import { samples } from './samples';

/** A page, by the name its files get. */
export interface WrittenPage {
  readonly name: string;
  readonly html: string;
}

/** Every page, and why some papers have none. `root` is the folder of the checkout. */
export interface AllPages {
  readonly pages: readonly WrittenPage[];
  readonly missing: readonly string[];
}

/** Write all pages. */
export async function allPages(root: string): Promise<AllPages> {
  const look = lookIn(join(root, 'shared', 'screen'));
  const fonts = measureFonts((await readSharedFiles(root)).fonts);
  const fromSamples = samples.map(({ name, blocks, options }) => ({
    name: `sample-${name}`,
    html: writeScreenPage(blocks, { ...options, look, fonts }),
  }));
  const cars = readdirSync(join(root, 'cars')).filter((file) => file.endsWith('.yaml'));
  const fromCars = await Promise.all(cars.map((file) => pagesOf(join(root, 'cars', file), root, look)));
  return {
    pages: [...fromSamples, ...fromCars.flatMap(({ pages }) => pages)],
    missing: fromCars.flatMap(({ missing }) => missing),
  };
}

async function pagesOf(spec: string, root: string, look: ScreenLook): Promise<AllPages> {
  const car = basename(spec, '.yaml');
  const opened = await openCar(spec, root);
  if (!opened.ok) return { pages: [], missing: [`${car}: ${firstOf(opened.problems)}`] };
  const { ready, workshop } = opened.value;
  const { spec: said } = ready.car;
  const pages: WrittenPage[] = [];
  const missing: string[] = [];
  for (const paper of workshop.papers) {
    const set = setOnePaper(ready, paper, workshop);
    if (!set.ok) {
      missing.push(`${car}, ${paper.name}: ${firstOf(set.problems)}`);
      continue;
    }
    const html = writeScreenPage(set.value.blocks, {
      title: paper.title,
      language: said.print.language,
      car: said.car.name,
      issue: said.issue.letter,
      date: said.issue.date,
      fingerprint: set.value.fingerprint,
      invented: said.car.invented ?? false,
      look,
      fonts: workshop.fonts,
    });
    pages.push({ name: `${car}-${paper.name}`, html });
  }
  return { pages, missing };
}

function lookIn(folder: string): ScreenLook {
  const text = (name: string): string => readFileSync(join(folder, name), 'utf8');
  const look = readScreenLook({
    data: text('screen.yaml'),
    style: text('page.css'),
    script: text('page.js'),
  });
  if (!look.ok) throw new Error(JSON.stringify(look.problems, null, 2));
  return lookInWords(look.value, english.furniture);
}

const firstOf = (problems: readonly Diagnostic[]): string => {
  const first = problems.find(({ severity }) => severity === 'error');
  return first === undefined ? 'not said why' : `${first.code}: ${first.message}`;
};
