/**
 * Gathers what goes wrong while a paper is laid out. Problems of one kind are told once, with all their places.
 */
import type { DiagnosticCode } from '../diagnostic/catalogue';
import type { Diagnostic, Severity, Spot } from '../diagnostic/diagnostic';
import type { BlockOrigin } from '../markup/block';

/** The place of a block, as problems give it. */
export function spotOf(origin: BlockOrigin): Spot {
  return { file: origin.template, line: origin.line, column: origin.column };
}

/** What one kind of problem says. */
export interface ProblemText {
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly mend: string;
}

/** Problems in the order they were met. */
export class Problems {
  private readonly single: Diagnostic[] = [];
  private readonly lettersAt = new Map<string, Map<string, BlockOrigin>>();
  private readonly brokenAt = new Map<string, BlockOrigin>();

  /** Adds a problem of the block at `origin`. */
  add(text: ProblemText, origin: BlockOrigin): void {
    this.single.push({ ...text, at: spotOf(origin) });
  }

  /** Notes letters that a face cannot print. */
  missingLetters(letters: readonly string[], origin: BlockOrigin): void {
    for (const letter of letters) {
      const places = this.lettersAt.get(letter) ?? new Map<string, BlockOrigin>();
      places.set(`${origin.template}:${origin.line}:${origin.column}`, origin);
      this.lettersAt.set(letter, places);
    }
  }

  /** Notes a word that had to be broken between letters. */
  brokenWord(word: string, origin: BlockOrigin): void {
    this.brokenAt.set(word, origin);
  }

  /** All problems, told once each. */
  told(): Diagnostic[] {
    return [...this.single, ...this.toldLetters(), ...this.toldWords()];
  }

  private toldLetters(): Diagnostic[] {
    const first = [...this.lettersAt.values()][0]?.values().next().value;
    if (first === undefined) return [];
    const letters = [...this.lettersAt.keys()];
    const named = letters.map((letter) => `\`${letter}\` (${codePointName(letter)})`);
    return [
      {
        code: 'layout-missing-letters',
        severity: 'error',
        message: `the fonts cannot print ${named.join(', ')}`,
        at: spotOf(first),
        found: letters.join(' '),
        expected: 'letters that the fonts have',
        mend: 'write the word without these letters',
        notes: [...this.lettersAt].map(
          ([letter, places]) => `\`${letter}\` stands at ${[...places.keys()].join(', ')}`,
        ),
      },
    ];
  }

  private toldWords(): Diagnostic[] {
    const first = [...this.brokenAt.values()][0];
    if (first === undefined) return [];
    const words = [...this.brokenAt.keys()];
    return [
      {
        code: 'layout-word-broken',
        severity: 'remark',
        message: `${words.length === 1 ? 'a word was' : `${words.length} words were`} broken between letters to fit the line`,
        at: spotOf(first),
        found: words.map((word) => `\`${word}\``).join(', '),
        mend: 'use a shorter word, or put a hyphen where it may be broken',
      },
    ];
  }
}

function codePointName(letter: string): string {
  return `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
