/** What is measured with, read back from the finished file and measured. */
import { describe, expect, test } from 'vitest';
import { makePapers } from '../../src/kettlebook';
import { PdfFile } from '../helpers/pdfFile';
import { linesOf } from '../helpers/pdfLines';
import { type FoundText, textOf } from '../helpers/pdfText';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();

const made = new Map<string, Promise<Uint8Array>>();

/** The file of a paper of a demo car, made once. */
function bytesOf(car: string, name: string): Promise<Uint8Array> {
  const key = `${car} ${name}`;
  const known = made.get(key) ?? make(car, name);
  made.set(key, known);
  return known;
}

async function make(car: string, name: string): Promise<Uint8Array> {
  const wanted = shop.papers.filter((paper) => paper.name === name);
  const files: Uint8Array[] = [];
  goodOf(await makePapers(await demo(car), wanted, shop, ({ bytes }) => void files.push(bytes)));
  const [bytes] = files;
  if (bytes === undefined) throw new Error(`${name} was not made`);
  return bytes;
}

const mm = (points: number) => (points * 25.4) / 72;

/** A strip of a dipstick as found on a page: its left edge and all its marks that have a figure, with their depth in millimetres. */
interface FoundStrip {
  readonly head: readonly string[];
  readonly left: readonly { readonly figure: string; readonly depthMm: number }[];
  readonly right: readonly { readonly figure: string; readonly depthMm: number }[];
}

const stripPt = (48 * 72) / 25.4;

const read = new Map<string, Promise<readonly FoundStrip[]>>();

/** All strips of a car, read once. */
function stripsOf(car: string): Promise<readonly FoundStrip[]> {
  const known = read.get(car) ?? readStrips(car);
  read.set(car, known);
  return known;
}

/** A piece that goes on is tied to the one below it by the height of the line both share. */
async function readStrips(car: string): Promise<readonly FoundStrip[]> {
  const bytes = await bytesOf(car, 'dipsticks');
  const file = new PdfFile(bytes);
  const joinDepth = new Map<string, number>();
  return (await textOf(bytes)).flatMap((texts, page) => {
    const feet = texts.filter(({ text }) => /^(end of the stick|goes on as piece)/.test(text));
    const lines = feet.length === 0 ? [] : linesOf(file, page);
    return feet.map((foot): FoundStrip => {
      const middle = foot.x + foot.width / 2;
      const [left, right] = [middle - stripPt / 2, middle + stripPt / 2];
      const own = texts.filter(({ x, y, width }) => x >= left && x + width <= right && y < foot.y);
      const level = lines.filter(
        ({ from, to }) => Math.abs(from[1] - to[1]) < 0.01 && from[0] >= left - 1 && to[0] <= right + 1,
      );
      const across = level.filter(({ from, to }) => Math.abs(Math.abs(to[0] - from[0]) - stripPt) < 0.1);
      const letters = own.filter(({ text }) => /^[A-H]$/.test(text));
      const tank = own[0]?.text ?? '';
      const joinY = (letter: string) => {
        const [upper = Number.NaN, lower = Number.NaN] = letters
          .filter(({ text }) => text === letter)
          .map(({ y }) => y);
        const between = across.find(
          ({ from }) => from[1] > Math.min(upper, lower) && from[1] < Math.max(upper, lower),
        );
        return between?.from[1] ?? Number.NaN;
      };
      const names = [...new Set(letters.map(({ text }) => text))];
      const zero = foot.text.startsWith('end')
        ? Math.max(...across.map(({ from }) => from[1]))
        : (() => {
            const shared = names.find((name) => joinDepth.has(`${tank} ${name}`)) ?? '';
            return joinY(shared) + (joinDepth.get(`${tank} ${shared}`) ?? Number.NaN);
          })();
      for (const name of names) joinDepth.set(`${tank} ${name}`, zero - joinY(name));
      const marks = (edge: 'left' | 'right') =>
        own.flatMap((text) => {
          if (!/^[\d./ \u00a0]+$/.test(text.text)) return [];
          const near =
            edge === 'left'
              ? Math.abs(text.x - left - 15) < 1
              : Math.abs(right - 15 - text.x - text.width) < 1;
          if (!near) return [];
          return [{ figure: text.text, depthMm: mm(zero - markBeside(text, edge, level, left, right)) }];
        });
      return {
        head: own.slice(0, 4).map(({ text }) => text),
        left: marks('left'),
        right: marks('right'),
      };
    });
  });
}

