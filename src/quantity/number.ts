/**
 * Reading the number in front of a unit: decimals, fractions, mixed numbers.
 */

/** Fractions that have a character of their own. */
const characterFractions: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** A number as read, and where the rest of the text begins. */
export interface ReadNumber {
  readonly value: number;
  /** False for `2.5` and `1/2`: in `4 ft 8 in` only the last number may be broken. */
  readonly whole: boolean;
  readonly rest: string;
}

const character = Object.keys(characterFractions).join('');
const wholeNumber = String.raw`\d{1,3}(?:,\d{3})+|\d+`;
const mixed = new RegExp(
  String.raw`^(?:(${wholeNumber})(?:\s+|-|\s*(?=[${character}])))?(?:(\d+)\s*[/\u2044]\s*(\d+)|([${character}]))`,
);
const decimal = new RegExp(String.raw`^(?:(?:${wholeNumber})(?:\.\d+)?|\.\d+)`);

/** Read a number without sign from the start of `text`; undefined if none stands there. */
export function readNumber(text: string): ReadNumber | undefined {
  const broken = mixed.exec(text);
  if (broken) {
    const [all, whole, over, under, sign] = broken;
    const part = sign === undefined ? Number(over) / Number(under) : (characterFractions[sign] ?? Number.NaN);
    const value = Number((whole ?? '0').replaceAll(',', '')) + part;
    return accept(value, false, text.slice(all.length));
  }
  const plain = decimal.exec(text);
  if (!plain) return undefined;
  const digits = plain[0].replaceAll(',', '');
  return accept(Number(digits), /^\d+$/.test(digits), text.slice(plain[0].length));
}

/** A number must end where it ends: `1.2.3`, `2,5`, `1e5` and `1/2/3` are not numbers. */
function accept(value: number, whole: boolean, rest: string): ReadNumber | undefined {
  if (!Number.isFinite(value) || /^(?:[.,/⁄\d]|e[+-]?\d)/i.test(rest)) return undefined;
  return { value, whole, rest };
}
