/**
 * The tables of a font file, each unpacked when it is first asked for: measuring never looks at the outlines, which are
 * most of a file.
 */
import { tagAt } from './sfnt';
import { isWoff, packedTables } from './woff';

/** The tables of a font by their tags. */
export interface FontTables {
  /** A table as it lies in the file; nothing if the font has none of this tag. */
  bytes(tag: string): Uint8Array | undefined;
  /** The same, to read numbers from. */
  view(tag: string): DataView | undefined;
}

/** The tables of a TrueType, OpenType or WOFF file. Throws a RangeError if the file ends before they do. */
export function tablesOf(file: Uint8Array): FontTables {
  const entries = isWoff(file) ? packedTables(file) : plainTables(file);
  const unpacked = new Map<string, Uint8Array>();
  const bytes = (tag: string): Uint8Array | undefined => {
    const known = unpacked.get(tag);
    if (known !== undefined) return known;
    const table = entries.get(tag)?.();
    if (table !== undefined) unpacked.set(tag, table);
    return table;
  };
  return {
    bytes,
    view(tag) {
      const table = bytes(tag);
      return table === undefined ? undefined : viewOf(table);
    },
  };
}

/** The same bytes, to read numbers from. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function plainTables(file: Uint8Array): ReadonlyMap<string, () => Uint8Array> {
  const view = viewOf(file);
  const tables = new Map<string, () => Uint8Array>();
  for (let index = 0; index < view.getUint16(4); index += 1) {
    const at = 12 + 16 * index;
    const [offset, length] = [view.getUint32(at + 8), view.getUint32(at + 12)];
    if (offset + length > file.length) throw new RangeError(`the table \`${tagAt(view, at)}\` is cut off`);
    tables.set(tagAt(view, at), () => file.subarray(offset, offset + length));
  }
  return tables;
}
