/** What the files ask of the printer (ISO 32000-1, 12.2): no scaling, and the edge that makes backs belong to their fronts. */
import { describe, expect, test } from 'vitest';
import { makePapers } from '../../src/kettlebook';
import type { MadePaper } from '../../src/paper/paper';
import { type Dict, Name, PdfFile } from '../helpers/pdfFile';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();

/** Nothing may stand on the back of what is cut up or measured with. */
const oneSided = ['dipsticks', 'valve-tags'];
/** Front and back of one sheet of the paper in the printer. */
const twoFaced = ['visiting-driver', 'trip-card', 'range-table'];
/** Cards, put together on sheets. */
const cards = ['card-shut-everything', 'card-burner-front'];
/** Pages of a book. */
const books = ['inspection-sheet', 'log-sheet'];
const all = [...oneSided, ...twoFaced, ...cards, ...books];

async function make(car: string): Promise<ReadonlyMap<string, MadePaper>> {
  const wanted = shop.papers.filter(({ name }) => all.includes(name));
  const made = new Map<string, MadePaper>();
  goodOf(await makePapers(await demo(car), wanted, shop, (paper) => void made.set(paper.name, paper)));
  return made;
}

function wishesOf(bytes: Uint8Array): Dict {
  const file = new PdfFile(bytes);
  return file.dict(file.catalog.ViewerPreferences);
}

describe.each(demoNames)('the files of %s', (car) => {
  const papers = make(car);
  const duplexOf = async (name: string) =>
    wishesOf((await papers).get(name)?.bytes ?? new Uint8Array()).Duplex;

  test('ask for no scaling, and for paper of their own size', async () => {
    const files = [...(await papers).values()].flatMap(({ bytes, sheets }) => [
      bytes,
      ...(sheets === undefined ? [] : [sheets.bytes]),
    ]);
    expect(files.length).toBeGreaterThan(all.length);
    for (const bytes of files)
      expect(wishesOf(bytes)).toMatchObject({ PrintScaling: new Name('None'), PickTrayByPDFSize: true });
  });

  test.each(oneSided)('%s: asks for one side', async (name) => {
    expect(await duplexOf(name)).toEqual(new Name('Simplex'));
  });

  test.each(twoFaced)('%s: two faces are turned like a page of a book', async (name) => {
    const pages = (await papers).get(name)?.laidOut?.pages ?? [];
    const [front, back] = pages;
    if (front === undefined) throw new Error(`there is no ${name}`);
    const edge = front.widthPt <= front.heightPt ? 'DuplexFlipLongEdge' : 'DuplexFlipShortEdge';
    expect(await duplexOf(name)).toEqual(back === undefined ? undefined : new Name(edge));
  });

  test.each(cards)(
    '%s: sheets of cards are turned as they were put together, single faces as one likes',
    async (name) => {
      const made = (await papers).get(name);
      const sheets = made?.sheets;
      const [side] = sheets?.laidOut.pages ?? [];
      if (sheets === undefined || side === undefined) throw new Error(`there are no sheets of ${name}`);
      expect(sheets.turning).toBe(side.widthPt <= side.heightPt ? 'long-edge' : 'short-edge');
      const edge = sheets.turning === 'long-edge' ? 'DuplexFlipLongEdge' : 'DuplexFlipShortEdge';
      expect(wishesOf(sheets.bytes).Duplex).toEqual(new Name(edge));
      expect(await duplexOf(name)).toBeUndefined();
    },
  );

  test.each(books)('%s: turned on the long edge if the spec says both sides', async (name) => {
    const { sides } = (await demo(car)).car.spec.print;
    expect(await duplexOf(name)).toEqual(sides === 'both' ? new Name('DuplexFlipLongEdge') : undefined);
  });
});
