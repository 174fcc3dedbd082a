/** The fonts the program prints with, read from the shared files, and the theme that comes with them. */
import { readFileSync } from 'node:fs';
import { measureFonts } from '../../src/font/measure';
import type { Face } from '../../src/font/metrics';
import { readTheme, type Theme } from '../../src/layout/theme';
import { inEnglish } from './english';

const folder = new URL('../../shared/', import.meta.url);
const names: Readonly<Record<Face, string>> = {
  text: 'IBMPlexSans-Regular',
  'text-italic': 'IBMPlexSans-Italic',
  'text-bold': 'IBMPlexSans-Bold',
  narrow: 'IBMPlexSansCondensed-Regular',
  'narrow-bold': 'IBMPlexSansCondensed-Bold',
};

/** The bytes of each face's file. */
export const fontFiles = Object.fromEntries(
  Object.entries(names).map(([face, name]) => [
    face,
    new Uint8Array(readFileSync(new URL(`fonts/${name}.woff`, folder))),
  ]),
) as Record<Face, Uint8Array>;

/** The real fonts, measured. */
export const plexFonts = measureFonts(fontFiles);

/** Text of the theme that comes with the program. */
export const plainThemeText = readFileSync(new URL('themes/plain.yaml', folder), 'utf8');

/** That theme, read. */
export const plainTheme: Theme = theme(plainThemeText);

function theme(text: string): Theme {
  const read = readTheme(text, 'plain.yaml', plexFonts);
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 2));
  return inEnglish(read.value);
}

/** One size for every face. */
export const everyFace = (sizePt: number) => ({
  text: sizePt,
  'text-italic': sizePt,
  'text-bold': sizePt,
  narrow: sizePt,
  'narrow-bold': sizePt,
});
