/** Sheets by their names, and a letter page in the plain theme with nothing around its text. */
import { makeSheet, readSheetSize } from '../../src/layout/sheet';
import type { FlowOptions, Sheet } from '../../src/layout/types';
import { plainTheme, plexFonts } from './fonts';
import { nothingAround } from './squarePage';

/** A sheet with a clear edge of so many millimetres, for a laminated card or not. */
export function sheetOf(name: string, edgeMm: number, laminated: boolean): Sheet {
  const size = readSheetSize(name);
  const sheet = size.ok ? makeSheet(size.value, edgeMm, laminated) : size;
  if (!sheet.ok) throw new Error(`there is no sheet ${name}`);
  return sheet.value;
}

/** Options for letter pages. */
export const letterPage: FlowOptions = {
  fonts: plexFonts,
  theme: plainTheme,
  sheet: sheetOf('letter', 18, false),
  ...nothingAround,
};
