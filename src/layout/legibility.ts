/**
 * What a theme must keep to so that its papers can be read.
 *
 * Angles are those of a character's height seen from the reading distance. NUREG-0700 (rev. 2) and ISO 9241 give
 * 16 minutes of arc as the least and 20 as preferred; x-height 1.2 mm is the least of Regulation (EU) 1169/2011,
 * Article 13, for small print (from memory). Lines at least 1.25 type sizes apart: NASA CR-177605.
 */
import type { Diagnostic, Spot } from '../diagnostic/diagnostic';
import type { Colour } from '../drawing/drawing';
import type { FontMetrics, FontSet } from '../font/metrics';
import { type SignalWord, signalWords } from '../language/signal';
import { asGrey, contrast, leastContrast, luminance } from './contrast';
import { pointsPerMm } from './sheet';
import type { SilentTheme, TypeRole } from './theme';

/** How far away a paper in the hand is held, in metres. */
export const handDistanceM = 0.4;
/** Least and preferred height of a capital letter, in minutes of arc. */
export const leastArcMinutes = 16;
export const preferredArcMinutes = 20;
/** Least height of a small letter such as `x`, in millimetres. */
export const leastXHeightMm = 1.2;
/** Least distance from line to line, as a share of the type size. */
export const leastLeading = 1.25;

const readAtLength: readonly TypeRole[] = ['body', 'lead', 'large', 'signal'];
const setInManyLines: readonly TypeRole[] = ['body', 'lead', 'note', 'table', 'dense', 'large', 'running'];

/** Where in the theme's file a value stands. */
export type SpotOf = (path: readonly PropertyKey[]) => Spot;

/** Everything in the theme that could not be read on paper. */
export function legibilityProblems(theme: SilentTheme, fonts: FontSet, spotOf: SpotOf): Diagnostic[] {
  return [
    ...tooSmall(theme, fonts, spotOf),
    ...tooClose(theme, spotOf),
    ...tooFaint(theme, spotOf),
    ...lighterThoughGraver(theme, spotOf),
  ];
}

/** Height in millimetres of something that is seen at `arcMinutes` from `distanceM`: 2 D tan(a / 2). */
export function heightSeenMm(distanceM: number, arcMinutes: number): number {
  return 2000 * distanceM * Math.tan((arcMinutes / 60) * (Math.PI / 360));
}

/** The least size, in points, of a face that is read in the hand: its capitals of so many minutes of arc, its small letters as tall as they must be. */
export function leastInHandPt(
  { capHeight, xHeight }: Pick<FontMetrics, 'capHeight' | 'xHeight'>,
  arcMinutes: number = leastArcMinutes,
): number {
  const capMm = heightSeenMm(handDistanceM, arcMinutes);
  return Math.max((capMm * pointsPerMm) / capHeight, (leastXHeightMm * pointsPerMm) / xHeight);
}

function tooSmall(theme: SilentTheme, fonts: FontSet, spotOf: SpotOf): Diagnostic[] {
  const problems: Diagnostic[] = [];
  for (const role of Object.keys(theme.type) as TypeRole[]) {
    const { face, size } = theme.type[role];
    const metrics = fonts[face];
    const minutes = readAtLength.includes(role) ? preferredArcMinutes : leastArcMinutes;
    const leastSize = leastInHandPt(metrics, minutes);
    if (size >= leastSize - 0.005) continue;
    const xMm = (size * metrics.xHeight) / pointsPerMm;
    problems.push({
      code: 'theme-legibility',
      severity: 'error',
      message: `the type for \`${role}\` is too small to be read in the hand`,
      at: spotOf(['type', role, 'size']),
      found: `${size} pt, an x-height of ${xMm.toFixed(2)} mm`,
      expected: `at least ${leastSize.toFixed(2)} pt in this face: capitals of ${minutes} minutes of arc at ${handDistanceM} m`,
      mend: 'set a larger size',
    });
  }
  return problems;
}

