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

/** An object stream and the objects in it. */
interface Packed {
  readonly stream: number;
  readonly ids: readonly number[];
}

/** Takes over the writing of a pdfkit document. */
export class ObjectStore {
  /** Bodies by number; objects with a stream, and those not yet written, have none. */
  private readonly bodies: (string | undefined)[] = [];
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
    this.bodies[id] = body;
  }

  /** Writes an object and gives its number. */
  add(body: string): number {
    const id = this.reserve();
    this.put(id, body);
    return id;
  }

  /** Packs and writes a stream, with the entries of its dictionary beside those of its packing; gives its number. */
  addStream(entries: string, bytes: Uint8Array): number {
    return this.addPacked(entries, deflateSync(bytes));
  }

  /** Writes a stream that has been packed already. */
  addPacked(entries: string, bytes: Uint8Array): number {
    const id = this.reserve();
    const head = `<<${entries} /Filter /FlateDecode /Length ${bytes.length}>>`;
    this.streams.push({ id, head, bytes });
    return id;
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
    const streams = new Set(this.streams.map(({ id }) => id));
    for (let id = 1; id <= this.doc._offsets.length; id += 1) {
      if (this.bodies[id] === undefined && !streams.has(id))
        throw new Error(`object ${id} has a number but was never written`);
    }
  }

  /** pdfkit has written an object: number, body, and for a stream its bytes. */
  private take(id: number): void {
    const [, body, mark, bytes] = this.pieces;
    if (typeof body !== 'string') throw new Error(`object ${id} has no body`);
    if (mark === 'stream' && typeof bytes === 'object') this.streams.push({ id, head: body, bytes });
    else this.bodies[id] = body;
    this.pieces = [];
  }

  /** Puts all plain objects into object streams; gives for each stream which objects are in it, in order. */
  private pack(): readonly Packed[] {
    const all = [...this.bodies.keys()].filter((id) => this.bodies[id] !== undefined);
    const packed: Packed[] = [];
    for (let start = 0; start < all.length; start += perStream) {
      const ids = all.slice(start, start + perStream);
      let head = '';
      let inside = '';
      ids.forEach((id) => {
        head += `${id} ${inside.length} `;
        inside += `${this.bodies[id]}\n`;
      });
      const stream = this.addStream(
        `/Type /ObjStm /N ${ids.length} /First ${head.length}`,
        latin(head + inside),
      );
      packed.push({ stream, ids });
    }
    return packed;
  }

  /** The cross-reference stream (7.5.8), which is the trailer too. */
  private crossReference(
    offsets: ReadonlyMap<number, number>,
    packed: readonly Packed[],
    start: number,
  ): readonly Uint8Array[] {
    const self = this.doc.ref({});
    const size = this.doc._offsets.length + 1;
    const rows = new Uint8Array(size * 7);
    const view = new DataView(rows.buffer);
    const row = (id: number, kind: number, where: number, place: number): void => {
      view.setUint8(id * 7, kind);
      view.setUint32(id * 7 + 1, where);
      view.setUint16(id * 7 + 5, place);
    };
    row(0, 0, 0, 65535);
    for (const [id, offset] of offsets) row(id, 1, offset, 0);
    for (const { stream, ids } of packed)
      ids.forEach((id, place) => {
        row(id, 2, stream, place);
      });
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
