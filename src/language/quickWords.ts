/**
 * The plain part of Handlebars, in which nearly every text is written: values, phrases, `{{#if}}` and `{{#unless}}` with
 * `{{else}}`. It is read and filled in as it stands, without compiling anything. Of a text that is written otherwise nothing
 * is said here, and the whole of Handlebars is asked.
 */
import type { Values } from './wording';

type Path = readonly string[];
type Pieces = readonly Piece[];

/** A piece of a text. */
type Piece =
  | string
  | { readonly value: Path }
  | { readonly phrase: string }
  | { readonly asks: Path; readonly ifThere: Pieces; readonly ifAbsent: Pieces };

const name = '[A-Za-z][A-Za-z0-9_-]*';
const path = `${name}(?:\\.${name})*`;
const anyTag = `\\{\\{(?:#(if|unless) (${path})|/(if|unless)|(else)|> ?(${name})|(${path}))\\}\\}(?!\\})`;

/** Names that are not those of values to Handlebars. */
const taken = /^(?:else|if|unless|each|with|lookup|log|this|true|false|null|undefined|\w*[hH]elperMissing)$/;

/** A block that is not ended yet. */
interface Open {
  readonly kind: string;
  readonly path: Path;
  readonly first: Piece[];
  second: Piece[] | undefined;
}

/** The pieces of a text; nothing if it is at fault, or not in the plain part. */
export function piecesOf(text: string): Pieces | undefined {
  // Blanks and lines around tags that stand alone are taken away by Handlebars; a backslash keeps a tag from being one.
  if (/[\n\r\\]|^\s|\s$/.test(text)) return undefined;
  const whole: Piece[] = [];
  const open: Open[] = [];
  const tag = new RegExp(anyTag, 'y');
  for (let at = 0; at < text.length; at = tag.lastIndex) {
    const block = open.at(-1);
    const here = block === undefined ? whole : (block.second ?? block.first);
    const start = text.indexOf('{{', at);
    if (start !== at) here.push(start < 0 ? text.slice(at) : text.slice(at, start));
    if (start < 0) break;
    tag.lastIndex = start;
    const found = tag.exec(text);
    if (found === null || !take(found, open, here, whole)) return undefined;
  }
  return open.length === 0 ? whole : undefined;
}

/** Take in one tag; false if it does not fit there. */
function take(found: RegExpExecArray, open: Open[], here: Piece[], whole: Piece[]): boolean {
  const [, kind, condition, ended, otherwise, phrase, value] = found;
  const path = (condition ?? value)?.split('.') ?? [];
  if (path.some((part) => taken.test(part))) return false;
  if (value !== undefined) here.push({ value: path });
  else if (phrase !== undefined) here.push({ phrase });
  else if (kind !== undefined) open.push({ kind, path, first: [], second: undefined });
  else {
    const block = open.at(-1);
    if (block === undefined) return false;
    if (otherwise !== undefined) {
      if (block.second !== undefined) return false;
      block.second = [];
    } else {
      if (block.kind !== ended) return false;
      open.pop();
      const around = open.at(-1);
      const outside = around === undefined ? whole : (around.second ?? around.first);
      const second = block.second ?? [];
      const [ifThere, ifAbsent] = ended === 'if' ? [block.first, second] : [second, block.first];
      outside.push({ asks: block.path, ifThere, ifAbsent });
    }
  }
  return true;
}

/** Thrown by what is not in the plain part after all: a name that is no value, a phrase that is not there. */
class NotPlain extends Error {}

/** A value that the car has not got. */
export class Lacking extends Error {}

/** Phrases within phrases go no deeper than this; what does so turns in a circle. */
const deepest = 20;

/** Texts that have been taken to pieces, and the phrases they use. */
export class QuickWords {
  private readonly known = new Map<string, Pieces | undefined>();

  constructor(private readonly phrases: Readonly<Record<string, string>>) {}

  /** A text filled in; nothing if it is not in the plain part. Throws `Lacking` with the name of a value that is absent where it would be printed. */
  fill(text: string, values: Values): string | undefined {
    const pieces = this.pieces(text);
    if (pieces === undefined) return undefined;
    try {
      return this.join(pieces, values, 0);
    } catch (error) {
      if (error instanceof NotPlain) return undefined;
      throw error;
    }
  }

  private pieces(text: string): Pieces | undefined {
    if (this.known.has(text)) return this.known.get(text);
    const pieces = piecesOf(text);
    this.known.set(text, pieces);
    return pieces;
  }

  private join(pieces: Pieces, values: Values, depth: number): string {
    let made = '';
    for (const piece of pieces) {
      if (typeof piece === 'string') made += piece;
      else if ('value' in piece) made += printed(valueAt(values, piece.value), piece.value);
      else if ('phrase' in piece) made += this.phrase(piece.phrase, values, depth + 1);
      else
        made += this.join(
          isThere(valueAt(values, piece.asks)) ? piece.ifThere : piece.ifAbsent,
          values,
          depth,
        );
    }
    return made;
  }

  private phrase(called: string, values: Values, depth: number): string {
    const text = Object.hasOwn(this.phrases, called) ? this.phrases[called] : undefined;
    const pieces = text === undefined || depth > deepest ? undefined : this.pieces(text);
    if (pieces === undefined) throw new NotPlain();
    return this.join(pieces, values, depth);
  }
}

type Value = Values[string];

/** The value at a path; every name on it must be there, if only to say that the car has not got it. */
function valueAt(values: Values, path: Path): Value {
  let value: Value = values;
  for (const part of path) {
    if (typeof value !== 'object' || !Object.hasOwn(value, part)) throw new NotPlain();
    value = value[part];
  }
  return value;
}

function isThere(value: Value): boolean {
  return value !== undefined && value !== '';
}

function printed(value: Value, path: Path): string {
  const text = typeof value === 'object' ? value.called : value;
  if (typeof text === 'string') return text;
  if (value === undefined) throw new Lacking(path.join('.'));
  throw new NotPlain();
}
