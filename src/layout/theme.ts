/**
 * A theme: type sizes, spaces, lines and colours of the papers, as data.
 *
 * A keeper may change it. What cannot be read is refused with the reason, so that no paper is printed in it.
 */
import { type Document, isMap, isScalar, LineCounter, parseDocument } from 'yaml';
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome, type Spot } from '../diagnostic/diagnostic';
import type { Colour } from '../drawing/drawing';
import { type FontSet, faces } from '../font/metrics';
import type { Furniture } from '../language/languageForm';
import { type SignalWord, withSignalWords } from '../language/signal';
import { foundInForm, keptForm } from '../spec/kept';
import { cardEdgeProblems } from './card-edge';
import { legibilityProblems } from './legibility';
import { tabProblems } from './tabs-in-margin';

const colour = z
  .string()
  .regex(/^#[0-9a-fA-F]{6}$/, 'a colour is written as # and six hexadecimal digits')
  .transform((text) => text.toLowerCase() as Colour);
const length = z.number().min(0).max(500);
const size = z.number().positive().max(200);
const share = z.number().min(0.5).max(3);
const type = z.strictObject({ face: z.enum(faces), size, leading: size });
const words = z.string().min(1).max(60);
/** Edge that home printers leave without ink: about a quarter of an inch (common practice, no source). */
const leastClearMm = 6.35;
const levels = z.strictObject({ title: length, section: length, topic: length, point: length });
const panel = z.strictObject({ panel: colour, letters: colour, symbol: z.boolean() });

/** The shape of a theme file; each key is explained in `shared/themes/plain.yaml`. */
export const themeSchema = z.strictObject({
  name: words,
  colours: z.strictObject({
    paper: colour,
    ink: colour,
    soft: colour,
    rule: colour,
    hair: colour,
    stripe: colour,
    box: colour,
  }),
  page: z.strictObject({
    marginsMm: z.strictObject({ top: length, right: length, bottom: length, left: length }),
    headGap: length,
    footGap: length,
    measureEm: z.number().min(20).max(200),
  }),
  tabs: z.strictObject({
    show: z.boolean(),
    widthMm: length,
    clearMm: z.number().min(leastClearMm, `at least ${leastClearMm} mm, where home printers begin to print`),
    panel: colour,
    letters: colour,
  }),
  card: z.strictObject({
    marginMm: length,
    cornerMm: length,
    footClearMm: length,
    hole: z.strictObject({
      place: z.enum(['none', 'corner', 'middle']),
      diameterMm: z.number().min(1).max(12),
      centreMm: length,
    }),
  }),
  dark: z.strictObject({ paper: colour, ink: colour, padMm: length }),
  type: z.strictObject({
    body: type,
    lead: type,
    note: type,
    title: type,
    section: type,
    topic: type,
    point: type,
    caption: type,
    table: type,
    dense: type,
    large: type,
    signal: type,
    running: type,
  }),
  space: z.strictObject({
    paragraph: length,
    listItem: length,
    step: length,
    block: length,
    caption: length,
    above: levels,
    below: levels,
    indent: length,
    cellX: length,
    cellY: length,
    boxX: length,
    boxY: length,
    writing: z.number().min(10).max(100),
    columnGap: length,
  }),
  line: z.strictObject({ hair: length, thin: length, heavy: length, bar: length }),
  cautions: z.strictObject({ danger: panel, warning: panel, caution: panel, notice: panel }),
  shares: z.strictObject({
    title: share,
    section: share,
    topic: share,
    note: share,
    table: share,
    signal: share,
    leading: z.number().min(1.25).max(2),
    stepGap: z.number().min(0).max(2),
    blockGap: z.number().min(0).max(2),
    headingGap: z.number().min(0).max(3),
  }),
});

/** A theme that has been read and found legible, for any language. */
export type SilentTheme = z.infer<typeof themeSchema>;

/** The same with the words that stand around the text in one language. */
export interface Theme extends SilentTheme {
  readonly words: Furniture['sheets'];
  readonly cautions: {
    readonly [S in SignalWord]: SilentTheme['cautions'][S] & { readonly word: string };
  };
}

/** A theme in the words of a language. */
export function themeInWords(theme: SilentTheme, { sheets, signals }: Furniture): Theme {
  return { ...theme, words: sheets, cautions: withSignalWords(theme.cautions, signals) };
}

/** The same theme for a paper that is read in the dark: light on dark, everything in one ink. */
export function darkened(theme: Theme): Theme {
  const { paper, ink } = theme.dark;
  const colours = { paper, ink, soft: ink, rule: ink, hair: ink, stripe: paper, box: paper };
  return { ...theme, colours };
}

/** A kind of text that a theme gives a face and a size. */
export type TypeRole = keyof Theme['type'];

/**
 * Reads a theme from YAML. `file` is its name for messages; `fonts` are what it will be set in, needed to know how
 * tall its letters come out. All problems are told at once.
 */
export function readTheme(yamlText: string, file: string, fonts: FontSet): Outcome<SilentTheme> {
  const known = keptForm('theme', yamlText);
  if (known !== undefined) {
    const theme = known.data as SilentTheme;
    const spotOf = (path: readonly PropertyKey[]) => spotIn(readYaml(yamlText), file, path);
    return fitForUse(theme, fonts, spotOf);
  }
  const yaml = readYaml(yamlText);
  const { lines, document } = yaml;
  const spotOf = (path: readonly PropertyKey[]) => spotIn(yaml, file, path);
  if (document.errors.length > 0) {
    return bad(document.errors.map((error) => notYaml(error.message, spotAt(lines, file, error.pos[0]))));
  }
  const read = themeSchema.safeParse(document.toJS());
  if (!read.success) return bad(read.error.issues.map((issue) => wrongShape(issue, spotOf(issue.path))));
  foundInForm('theme', yamlText, read.data);
  return fitForUse(read.data, fonts, spotOf);
}

interface Yaml {
  readonly document: Document;
  readonly lines: LineCounter;
}

function readYaml(text: string): Yaml {
  const lines = new LineCounter();
  return { document: parseDocument(text, { lineCounter: lines }), lines };
}

function fitForUse(
  theme: SilentTheme,
  fonts: FontSet,
  spotOf: (path: readonly PropertyKey[]) => Spot,
): Outcome<SilentTheme> {
  const problems = [
    ...legibilityProblems(theme, fonts, spotOf),
    ...tabProblems(theme, spotOf),
    ...cardEdgeProblems(theme, spotOf),
  ];
  return problems.length > 0 ? bad(problems) : good(theme);
}

function spotAt(lines: LineCounter, file: string, offset: number, path?: string): Spot {
  const { line, col } = lines.linePos(offset);
  return path === undefined ? { file, line, column: col } : { file, line, column: col, path };
}

/** The place of the value at `path`, or of the nearest thing above it that exists. */
function spotIn({ document, lines }: Yaml, file: string, path: readonly PropertyKey[]): Spot {
  let node: unknown = document.contents;
  let offset = 0;
  for (const key of path) {
    if (!isMap(node)) break;
    const pair = node.items.find((item) => isScalar(item.key) && item.key.value === key);
    if (pair === undefined) break;
    const keyNode = pair.key;
    if (isScalar(keyNode) && keyNode.range) offset = keyNode.range[0];
    node = pair.value;
  }
  return spotAt(lines, file, offset, path.join('.'));
}

function notYaml(reason: string, at: Spot): Diagnostic {
  return {
    code: 'theme-yaml',
    severity: 'error',
    message: 'the theme cannot be read as YAML',
    at,
    found: reason.split('\n')[0] ?? reason,
    expected: 'well-formed YAML',
    mend: 'compare the line with the theme that comes with the program',
  };
}

function wrongShape(issue: z.core.$ZodIssue, at: Spot): Diagnostic {
  const key = issue.path.join('.');
  const where = key === '' ? 'the theme' : `\`${key}\``;
  const unknown =
    issue.code === 'unrecognized_keys' ? issue.keys.map((name) => `\`${name}\``).join(', ') : undefined;
  return {
    code: 'theme-shape',
    severity: 'error',
    message:
      unknown === undefined
        ? `${where} is missing or not what it should be`
        : `${where} has something unknown: ${unknown}`,
    at,
    expected: issue.message,
    mend: 'compare with the theme that comes with the program; it has every key, explained',
  };
}
