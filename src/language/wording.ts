/**
 * Wording: Handlebars text filled in with a fixed set of values. Plain text in, plain text out; a value that does
 * not exist for this car is an error wherever it would be printed, and false in `{{#if}}`.
 */
import Handlebars from 'handlebars';

/** Values a text can use. `undefined` is a value that this car has not got. */
export interface Values {
  readonly [name: string]: string | undefined | Values;
}

/** A text filled in, or the name of what was missing. */
export type Worded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: string };

/** Thrown by an absent value when something tries to print it. */
class AbsentValue extends Error {}

/**
 * Stands for a value the car has not got. Handlebars takes an empty list for false, so that `{{#if}}` passes it
 * by; printing it throws.
 */
class Absent extends Array<never> {
  constructor(private readonly path: string) {
    super();
  }

  override toString(): string {
    throw new AbsentValue(this.path);
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
  private readonly engine = Handlebars.create();
  private readonly compiled = new Map<string, Handlebars.TemplateDelegate>();

  constructor(phrases: Readonly<Record<string, string>>) {
    for (const [name, phrase] of Object.entries(phrases)) this.engine.registerPartial(name, phrase);
  }

  /** Fill in one text. Runs of blanks and blanks before a stop, left where a part of the text fell away, are closed up. */
  write(text: string, values: Values): Worded {
    try {
      const made = String(this.template(text)(prepare(values, '')));
      const tidy = made
        .replace(/[ \t\n\r]+/g, ' ')
        .replace(/ ([.,;:])/g, '$1')
        .replace(/(?<!\.)\.\.(?!\.)/g, '.')
        .trim();
      return { ok: true, text: tidy };
    } catch (error) {
      if (error instanceof AbsentValue) return { ok: false, why: `this car has no \`${error.message}\`` };
      const [first = ''] = (error instanceof Error ? error.message : String(error)).split('\n');
      return { ok: false, why: first };
    }
  }

  private template(text: string): Handlebars.TemplateDelegate {
    const known = this.compiled.get(text);
    if (known !== undefined) return known;
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

/** What is wrong with the form of a text, if anything; values are not looked at. */
export function faultOfText(text: string): string | undefined {
  try {
    Handlebars.parse(text);
    return undefined;
  } catch (error) {
    return (error instanceof Error ? error.message : String(error)).split('\n')[0];
  }
}