/**
 * Height of the mark that a figure stands on: a line of 13 points from the edge, level with the figure's middle; beside a line across the
 * strip, which no figure stands on, a little above or below it.
 */
function markBeside(
  { y, size }: FoundText,
  edge: 'left' | 'right',
  level: ReturnType<typeof linesOf>,
  left: number,
  right: number,
): number {
  const middle = y - 0.349 * size;
  const marks = level.filter(({ from, to }) => {
    const outer = edge === 'left' ? Math.min(from[0], to[0]) - left : right - Math.max(from[0], to[0]);
    return Math.abs(outer) < 0.6 && Math.abs(Math.abs(to[0] - from[0]) - 13) < 0.1;
  });
  const [nearest] = marks
    .map(({ from }) => from[1])
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  const across = level.some(
    ({ from, to }) => Math.abs(to[0] - from[0]) > 100 && Math.abs(from[1] - (nearest ?? 0)) < 5.1,
  );
  if (nearest === undefined || Math.abs(nearest - middle) > (across ? 6.5 : 0.6))
    throw new Error(`no mark at ${y}`);
  return nearest;
}

/** The number of a figure such as `1 1/2`. */
function numberOf(figure: string): number {
  return figure
    .split(/[\s\u00a0]+/)
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [over = 0, under = 1]) => sum + over / under, 0);
}

const usGallonMm3 = 231 * 25.4 ** 3;
const litreMm3 = 1e6;
const imperialGallonMm3 = 4.54609e6;

/** Volume in a lying cylinder with flat ends, by the area of a segment of a circle (elementary geometry). */
const lyingCylinder = (diameter: number, length: number) => (depth: number) => {
  const radius = diameter / 2;
  const down = radius - depth;
  return length * (radius ** 2 * Math.acos(down / radius) - down * Math.sqrt(radius ** 2 - down ** 2));
};
const inch = 25.4;

describe('the marks of a stick stand where the tank holds what they say', () => {
  test.each([
    ['marigold', 'main fuel tank T1', lyingCylinder(13 * inch, 29.5 * inch), usGallonMm3, litreMm3, 32],
    ['marigold', 'pilot tank T3', (d: number) => Math.PI * (3.5 * inch) ** 2 * d, usGallonMm3, litreMm3, 14],
    ['thimble', 'fuel tank T1', lyingCylinder(9 * inch, 21.75 * inch), usGallonMm3, litreMm3, 18],
    ['heron', 'water tank T2', (d: number) => 700 * 400 * d, litreMm3, imperialGallonMm3, 35],
  ] as const)('%s: %s', async (car, tank, volumeMm3, firstMm3, secondMm3, least) => {
    const pieces = (await stripsOf(car)).filter(({ head }) => head[0] === tank);
    const check = (marks: FoundStrip['left'], unit: number) => {
      // a thousandth of a point in the file is about this much of a tank
      for (const { figure, depthMm } of marks)
        expect(volumeMm3(depthMm) / unit / numberOf(figure), `${figure} at ${depthMm}`).toBeCloseTo(1, 3);
    };
    expect(
      new Set(pieces.flatMap(({ left }) => left.map(({ figure }) => figure))).size,
    ).toBeGreaterThanOrEqual(least);
    for (const { left, right } of pieces) {
      check(left, firstMm3);
      check(right, secondMm3);
      expect(right.length).toBeGreaterThan(3);
    }
  });

  test('thimble’s water tank: at what was poured in, where it was read', async () => {
    const pieces = (await stripsOf('thimble')).filter(({ head }) => head[0] === 'water tank T2');
    const marks = new Map(pieces.flatMap(({ left }) => left.map(({ figure, depthMm }) => [figure, depthMm])));
    // the readings of cars/thimble.yaml
    for (const [gallons, inches] of [
      ['2', 2.375 - 1.125],
      ['4', 2.375],
      ['6', 3.625],
      ['8', 4.875],
      ['10', 6.25],
      ['12', 7.75],
      ['14', 9.25],
    ] as const)
      expect(marks.get(gallons), `${gallons} US gal`).toBeCloseTo(inches * inch, 2);
  });
});

