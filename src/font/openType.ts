/**
 * OpenType layout tables (ISO/IEC 14496-22, `GSUB` and `GPOS`), as far as plain words need them: which lookups a
 * feature has, coverage and classes of glyphs.
 */
import { tagAt } from './sfnt';

/** One subtable of a lookup; offsets inside it count from its start. */
export interface Subtable {
  readonly type: number;
  readonly view: DataView;
}

/** The lookups of a feature, each the list of its subtables. */
export type Lookups = readonly (readonly Subtable[])[];

/** Features of Latin text in a `GSUB` or `GPOS` table, each with its lookups. `extension` is the type that only points on. */
export function featuresOf(table: DataView, extension: number): ReadonlyMap<string, Lookups> {
  const features = new Map<string, Lookups>();
  const featureList = table.getUint16(6);
  for (const index of latinFeatures(table)) {
    const at = featureList + 2 + 6 * index;
    const feature = featureList + table.getUint16(at + 4);
    const lookups = Array.from({ length: table.getUint16(feature + 2) }, (_, each) =>
      table.getUint16(feature + 4 + 2 * each),
    );
    lookups.sort((a, b) => a - b);
    features.set(
      tagAt(table, at),
      lookups.map((lookup) => subtablesOf(table, lookup, extension)),
    );
  }
  return features;
}

/** Numbers of the features of the script `latn` in its default language. */
function latinFeatures(table: DataView): number[] {
  const scripts = table.getUint16(4);
  for (let index = 0; index < table.getUint16(scripts); index += 1) {
    const at = scripts + 2 + 6 * index;
    if (tagAt(table, at) !== 'latn') continue;
    const script = scripts + table.getUint16(at + 4);
    const language = script + table.getUint16(script);
    return Array.from({ length: table.getUint16(language + 4) }, (_, each) =>
      table.getUint16(language + 6 + 2 * each),
    );
  }
  return [];
}

function subtablesOf(table: DataView, lookup: number, extension: number): readonly Subtable[] {
  const lookupList = table.getUint16(8);
  const at = lookupList + table.getUint16(lookupList + 2 + 2 * lookup);
  const type = table.getUint16(at);
  return Array.from({ length: table.getUint16(at + 4) }, (_, index) => {
    const offset = at + table.getUint16(at + 6 + 2 * index);
    return type === extension
      ? { type: table.getUint16(offset + 2), view: from(table, offset + table.getUint32(offset + 4)) }
      : { type, view: from(table, offset) };
  });
}

/** What lies in `view` from `offset` on. */
export function from(view: DataView, offset: number): DataView {
  return new DataView(view.buffer, view.byteOffset + offset, view.byteLength - offset);
}

/** A glyph's index in the coverage table at `at`; -1 if it is not covered. */
export function coverageOf(view: DataView, at: number, glyph: number): number {
  const isList = view.getUint16(at) === 1;
  const size = isList ? 2 : 6;
  for (let low = 0, high = view.getUint16(at + 2) - 1; low <= high; ) {
    const middle = (low + high) >> 1;
    const entry = at + 4 + size * middle;
    const first = view.getUint16(entry);
    const last = isList ? first : view.getUint16(entry + 2);
    if (glyph < first) high = middle - 1;
    else if (glyph > last) low = middle + 1;
    else return isList ? middle : view.getUint16(entry + 4) + glyph - first;
  }
  return -1;
}

/** A glyph's class in the class definition at `at`; 0 if it is in none. */
export function classOf(view: DataView, at: number, glyph: number): number {
  if (view.getUint16(at) === 1) {
    const index = glyph - view.getUint16(at + 2);
    return index >= 0 && index < view.getUint16(at + 4) ? view.getUint16(at + 6 + 2 * index) : 0;
  }
  for (let low = 0, high = view.getUint16(at + 2) - 1; low <= high; ) {
    const middle = (low + high) >> 1;
    const entry = at + 4 + 6 * middle;
    if (glyph < view.getUint16(entry)) high = middle - 1;
    else if (glyph > view.getUint16(entry + 2)) low = middle + 1;
    else return view.getUint16(entry + 4);
  }
  return 0;
}

/** The glyphs in the coverage table at `at`. */
export function coveredBy(view: DataView, at: number): readonly number[] {
  const isList = view.getUint16(at) === 1;
  const glyphs: number[] = [];
  for (let index = 0; index < view.getUint16(at + 2); index += 1) {
    const entry = at + 4 + (isList ? 2 : 6) * index;
    const first = view.getUint16(entry);
    const last = isList ? first : view.getUint16(entry + 2);
    for (let glyph = first; glyph <= last; glyph += 1) glyphs.push(glyph);
  }
  return glyphs;
}
