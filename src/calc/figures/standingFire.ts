/** How much of the full fire burns clean while the car stands still: seen by the keeper, or worked out from its draught. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import { type Figure, type FigureInput, notKnownFigure } from '../figure';
import type { Liquids } from '../fuel/liquids';
import { standardAir } from '../steam/atmosphere';
import { airBlownKgPerS, airDrawnKgPerS, excessAir, fireFedByAirW } from '../water/draught';
import { efficiencyOf, fuelHeatPerM3, mainBurnerOf, usualEfficiency } from './plant';

/** The fire at rest. */
export interface StandingFire {
  /** Share of the full fire, 0 to 1; where nothing is known it is taken as 1. */
  readonly share: number;
  readonly known: boolean;
  readonly estimated: boolean;
  readonly figure: Figure;
}

/** Air of a cold start, 15 °C. */
const airTemperatureK = 288.15;

const common = {
  id: 'fire-standing',
  name: 'share of the full fire that burns clean with the car standing still',
  formula:
    'heat that the air can set free, so much over what burning asks for / heat of the full fire; never more than the whole',
  source:
    'draught of a flue: Steam, Its Generation and Use (Babcock & Wilcox), formula 24; 13.1 MJ for each kg of oxygen: C. Huggett, Fire and Materials 4 (1980) 61',
  checkedAgainst:
    'the worked examples of formula 24; the heating values of hexane and ethanol against the oxygen they take',
} as const;

/** From the spec; `undefined` where the full fire itself is not known. */
export function standingFire(car: Car, library: Liquids): StandingFire | undefined {
  const { draught } = car.spec.boiler;
  const main = mainBurnerOf(car);
  const rate = main?.burner['full-rate'];
  if (main === undefined || rate === undefined) return undefined;
  if (draught?.standing !== undefined) {
    const { si, estimated } = draught.standing;
    return known(si, estimated, {
      ...common,
      formula: 'as seen or timed',
      source: 'the keeper',
      checkedAgainst: 'nothing published; it is this car’s own',
      inputs: [
        { name: 'seen with the car standing', value: draught.standing, from: 'boiler.draught.standing' },
      ],
      words: 'altitude and wind make it less',
    });
  }
  const air = airOf(car);
  if (air === undefined) return notKnown(draught?.kind);
  const fullW = rate.si * fuelHeatPerM3(car, main.burner.fuel, library);
  const share = Math.min(1, fireFedByAirW(air.kgPerS) / fullW);
  return known(share, true, {
    ...common,
    inputs: [
      ...air.inputs,
      { name: 'air drawn or blown', value: quantity('massFlow', air.kgPerS, true), from: 'worked out' },
      {
        name: 'air over what burning asks for',
        value: `${Math.round(excessAir * 100)} %, common practice, no source`,
        from: 'taken',
      },
      { name: 'full fire', value: rate, from: `burners.${main.id}.full-rate` },
    ],
    words: 'ways in the boiler, wind and altitude change it; a fire with yellow tips has too little air',
  });
}

function airOf(car: Car): { readonly kgPerS: number; readonly inputs: readonly FigureInput[] } | undefined {
  const { draught, efficiency } = car.spec.boiler;
  if (draught?.kind === 'blower')
    return {
      kgPerS: airBlownKgPerS(draught.air.si),
      inputs: [{ name: 'air of the blower', value: draught.air, from: 'boiler.draught.air' }],
    };
  if (draught?.kind !== 'flue') return undefined;
  const at = { ambientPa: standardAir(0).pressurePa, airTemperatureK, efficiency: efficiencyOf(car) };
  return {
    kgPerS: airDrawnKgPerS({ heightM: draught.height.si, freeAreaM2: draught['free-area'].si }, at),
    inputs: [
      { name: 'height of the flue', value: draught.height, from: 'boiler.draught.height' },
      { name: 'narrowest way', value: draught['free-area'], from: 'boiler.draught.free-area' },
      {
        name: 'efficiency',
        value: efficiency ?? `${usualEfficiency * 100} %, from memory`,
        from: 'boiler.efficiency',
      },
    ],
  };
}

function known(
  share: number,
  estimated: boolean,
  { words, ...told }: Omit<Figure, 'value' | 'doubt'> & { readonly words: string },
): StandingFire {
  return {
    share,
    known: true,
    estimated,
    figure: {
      ...told,
      value: { kind: 'quantity', quantity: quantity('share', share, estimated), rounding: 'down' },
      doubt: { basis: estimated ? 'estimated' : 'measured', words },
    },
  };
}

/** Where the full fire itself is not known. */
export const fireNotKnown: Figure = notKnownFigure(
  common,
  'the fuel burnt at full fire (`full-rate` of the main burner)',
);

function notKnown(kind: 'jets' | 'flue' | 'blower' | undefined): StandingFire {
  const measure =
    kind === 'jets'
      ? 'how much of the full fire burns blue to its edge with the car standing still (`boiler.draught.standing`)'
      : 'what brings the fire its air (`boiler.draught`), or how much of the full fire burns blue to its edge with the car standing still';
  return { share: 1, known: false, estimated: true, figure: notKnownFigure(common, measure) };
}
