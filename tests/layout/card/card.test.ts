import { describe, expect, it } from 'vitest';
import { largestSize } from '../../../src/layout/card/largest';
import { layoutCard, layoutSheet } from '../../../src/layout/card/layout-card';
import { checkLaidOut } from '../../../src/layout/check';
import type { LaidOut, Page } from '../../../src/layout/frame';
import { leastLeading } from '../../../src/layout/legibility';
import { laminatingEdgeMm, makeSheet, pointsPerMm, readSheetSize } from '../../../src/layout/sheet';
import type { CardOptions } from '../../../src/layout/types';
import type { Block } from '../../../src/markup/block';
import {
  briefCaution,
  caution,
  group,
  heading,
  pageBreak,
  paragraph,
  step,
  steps,
  table,
  words,
} from '../../helpers/blocks';
import { everyFace, plainTheme, plexFonts } from '../../helpers/fonts';
import { linesOf, textsOf } from '../../helpers/squarePage';

function options(sheetName: string, more: Partial<CardOptions> = {}): CardOptions {
  const size = readSheetSize(sheetName);
  const sheet = size.ok ? makeSheet(size.value, 4, true) : size;
  if (!sheet.ok) throw new Error(sheetName);
  return {
    fonts: plexFonts,
    theme: plainTheme,
    sheet: sheet.value,
    title: 'Raising steam',
    foot: ['Invented tourer', 'Raising steam', 'issue C, 2026-04-12', 'K7M2-4QXD'],
    leastPt: everyFace(8.5),
    signPt: 30,
    mostPt: 24,
    mostFaces: 9,
    ...more,
  };
}

function laidOut(blocks: readonly Block[], own: CardOptions, layout = layoutCard): LaidOut {
  const result = layout(blocks, own);
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 2));
  expect(result.remarks).toEqual([]);
  expect(checkLaidOut(blocks, result.value, own)).toEqual([]);
  return result.value;
}

const numbered = (count: number, from = 1) =>
  steps(
    Array.from({ length: count }, (_, index) =>
      step(`Shut the valve by the left running board, ${from + index}`, { result: 'shut, hand tight' }),
    ),
    'number',
    from,
  );
const sizesOf = (page: Page | undefined) =>
  textsOf(page)
    .filter(({ tag, face }) => tag !== undefined && face === 'narrow')
    .map(({ sizePt }) => sizePt);
const short = [heading(1, 'Raising steam'), steps([step('Read the glass', { result: 'half' })])];

