/**
 * Wording: Handlebars text filled in with a fixed set of values. Plain text in, plain text out; a value that does
 * not exist for this car is an error wherever it would be printed, and false in `{{#if}}`.
 */
import Handlebars from 'handlebars';
import { Lacking, piecesOf, QuickWords } from './quickWords';

/** Values a text can use. `undefined` is a value that this car has not got. */
export interface Values {
  readonly [name: string]: string | undefined | Values;
}

/** A text filled in, or the name of what was missing. */
export type Worded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: string };

/**
 * Stands for a value the car has not got. Handlebars takes an empty list for false, so that `{{#if}}` passes it
 * by; printing it throws.
 */
class Absent extends Array<never> {
  constructor(private readonly path: string) {
    super();
  }

  override toString(): string {
    throw new Lacking(this.path);
  }
}

/** An object that prints as its own name, so that `{{part}}` and `{{part.name}}` both serve. */
function prepare(values: Values, path: string): Record<string, unknown> {
  const prepared: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(values)) {
    const here = path === '' ? name : `${path}.${name}`;
    if (value === undefined) prepared[name] = new Absent(here);
    else prepared[name] = typeof value === 'string' ? value : prepare(value, here);
  }
  const { called } = values;
  if (typeof called === 'string')
    Object.defineProperty(prepared, 'toString', { value: () => called, enumerable: false });
  return prepared;
}

/** Writes texts with a set of phrases. */
export class Writer {
  private readonly quick: QuickWords;
  private engine: typeof Handlebars | undefined;
  private readonly compiled = new Map<string, Handlebars.TemplateDelegate>();

  constructor(private readonly phrases: Readonly<Record<string, string>>) {
    this.quick = quickWordsOf(phrases);
  }

  /** Fill in one text. Runs of blanks and blanks before a stop, left where a part of the text fell away, are closed up. */
  write(text: string, values: Values): Worded {
    try {
      const made = this.quick.fill(text, values) ?? this.fill(text, values);
      const tidy = made
        .replace(/[ \t\n\r]+/g, ' ')
        .replace(/ ([.,;:])/g, '$1')
        .replace(/(?<!\.)\.\.(?!\.)/g, '.')
        .trim();
      return { ok: true, text: tidy };
    } catch (error) {
      if (error instanceof Lacking) return { ok: false, why: `this car has no \`${error.message}\`` };
      const [first = ''] = (error instanceof Error ? error.message : String(error)).split('\n');
      return { ok: false, why: first };
    }
  }

  /** By Handlebars itself. */
  private fill(text: string, values: Values): string {
    return String(this.template(text)(prepare(values, '')));
  }

  private template(text: string): Handlebars.TemplateDelegate {
    const known = this.compiled.get(text);
    if (known !== undefined) return known;
    this.engine ??= engineWith(this.phrases);
    const made = this.engine.compile(text, {
      noEscape: true,
      strict: true,
      knownHelpersOnly: true,
      knownHelpers: { if: true, unless: true },
    });
    this.compiled.set(text, made);
    return made;
  }
}

const quickWords = new WeakMap<Readonly<Record<string, string>>, QuickWords>();

/** The texts taken to pieces with a set of phrases, shared by whoever writes with it. */
function quickWordsOf(phrases: Readonly<Record<string, string>>): QuickWords {
  const known = quickWords.get(phrases) ?? new QuickWords(phrases);
  quickWords.set(phrases, known);
  return known;
}

function engineWith(phrases: Readonly<Record<string, string>>): typeof Handlebars {
  const engine = Handlebars.create();
  for (const [name, phrase] of Object.entries(phrases)) engine.registerPartial(name, phrase);
  return engine;
}

/** What is wrong with the form of a text, if anything; values are not looked at. */
export function faultOfText(text: string): string | undefined {
  if (piecesOf(text) !== undefined) return undefined;
  try {
    Handlebars.parse(text);
    return undefined;
  } catch (error) {
    return (error instanceof Error ? error.message : String(error)).split('\n')[0];
  }
}
