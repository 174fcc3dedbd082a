/** What to pour in: amounts for a blend, by how much is wanted. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import { amountsToMix, type Blend, blendOf } from '../fuel/blend';
import { type Liquid, type Liquids, liquidOf } from '../fuel/liquids';

/** A blend of the car's, ready to be mixed. */
export interface BlendChart {
  readonly fuelId: string;
  readonly name: string;
  readonly blend: Blend;
  /** Amounts of each liquid for each wanted volume, m³. */
  readonly rows: readonly { readonly wantedM3: number; readonly amountsM3: readonly number[] }[];
  readonly figure: Figure;
}

/** All liquids the car can name: those of the program and its own. */
export function liquidsOf({ spec }: Car, library: Liquids): Liquids {
  return new Map([
    ...library,
    ...Object.entries(spec.liquids ?? {}).map(([key, written]) => [key, liquidOf(key, written)] as const),
  ]);
}

/** The blend a fuel of the spec is. */
export function blendOfFuel(car: Car, fuelId: string, liquids: Liquids): Blend {
  const parts = (car.spec.fuels[fuelId]?.parts ?? []).flatMap((part) => {
    const liquid = liquids.get(part.liquid);
    return liquid === undefined ? [] : [{ liquid, volume: part.share.si }];
  });
  return blendOf(parts);
}

/** A chart for every fuel of more than one liquid, for each of the wanted volumes. */
export function blendCharts(car: Car, library: Liquids, wantedM3: readonly number[]): readonly BlendChart[] {
  const liquids = liquidsOf(car, library);
  return Object.entries(car.spec.fuels).flatMap(([fuelId, fuel]) => {
    if (fuel.parts.length < 2) return [];
    const blend = blendOfFuel(car, fuelId, liquids);
    const rows = wantedM3.map((wanted) => ({
      wantedM3: wanted,
      amountsM3: amountsToMix(blend, wanted).map((amount) => amount.volumeM3),
    }));
    return [{ fuelId, name: fuel.name, blend, rows, figure: figureOf(fuelId, fuel.name, blend, rows) }];
  });
}

/** Of the lightest liquid rather too little than too much: it is what makes the blend quick to light. */
export function roundingOf(liquid: Liquid, blend: Blend): 'down' | 'nearest' {
  return blend.every((other) => other.liquid.flashPointK >= liquid.flashPointK) ? 'down' : 'nearest';
}

function figureOf(fuelId: string, name: string, blend: Blend, rows: BlendChart['rows']): Figure {
  return {
    id: `blend-${fuelId}`,
    name: `amounts for ${name}`,
    value: {
      kind: 'table',
      columns: [
        { heading: 'wanted', dimension: 'volume', rounding: 'nearest' },
        ...blend.map(({ liquid }) => ({
          heading: liquid.name,
          dimension: 'volume' as const,
          rounding: roundingOf(liquid, blend),
          poured: true as const,
        })),
      ],
      rows: rows.map((row) => [row.wantedM3, ...row.amountsM3]),
    },
    inputs: blend.map(({ liquid, share }) => ({
      name: `share of ${liquid.name}`,
      value: quantity('share', share),
      from: `fuels.${fuelId}.parts`,
    })),
    formula: 'amount of each liquid = its share × the volume wanted',
    source: 'shares by volume; volumes are taken to add up (common practice, no source)',
    checkedAgainst: 'the amounts add up to the volume wanted',
    doubt: { basis: 'computed', words: 'as good as the measuring can' },
  };
}