describe('layoutCard', () => {
  it('sets a short card in the largest useful size, on one face', () => {
    const { pages } = laidOut(short, options('A6'));
    expect(pages).toHaveLength(1);
    expect(sizesOf(pages[0])).toEqual([24]);
  });

  it('sets the largest size that fits: a quarter point more would not', () => {
    const short = Array.from({ length: 16 }, (_, index) => step(`Shut ${index}`));
    const blocks = [heading(1, 'Raising steam'), steps(short)];
    // without spaces that could be closed up
    const shares = { ...plainTheme.shares, leading: leastLeading, stepGap: 0, blockGap: 0, headingGap: 0 };
    const theme = { ...plainTheme, shares };
    const { pages } = laidOut(blocks, options('A6', { theme }));
    const size = sizesOf(pages[0])[0] ?? 0;
    expect(pages).toHaveLength(1);
    expect(size).toBeGreaterThan(8.5);
    expect(size).toBeLessThan(24);
    const larger = layoutCard(blocks, options('A6', { theme, leastPt: everyFace(size + 0.25) }));
    expect(larger.ok && larger.value.pages.length).toBe(2);
  });

  it('takes more faces when the smallest legible size does not fit on one: 40 steps on A7', () => {
    const blocks = [
      heading(1, 'Raising steam'),
      ...[1, 11, 21, 31].flatMap((from) => [heading(2, `Part from ${from}`), numbered(10, from)]),
    ];
    const { pages } = laidOut(blocks, options('A7'));
    expect(pages.length).toBeGreaterThan(3);
    expect(new Set(pages.flatMap(sizesOf)).size).toBe(1);
    expect(Math.min(...pages.flatMap(sizesOf))).toBeGreaterThanOrEqual(8.5);
    const numbers = pages.flatMap(textsOf).filter(({ text, tag }) => tag !== undefined && /^\d+$/.test(text));
    expect(numbers.map(({ text }) => Number(text))).toEqual(
      Array.from({ length: 40 }, (_, index) => index + 1),
    );
  });

  it('says on each face that it goes on, what it goes on from, and where it ends', () => {
    const { pages } = laidOut([heading(1, 'Raising steam'), numbered(24)], options('A7'));
    pages.forEach((page, index) => {
      const lines = linesOf(page);
      const last = index === pages.length - 1;
      expect(lines[0]).toBe(index === 0 ? 'Raising steam' : 'Raising steam (continued)');
      const mark = `face ${index + 1} of ${pages.length} · ${last ? 'end' : 'continues'}`;
      expect(lines.filter((line) => line.replaceAll('\u00a0', ' ').endsWith(mark))).toHaveLength(1);
      expect(lines.join(' ')).toContain('K7M2-4QXD');
      expect(page.label).toBe(`${index + 1} of ${pages.length}`);
    });
  });

  it('says on each face which part of it goes on; where one begins, its heading is the head', () => {
    const blocks = [
      heading(1, 'Raising steam'),
      heading(2, 'Light the pilot'),
      numbered(40),
      pageBreak(),
      heading(2, 'Light the main burner'),
      numbered(40),
    ];
    const { pages } = laidOut(blocks, options('A6', { mostPt: 8.5 }));
    const heads = pages.map((page) => linesOf(page).slice(0, 2).join(' '));
    const begins = heads.findIndex((head) => head.startsWith('Light the main burner'));
    expect(begins).toBeGreaterThan(1);
    heads.forEach((head, index) => {
      if (index === 0) expect(head).toBe('Raising steam Light the pilot');
      else if (index === begins) expect(head).toMatch(/^Light the main burner 1 /);
      else
        expect(
          head.startsWith(`Raising steam: Light the ${index < begins ? 'pilot' : 'main burner'} (con`),
        ).toBe(true);
    });
    expect(begins).toBeLessThan(pages.length - 1);
  });

  it('leaves the card out of the head of a part that goes on where both need two lines', () => {
    const blocks = [heading(1, 'Raising steam'), heading(2, 'Light the main burner'), numbered(30)];
    const { pages } = laidOut(blocks, options('A7', { mostPt: 8.5 }));
    const [, second] = pages.map((page) => linesOf(page)[0]);
    expect(second).toBe('Light the main burner (continued)');
    const [, longer] = laidOut(blocks, options('A6', { mostPt: 8.5 })).pages.map((page) => linesOf(page)[0]);
    expect(longer).toBe('Raising steam: Light the main burner (continued)');
  });

  it('has the card in all heads of parts that go on, or in none', () => {
    const parts = (names: readonly string[]) => [
      heading(1, 'Raising steam'),
      ...names.flatMap((name) => [heading(2, name), numbered(24)]),
    ];
    const heads = (names: readonly string[]) =>
      laidOut(parts(names), options('A7', { mostPt: 8.5 }))
        .pages.map((page) => linesOf(page)[0] ?? '')
        .filter((head) => head.endsWith('(continued)'));
    const short = heads(['Pilot', 'Soak']);
    expect(short.length).toBeGreaterThan(3);
    for (const head of short) expect(head).toMatch(/^Raising steam: /);
    const long = heads(['Pilot', 'Light the main burner']);
    expect(long).toContain('Pilot (continued)');
    expect(long).toContain('Light the main burner (continued)');
  });

  it('sets all those heads in the type of the steps where only so they have room on a line', () => {
    const name = 'Light the main';
    const blocks = [heading(1, 'Raising steam'), heading(2, name), numbered(30)];
    const { pages } = laidOut(blocks, options('A7', { mostPt: 8.5 }));
    const [head] = textsOf(pages[1]).filter(({ text }) => text.startsWith('Raising steam:'));
    expect(head?.sizePt).toBe(8.5);
  });

  it('ends no line of its foot with the dot that parts what it says, and begins none with it', () => {
    const feet = new Set<string>();
    for (const name of ['A7', 'card 3 x 5', 'A6', 'half letter', 'A5']) {
      const { pages } = laidOut(short, options(name));
      const small = textsOf(pages[0]).filter(({ tag, sizePt }) => tag === undefined && sizePt < 9);
      for (const { text } of small) {
        feet.add(text);
        expect(text.trim()).not.toMatch(/^·|·$/);
      }
      expect(small.map(({ text }) => text).join(' ')).toContain('K7M2-4QXD');
    }
    expect([...feet].some((text) => text.includes('·'))).toBe(true);
  });

  it('keeps the triangle of a caution said above clear of the widest number', () => {
    const hot = briefCaution('warning', 'Hot.');
    const items = Array.from({ length: 12 }, () => step('Open it', { cautions: [hot], critical: true }));
    const { pages, structure } = laidOut([heading(1, 'Card'), steps(items)], options('A5', { mostPt: 9 }));
    const rights = structure.flatMap(({ type, box }) =>
      type === 'Figure' && box !== undefined ? [box[2]] : [],
    );
    expect(rights).toHaveLength(11);
    const twelve = textsOf(pages[0]).find(({ text }) => text === '12');
    expect((twelve?.x ?? 0) - Math.max(...rights)).toBeGreaterThan(0.15 * (twelve?.sizePt ?? 0));
  });

  it('says a caution of several steps once on each face on which one of them stands, with a triangle at the others', () => {
    const burns = briefCaution('danger', 'Vapor lit late goes off like a shot.');
    const careful = (count: number) =>
      Array.from({ length: count }, (_, index) =>
        step(`Open the valve ${index + 1}`, { cautions: [burns], result: 'open' }),
      );
    const blocks = [
      heading(1, 'Raising steam'),
      heading(2, 'One'),
      steps(careful(20)),
      heading(2, 'Two'),
      steps(careful(2)),
    ];
    const { pages, structure } = laidOut(blocks, options('A7', { mostPt: 9 }));
    const said = pages.map((page) => linesOf(page).filter((line) => /^([A-Z] )?DANGER/.test(line)).length);
    const begun = pages.map((page) => linesOf(page).filter((line) => /^([A-Z] )?\d+ /.test(line)).length);
    // a face on which the second part begins says it for that part too
    const two = pages.findIndex((page) => linesOf(page).includes('Two'));
    expect(said).toEqual(pages.map((page, index) => (index === two && linesOf(page)[1] !== 'Two' ? 2 : 1)));
    expect(begun.reduce((sum, count) => sum + count, 0)).toBe(22);
    expect(pages.length).toBeGreaterThan(1);
    const triangles = structure.filter(({ type }) => type === 'Figure');
    expect(triangles).toHaveLength(22 - said.reduce((sum, count) => sum + count, 0));
    for (const { alt, box } of triangles) {
      expect(alt).toBe('DANGER Vapor lit late goes off like a shot. (said above)');
      expect(box).toBeDefined();
    }
  });

  it('ties each of those triangles to its caution by a letter, counted anew on each face', () => {
    const [burns, turns] = [briefCaution('danger', 'Burns.'), briefCaution('warning', 'Turns.')];
    const alone = briefCaution('caution', 'Said once.');
    const items = Array.from({ length: 30 }, (_, at) =>
      step(`Open ${at}`, { cautions: at % 3 === 0 ? [burns] : at % 3 === 1 ? [turns] : [] }),
    );
    const { pages } = laidOut(
      [heading(1, 'Card'), steps([step('First', { cautions: [alone] }), ...items])],
      options('A7', { mostPt: 9 }),
    );
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      const lines = linesOf(page);
      const signalOf = new Map<string, string>();
      const marked = new Set<string>();
      for (const line of lines) {
        const [, letter = '', signal = ''] = /^([A-Z]) (DANGER|WARNING)/.exec(line) ?? [];
        if (letter !== '') {
          expect(signalOf.has(letter)).toBe(false);
          signalOf.set(letter, signal);
        }
        const [, mark = '', opened = ''] = /^([A-Z]) \d+ Open (\d+)/.exec(line) ?? [];
        if (mark === '') continue;
        marked.add(mark);
        expect(signalOf.get(mark), line).toBe(Number(opened) % 3 === 0 ? 'DANGER' : 'WARNING');
      }
      expect([...signalOf.keys()]).toEqual(['A', 'B']);
      expect(marked).toEqual(new Set(['A', 'B']));
    }
    expect(linesOf(pages[0])).toContain('CAUTION Said once.');
  });

  it('begins a part that may stand below another with two of its steps, or goes to a new face', () => {
    const seen = { ...paragraph(words(30)), keep: true as const };
    const part = (title: string, count: number) => [
      pageBreak('third'),
      heading(2, title),
      seen,
      numbered(count),
    ];
    const kept = new Set<number>();
    for (let above = 1; above < 16; above += 1) {
      const blocks = [heading(1, 'Card'), numbered(above), ...part('Part', 9), ...part('Short', 1)];
      const { pages } = laidOut(blocks, options('A7', { mostPt: 9, mostFaces: 12 }));
      const [begun] = pages.map(linesOf).filter((lines) => lines.includes('Part'));
      const below = (begun ?? []).slice((begun ?? []).indexOf('Part')).filter((line) => /^\d+ /.test(line));
      expect(below.length, `${above} steps above`).toBeGreaterThanOrEqual(2);
      kept.add(pages.findIndex((page) => linesOf(page).includes('Part')));
    }
    expect(kept).toContain(0);
    expect(kept.size).toBeGreaterThan(1);
  });

  it('marks a step for one caution only, and says a second one again', () => {
    const both = [briefCaution('danger', 'Burns.'), briefCaution('warning', 'Turns.')];
    for (const cautions of [both, [...both].reverse()]) {
      const items = [step('First', { cautions }), step('Second', { cautions })];
      const { pages } = laidOut([heading(1, 'Card'), steps(items)], options('A7', { mostPt: 9 }));
      const lines = linesOf(pages[0]).filter((line) => /Burns|Turns|First|Second/.test(line));
      const said = cautions.map(({ signal }) => (signal === 'danger' ? 'DANGER Burns.' : 'WARNING Turns.'));
      expect(lines).toEqual([`A ${said[0]}`, said[1], '1 First', said[1], 'A 2 Second']);
    }
  });

  it.each(['corner', 'middle'] as const)(
    'keeps everything off a hole in the %s, on fronts and backs',
    (place) => {
      const theme = {
        ...plainTheme,
        card: { ...plainTheme.card, hole: { place, diameterMm: 6, centreMm: 8 } },
      };
      for (const name of ['A7', 'A6', 'A5', 'card 3 x 5', 'half letter']) {
        const { pages } = laidOut(
          [heading(1, words(9)), numbered(90)],
          options(name, { theme, mostFaces: 40 }),
        );
        expect(pages.length).toBeGreaterThan(1);
        pages.forEach((page, index) => {
          const centre = 8 * pointsPerMm;
          const x = place === 'middle' ? page.widthPt / 2 : index % 2 === 0 ? centre : page.widthPt - centre;
          const keep = (6 / 2 + laminatingEdgeMm) * pointsPerMm - 0.01;
          for (const text of textsOf(page)) {
            const clearsX = text.x > x + keep || text.x + text.widthPt < x - keep;
            // letters are no taller than their size
            expect(clearsX || text.y - text.sizePt > centre + keep - 0.25 * text.sizePt).toBe(true);
          }
        });
      }
    },
  );

  it('shows where to round and punch it, on guides that are not part of the face', () => {
    const { pages } = laidOut([heading(1, 'Raising steam'), numbered(24)], options('A7'));
    for (const { guides = [], widthPt, heightPt } of pages) {
      const [circle] = guides.flatMap(({ kind, ...item }) =>
        kind === 'shape' && 'shape' in item && item.shape.kind === 'circle' ? [item.shape] : [],
      );
      expect(circle).toMatchObject({ cx: 7 * pointsPerMm, cy: 7 * pointsPerMm, r: 2.5 * pointsPerMm });
      // four corners, each ending 4 mm from where the edges meet
      const ends = guides.flatMap((item) => {
        if (item.kind !== 'shape' || item.shape.kind !== 'path') return [];
        const last = item.shape.pieces.at(-1);
        return last?.op === 'curve' ? [[last.x, last.y]] : [];
      });
      const r = 4 * pointsPerMm;
      expect(ends).toEqual([
        [r, 0],
        [widthPt - r, 0],
        [r, heightPt],
        [widthPt - r, heightPt],
      ]);
    }
  });

  it('sets steps and lines closer where that saves a face, and only there: lines no closer than they may stand', () => {
    const own = options('A7', { mostPt: 8.5 });
    const made = Array.from({ length: 16 }, (_, index) => {
      const items = Array.from({ length: index + 3 }, (_, at) => step(`Step ${at}`));
      const { pages } = laidOut([heading(1, 'Raising steam'), steps(items)], own);
      const [one, two] = textsOf(pages[0]).filter(({ text }) => /^[12]$/.test(text));
      return { faces: pages.length, apart: (two?.y ?? 0) - (one?.y ?? 0) };
    });
    const em = 8.5;
    const wide = (1.27 + 0.32) * em;
    const close = [0.7, 0.5].map((share) => ((leastLeading + share * 0.32) * em).toFixed(2));
    const spaced = made.map(({ apart }) => (Math.abs(apart - wide) < 0.01 ? 'wide' : apart));
    expect(new Set(spaced.filter((each) => each !== 'wide').map((each) => Number(each).toFixed(2)))).toEqual(
      new Set(close),
    );
    expect(spaced[0]).toBe('wide');
    // where they are close, one more face would have begun
    made.forEach(({ faces }, index) => {
      const before = made[index - 1];
      if (spaced[index] !== 'wide' && spaced[index - 1] === 'wide') expect(faces).toBe(before?.faces);
      if (spaced[index] === 'wide' && index > 0 && spaced[index - 1] !== 'wide')
        expect(faces).toBe((before?.faces ?? 0) + 1);
    });
  });

  it('leaves no step alone on the last face while the face before it holds several', () => {
    let several = 0;
    // without spaces that could be closed up
    const shares = { ...plainTheme.shares, leading: leastLeading, stepGap: 0, blockGap: 0, headingGap: 0 };
    const own = options('A7', { mostPt: 8.5, theme: { ...plainTheme, shares } });
    for (let count = 8; count < 40; count += 1) {
      const { pages } = laidOut([heading(1, 'Raising steam'), numbered(count)], own);
      const onFaces = pages.map((page) => textsOf(page).filter(({ text }) => text.startsWith('Shut')).length);
      expect(onFaces.reduce((sum, each) => sum + each, 0)).toBe(count);
      if (pages.length < 2 || (onFaces.at(-2) ?? 0) < 4) continue;
      several += 1;
      expect(onFaces.at(-1), `${count} steps: ${onFaces.join(' ')}`).toBeGreaterThan(1);
    }
    expect(several).toBeGreaterThan(10);
  });

  it('never ends a face with a heading, whatever stands above it', () => {
    for (let above = 1; above < 16; above += 1) {
      const blocks = [
        heading(1, 'Raising steam'),
        numbered(above),
        heading(2, 'Then'),
        numbered(3, above + 1),
      ];
      laidOut(blocks, options('A7', { mostPt: 10 }));
    }
  });

  it('never leaves its title alone on the first face, however long it is', () => {
    for (let length = 2; length < 16; length += 4) {
      for (let count = 3; count < 11; count += 1) {
        const blocks = [heading(1, words(length)), group([numbered(count)]), numbered(2, count + 1)];
        const { pages } = laidOut(blocks, options('A7', { title: 'Short', mostPt: 8.5 }));
        expect(linesOf(pages[0]).some((line) => line.startsWith('1 '))).toBe(true);
      }
    }
  });

  it('is refused with the reason if it needs more faces than allowed', () => {
    const result = layoutCard([heading(1, 'Raising steam'), numbered(40)], options('A7', { mostFaces: 2 }));
    const problems = result.ok ? [] : result.problems;
    expect(problems.map(({ code }) => code)).toEqual(['layout-too-many-faces']);
    expect(problems[0]?.found).toMatch(/^\d faces of A7 at 8\.50 pt$/);
  });

  it('is never set below the smallest size of any face it uses', () => {
    const least = { ...everyFace(9), 'narrow-bold': 11 };
    const { pages } = laidOut([heading(1, 'Raising steam'), numbered(20)], options('A7', { leastPt: least }));
    for (const { face, sizePt, tag } of pages.flatMap(textsOf)) {
      if (tag !== undefined) expect(sizePt).toBeGreaterThanOrEqual(least[face]);
    }
  });

  it('keeps a caution before its step on the same face, with its signal word', () => {
    const warning = caution(
      'warning',
      'Light spirit under pressure.',
      'It burns below the car.',
      'Shut both valves first.',
    );
    for (let above = 0; above < 12; above += 1) {
      const careful = steps(
        [step('Open the filler', { cautions: [warning], critical: true })],
        'number',
        above + 1,
      );
      const blocks = [heading(1, 'Raising steam'), ...(above > 0 ? [numbered(above)] : []), careful];
      const { pages } = laidOut(blocks, options('A7', { mostPt: 9 }));
      expect(pages.flatMap(linesOf)).toContain('WARNING');
    }
  });

  it('sets a result at the right edge: on the line after a leader, or beneath', () => {
    const blocks = [
      steps([
        step('Glass', { result: 'half' }),
        step(words(6), { result: 'a state that takes most of a line' }),
      ]),
    ];
    const { pages } = laidOut(blocks, options('A6', { mostPt: 12 }));
    const right = 297.638 - 4 * (72 / 25.4);
    const results = textsOf(pages[0]).filter(({ text }) => text === 'half' || text.endsWith('of a line'));
    expect(results).toHaveLength(2);
    for (const { x, widthPt } of results) expect(x + widthPt).toBeCloseTo(right, 1);
  });

  it('begins the lines of a long result under each other, whatever the action leaves of its line', () => {
    for (let before = 1; before < 14; before += 1) {
      const result = Array.from({ length: 24 }, (_, index) => `r${index}`).join(' ');
      const blocks = [steps([step(words(before), { result })])];
      const { pages } = laidOut(blocks, options('A6', { mostPt: 12 }));
      const texts = textsOf(pages[0]).filter(({ text }) => /^r\d/.test(text));
      const lines = [...new Set(texts.map(({ y }) => y))];
      const begins = lines.map((line) => Math.min(...texts.filter(({ y }) => y === line).map(({ x }) => x)));
      expect(begins.length).toBeGreaterThan(1);
      // the first may begin further right, where the action leaves off; none may begin further left
      const [first = 0, second = 0, ...others] = begins;
      expect(first).toBeGreaterThanOrEqual(second - 0.01);
      for (const x of others) expect(x).toBeCloseTo(second, 2);
    }
  });

  it('can be laid out on every sheet a card is printed on', () => {
    const blocks = [...short, table({ head: ['Steam', 'Miles'], rows: [['200 psi', '12']] })];
    for (const name of ['A7', 'A6', 'A5', 'card 3 x 5', 'card 4 x 6', 'card 5 x 8', '60 x 60 mm'])
      laidOut(blocks, options(name));
  });
});

