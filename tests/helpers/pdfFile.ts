/**
 * A reader of PDF files for tests: from bytes to plain values, knowing nothing of the writer.
 *
 * It reads what ISO 32000-1 (7.3, 7.5) allows as far as our files use it: cross-reference streams, object streams,
 * Flate. Anything else is an error.
 */
import { inflateSync } from 'node:zlib';

/** `/Name`. */
export class Name {
  constructor(readonly name: string) {}
}

/** `12 0 R`. */
export class Ref {
  constructor(readonly id: number) {}
}

/** A stream: its dictionary and its bytes, inflated. */
export class Stream {
  constructor(
    readonly dict: Dict,
    readonly bytes: Buffer,
  ) {}
}

/** A dictionary. */
export interface Dict {
  [key: string]: Value | undefined;
}

/** A string is given as text: UTF-16 with a mark is decoded, anything else taken as Latin-1. */
export type Value = null | boolean | number | string | Name | Ref | Stream | readonly Value[] | Dict;

/** True for a dictionary, also that of no particular type. */
export function isDict(value: Value | undefined): value is Dict {
  const special =
    value instanceof Name || value instanceof Ref || value instanceof Stream || Array.isArray(value);
  return typeof value === 'object' && value !== null && !special;
}

const letters = (text: Buffer | string): string =>
  typeof text === 'string' ? text : text.toString('latin1');

/** Reads values one after the other. */
export class Reader {
  at: number;

  constructor(
    private readonly text: string,
    at = 0,
  ) {
    this.at = at;
  }

  get done(): boolean {
    this.skip();
    return this.at >= this.text.length;
  }

  private skip(): void {
    const blank = /(?:[\0\t\n\f\r ]|%[^\r\n]*)*/y;
    blank.lastIndex = this.at;
    blank.exec(this.text);
    this.at = blank.lastIndex;
  }