function tooClose(theme: SilentTheme, spotOf: SpotOf): Diagnostic[] {
  return setInManyLines.flatMap((role): Diagnostic[] => {
    const { size, leading } = theme.type[role];
    if (leading >= leastLeading * size - 0.005) return [];
    return [
      {
        code: 'theme-legibility',
        severity: 'error',
        message: `the lines of \`${role}\` stand too close together`,
        at: spotOf(['type', role, 'leading']),
        found: `${leading} pt from line to line`,
        expected: `at least ${(leastLeading * size).toFixed(2)} pt, ${leastLeading} times the size`,
        mend: 'set a larger leading',
      },
    ];
  });
}

/** On a grey printer a graver caution may not look lighter than one that is less grave. */
function lighterThoughGraver({ cautions }: SilentTheme, spotOf: SpotOf): Diagnostic[] {
  const lightness = (signal: SignalWord) => luminance(asGrey(cautions[signal].panel));
  return signalWords.flatMap((graver, index): Diagnostic[] => {
    const less = signalWords[index + 1];
    if (less === undefined || lightness(graver) <= lightness(less)) return [];
    return [
      {
        code: 'theme-contrast',
        severity: 'error',
        message: `without colours the panel of \`${less}\` is darker than that of \`${graver}\`, which is graver`,
        at: spotOf(['cautions', less, 'panel']),
        found: `\`${cautions[less].panel}\`, printed as \`${asGrey(cautions[less].panel)}\``,
        expected: `nothing darker than \`${asGrey(cautions[graver].panel)}\``,
        mend: 'choose a lighter panel, such as white, which gets a rule around it',
      },
    ];
  });
}

/** One pair of colours that text is read by. */
interface Pair {
  readonly path: readonly string[];
  readonly letters: Colour;
  readonly ground: Colour;
  /** Least contrast, if it is more than that of any text. */
  readonly least?: number;
}

/** Least contrast of words read without light: WCAG 2.2, success criterion 1.4.6, level AAA. */
const leastInTheDark = 7;

function tooFaint(theme: SilentTheme, spotOf: SpotOf): Diagnostic[] {
  return pairsOf(theme).flatMap(({ path, letters, ground, least = leastContrast }): Diagnostic[] => {
    const inColour = contrast(letters, ground);
    const inGrey = contrast(asGrey(letters), asGrey(ground));
    if (Math.min(inColour, inGrey) >= least) return [];
    const how = inColour < least ? 'in colour' : 'on a printer without colours';
    return [
      {
        code: 'theme-contrast',
        severity: 'error',
        message: `\`${letters}\` on \`${ground}\` is too faint to be read ${how}`,
        at: spotOf(path),
        found: `a contrast of ${inColour.toFixed(2)} in colour and ${inGrey.toFixed(2)} in grey`,
        expected: `at least ${least} (WCAG 2.2)`,
        mend: 'move the two colours further apart in lightness',
      },
    ];
  });
}

function pairsOf(theme: SilentTheme): Pair[] {
  const { colours, cautions } = theme;
  const grounds: readonly Colour[] = [colours.paper, colours.stripe, colours.box];
  const plain = (['ink', 'soft'] as const).flatMap((name) =>
    grounds.map((ground) => ({ path: ['colours', name], letters: colours[name], ground })),
  );
  const panels = Object.entries(cautions).map(([signal, panel]) => ({
    path: ['cautions', signal, 'letters'],
    letters: panel.letters,
    ground: panel.panel,
  }));
  const tabs = [
    { path: ['tabs', 'letters'], letters: theme.tabs.letters, ground: theme.tabs.panel },
    { path: ['tabs', 'panel'], letters: theme.tabs.panel, ground: colours.paper },
  ];
  const dark = {
    path: ['dark', 'ink'],
    letters: theme.dark.ink,
    ground: theme.dark.paper,
    least: leastInTheDark,
  };
  return [...plain, ...panels, ...tabs, dark];
}
