/** What each fuel of the car weighs, and the heat in it. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure, FigureInput } from '../figure';
import { blendProperties } from '../fuel/blend';
import type { Liquids } from '../fuel/liquids';
import { blendOfFuel, liquidsOf } from './blends';

/** Mass and heat of one fuel. */
export interface FuelHeat {
  readonly fuelId: string;
  readonly densityKgPerM3: number;
  /** J/m³, the water of burning gone as vapour. */
  readonly lowerHeatPerM3: number;
  readonly figures: readonly Figure[];
}

/** Every fuel in the spec. */
export function fuelHeats(car: Car, library: Liquids): readonly FuelHeat[] {
  const liquids = liquidsOf(car, library);
  return Object.entries(car.spec.fuels).map(([fuelId, { name }]) => {
    const blend = blendOfFuel(car, fuelId, liquids);
    const { densityKgPerM3, lowerHeatPerM3 } = blendProperties(blend);
    const shares = blend.map(({ liquid, share }) => ({
      name: `share of ${liquid.name}`,
      value: quantity('share', share),
      from: `fuels.${fuelId}.parts`,
    }));
    const densities = blend.map(
      ({ liquid }): FigureInput => ({
        name: `density of ${liquid.name}`,
        value: quantity('density', liquid.densityKgPerM3),
        from: `liquid-${liquid.key}`,
      }),
    );
    const heats = blend.map(
      ({ liquid }): FigureInput => ({
        name: `lower heating value of ${liquid.name}`,
        value: quantity('specificEnergy', liquid.lowerHeatingValue),
        from: `liquid-${liquid.key}`,
      }),
    );
    const common = {
      source: 'volumes and heats are taken to add up (common practice, no source)',
      doubt: {
        basis: 'computed' as const,
        words: 'deliveries differ by a few in a hundred with refinery and season; warm fuel is lighter',
      },
    };
    return {
      fuelId,
      densityKgPerM3,
      lowerHeatPerM3,
      figures: [
        {
          id: `density-${fuelId}`,
          name: `what ${name} weighs`,
          value: { kind: 'quantity', quantity: quantity('density', densityKgPerM3), rounding: 'nearest' },
          inputs: [...shares, ...densities],
          formula: 'share × density, added up',
          checkedAgainst: 'The Energy and Fuel Data Sheet (University of Birmingham, 2011)',
          ...common,
        },
        {
          id: `heat-${fuelId}`,
          name: `heat of burning ${name}, its water gone as vapour`,
          value: {
            kind: 'quantity',
            quantity: quantity('energyDensity', lowerHeatPerM3),
            rounding: 'down',
          },
          inputs: [...shares, ...densities, ...heats],
          formula: 'share × density × lower heating value, added up',
          checkedAgainst:
            'GREET (US DOE Hydrogen Analysis Resource Center); EIA Monthly Energy Review, Appendix A',
          ...common,
        },
      ],
    };
  });
}

/** What is taken of each liquid that the car's fuels are made of, with the source of it, once. */
export function liquidFigures(car: Car, library: Liquids): readonly Figure[] {
  const liquids = liquidsOf(car, library);
  const used = new Map(
    Object.keys(car.spec.fuels).flatMap((fuelId) =>
      blendOfFuel(car, fuelId, liquids).map(({ liquid }) => [liquid.key, liquid] as const),
    ),
  );
  return [...used.values()].map((liquid) => ({
    id: `liquid-${liquid.key}`,
    name: `what is taken of ${liquid.name}`,
    value: {
      kind: 'table',
      columns: [
        { heading: 'density', dimension: 'density', rounding: 'nearest' },
        { heading: 'lower heating value', dimension: 'specificEnergy', rounding: 'nearest' },
        { heading: 'flash point', dimension: 'temperature', rounding: 'nearest' },
        { heading: 'begins to boil at', dimension: 'temperature', rounding: 'nearest' },
      ],
      rows: [[liquid.densityKgPerM3, liquid.lowerHeatingValue, liquid.flashPointK, liquid.startsBoilingK]],
    },
    inputs: [],
    formula: 'as published, the lowest that is usual of both temperatures',
    source: liquid.source,
    checkedAgainst: 'other published tables, where they were found',
    doubt: { basis: 'computed', words: 'the seller’s data sheet is better' },
  }));
}
