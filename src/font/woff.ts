/**
 * Unpacks a WOFF font file (W3C Recommendation "WOFF File Format 1.0") into the TrueType or OpenType file it holds.
 *
 * Font readers unpack each table by themselves, slowly and every time; unpacked once, a font is measured and
 * embedded from the same bytes.
 */
import { inflateSync } from 'node:zlib';

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

/** The font in `file`, unpacked; a file that is not WOFF is given back as it is. */
export function unpackWoff(file: Uint8Array): Uint8Array {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (file.byteLength < woffHeaderBytes || view.getUint32(0) !== woffSignature) return file;
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
