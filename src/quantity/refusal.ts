/**
 * Saying to a keeper why a text is not a quantity, and what to write instead.
 */
import type { Dimension } from './dimension';
import { findUnit, nearestUnit, plainSpelling } from './spelling';
import { dimensionWords, vaguenesses } from './wording';

/** Why a text is not the quantity that was wanted. */
export interface Refusal {
  readonly ok: false;
  /** What stands there. */
  readonly found: string;
  /** What would be right. */
  readonly expected: string;
  /** What the keeper can do. */
  readonly mend: string;
}

/** The ways a text can fail to be a quantity. */
export type Fault =
  | {
      readonly kind: 'empty' | 'nonsense' | 'negative' | 'share' | 'cold' | 'vacuum' | 'endless';
      readonly found: string;
    }
  | { readonly kind: 'bare'; readonly found: string; readonly number: number }
  | { readonly kind: 'unit'; readonly found: string; readonly number: number; readonly unitText: string }
  | { readonly kind: 'compound'; readonly found: string; readonly why: string };

/** The refusal for `fault`, in the words of `dimension`. */
export function refusal(dimension: Dimension, fault: Fault): Refusal {
  return {
    ok: false,
    found: fault.found,
    expected: expectedWords(dimension),
    mend: mendWords(dimension, fault),
  };
}

/** What is right for `dimension`, with examples: "a volume, such as `25 US gal`, `20 imp gal` or `95 L`". */
export function expectedWords(dimension: Dimension): string {
  const { name, examples } = dimensionWords[dimension];
  return `${name}, such as ${either(examples)}`;
}

function either(texts: readonly string[]): string {
  const quoted = texts.map((text) => `\`${text}\``);
  const last = quoted.at(-1) ?? '';
  return quoted.length > 1 ? `${quoted.slice(0, -1).join(', ')} or ${last}` : last;
}

function mendWords(dimension: Dimension, fault: Fault): string {
  const { examples } = dimensionWords[dimension];
  switch (fault.kind) {
    case 'empty':
      return `write a number and its unit, such as ${either(examples)}`;
    case 'nonsense':
      return nonsenseWords(fault.found, examples);
    case 'negative':
      return 'write it without the minus sign, or look whether another figure was meant';
    case 'share':
      return 'write a share between `0 %` and `100 %`, or a number between `0` and `1`';
    case 'cold':
      return 'write a temperature above absolute zero (−459.67 °F, −273.15 °C)';
    case 'vacuum':
      return 'write a gauge pressure that is not below a vacuum (−14.7 psi gauge)';
    case 'endless':
      return 'write an amount that is more than nothing and can be counted';
    case 'compound':
      return `${fault.why}; write it like ${either(examples)}`;
    case 'bare':
      return bareWords(dimension, fault.found);
    case 'unit':
      if (/\d \d{3}(?!\d)/.test(fault.found))
        return 'part thousands with a comma, as in `12,500`, or not at all';
      return unitWords(dimension, fault);
  }
}

const oneAmount = 'write one amount, not a range';

function nonsenseWords(found: string, examples: readonly string[]): string {
  const guess = /^(?:ca|circa|c|approx|approximately|abt|roughly|around|some|~|≈)\.?\s*(?=\d)/i.exec(
    found,
  )?.[0];
  if (guess !== undefined) return `write \`about ${found.slice(guess.length)}\``;
  if (/\d,\d{1,2}(?!\d)/.test(found))
    return 'write decimals with a point; a comma stands only between thousands, as in `12,500`';
  if (/\d\s*(?:e[+-]?\d|\*|x\s*10)/i.test(found)) return 'write the number out in full, such as `12,500`';
  if (/\d\s*(?:-|–|to)\s*\d/.test(found)) return oneAmount;
  if (/\d_\d/.test(found)) return 'write a comma between thousands, or nothing, as in `12,500`';
  if (/^\d+:\d/.test(found)) return 'write hours and minutes out, as in `1 h 30 min`';
  return `write a number first, then its unit, like ${either(examples)}`;
}

function bareWords(dimension: Dimension, found: string): string {
  const number = found.replace(/^about\s+/i, '');
  const choices = dimensionWords[dimension].examples.map((example) => withNumber(example, number));
  return `say the unit: ${either([...new Set(choices)])}`;
}

/** The example with its own number changed for `number`: only the unit is of use to the keeper. */
function withNumber(example: string, number: string): string {
  return `${number} ${example.replace(/^[\d.,/\s]+(?=\D)/, '').replace(/^(\w+) \d.*$/, '$1')}`;
}

function unitWords(dimension: Dimension, fault: Fault & { kind: 'unit' }): string {
  const plain = plainSpelling(fault.unitText);
  const number = String(fault.number);
  if (plain === '')
    return `every number needs its unit; write it like ${either(dimensionWords[dimension].examples)}`;
  if (/\S\s*(?:-|–|—|\bto)$/.test(fault.unitText.trim())) return oneAmount;
  if (/^(?:-|–|to|_|:)$/.test(plain)) return nonsenseWords(fault.found, dimensionWords[dimension].examples);
  const vague = vaguenesses.find((v) => v.dimensions.includes(dimension) && v.pattern.test(plain));
  if (vague) {
    const instead = vague.instead.map((text) => text.replace('#', number));
    return instead.length > 0 ? `write ${either(instead)}: ${vague.why}` : vague.why;
  }
  const other = otherDimension(dimension, fault.unitText);
  if (other) return `\`${fault.unitText}\` measures ${dimensionWords[other].name}; ${useUnit(dimension)}`;
  const near = nearestUnit(dimension, fault.unitText);
  if (near) return `did you mean \`${number} ${near.name}\`?`;
  return `\`${fault.unitText}\` is not a unit this program knows here; ${useUnit(dimension)}`;
}

function useUnit(dimension: Dimension): string {
  return `write it like ${either(dimensionWords[dimension].examples)}`;
}

function otherDimension(dimension: Dimension, unitText: string): Dimension | undefined {
  const all = Object.keys(dimensionWords) as Dimension[];
  return all.find((other) => other !== dimension && findUnit(other, unitText) !== undefined);
}