  private match(pattern: RegExp): RegExpExecArray | undefined {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text);
    if (found) this.at = pattern.lastIndex;
    return found ?? undefined;
  }

  /** A bare word, such as an operator. */
  word(): string | undefined {
    this.skip();
    return this.match(/[A-Za-z*'"]+[0-9]*/y)?.[0];
  }

  value(): Value {
    this.skip();
    const reference = this.match(/(\d+) (\d+) R(?![A-Za-z])/y);
    if (reference) return new Ref(Number(reference[1]));
    const number = this.match(/[+-]?(?:\d+\.?\d*|\.\d+)/y);
    if (number) return Number(number[0]);
    const name = this.match(/\/([^\0\t\n\f\r ()<>[\]{}/%]*)/y);
    if (name)
      return new Name(
        (name[1] ?? '').replace(/#(..)/g, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16))),
      );
    if (this.match(/<</y)) return this.dict();
    if (this.match(/\[/y)) return this.array();
    const hex = this.match(/<([0-9A-Fa-f\s]*)>/y);
    if (hex) return decode(Buffer.from((hex[1] ?? '').replace(/\s/g, ''), 'hex').toString('latin1'));
    if (this.match(/\(/y)) return decode(this.literal());
    const word = this.match(/true|false|null/y)?.[0];
    if (word) return word === 'null' ? null : word === 'true';
    throw new Error(`no value at ${this.at}: ${this.text.slice(this.at, this.at + 40)}`);
  }

  private dict(): Dict {
    const dict: Dict = {};
    for (;;) {
      this.skip();
      if (this.match(/>>/y)) return dict;
      const key = this.value();
      if (!(key instanceof Name)) throw new Error(`a key that is no name at ${this.at}`);
      if (key.name in dict) throw new Error(`the key ${key.name} stands twice in one dictionary`);
      dict[key.name] = this.value();
    }
  }

  private array(): readonly Value[] {
    const list: Value[] = [];
    for (;;) {
      this.skip();
      if (this.match(/\]/y)) return list;
      list.push(this.value());
    }
  }

  private literal(): string {
    let text = '';
    for (let depth = 1; ; ) {
      const letter = this.text[this.at++];
      if (letter === undefined) throw new Error('a string has no end');
      if (letter === '\\') {
        const next = this.text[this.at++] ?? '';
        text += ({ n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' } as Record<string, string>)[next] ?? next;
        continue;
      }
      depth += letter === '(' ? 1 : letter === ')' ? -1 : 0;
      if (depth === 0) return text;
      text += letter;
    }
  }
}

function decode(bytes: string): string {
  if (!bytes.startsWith('\xfe\xff')) return bytes;
  return Buffer.from(bytes.slice(2), 'latin1').swap16().toString('utf16le');
}

/** A whole file. Objects may be changed, to see what a check says of a broken file. */
export class PdfFile {
  readonly objects = new Map<number, Value>();
  readonly trailer: Dict;
  readonly header: string;
  /** The first bytes, the header among them. */
  readonly start: string;

  constructor(bytes: Uint8Array) {
    const buffer = Buffer.from(bytes);
    const text = letters(buffer);
    this.header = text.slice(0, 9);
    this.start = text.slice(0, 32);
    const start = /startxref\n(\d+)\n%%EOF\n?$/.exec(text)?.[1];
    if (start === undefined) throw new Error('the file has no end');
    const table = streamAt(buffer, text, Number(start));
    this.trailer = table.dict;
    this.readAll(buffer, text, table);
  }

  /** The value itself, where a reference leads to it. */
  get(value: Value | undefined): Value {
    if (!(value instanceof Ref)) return value ?? null;
    const found = this.objects.get(value.id);
    if (found === undefined) throw new Error(`object ${value.id} does not exist`);
    return this.get(found);
  }

  /** The dictionary a value is or leads to; an empty one if it is something else. */
  dict(value: Value | undefined): Dict {
    const found = this.get(value);
    if (found instanceof Stream) return found.dict;
    return isDict(found) ? found : {};
  }

  /** The list a value is or leads to; a single value counts as a list of one, none as an empty one. */
  list(value: Value | undefined): readonly Value[] {
    const found = this.get(value);
    if (Array.isArray(found)) return found as readonly Value[];
    return found === null ? [] : [value ?? null];
  }

  stream(value: Value | undefined): Stream {
    const found = this.get(value);
    if (!(found instanceof Stream)) throw new Error('this is not a stream');
    return found;
  }

  get catalog(): Dict {
    return this.dict(this.trailer.Root);
  }

  get pages(): readonly Ref[] {
    return this.list(this.dict(this.catalog.Pages).Kids).filter((kid) => kid instanceof Ref);
  }

  private readAll(buffer: Buffer, text: string, table: Stream): void {
    const rows = rowsOf(table, this.list(table.dict.W).map(Number));
    for (const [id, [kind, offset]] of rows.entries()) {
      if (kind === 1) this.objects.set(id, objectAt(buffer, text, offset, id));
    }
    for (const [id, [kind, holder, place]] of rows.entries()) {
      if (kind === 2) this.objects.set(id, objectIn(this.stream(new Ref(holder)), place, id));
    }
  }
}

type Row = readonly [kind: number, where: number, place: number];

function rowsOf(table: Stream, widths: readonly number[]): readonly Row[] {
  const length = widths.reduce((sum, width) => sum + width, 0);
  return Array.from({ length: table.bytes.length / length }, (_, id) => {
    let at = id * length;
    const [kind = 0, where = 0, place = 0] = widths.map((width) => {
      at += width;
      return table.bytes.readUIntBE(at - width, width);
    });
    return [kind, where, place];
  });
}

function streamAt(buffer: Buffer, text: string, offset: number): Stream {
  const value = objectAt(buffer, text, offset);
  if (!(value instanceof Stream)) throw new Error(`no stream at ${offset}`);
  return value;
}

function objectAt(buffer: Buffer, text: string, offset: number, id?: number): Value {
  const head = /^(\d+) 0 obj\s/.exec(text.slice(offset, offset + 20));
  if (!head || (id !== undefined && Number(head[1]) !== id))
    throw new Error(`object ${id} is not at ${offset}`);
  const reader = new Reader(text, offset + head[0].length);
  const value = reader.value();
  const mark = /^\s*stream\r?\n/.exec(text.slice(reader.at, reader.at + 12));
  if (!mark || !isDict(value)) return value;
  const begin = reader.at + mark[0].length;
  const end = begin + Number(value.Length);
  if (!/^\s*endstream\s+endobj/.test(text.slice(end, end + 24)))
    throw new Error(`the stream at ${offset} is not as long as it says`);
  const raw = buffer.subarray(begin, end);
  const filter = value.Filter;
  return new Stream(value, filter instanceof Name && filter.name === 'FlateDecode' ? inflateSync(raw) : raw);
}

function objectIn(holder: Stream, place: number, id: number): Value {
  const text = letters(holder.bytes);
  const numbers = text.slice(0, Number(holder.dict.First)).trim().split(/\s+/).map(Number);
  if (numbers[place * 2] !== id) throw new Error(`object ${id} is not at place ${place} of its stream`);
  return new Reader(text, Number(holder.dict.First) + (numbers[place * 2 + 1] ?? 0)).value();
}

/** One operator of a content stream with what stands before it. */
export interface Operation {
  readonly operator: string;
  readonly operands: readonly Value[];
}

/** The operators of a content stream, in order. */
export function operations(stream: Stream): readonly Operation[] {
  const reader = new Reader(letters(stream.bytes));
  const list: Operation[] = [];
  let operands: Value[] = [];
  while (!reader.done) {
    const operator = reader.word();
    if (operator === undefined) operands.push(reader.value());
    else {
      list.push({ operator, operands });
      operands = [];
    }
  }
  return list;
}
