/** Fields to fill in, as a widely used reader finds them (pdf.js) in the finished files of every car. */
import { describe, expect, test } from 'vitest';
import { readTripLog } from '../../src/calc/range/trip-log';
import { makePapers } from '../../src/kettlebook';
import { logFields } from '../../src/paper/context/logColumns';
import type { MadePaper } from '../../src/paper/paper';
import { openPdf, textOf } from '../helpers/pdfText';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();
const filledIn = ['log-sheet', 'inspection-sheet', 'trip-card', 'visiting-driver'] as const;

const made = new Map<string, Promise<MadePaper>>();

function paperOf(car: string, name: string, sheet: 'letter' | 'a4'): Promise<MadePaper> {
  const key = `${car} ${name} ${sheet}`;
  const known = made.get(key) ?? make(car, name, sheet);
  made.set(key, known);
  return known;
}

async function make(car: string, name: string, sheet: 'letter' | 'a4'): Promise<MadePaper> {
  const papers: MadePaper[] = [];
  const wanted = shop.papers.filter((paper) => paper.name === name);
  goodOf(await makePapers(await demo(car, sheet), wanted, shop, (paper) => void papers.push(paper)));
  const [paper] = papers;
  if (paper === undefined) throw new Error(`there is no ${name}`);
  return paper;
}

interface FoundField {
  readonly page: number;
  readonly name: string;
  readonly says: string;
  readonly kind: string;
  /** From the top left of its page. */
  readonly box: readonly [left: number, top: number, right: number, bottom: number];
}

async function fieldsOf(bytes: Uint8Array) {
  const pdf = await openPdf(bytes);
  const sizes: { readonly width: number; readonly height: number }[] = [];
  const fields: FoundField[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    sizes.push({ width, height });
    for (const { subtype, fieldName, alternativeText, fieldType, rect } of await page.getAnnotations()) {
      if (subtype !== 'Widget') continue;
      const [left, bottom, right, top] = rect as [number, number, number, number];
      fields.push({
        page: number - 1,
        name: fieldName,
        says: alternativeText,
        kind: fieldType,
        box: [left, height - top, right, height - bottom],
      });
    }
  }
  await pdf.destroy();
  return { sizes, fields };
}

const cover = (one: FoundField['box'], other: FoundField['box']) =>
  one[0] < other[2] - 0.5 && other[0] < one[2] - 0.5 && one[1] < other[3] - 0.5 && other[1] < one[3] - 0.5;

describe.each(demoNames)('%s', (car) => {
  test.each(filledIn.flatMap((name) => [[name, 'letter'] as const, [name, 'a4'] as const]))(
    '%s on %s: each field has a name, a tooltip, a place inside its page, and covers neither text nor another',
    async (name, sheet) => {
      const { bytes } = await paperOf(car, name, sheet);
      const { fields, sizes } = await fieldsOf(bytes);
      expect(fields.length).toBeGreaterThan(2);
      expect(new Set(fields.map((field) => field.name)).size).toBe(fields.length);
      const texts = await textOf(bytes);
      for (const field of fields) {
        const { width = 0, height = 0 } = sizes[field.page] ?? {};
        expect(field.name).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
        expect(field.says.trim(), field.name).not.toBe('');
        const [left, top, right, bottom] = field.box;
        expect(left > 9 && top > 9 && right < width - 9 && bottom < height - 9, field.name).toBe(true);
        expect(right - left, field.name).toBeGreaterThan(field.kind === 'Btn' ? 8 : 14);
        expect(bottom - top, field.name).toBeGreaterThan(field.kind === 'Btn' ? 8 : 13);
        for (const { text, x, y, width: wide, size } of texts[field.page] ?? [])
          if (text.trim() !== '')
            expect(
              cover(field.box, [x, y - 0.7 * size, x + wide, y + 0.2 * size]),
              `${field.name}: ${text}`,
            ).toBe(false);
      }
      for (const [index, field] of fields.entries())
        for (const other of fields.slice(0, index))
          if (other.page === field.page)
            expect(cover(field.box, other.box), `${field.name}, ${other.name}`).toBe(false);
    },
  );

  test('where a tick is wanted there is a box, and only there', async () => {
    const { car: model } = await demo(car);
    const { fields } = await fieldsOf((await paperOf(car, 'inspection-sheet', 'letter')).bytes);
    const boxes = fields.filter(({ kind }) => kind === 'Btn');
    expect(boxes.every(({ name }) => name.endsWith('-good'))).toBe(true);
    const looked = new Set(['valve', 'gauge', 'tank', 'device', 'lock']);
    expect(boxes).toHaveLength([...model.parts.values()].filter(({ kind }) => looked.has(kind)).length);
    for (const name of ['log-sheet', 'trip-card', 'visiting-driver'] as const)
      expect(
        (await fieldsOf((await paperOf(car, name, 'letter')).bytes)).fields.filter(
          ({ kind }) => kind === 'Btn',
        ),
      ).toEqual([]);
  });

  test('a log sheet that was filled in gives back the rows of the log', async () => {
    const { system, rows } = await filledLog(car);
    const head = logFields(system).map((column) => column.head);
    const log = goodOf(readTripLog([head, ...rows].map((row) => row.join(',')).join('\n'), 'log.csv'));
    expect(log.trips.map(({ date, stops, terrain, note }) => [date, stops, terrain, note])).toEqual([
      ['2026-05-02', 2, 'rolling', 'windy'],
      ['2026-05-03', undefined, 'hilly', undefined],
    ]);
  });
});

/** Writes two trips into the log sheet with a reader program, saves, and reads the fields back by their names. */
async function filledLog(car: string) {
  const system = (await demo(car)).car.spec.print.units.first;
  const pdf = await openPdf((await paperOf(car, 'log-sheet', 'letter')).bytes);
  const keys = logFields(system).map(({ key }) => key);
  const trips = [
    ['2026-05-02', '12.5', '9', '1.5', 'rolling', '2', 'windy'],
    ['2026-05-03', '4', '4', '', 'hilly', '', ''],
  ];
  const wanted = new Map(
    trips.flatMap((trip, row) =>
      keys.map((key, column) => [`trip-${row + 1}-${key}`, trip[column] ?? ''] as const),
    ),
  );
  for (let number = 1; number <= pdf.numPages; number += 1)
    for (const { id, fieldName } of await (await pdf.getPage(number)).getAnnotations())
      if (wanted.has(fieldName)) pdf.annotationStorage.setValue(id, { value: wanted.get(fieldName) });
  const saved = await openPdf(await pdf.saveDocument());
  const values = new Map<string, string>();
  for (let number = 1; number <= saved.numPages; number += 1)
    for (const { fieldName, fieldValue } of await (await saved.getPage(number)).getAnnotations())
      if (fieldName !== undefined) values.set(fieldName, String(fieldValue ?? ''));
  await saved.destroy();
  await pdf.destroy();
  const rows = [1, 2].map((row) => keys.map((key) => values.get(`trip-${row}-${key}`) ?? ''));
  return { system, rows };
}
