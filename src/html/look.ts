/**
 * The look of the papers on a screen: colours, style and script, as data from `shared/screen`; words come from the language.
 *
 * A museum may change it. What could not be read, or would reach for something outside the page, is refused.
 */
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import type { Colour } from '../drawing/drawing';
import type { Furniture } from '../language/languageForm';
import { type SignalWord, withSignalWords } from '../language/signal';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { readSource, type SpecSource } from '../spec/source';
import { type ColourPair, pairsOf, tooFaint } from './pairs';

const colour = z
  .string()
  .regex(/^#[0-9a-fA-F]{6}$/, 'a colour is written as # and six hexadecimal digits')
  .transform((text) => text.toLowerCase() as Colour);

const scheme = z.strictObject({
  paper: colour,
  ink: colour,
  soft: colour,
  rule: colour,
  stripe: colour,
  box: colour,
  link: colour,
  band: colour,
  bandLetters: colour,
  ticked: colour,
  tickedLetters: colour,
  focus: colour,
  bandFocus: colour,
});
const signal = z.strictObject({ panel: colour, letters: colour, symbol: z.boolean() });

const lookForm = z.strictObject({
  colours: z.strictObject({ light: scheme, dark: scheme }),
  signals: z.strictObject({ danger: signal, warning: signal, caution: signal, notice: signal }),
});

/** Colours by job, for one setting of the device. */
export type ScreenColours = z.output<typeof scheme>;

/** Colours of the page and of its signal words, as the file gives them. */
export type ScreenData = z.output<typeof lookForm>;

/** Everything that decides how a page looks and behaves, in any language. */
export interface SilentLook extends ScreenData {
  /** CSS, using the colours as `var(--ink)` and so on. */
  readonly style: string;
  /** Script that keeps the ticks. */
  readonly script: string;
}

/** The same with the words of one language. */
export interface ScreenLook extends SilentLook {
  readonly words: Furniture['screen'];
  readonly signals: {
    readonly [S in SignalWord]: SilentLook['signals'][S] & { readonly word: string };
  };
}

/** A look in the words of a language. */
export function lookInWords(look: SilentLook, { screen, signals }: Furniture): ScreenLook {
  return { ...look, words: screen, signals: withSignalWords(look.signals, signals) };
}

/** The files of a look, as text. `data` is YAML. */
export interface ScreenLookFiles {
  readonly data: string;
  readonly style: string;
  readonly script: string;
}

/** Read a look; `folder` is where its files stand, for messages. All problems are told at once. */
export function readScreenLook(files: ScreenLookFiles, folder = 'shared/screen'): Outcome<SilentLook> {
  const outside = [
    ...closesItself(files.style, 'style', `${folder}/page.css`),
    ...reachesOut(files.style, /@import\b|\burl\s*\(|\bimage-set\s*\(/gi, `${folder}/page.css`),
    ...closesItself(files.script, 'script', `${folder}/page.js`),
    ...reachesOut(files.script, scriptReaches, `${folder}/page.js`),
  ];
  const source = readSource(files.data, `${folder}/screen.yaml`);
  if (!source.ok) return bad([...source.problems, ...outside]);
  const parsed = inForm(source.value, lookForm, 'screen');
  if (!parsed.success) return bad([...problemsOf(parsed.error.issues, source.value, lookForm), ...outside]);
  const problems = [...outside, ...pairsOf(parsed.data).flatMap((pair) => faintness(pair, source.value))];
  return problems.length > 0
    ? bad(problems)
    : good({ ...parsed.data, style: files.style.trim(), script: files.script.trim() });
}

/** Ways in which a script could fetch something, or send something away. */
const scriptReaches =
  /\b(?:fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts)\b|\bimport\s*[("'{*]|\bhttps?:/g;

function reachesOut(text: string, reach: RegExp, file: string): Diagnostic[] {
  return [...text.matchAll(reach)].map((match) => ({
    code: 'screen-outside',
    severity: 'error',
    message: 'a page for the screen may not need anything from outside itself',
    at: spotIn(text, match.index, file),
    found: `\`${match[0]}\``,
    expected: 'a page that works where there is no signal',
    mend: 'put in the file itself what is fetched there, or leave it out',
  }));
}

function closesItself(text: string, name: 'style' | 'script', file: string): Diagnostic[] {
  return [...text.matchAll(new RegExp(`</${name}|<!--`, 'gi'))].map((match) => ({
    code: 'screen-outside',
    severity: 'error',
    message: `what stands here would end the page’s \`${name}\` too early`,
    at: spotIn(text, match.index, file),
    found: `\`${match[0]}\``,
    expected: `no \`</${name}\` and no \`<!--\``,
    mend: 'write it another way',
  }));
}

function spotIn(text: string, offset: number, file: string) {
  const before = text.slice(0, offset).split('\n');
  return { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

function faintness(pair: ColourPair, source: SpecSource): Diagnostic[] {
  const found = tooFaint(pair);
  if (found === undefined) return [];
  return [
    {
      code: 'screen-contrast',
      severity: 'error',
      message: `\`${pair.front}\` on \`${pair.ground}\` is too faint to be ${pair.use === 'text' ? 'read' : 'seen'}`,
      at: source.spotOfValue(pair.path),
      found: `a contrast of ${found.toFixed(2)}`,
      expected: `at least ${pair.least} (WCAG 2.2)`,
      mend: 'move the two colours further apart in lightness',
    },
  ];
}