describe.each(demoNames)('the strips of %s', (name) => {
  test('say car, tank, issue and fingerprint, and leave out no tank that is read by stick', async () => {
    const { car } = await demo(name);
    const strips = await stripsOf(name);
    const sticks = Object.values(car.spec.tanks).filter(({ read }) => read === 'stick');
    expect(new Set(strips.map(({ head }) => head[0])).size).toBe(sticks.length);
    for (const { head } of strips) {
      expect(head[1]).toBe(car.spec.car.name);
      expect(head[2]).toMatch(new RegExp(`^Issue ${car.spec.issue.letter}, \\w{4}·\\w{4}$`));
    }
    for (const { name: tank, tag } of sticks)
      expect(strips.map(({ head }) => head[0])).toContain(`${tank} ${tag}`);
  });

  test('every sheet of strips has a ruler of 100 mm and 4 in', async () => {
    const bytes = await bytesOf(name, 'dipsticks');
    const file = new PdfFile(bytes);
    let sheets = 0;
    for (const [page, texts] of (await textOf(bytes)).entries()) {
      if (!texts.some(({ text }) => text.startsWith('end of the stick') || text.startsWith('goes on')))
        continue;
      sheets += 1;
      const spine = linesOf(file, page).find(
        ({ from, to }) => from[0] === to[0] && Math.abs(from[1] - to[1]) > 280 && from[0] < 72,
      );
      if (spine === undefined) throw new Error('there is no ruler');
      expect(Math.abs(spine.from[1] - spine.to[1])).toBeCloseTo(4 * 72, 2);
      const zero = Math.max(spine.from[1], spine.to[1]);
      const ticks = (side: 1 | -1) =>
        linesOf(file, page)
          .filter(
            ({ from, to }) => from[0] === spine.from[0] && (to[0] - from[0]) * side > 0 && from[1] === to[1],
          )
          .map(({ from }) => zero - from[1]);
      expect(mm(Math.max(...ticks(-1)))).toBeCloseTo(100, 3);
      expect(ticks(-1)).toHaveLength(21);
      expect(Math.max(...ticks(1)) / 72).toBeCloseTo(4, 4);
      expect(ticks(1)).toHaveLength(17);
    }
    expect(sheets).toBeGreaterThan(0);
  });
});

describe.each(demoNames)('the tags of %s', (name) => {
  test('every valve has one in each form: letter on both sides, name, what it does, how it is parked', async () => {
    const { car } = await demo(name);
    const pages = (await textOf(await bytesOf(name, 'valve-tags'))).filter((texts) =>
      texts.some(({ text }) => /^Sheet \d/.test(text)),
    );
    const texts = pages.flat();
    const run = texts.map(({ text }) => text.replace(/[\s\u00a0]+/g, '')).join('');
    for (const { tag, name: valve, does, parked } of Object.values(car.spec.valves)) {
      const letters = texts.filter(({ text }) => text === tag);
      expect(letters, tag).toHaveLength(2 * shop.plans['valve-tags'].length);
      // capitals of the front are seen under 20 minutes of arc from the dash: 2 D tan(a / 2)
      const least = 2 * car.spec.print.distances.dash.si * Math.tan((20 / 60 / 2) * (Math.PI / 180));
      expect(letters.filter(({ size }) => mm(size * 0.698) >= least * 1000 - 0.01)).toHaveLength(
        shop.plans['valve-tags'].length,
      );
      const front = `${tag}${valve}`.replace(/[\s\u00a0]+/g, '');
      const back = `${tag}${does}Parked: ${parked}${car.spec.car.name}`.replace(/[\s\u00a0]+/g, '');
      expect(run).toContain(front);
      expect(run).toContain(back);
    }
  });

  test('the ruler on every sheet is 100 mm and 4 in', async () => {
    const bytes = await bytesOf(name, 'valve-tags');
    const file = new PdfFile(bytes);
    const sheets = [...(await textOf(bytes)).entries()].filter(([, texts]) =>
      texts.some(({ text }) => /^Sheet \d/.test(text)),
    );
    expect(sheets.length).toBeGreaterThan(1);
    for (const [page] of sheets) {
      const lines = linesOf(file, page);
      const spine = lines.find(
        ({ from, to }) => from[1] === to[1] && Math.abs(to[0] - from[0] - 4 * 72) < 0.01,
      );
      if (spine === undefined) throw new Error('there is no ruler');
      const above = lines.filter(
        ({ from, to }) => from[0] === to[0] && from[1] === spine.from[1] && to[1] < from[1],
      );
      expect(mm(Math.max(...above.map(({ from }) => from[0])) - spine.from[0])).toBeCloseTo(100, 3);
    }
  });
});
