/** How easily each fuel lights: flash point and hazard class, always erring to the more dangerous. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import type { Blend } from '../fuel/blend';
import { blendFlashPoint, blendStartsBoilingK, type FlashPointEstimate } from '../fuel/flash-point';
import { type GhsClass, ghsClass, type NfpaClass, nfpaClass } from '../fuel/hazard';
import type { Liquids } from '../fuel/liquids';
import { blendOfFuel, liquidsOf } from './blends';

/** The hazard of one fuel of the car. */
export interface FuelHazard {
  readonly fuelId: string;
  readonly name: string;
  readonly flashPoint: FlashPointEstimate;
  /** Absent above 93 °C, which no fuel of a car reaches. */
  readonly ghs?: GhsClass;
  readonly nfpa: NfpaClass;
  /** A light liquid in it makes the whole as quick to light as the light one alone. */
  readonly asLightAs?: string;
  readonly figures: readonly Figure[];
}

/** The hazard of every fuel in the spec. */
export function fuelHazards(car: Car, library: Liquids): readonly FuelHazard[] {
  const liquids = liquidsOf(car, library);
  return Object.entries(car.spec.fuels).map(([fuelId, fuel]) =>
    hazardOf(fuelId, fuel.name, blendOfFuel(car, fuelId, liquids)),
  );
}

function hazardOf(fuelId: string, name: string, blend: Blend): FuelHazard {
  const flashPoint = blendFlashPoint(blend);
  const volatility = { flashPointK: flashPoint.cautiousK, startsBoilingK: blendStartsBoilingK(blend) };
  const ghs = ghsClass(volatility);
  const nfpa = nfpaClass(volatility);
  const lightest = blend.reduce((a, b) => (b.liquid.flashPointK < a.liquid.flashPointK ? b : a)).liquid;
  const base = { fuelId, name, flashPoint, nfpa, ...(ghs === undefined ? {} : { ghs }) };
  const asLight = flashPoint.basis === 'extrapolated' && blend.length > 1 ? { asLightAs: lightest.name } : {};
  return { ...base, ...asLight, figures: figuresOf(base, blend) };
}

function figuresOf(
  { fuelId, name, flashPoint, ghs, nfpa }: Omit<FuelHazard, 'figures'>,
  blend: Blend,
): readonly Figure[] {
  const inputs = blend.flatMap(({ liquid, share }) => [
    { name: `share of ${liquid.name}`, value: quantity('share', share), from: `fuels.${fuelId}.parts` },
    {
      name: `flash point of ${liquid.name}`,
      value: quantity('temperature', liquid.flashPointK),
      from: `liquid-${liquid.key}`,
    },
  ]);
  const words = {
    stated: 'one liquid; real deliveries vary, and the lowest usual value is taken',
    estimated: 'an estimate by a published rule, lowered by 5 °C',
    extrapolated: 'outside the tables of the rule, so the flash point of its lightest liquid is taken',
  }[flashPoint.basis];
  return [
    {
      id: `flash-point-${fuelId}`,
      name: `flash point of ${name}, for caution`,
      value: {
        kind: 'quantity',
        quantity: quantity('temperature', flashPoint.cautiousK, flashPoint.basis !== 'stated'),
        rounding: 'down',
      },
      inputs,
      formula: 'blending index of each flash point, added by volume; the cautious value is taken',
      source: 'Wickey and Chittenden, Hydrocarbon Processing, June 1963 (citation from memory)',
      checkedAgainst: 'a published table of blending indices, 20 to 110 °C',
      doubt: { basis: flashPoint.basis === 'stated' ? 'computed' : 'estimated', words },
    },
    {
      id: `hazard-${fuelId}`,
      name: `hazard class of ${name}`,
      value: {
        kind: 'words',
        words: `${ghs === undefined ? 'not classed' : `GHS flammable liquid, category ${ghs.category}: ${ghs.signalWord}. ${ghs.statement}`}; NFPA 30 class ${nfpa}`,
      },
      inputs: [
        {
          name: 'flash point, for caution',
          value: quantity('temperature', flashPoint.cautiousK),
          from: `flash-point-${fuelId}`,
        },
      ],
      formula: 'limits of flash point and first boiling point',
      source: 'GHS chapter 2.6 (EU CLP Annex I Table 2.6.1; OSHA 29 CFR 1910.106(a)(19)); NFPA 30',
      checkedAgainst: 'the limits of both schemes, at their edges',
      doubt: { basis: 'computed', words: 'the seller’s data sheet and the local fire code decide' },
    },
  ];
}
