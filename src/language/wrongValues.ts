/** The problem with a text of a language that does not put in what the same text in English does. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { SpecPath, SpecSource } from '../spec/source';

/** Tells it at the text. */
export function wrongValues(source: SpecSource, path: SpecPath, message: string, text: string): Diagnostic {
  return {
    code: 'language-values',
    severity: 'error',
    at: source.spotOfValue(path),
    message,
    found: `\`${text}\``,
    mend: 'put in the same values, numbers and tags as in English, in any order',
  };
}
