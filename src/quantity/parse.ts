/**
 * Reading a quantity a keeper has written: a number, its unit, and nothing guessed.
 *
 * Read: `25 US gal`, `11 1/2 in`, `11½in`, `4 ft 8 1/2 in`, `1 h 30 min`, `12,500 Btu/h`, `about 60 °F`, `−5 °C`,
 * `2 1/2 turns`, `12 mi/US gal`, `12 miles per US gal`, `95 %`. For a share alone, a bare number from 0 to 1.
 */
import type { Dimension } from './dimension';
import { readNumber } from './number';
import type { Quantity } from './quantity';
import { type Fault, type Refusal, refusal } from './refusal';
import { findUnit, plainSpelling } from './spelling';
import { toSi, type Unit } from './unit';
import { dimensionWords } from './wording';

/** A quantity, or why the text is not one, in words for a keeper. */
export type ParsedQuantity<D extends Dimension> =
  | { readonly ok: true; readonly quantity: Quantity<D> }
  | Refusal;

/** One `number unit` of a text. */
interface Term {
  readonly value: number;
  readonly whole: boolean;
  readonly unitText: string;
}

/** Units that may follow each other in one quantity, the larger first. */
const compounds: Partial<Record<Dimension, readonly (readonly string[])[]>> = {
  length: [
    ['yd', 'ft', 'in'],
    ['m', 'cm', 'mm'],
  ],
  distance: [
    ['mi', 'yd', 'ft'],
    ['km', 'm'],
  ],
  mass: [
    ['lb', 'oz'],
    ['kg', 'g'],
  ],
  volume: [
    ['US gal', 'US qt', 'US pt', 'US fl oz'],
    ['imp gal', 'imp qt', 'imp pt', 'imp fl oz'],
    ['L', 'mL'],
  ],
  time: [['days', 'h', 'min', 's']],
};

/** The most a gauge can read below the air, at sea level, with room for high barometers. */
const vacuumPa = 110e3;

/** Read `text` as a quantity of `dimension`. The number comes back in the SI unit of the dimension. */
export function parseQuantity<D extends Dimension>(text: string, dimension: D): ParsedQuantity<D> {
  const written = text.trim();
  if (written === '') return refusal(dimension, { kind: 'empty', found: text });
  const [, about, sign, body] = /^(about\s+)?([-−–+])?\s*(.*)$/isu.exec(written) ?? [];
  const terms = readTerms(body ?? '');
  if (!terms) return refusal(dimension, { kind: 'nonsense', found: written });
  const si = termsToSi(terms, dimension, sign !== undefined && sign !== '+', written);
  if (typeof si !== 'number') return refusal(dimension, si);
  return {
    ok: true,
    quantity: { dimension, si, written, estimated: about !== undefined },
  };
}

/** Split `4 ft 8 1/2 in` into its terms; undefined if it is not a row of numbers with what follows them. */
function readTerms(body: string): readonly Term[] | undefined {
  const terms: Term[] = [];
  let rest = body.trim();
  while (rest !== '') {
    const number = readNumber(rest);
    if (!number) return undefined;
    const unitText = unitAtStart(number.rest);
    terms.push({ value: number.value, whole: number.whole, unitText: unitText.trim() });
    rest = number.rest.slice(unitText.length).trim();
  }
  return terms.length > 0 ? terms : undefined;
}

/** Everything up to the next number that is not part of a unit's own name (`ft3`, `L/100 km`, `US qt/100 mi`, `lb/in2`). */
function unitAtStart(text: string): string {
  return (
    /^(?:(?:\/|per)\s*100(?=\s*(?:km|mi))|[^\d½⅓⅔¼¾⅕-⅞.]|(?<=\p{L})[23](?!\d|\s*(?:in|ft|oz|min|s|mm|cm)\b)|\.(?!\d))*/iu.exec(
      text,
    )?.[0] ?? ''
  );
}

/** The SI amount of a row of terms, or what is wrong with them. `found` is the whole text. */
function termsToSi(
  terms: readonly Term[],
  dimension: Dimension,
  negative: boolean,
  found: string,
): number | Fault {
  const [first] = terms;
  if (!first) return { kind: 'nonsense', found };
  if (terms.length === 1 && first.unitText === '') {
    if (dimension !== 'share') return { kind: 'bare', found, number: first.value };
    return negative || first.value > 1 ? { kind: 'share', found } : first.value;
  }
  const named: { readonly term: Term; readonly unit: Unit }[] = [];
  for (const term of terms) {
    const unit = findUnit(dimension, term.unitText);
    if (!unit) return { kind: 'unit', found, number: term.value, unitText: term.unitText };
    named.push({ term, unit });
  }
  const why = brokenCompound(named, dimension);
  if (why) return { kind: 'compound', found, why };
  const sign = negative ? -1 : 1;
  const si = named.reduce((sum, { term, unit }) => sum + toSi(sign * term.value, unit), 0);
  const kind = outOfBounds(si, first.value * sign, dimension);
  return kind ? { kind, found } : si;
}

/** The bound that is broken, of those that hold for every quantity of a dimension, whatever it is used for. */
function outOfBounds(
  si: number,
  value: number,
  dimension: Dimension,
): 'negative' | 'share' | 'cold' | 'vacuum' | 'endless' | undefined {
  if (!Number.isFinite(si)) return 'endless';
  if (dimension === 'share' && (si < 0 || si > 1)) return 'share';
  if (dimension === 'temperature' && si < 0) return 'cold';
  if (dimension === 'gaugePressure' && si < -vacuumPa) return 'vacuum';
  return value < 0 && !dimensionWords[dimension].mayBeNegative ? 'negative' : undefined;
}

/** What is wrong with a quantity of several terms, if anything is. */
function brokenCompound(
  named: readonly { term: Term; unit: Unit }[],
  dimension: Dimension,
): string | undefined {
  if (named.length === 1) return undefined;
  const names = named.map(({ unit }) => unit.name);
  const order = (compounds[dimension] ?? []).find((list) => names.every((name) => list.includes(name)));
  if (!order) return `${names.map((name) => `\`${name}\``).join(' and ')} do not go together`;
  for (const [index, { term, unit }] of named.entries()) {
    const next = named[index + 1];
    if (!next) continue;
    if (order.indexOf(unit.name) >= order.indexOf(next.unit.name)) return 'the larger unit comes first';
    if (!term.whole) return `only the last number may be a broken one`;
    if (next.term.value * next.unit.factor >= unit.factor * (1 - 1e-12)) {
      return `\`${next.term.value} ${plainSpelling(next.unit.name)}\` is as much as 1 ${unit.one ?? unit.name} or more`;
    }
  }
  return undefined;
}
