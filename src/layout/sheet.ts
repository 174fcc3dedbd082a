/**
 * Sheets: the paper and card sizes printed on, and the clear edge they need.
 *
 * ISO sizes are those of ISO 216; letter, legal and index cards are the usual American sizes.
 */
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import type { Margins, Sheet } from './types';

/** Points to the millimetre (1 in = 25.4 mm = 72 pt, exactly). */
export const pointsPerMm = 72 / 25.4;

/** Edge that must stay clear on a laminated card so that the pouch seals, in millimetres (makers' advice: 2 to 3). */
export const laminatingEdgeMm = 3;

/** The outer size of a sheet, upright. */
export interface SheetSize {
  readonly name: string;
  readonly widthPt: number;
  readonly heightPt: number;
}

const mm = (width: number, height: number) => ({
  widthPt: width * pointsPerMm,
  heightPt: height * pointsPerMm,
});
const inches = (width: number, height: number) => ({ widthPt: width * 72, heightPt: height * 72 });

/** Named sheets, upright. Names are compared without regard to case and spaces. */
export const sheetSizes: readonly SheetSize[] = [
  { name: 'A3', ...mm(297, 420) },
  { name: 'A4', ...mm(210, 297) },
  { name: 'A5', ...mm(148, 210) },
  { name: 'A6', ...mm(105, 148) },
  { name: 'A7', ...mm(74, 105) },
  { name: 'letter', ...inches(8.5, 11) },
  { name: 'legal', ...inches(8.5, 14) },
  { name: 'half letter', ...inches(5.5, 8.5) },
  { name: 'card 3 x 5', ...inches(3, 5) },
  { name: 'card 4 x 6', ...inches(4, 6) },
  { name: 'card 5 x 8', ...inches(5, 8) },
];

const unitsPt: Readonly<Record<string, number>> = { mm: pointsPerMm, cm: 10 * pointsPerMm, in: 72, pt: 1 };
const smallestSidePt = 36;
const largestSidePt = 14_400;

/**
 * Reads a sheet size from words: a name (`A6`, `half letter`, `card 4 x 6`) or measures (`90 x 140 mm`,
 * `3.5 x 5 in`; the width first), either followed by `landscape` to turn it.
 */
export function readSheetSize(words: string): Outcome<SheetSize> {
  const asked = words.trim().replace(/\s+/g, ' ');
  const turned = /\s*landscape$/i.test(asked);
  const plain = turned ? asked.replace(/\s*landscape$/i, '') : asked;
  const size = namedSize(plain) ?? measuredSize(plain);
  if (size === undefined) return bad([unknownSheet(asked)]);
  if (
    Math.min(size.widthPt, size.heightPt) < smallestSidePt ||
    Math.max(size.widthPt, size.heightPt) > largestSidePt
  ) {
    return bad([impossibleSheet(asked)]);
  }
  return good(turned ? { name: asked, widthPt: size.heightPt, heightPt: size.widthPt } : size);
}

function namedSize(name: string): SheetSize | undefined {
  const key = squeezed(name);
  return sheetSizes.find((size) => squeezed(size.name) === key);
}

function squeezed(name: string): string {
  return name.toLowerCase().replaceAll('×', 'x').replace(/\s+/g, '');
}

function measuredSize(words: string): SheetSize | undefined {
  const parts = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*(mm|cm|in|pt)$/i.exec(words);
  if (parts === null) return undefined;
  const [, width, height, unit] = parts;
  const factor = unitsPt[(unit ?? '').toLowerCase()];
  if (factor === undefined) return undefined;
  return { name: words, widthPt: Number(width) * factor, heightPt: Number(height) * factor };
}

/**
 * A sheet with clear edges. `edgeMm` is one width for all four edges, or each by itself; a `laminated` sheet
 * keeps at least `laminatingEdgeMm` all round.
 */
export function makeSheet(size: SheetSize, edgeMm: number | MarginsMm, laminated: boolean): Outcome<Sheet> {
  const asked =
    typeof edgeMm === 'number' ? { top: edgeMm, right: edgeMm, bottom: edgeMm, left: edgeMm } : edgeMm;
  const least = laminated ? laminatingEdgeMm : 0;
  const edge = (widthMm: number) => Math.max(widthMm, least) * pointsPerMm;
  const margins: Margins = {
    top: edge(asked.top),
    right: edge(asked.right),
    bottom: edge(asked.bottom),
    left: edge(asked.left),
  };
  const widthLeft = size.widthPt - margins.left - margins.right;
  const heightLeft = size.heightPt - margins.top - margins.bottom;
  if (!(widthLeft >= smallestSidePt / 2 && heightLeft >= smallestSidePt / 2)) return bad([noRoom(size)]);
  return good({ ...size, margins });
}

/** Clear edges in millimetres. */
export interface MarginsMm {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

function unknownSheet(found: string): Diagnostic {
  return {
    code: 'sheet-unknown',
    severity: 'error',
    message: `\`${found}\` is not a sheet the program knows`,
    found,
    expected: `one of ${sheetSizes.map((size) => size.name).join(', ')}, or measures such as \`90 x 140 mm\``,
    mend: 'name a sheet from the list, or give width and height with their unit',
  };
}

function impossibleSheet(found: string): Diagnostic {
  return {
    code: 'sheet-too-small',
    severity: 'error',
    message: `a sheet of \`${found}\` cannot be printed on`,
    found,
    expected: 'sides of at least 12.7 mm (0.5 in) and at most 5 m',
    mend: 'check the measures and their unit',
  };
}

function noRoom(size: SheetSize): Diagnostic {
  return {
    code: 'sheet-too-small',
    severity: 'error',
    message: `the clear edges leave no room on \`${size.name}\``,
    found: size.name,
    expected: 'a sheet wider and taller than its clear edges',
    mend: 'use a larger sheet, or narrower edges',
  };
}
