/** The page on figures: its opening, then methods and checks made from the program itself. */

import type { PublishedCheck } from './checks';
import type { Figure } from './figure';

/** The page. `figures` are those of the demo cars; methods that many figures share are told once. */
export function figuresReference(
  opening: string,
  figures: readonly Figure[],
  checks: readonly PublishedCheck[],
): string {
  return `${[
    opening.trimEnd(),
    '## Published values',
    table(
      ['What', 'Source', 'Expected', 'Got'],
      checks.map(({ what, source, expected, got }) => [
        what,
        source,
        String(expected),
        String(Number(got.toPrecision(9))),
      ]),
    ),
    'The tests hold the calculators to many more (`tests/calc`), each with its source beside it, IAPWS-IF97 also to a reference library over the whole span the cars use.',
    '## Methods',
    table(['Figure, for example', 'Method', 'Source', 'Tested on'], methodsOf(figures)),
  ].join('\n\n')}\n`;
}

/** One row for each method, by the first figure that uses it. */
function methodsOf(figures: readonly Figure[]): readonly (readonly string[])[] {
  const seen = new Map<string, readonly string[]>();
  for (const { id, value, formula, source, checkedAgainst } of figures) {
    if (value.kind !== 'unknown' && !seen.has(formula))
      seen.set(formula, [`\`${id}\``, formula, source, checkedAgainst]);
  }
  return [...seen.values()];
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), `|${head.map(() => '---').join('|')}|`, ...rows.map(line)].join('\n');
}
