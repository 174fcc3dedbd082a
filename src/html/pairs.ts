/**
 * Every pair of colours that stands one on the other on a page for the screen, and the contrast it must have.
 *
 * WCAG 2.2: text 7 : 1 (success criterion 1.4.6, level AAA), signal words at least 4.5 : 1 (1.4.3, level AA), because the
 * standard's safety red and blue allow no more; lines that carry meaning 3 : 1 (1.4.11).
 */
import type { Colour } from '../drawing/drawing';
import { signalWords } from '../language/signal';
import { asGrey, contrast, leastContrast } from '../layout/contrast';
import type { ScreenColours, ScreenData } from './look';

/** Least contrast of running text with its ground: WCAG 2.2, success criterion 1.4.6. */
export const textContrast = 7;

/** Least contrast of lines and rings that tell something: WCAG 2.2, success criterion 1.4.11. */
export const lineContrast = 3;

/** Two colours, one on the other. */
export interface ColourPair {
  /** Where the front colour stands in the file. */
  readonly path: readonly string[];
  readonly use: 'text' | 'line';
  readonly front: Colour;
  readonly ground: Colour;
  readonly least: number;
  /** Must also hold on a printer without colours. */
  readonly printed: boolean;
}

type Job = keyof ScreenColours;

/** Front colours by the grounds they stand on. `page.css` uses no others. */
const onGrounds: readonly {
  readonly fronts: readonly Job[];
  readonly grounds: readonly Job[];
  readonly use: 'text' | 'line';
}[] = [
  { fronts: ['ink', 'soft', 'link'], grounds: ['paper', 'stripe', 'box'], use: 'text' },
  { fronts: ['bandLetters'], grounds: ['band'], use: 'text' },
  { fronts: ['tickedLetters'], grounds: ['ticked'], use: 'text' },
  { fronts: ['rule'], grounds: ['paper', 'stripe', 'box'], use: 'line' },
  { fronts: ['focus'], grounds: ['paper', 'stripe', 'box'], use: 'line' },
  { fronts: ['bandFocus'], grounds: ['band'], use: 'line' },
  { fronts: ['ticked'], grounds: ['paper'], use: 'line' },
];

/** All pairs of a look. */
export function pairsOf({ colours, signals }: Pick<ScreenData, 'colours' | 'signals'>): ColourPair[] {
  const plain = (['light', 'dark'] as const).flatMap((name) =>
    onGrounds.flatMap(({ fronts, grounds, use }) =>
      fronts.flatMap((front) =>
        grounds.map(
          (ground): ColourPair => ({
            path: ['colours', name, front],
            use,
            front: colours[name][front],
            ground: colours[name][ground],
            least: use === 'text' ? textContrast : lineContrast,
            printed: name === 'light',
          }),
        ),
      ),
    ),
  );
  const panels = signalWords.map(
    (signal): ColourPair => ({
      path: ['signals', signal, 'letters'],
      use: 'text',
      front: signals[signal].letters,
      ground: signals[signal].panel,
      least: leastContrast,
      printed: true,
    }),
  );
  return [...plain, ...panels];
}

/** The contrast of a pair that has too little, in colour or where it is printed in grey; else undefined. */
export function tooFaint({ front, ground, least, printed }: ColourPair): number | undefined {
  const inColour = contrast(front, ground);
  const found = printed ? Math.min(inColour, contrast(asGrey(front), asGrey(ground))) : inColour;
  return found < least ? found : undefined;
}
