/** One way to print a span: what is put together as `46 bar to 52 bar` is printed `46 to 52 bar`, as keepers write it. */

const figure = String.raw`\d[\d.,]*(?:\u00a0\d+/\d+)?|\d+/\d+`;
const unit = String.raw`(?:(?:US|imp)[ \u00a0])?[\p{L}\u00b0]+`;

/**
 * Words between two figures that leave the meaning of the first as it is without its unit: “3 in for 10 in” would become another thing.
 * In a language whose words are not here, the unit is printed twice.
 */
const joining = ['to', 'by', 'and', 'or', 'bis', 'mal', 'und', 'oder'].join('|');

/** Such a word, and a second figure with the same unit, of which no other unit stands in brackets. */
const twice = new RegExp(
  String.raw`(?<![\d.,/])(${figure})[ \u00a0](${unit}) (${joining}) (${figure})([ \u00a0])\2(?![\p{L}\d/]| \(\d)`,
  'gu',
);

/** The same text, the unit of each span once, after its second figure. */
export function withUnitOnce(text: string): string {
  return text.replace(twice, '$1 $3 $4$5$2');
}
