/**
 * Unpacks a WOFF font file (W3C Recommendation "WOFF File Format 1.0"): a table of it, or all of it into the TrueType or
 * OpenType file it holds.
 */
import { inflateSync } from 'node:zlib';
import { tagAt } from './sfnt';

const woffSignature = 0x774f4646;
const woffHeaderBytes = 44;
const woffEntryBytes = 20;
const sfntHeaderBytes = 12;
const sfntEntryBytes = 16;

interface Table {
  readonly tag: number;
  readonly checksum: number;
  readonly bytes: Uint8Array;
}

/** Whether a file is a WOFF file. */
export function isWoff(file: Uint8Array): boolean {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  return file.byteLength >= woffHeaderBytes && view.getUint32(0) === woffSignature;
}

/** Unpacks each table of a WOFF file when it is called for, by its tag. */
export function packedTables(file: Uint8Array): ReadonlyMap<string, () => Uint8Array> {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const tables = new Map<string, () => Uint8Array>();
  for (let index = 0; index < view.getUint16(12); index += 1) {
    const at = woffHeaderBytes + index * woffEntryBytes;
    tables.set(tagAt(view, at), () => readTable(file, view, at).bytes);
  }
  return tables;
}

/** The font in `file`, unpacked; a file that is not WOFF is given back as it is. */
export function unpackWoff(file: Uint8Array): Uint8Array {
  if (!isWoff(file)) return file;
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const count = view.getUint16(12);
  const tables = Array.from({ length: count }, (_, index) =>
    readTable(file, view, woffHeaderBytes + index * woffEntryBytes),
  );
  return writeSfnt(view.getUint32(4), tables);
}

function readTable(file: Uint8Array, view: DataView, at: number): Table {
  const offset = view.getUint32(at + 4);
  const packedBytes = view.getUint32(at + 8);
  const bytesUnpacked = view.getUint32(at + 12);
  const packed = file.subarray(offset, offset + packedBytes);
  const bytes = packedBytes < bytesUnpacked ? inflateSync(packed) : packed;
  return { tag: view.getUint32(at), checksum: view.getUint32(at + 16), bytes };
}

function writeSfnt(flavour: number, tables: readonly Table[]): Uint8Array {
  const padded = (bytes: number) => (bytes + 3) & ~3;
  const start = sfntHeaderBytes + tables.length * sfntEntryBytes;
  const total = tables.reduce((sum, { bytes }) => sum + padded(bytes.byteLength), start);
  const sfnt = new Uint8Array(total);
  const view = new DataView(sfnt.buffer);
  const steps = Math.floor(Math.log2(tables.length));
  view.setUint32(0, flavour);
  view.setUint16(4, tables.length);
  view.setUint16(6, 2 ** steps * 16);
  view.setUint16(8, steps);
  view.setUint16(10, tables.length * 16 - 2 ** steps * 16);
  let offset = start;
  tables.forEach(({ tag, checksum, bytes }, index) => {
    const at = sfntHeaderBytes + index * sfntEntryBytes;
    view.setUint32(at, tag);
    view.setUint32(at + 4, checksum);
    view.setUint32(at + 8, offset);
    view.setUint32(at + 12, bytes.byteLength);
    sfnt.set(bytes, offset);
    offset += padded(bytes.byteLength);
  });
  return sfnt;
}