describe('layoutSheet', () => {
  const rows = Array.from({ length: 16 }, (_, index) => [`${index / 2} in`, `${index * 3} miles`]);
  const blocks = [heading(1, 'Range by the stick'), table({ head: ['Stick', 'Range'], rows })];

  it('grows a table to fill its page, in the plain cut', () => {
    const { pages } = laidOut(blocks, options('letter landscape', { mostPt: 60 }), layoutSheet);
    expect(pages).toHaveLength(1);
    const texts = textsOf(pages[0]).filter(({ tag }) => tag !== undefined);
    expect(texts.every(({ face }) => face === 'text' || face === 'text-bold')).toBe(true);
    // sixteen rows and a head in half the height at least of a page 612 pt high
    expect(Math.max(...texts.map(({ y }) => y))).toBeGreaterThan(500);
  });

  it('is refused if it does not fit on its page at the least size', () => {
    const result = layoutSheet(blocks, options('A7', { leastPt: everyFace(18), mostFaces: 1 }));
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(['layout-too-many-faces']);
  });
});

describe('largestSize', () => {
  it.each([
    [8, 20, 14.1, 14],
    [8, 20, 99, 20],
    [8, 20, 8, 8],
    [8, 8.2, 99, 8],
    [8, 7, 99, 8],
  ])('between %d and %d, if %d is the limit, is %d', (least, most, limit, size) => {
    expect(largestSize(least, most, (tried) => tried <= limit)).toBe(size);
  });
});
