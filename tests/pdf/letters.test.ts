/** Letters beside steps that are wrong are seen when a file is read back, so that the check of whole papers can fail. */
import { describe, expect, it } from 'vitest';
import type { LaidOut, PlacedItem } from '../../src/layout/frame';
import { writePdf } from '../../src/pdf/write';
import { briefCaution, step, steps } from '../helpers/blocks';
import { english } from '../helpers/english';
import { options } from '../helpers/laidOut';
import { letterPage } from '../helpers/letterPage';
import { lettersIn } from '../helpers/pdfLetters';
import { laidOutCleanly } from '../helpers/squarePage';

const [burns, turns] = [briefCaution('danger', 'Burns.'), briefCaution('warning', 'Turns.')];
const blocks = [
  steps([burns, turns, burns, turns].map((caution, at) => step(`Open ${at}`, { cautions: [caution] }))),
];
const sound = laidOutCleanly(blocks, letterPage);

async function faultsOf(laidOut: LaidOut): Promise<readonly string[]> {
  const { faults } = await lettersIn(
    await writePdf(laidOut, options),
    blocks,
    english.furniture.sheets.saidAbove,
  );
  return faults;
}

/** The same with the letters of cautions, or of marks beside steps, said otherwise. */
function withLetters(of: 'cautions' | 'marks', letter: (was: string) => string): LaidOut {
  const said = (item: PlacedItem): PlacedItem => {
    const isIt = item.kind === 'text' && /^[AB]$/.test(item.text);
    return isIt && (item.tag === undefined) === (of === 'cautions')
      ? { ...item, text: letter(item.text) }
      : item;
  };
  return { ...sound, pages: sound.pages.map((page) => ({ ...page, items: page.items.map(said) })) };
}

describe('letters read back from a file', () => {
  it('are right as they are laid out', async () => {
    const bytes = await writePdf(sound, options);
    const found = await lettersIn(bytes, blocks, english.furniture.sheets.saidAbove);
    expect(found).toEqual({ marks: 2, faults: [] });
  });

  it('are wrong where two are changed about', async () => {
    const other = (was: string) => (was === 'A' ? 'B' : 'A');
    expect((await faultsOf(withLetters('marks', other))).join('\n')).toMatch(/is another caution/);
    expect((await faultsOf(withLetters('cautions', other))).join('\n')).toMatch(/is another caution/);
  });

  it('are wrong where one is missing, stands nowhere else, or stands twice', async () => {
    expect((await faultsOf(withLetters('marks', () => ' '))).join('\n')).toMatch(/no letter beside/);
    expect((await faultsOf(withLetters('marks', () => 'C'))).join('\n')).toMatch(
      /no caution has the letter C/,
    );
    expect((await faultsOf(withLetters('cautions', () => 'A'))).join('\n')).toMatch(/stands at two cautions/);
  });
});
