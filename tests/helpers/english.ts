/** The languages that come with the program; English is the one the library is written in. */
import { readdirSync, readFileSync } from 'node:fs';
import { type Languages, readLanguages } from '../../src/language/readLanguages';
import type { SilentTheme, Theme } from '../../src/layout/theme';
import { themeInWords } from '../../src/layout/theme';

const folder = new URL('../../shared/', import.meta.url);

/** The files of every language by their names in the folder `shared`. */
export function languageFiles(): Map<string, string> {
  const names = readdirSync(new URL('languages/', folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `languages/${name}`);
  return new Map(names.map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]));
}

/** Every language. */
export const languages: Languages = read();

/** English as it stands in the library. */
export const english = languages.plain;

/** A theme in English. */
export function inEnglish(theme: SilentTheme): Theme {
  return themeInWords(theme, english.furniture);
}

function read(): Languages {
  const outcome = readLanguages(languageFiles());
  if (outcome.ok) return outcome.value;
  throw new Error(JSON.stringify(outcome.problems, null, 2));
}
