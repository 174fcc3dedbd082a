/** What is measured with, read back from the finished file and measured. */
import { describe, expect, test } from 'vitest';
import { makePapers } from '../../src/kettlebook';
import { PdfFile } from '../helpers/pdfFile';
import { type FoundLine, linesOf } from '../helpers/pdfLines';
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

type FoundMarks = readonly { readonly figure: string; readonly depthMm: number }[];

/** One side of the line of depth as found on a page: its unit, its marks that have a figure, the depth of every line in millimetres. */
interface FoundDepths {
  readonly unit: string;
  readonly marks: FoundMarks;
  readonly linesMm: readonly number[];
}

/** A strip of a dipstick as found on a page: all its marks that have a figure, with their depth in millimetres. */
interface FoundStrip {
  readonly head: readonly string[];
  readonly left: FoundMarks;
  readonly right: FoundMarks;
  readonly depths: readonly FoundDepths[];
  /** Depth at the upper end. */
  readonly toMm: number;
}

const stripPt = (56 * 72) / 25.4;

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
      const inside = lines.filter(({ from, to }) =>
        [from, to].every(([x, y]) => x >= left - 1 && x <= right + 1 && y <= foot.y),
      );
      const marks = (beginsAt: number, way: 1 | -1, longPt: number): FoundMarks =>
        own.flatMap((text) => {
          if (!/^[\d./ \u00a0]+$/.test(text.text)) return [];
          const begins = way === 1 ? text.x : text.x + text.width;
          if (Math.abs(way * (begins - beginsAt) - longPt - 2) > 0.5) return [];
          const y = markOf(text, { beginsAt, way, longPt }, inside);
          return [{ figure: text.text, depthMm: mm(zero - y) }];
        });
      // the line that marks stand on both sides of, or on its left alone
      const isLevel = ({ from, to }: FoundLine) => Math.abs(from[1] - to[1]) < 0.01;
      const upright = inside.filter(({ from, to }) => from[0] === to[0] && Math.abs(from[1] - to[1]) > 20);
      const linesFrom = (x: number, way: 1 | -1) =>
        inside.filter(
          (each) => isLevel(each) && Math.abs(each.from[0] - x) < 0.01 && (each.to[0] - x) * way > 0,
        );
      const spine = upright
        .map(({ from }) => from[0])
        .find((x) => x > left + 20 && x < right - 20 && linesFrom(x, -1).length > 4);
      if (spine === undefined) throw new Error(`there is no line of depth on ${tank}`);
      const top = Math.min(...upright.flatMap(({ from, to }) => (from[0] === spine ? [from[1], to[1]] : [])));
      const depths = ([-1, 1] as const).flatMap((way): readonly FoundDepths[] => {
        const ofSide = linesFrom(spine, way).map(({ from }) => mm(zero - from[1]));
        const unit = own.find(
          ({ text, x, width }) =>
            /^(in|mm)$/.test(text) && Math.abs((way === 1 ? x : x + width) - spine - way * 4) < 0.5,
        );
        if (ofSide.length === 0) return [];
        return [{ unit: unit?.text ?? '', marks: marks(spine, way, 8), linesMm: ofSide }];
      });
      return {
        head: own.slice(0, 4).map(({ text }) => text),
        left: marks(left, 1, 11),
        right: marks(right, -1, 11),
        depths,
        toMm: mm(zero - top),
      };
    });
  });
}

/**
 * Height of the mark of a figure: a line as long as any of its scale, level with the figure's middle; or one of half that length, from
 * whose end a leader goes to the figure.
 */
function markOf(
  { text, y, size }: FoundText,
  { beginsAt, way, longPt }: { readonly beginsAt: number; readonly way: 1 | -1; readonly longPt: number },
  lines: readonly FoundLine[],
): number {
  const middle = y - 0.349 * size;
  const near = (one: number, other: number, by = 0.02) => Math.abs(one - other) < by;
  const ofLength = (pt: number) =>
    lines.filter(
      ({ from, to }) =>
        near(from[1], to[1]) && near(from[0], beginsAt, 0.3) && near(way * (to[0] - from[0]), pt),
    );
  const level = ofLength(longPt).filter(({ from }) => near(from[1], middle, 0.6));
  const led = ofLength(longPt / 2).filter((mark) =>
    lines.some(
      ({ from, to }) =>
        near(from[0], mark.to[0]) &&
        near(from[1], mark.to[1]) &&
        near(to[1], middle, 0.1) &&
        near(way * (to[0] - beginsAt), longPt + 0.8),
    ),
  );
  const [found, ...more] = [...level, ...led];
  if (found === undefined || more.length > 0) throw new Error(`${1 + more.length} marks of ${text} at ${y}`);
  return found.from[1];
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

  test('say every inch and every ten millimetres of depth, with lines at each eighth and each two millimetres', async () => {
    const { car } = await demo(name);
    const strips = await stripsOf(name);
    const sticks = new Set(strips.map(({ head }) => head[0]));
    // all of them are printed in both
    const { first, second } = car.spec.print.units;
    const inches = { unit: 'in', mm: 25.4, every: 1, line: 1 / 8 };
    const millimetres = { unit: 'mm', mm: 1, every: 10, line: 2 };
    const wanted = [first, second].map((system) => (system === 'metric' ? millimetres : inches));
    for (const stick of sticks) {
      const pieces = strips.filter(({ head }) => head[0] === stick);
      const toMm = Math.max(...pieces.map((piece) => piece.toMm));
      for (const [side, { unit, mm: unitMm, every, line }] of wanted.entries()) {
        const found = pieces.flatMap(({ depths }) => depths.slice(side, side + 1));
        expect(found.map((each) => each.unit)).toEqual(pieces.map(() => unit));
        const marks = found.flatMap((each) => each.marks);
        for (const { figure, depthMm } of marks)
          expect(depthMm / unitMm, `${stick}, ${figure} ${unit}`).toBeCloseTo(Number(figure), 2);
        const figures = Array.from({ length: Math.floor(toMm / unitMm / every) }, (_, index) =>
          String((index + 1) * every),
        );
        expect(figures.length).toBeGreaterThan(3);
        expect(
          [...new Set(marks.map(({ figure }) => figure))].toSorted((a, b) => Number(a) - Number(b)),
        ).toEqual(figures);
        const lines = new Set(
          found.flatMap(({ linesMm }) => linesMm.map((depthMm) => depthMm / unitMm / line)).map(Math.round),
        );
        expect(lines.size, `${stick}, lines of ${unit}`).toBe(Math.floor(toMm / unitMm / line + 1e-3));
      }
    }
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
