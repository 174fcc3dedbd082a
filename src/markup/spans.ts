/** One way to print a span: what is put together as `46 bar to 52 bar` is printed `46 to 52 bar`, as keepers write it. */

const figure = String.raw`\d[\d.,]*(?:\u00a0\d+/\d+)?|\d+/\d+`;
const unit = String.raw`(?:(?:US|imp)[ \u00a0])?[\p{L}\u00b0]+`;

/** A short word such as “to” or “and” in any language, and a second figure with the same unit, of which no other unit stands in brackets. */
const twice = new RegExp(
  String.raw`(?<![\d.,/])(${figure})[ \u00a0](${unit}) (\p{Ll}{2,3}) (${figure})([ \u00a0])\2(?![\p{L}\d/]| \(\d)`,
  'gu',
);

/** The same text, the unit of each span once, after its second figure. */
export function withUnitOnce(text: string): string {
  return text.replace(twice, '$1 $3 $4$5$2');
}
