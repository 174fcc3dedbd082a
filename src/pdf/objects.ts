/**
 * The objects of a file, packed: pdfkit writes each on its own, here all that can be are put into compressed
 * object streams (ISO 32000-1, 7.5.7), which makes a tagged manual less than half as large.
 */
import { deflateSync } from 'node:zlib';
import { latin } from './syntax';

/** Something already in the form of the file, to be put into one of pdfkit's dictionaries. */
export class Raw {
  /** By this pdfkit knows that it is not a dictionary. */
  readonly [Symbol.toStringTag] = 'Raw';

  constructor(private readonly body: string) {}

  toString(): string {
    return this.body;
  }

  /** pdfkit ends what hangs on the catalog; here it is finished already. */
  end(): void {}
}

/** Objects in one object stream; readers must unpack a whole stream to get at one of its objects. */
const perStream = 400;

/** A stream with its dictionary, as pdfkit wrote them. */
interface StreamObject {
  readonly id: number;
  readonly head: string;
  readonly bytes: Uint8Array;
}

/** Takes over the writing of a pdfkit document. */
export class ObjectStore {
  private readonly bodies = new Map<number, string>();
  private readonly streams: StreamObject[] = [];
  private pieces: (string | Uint8Array)[] = [];

  constructor(private readonly doc: PDFKit.PDFDocument) {
    doc._write = (piece) => void this.pieces.push(piece);
    doc._refEnd = ({ id }) => this.take(id);
    doc._finalize = () => undefined;
  }

  /** A number for an object that will be written later with `put`. */
  reserve(): number {
    return this.doc._offsets.push(null);
  }

  /** Writes the object `id`. */
  put(id: number, body: string): void {
    this.bodies.set(id, body);
  }

  /** Writes an object and gives its number. */
  add(body: string): number {
    const id = this.reserve();
    this.put(id, body);
    return id;
  }

  /** Writes a stream, packed, with the entries of its dictionary beside its length; gives its number. */
  addStream(entries: string, bytes: Uint8Array): number {
    const id = this.reserve();
    this.putStream(id, entries, bytes);
    return id;
  }

  private putStream(id: number, entries: string, bytes: Uint8Array): void {
    const packed = deflateSync(bytes);
    this.streams.push({
      id,
      head: `<<${entries} /Filter /FlateDecode /Length ${packed.length}>>`,
      bytes: packed,
    });
  }

  /** The whole file, once the document has been ended. */
  file(): Uint8Array {
    const packed = this.pack();
    const parts: Uint8Array[] = [latin('%PDF-1.7\n%\xff\xff\xff\xff\n')];
    const offsets = new Map<number, number>();
    let length = parts[0]?.length ?? 0;
    for (const { id, head, bytes } of this.streams) {
      offsets.set(id, length);
      const part = [latin(`${id} 0 obj\n${head}\nstream\n`), bytes, latin('\nendstream\nendobj\n')];
      for (const piece of part) length += piece.length;
      parts.push(...part);
    }
    this.checkAllWritten();
    parts.push(...this.crossReference(offsets, packed, length));
    return joined(parts);
  }

  private checkAllWritten(): void {
    const written = new Set([...this.bodies.keys(), ...this.streams.map(({ id }) => id)]);
    const missing = this.doc._offsets.findIndex((_, index) => !written.has(index + 1));
    if (missing >= 0) throw new Error(`object ${missing + 1} has a number but was never written`);
  }

  /** pdfkit has written an object: number, body, and for a stream its bytes. */
  private take(id: number): void {
    const [, body, mark, bytes] = this.pieces;
    if (typeof body !== 'string') throw new Error(`object ${id} has no body`);
    if (mark === 'stream' && typeof bytes === 'object') this.streams.push({ id, head: body, bytes });
    else this.bodies.set(id, body);
    this.pieces = [];
  }

  /** Puts all plain objects into object streams; tells for each which stream it is in, and at which place. */
  private pack(): ReadonlyMap<number, readonly [stream: number, place: number]> {
    const packed = new Map<number, readonly [number, number]>();
    const all = [...this.bodies].sort(([a], [b]) => a - b);
    for (let start = 0; start < all.length; start += perStream) {
      const group = all.slice(start, start + perStream);
      const stream = this.doc.ref({});
      let offset = 0;
      const heads: string[] = [];
      for (const [place, [id, body]] of group.entries()) {
        heads.push(`${id} ${offset}`);
        offset += body.length + 1;
        packed.set(id, [stream.id, place]);
      }
      const head = `${heads.join(' ')}\n`;
      Object.assign(stream.data, { Type: 'ObjStm', N: group.length, First: head.length });
      stream.end(latin(head + group.map(([, body]) => body).join('\n')));
    }
    return packed;
  }

  /** The cross-reference stream (7.5.8), which is the trailer too. */
  private crossReference(
    offsets: ReadonlyMap<number, number>,
    packed: ReadonlyMap<number, readonly [number, number]>,
    start: number,
  ): readonly Uint8Array[] {
    const self = this.doc.ref({});
    const size = this.doc._offsets.length + 1;
    const rows = new Uint8Array(size * 7);
    const row = (id: number, kind: number, where: number, place: number): void => {
      const bytes = [kind, where >>> 24, where >>> 16, where >>> 8, where, place >>> 8, place];
      rows.set(
        bytes.map((byte) => byte & 0xff),
        id * 7,
      );
    };
    row(0, 0, 0, 65535);
    for (const [id, offset] of offsets) row(id, 1, offset, 0);
    for (const [id, [stream, place]] of packed) row(id, 2, stream, place);
    row(self.id, 1, start, 0);
    const { _root: root, _info: info, _id: name } = this.doc;
    Object.assign(self.data, {
      Type: 'XRef',
      Size: size,
      W: [1, 4, 2],
      Root: root,
      Info: info,
      ID: [name, name],
    });
    self.end(rows);
    const written = this.streams.at(-1);
    if (written?.id !== self.id) throw new Error('the cross-reference stream was not written');
    return [
      latin(`${self.id} 0 obj\n${written.head}\nstream\n`),
      written.bytes,
      latin(`\nendstream\nendobj\nstartxref\n${start}\n%%EOF\n`),
    ];
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
