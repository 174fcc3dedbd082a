/** How the figures were worked out: the same data that `explain` shows. */
import type { Figure, FigureInput, FigureValue, Rounding } from '../../calc/figure';
import { type Quantity, quantity } from '../../quantity/quantity';
import type { World } from '../paper';
import type { Phrases } from '../phrase';

/** One figure with its workings. */
export interface WorkingContext {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  /** The rows of a table, its head first; empty for a single value. */
  readonly rows: readonly (readonly string[])[];
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly from: string }[];
  readonly formula: string;
  readonly source: string;
  readonly checkedAgainst: string;
  readonly basis: string;
  readonly doubt: string;
}

/** One of several figures of one method, in a line of their table. */
export interface WorkingInGroup extends WorkingContext {
  /** What it was made from is what the one before it was. */
  readonly fromAsBefore: boolean;
}

/** Figures that one method made: what they share is said once. */
export interface WorkingGroup {
  readonly formula: string;
  readonly source: string;
  readonly checkedAgainst: string;
  readonly figures: readonly WorkingInGroup[];
  /** Inputs that all of them have, said once; empty for a figure alone. */
  readonly shared: WorkingContext['inputs'];
  /** How sure all of them are, where they are alike and more than one: said once, and empty beside each of them. */
  readonly alikeDoubt: string;
}

/** Sizes of type are no figures of the car: `explain` tells of them, the book does not. */
const isOfType = /^type-/;

/** Every figure of the book, in groups of one method, in the order of the first of each. */
export function workingsContext({ figures, phrases }: World): readonly WorkingGroup[] {
  const groups: WorkingContext[][] = [];
  const book = figures.all.filter(({ id }) => !isOfType.test(id));
  const inBook: ReadonlyMap<string, Figure> = new Map(book.map((figure) => [figure.id, figure]));
  for (const figure of book) {
    const working = workingOf(figure, phrases, inBook);
    const same = groups.find(([first]) => first !== undefined && isOfOneMethod(first, working));
    if (same === undefined) groups.push([working]);
    else same.push(working);
  }
  return groups.flatMap((members) => {
    const [first, ...others] = members;
    return first === undefined ? [] : [groupOf(first, others)];
  });
}

function isOfOneMethod(a: WorkingContext, b: WorkingContext): boolean {
  return a.formula === b.formula && a.source === b.source && a.checkedAgainst === b.checkedAgainst;
}

function groupOf(first: WorkingContext, others: readonly WorkingContext[]): WorkingGroup {
  const { formula, source, checkedAgainst } = first;
  const same = (a: WorkingContext['inputs'][number], b: WorkingContext['inputs'][number]): boolean =>
    a.name === b.name && a.value === b.value && a.from === b.from;
  const shared =
    others.length === 0
      ? []
      : first.inputs.filter((input) =>
          others.every((other) => other.inputs.some((each) => same(each, input))),
        );
  const sure = ({ basis, doubt }: WorkingContext) => `${basis}: ${doubt}`;
  const isAlike = others.length > 0 && others.every((other) => sure(other) === sure(first));
  const own = (working: WorkingContext): WorkingContext => ({
    ...working,
    inputs: sourcesOnce(working.inputs.filter((input) => !shared.some((each) => same(each, input)))),
    ...(isAlike ? { doubt: '' } : {}),
  });
  const owned = [first, ...others].map(own);
  const inputsAlike = (a: WorkingContext, b: WorkingContext | undefined): boolean =>
    a.inputs.length === b?.inputs.length &&
    a.inputs.every((input, index) => b.inputs[index] !== undefined && same(input, b.inputs[index]));
  return {
    formula,
    source,
    checkedAgainst,
    shared: sourcesOnce(shared),
    alikeDoubt: isAlike ? sure(first) : '',
    figures: owned.map((working, index) => ({
      ...working,
      fromAsBefore: working.inputs.length > 0 && inputsAlike(working, owned[index - 1]),
    })),
  };
}

/** Inputs from one place one after another, the place said once, after the last of them; those that need none come last. */
function sourcesOnce(inputs: WorkingContext['inputs']): WorkingContext['inputs'] {
  const places = [...new Set(inputs.map(({ from }) => from))].sort(
    (a, b) => Number(a === '') - Number(b === ''),
  );
  return places.flatMap((place) => {
    const own = inputs.filter(({ from }) => from === place);
    return own.map((input, index) => (index < own.length - 1 ? { ...input, from: '' } : input));
  });
}

const none: ReadonlyMap<string, Figure> = new Map();

/**
 * One figure in words. An input that is a figure of `beside` stands as it does there, and without saying where it came from: whoever
 * wants to know finds it in the same list.
 */
export function workingOf(figure: Figure, phrases: Phrases, beside = none): WorkingContext {
  return {
    id: figure.id,
    name: phrases.told(figure.name),
    value: valueWords(figure.value, phrases),
    rows: tableRows(figure.value, phrases),
    inputs: figure.inputs.map((input) => inputWords(input, phrases, beside)),
    formula: phrases.told(figure.formula),
    source: figure.source,
    checkedAgainst: phrases.told(figure.checkedAgainst),
    basis: phrases.basis[figure.doubt.basis],
    doubt: doubtWords(figure.doubt, phrases),
  };
}

