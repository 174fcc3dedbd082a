/** A figure told on the terminal: value, inputs with the lines they came from, method, source, doubt. */
import type { Figure } from '../calc/figure';
import type { Car } from '../car/car';
import type { Language } from '../language/language';
import { workingOf } from './context/workings';
import { phrasesFor } from './phrase';

/** What is told of one figure, as plain data for machines. */
export interface Explained {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly rows: readonly (readonly string[])[];
  readonly inputs: readonly {
    readonly name: string;
    readonly value: string;
    readonly from: string;
    readonly line?: number;
  }[];
  readonly formula: string;
  readonly source: string;
  readonly checkedAgainst: string;
  readonly doubt: string;
}

/** Everything there is to say of a figure. */
export function explain(figure: Figure, car: Car, language: Language): Explained {
  const phrases = phrasesFor(car.spec, language);
  const working = workingOf(figure, phrases);
  return {
    id: figure.id,
    name: figure.name,
    value: working.value,
    rows: working.rows,
    inputs: working.inputs.map((input) => {
      const line = lineOf(input.from, car);
      return line === undefined ? input : { ...input, line };
    }),
    formula: figure.formula,
    source: figure.source,
    checkedAgainst: figure.checkedAgainst,
    doubt: `${working.basis}: ${working.doubt}`,
  };
}

/** The line of the spec an input came from; nothing for other figures, files and publications. */
function lineOf(from: string, car: Car): number | undefined {
  const [section = ''] = from.split('.');
  return section in car.spec && from.includes('.') ? car.spotOf(from).line : undefined;
}

/** The same as text. `file` is the spec as the keeper named it. */
export function explainText(explained: Explained, file: string): string {
  const lines = [
    `${explained.id}: ${explained.name}`,
    `  value     ${explained.value}`,
    ...explained.rows.map((row) => `            ${row.join('   ')}`),
    ...explained.inputs.map(
      (input) =>
        `  from      ${input.name}: ${input.value}  (${input.line === undefined ? input.from : `${file}:${input.line} ${input.from}`})`,
    ),
    `  method    ${explained.formula}`,
    `  source    ${explained.source}`,
    `  tested on ${explained.checkedAgainst}`,
    `  how sure  ${explained.doubt}`,
  ];
  return lines.join('\n');
}
