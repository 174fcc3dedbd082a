/** The look that comes with the program, read from its folder. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { lookInWords, readScreenLook, type ScreenLook, type ScreenLookFiles } from '../../src/html/look';
import { english } from '../helpers/english';
import { squareFonts } from '../helpers/squareMetrics';

const folder = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'shared', 'screen');

/** The files of the look, as text. */
export const lookFiles: ScreenLookFiles = {
  data: readFileSync(join(folder, 'screen.yaml'), 'utf8'),
  style: readFileSync(join(folder, 'page.css'), 'utf8'),
  script: readFileSync(join(folder, 'page.js'), 'utf8'),
};

/** The look, or an error with everything that is wrong with it. */
export function plainLook(): ScreenLook {
  const look = readScreenLook(lookFiles);
  if (!look.ok) throw new Error(JSON.stringify(look.problems, null, 2));
  return lookInWords(look.value, english.furniture);
}

/** What a page for a screen is written with, but for its title. */
export const screenOptions = {
  language: 'en-GB',
  car: 'Pipit',
  issue: 'B',
  date: '2026-05-01',
  fingerprint: '7GKX-4MRT',
  invented: true,
  look: plainLook(),
  fonts: squareFonts,
};