function doubtWords({ words, share }: Figure['doubt'], { told, messages }: Phrases): string {
  const doubt = told(words);
  return share === undefined
    ? doubt
    : messages.say('within-share', { doubt, share: Math.ceil(share * 100) }).replace(' %', '\u00a0%');
}

function valueWords(value: FigureValue, phrases: Phrases): string {
  switch (value.kind) {
    case 'quantity':
      return quantityWords(value.quantity, value.rounding, phrases);
    case 'number':
      return phrases.number(value.number);
    case 'words':
      return phrases.told(value.words);
    case 'table':
      return value.rows.length === 1
        ? oneRow(value, phrases)
        : phrases.messages.say('table-of-rows', { rows: value.rows.length });
    case 'unknown':
      // keys of the spec are marked for a terminal; on paper they stand as they do under the inputs
      return phrases.messages.say('to-measure', {
        measure: phrases.told(value.measure).replaceAll('`', ''),
      });
  }
}

/** A table of one row, in one line: each heading with its value. */
function oneRow(value: FigureValue, phrases: Phrases): string {
  const [head = [], cells = []] = tableRows(value, phrases);
  return cells.map((cell, index) => `${head[index] ?? ''} ${cell}`.trim()).join('; ');
}

/** Less than this is told in cubic inches or millilitres, m³: a pump's stroke. */
const strokeM3 = 0.00004;

function quantityWords(value: Quantity, rounding: Rounding, phrases: Phrases): string {
  if (isOf('volume', value) && value.si > 0 && value.si < strokeM3) return phrases.smallVolume(value);
  if (isOf('time', value) && rounding !== 'nearest') return phrases.workedOut(value, rounding);
  if (isOf('volumeFlow', value) && value.si > airFlowM3PerS) return airFlow(value, phrases);
  if (isOf('absolutePressure', value)) return phrases.both(value, { rounding, decimals: 2 });
  return phrases.both(value, { rounding });
}

/** More than this is air, told in cubic feet or metres, m³/s. */
const airFlowM3PerS = 0.005;
const airUnits = { us: 'ft3/min', imperial: 'ft3/min', metric: 'm3/h' } as const;

function airFlow(value: Quantity, { systems, plain, messages }: Phrases): string {
  const [first = '', ...others] = [
    ...new Set(systems.map((system) => plain(value, { system, unit: airUnits[system] }))),
  ];
  const amount = others.length > 0 ? `${first} (${others.join(', ')})` : first;
  return value.estimated ? messages.say('about', { amount }).replace(' ', '\u00a0') : amount;
}

function isOf<D extends Quantity['dimension']>(dimension: D, value: Quantity): value is Quantity<D> {
  return value.dimension === dimension;
}

function tableRows(value: FigureValue, phrases: Phrases): readonly (readonly string[])[] {
  if (value.kind !== 'table') return [];
  const head = value.columns.map((column) => phrases.told(column.heading));
  const cell = (number: number, column: number): string => {
    const shown = value.columns[column];
    if (shown === undefined) throw new RangeError('a row of a figure has more cells than it has columns');
    const { dimension, rounding, decimals, poured } = shown;
    if (dimension === 'time' && rounding !== 'nearest')
      return phrases.duration(quantity('time', number), rounding);
    if (poured) return phrases.poured(quantity('volume', number), rounding);
    return phrases.both(quantity(dimension, number), {
      rounding,
      ...(decimals === undefined ? {} : { decimals }),
    });
  };
  return [head, ...value.rows.map((row) => row.map(cell))];
}

/** Amounts of a tank, in a field of the spec, stand on the side on which the rest of the book has them. */
function sideOf(from: string): Rounding {
  if (/^tanks\..*\.reserve$/.test(from)) return 'up';
  return /^tanks\..*\.(capacity|fill-to)$/.test(from) ? 'down' : 'nearest';
}

/** An input that is another figure: as that one is printed, where it is the same quantity. */
function figureWords(value: FigureInput['value'], figure: Figure, phrases: Phrases): string {
  const printed = figure.value;
  if (typeof value === 'number') return phrases.number(value);
  if (typeof value === 'string') return phrases.told(value);
  return printed.kind === 'quantity' && printed.quantity.si === value.si
    ? quantityWords(printed.quantity, printed.rounding, phrases)
    : quantityWords(value, 'nearest', phrases);
}

function inputWords(
  { name, value, from }: FigureInput,
  phrases: Phrases,
  beside: ReadonlyMap<string, Figure>,
): { name: string; value: string; from: string } {
  const figure = beside.get(from);
  if (figure !== undefined)
    return { name: phrases.told(name), from: '', value: figureWords(value, figure, phrases) };
  return {
    name: phrases.told(name),
    from,
    value:
      typeof value === 'object'
        ? quantityWords(value, sideOf(from), phrases)
        : typeof value === 'number'
          ? phrases.number(value)
          : phrases.told(value),
  };
}
