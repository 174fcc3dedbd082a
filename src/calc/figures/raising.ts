/** How long steam takes, from cold and from warm, with the pressures where checks are due. */
import type { Car } from '../../car/car';
import { type Quantity, quantity } from '../../quantity/quantity';
import { type Figure, notKnownFigure } from '../figure';
import type { Liquids } from '../fuel/liquids';
import { standardAir } from '../steam/atmosphere';
import { metalSpecificHeat, raiseSteam, type SteamRaising, timeToGaugeS } from '../water/raise-steam';
import { efficiencyOf, fuelHeatPerM3, mainBurnerOf, usualEfficiency } from './plant';
import { fireNotKnown, type StandingFire, standingFire } from './standingFire';

/** Steam raising from one start. */
export interface RaisingCurve {
  readonly start: 'cold' | 'warm';
  readonly raising: SteamRaising;
  /** Time to each pressure that matters, s, from the lowest up; absent if it is not reached. */
  readonly checks: readonly {
    readonly at: 'gauge-alive' | 'least-to-move' | 'working' | 'cuts-out';
    readonly pressure: Quantity<'gaugePressure'>;
    readonly seconds?: number;
  }[];
}

/** Both curves and the figures made from them. */
export interface RaisingFigures {
  readonly curves: readonly RaisingCurve[];
  /** How far the times may be out, as a share of them. */
  readonly doubt: number;
  /** The fire with the car at rest; absent where the full fire is not known. */
  readonly fire?: StandingFire;
  readonly figures: readonly Figure[];
}

/** How far the times may be out: more where nobody knows whether the fire gets its air. Common practice, no source. */
const doubts = { draughtKnown: 0.25, draughtNotKnown: 0.5 } as const;

/** Water and air from which a cold start is reckoned, and the boiler of yesterday evening. */
const coldK = 288.15;
const warmK = 353.15;

/** Share of the full fire's heat lost from casing and pipes at working heat; common practice, no source. */
const lossShare = 0.05;

/** The pressure at which the gauge must be seen to move, 50 psi; common practice, no source. */
const gaugeAlivePa = 344_738;

/** Curves for a boiler whose water, metal and fire are known; otherwise a figure that says what to measure. */
export function raisingFigures(car: Car, library: Liquids): RaisingFigures {
  const { boiler } = car.spec;
  const main = mainBurnerOf(car);
  const rate = main?.burner['full-rate'];
  const fire = standingFire(car, library);
  const doubt = fire?.known === true ? doubts.draughtKnown : doubts.draughtNotKnown;
  if (main === undefined || rate === undefined || fire === undefined)
    return { curves: [], doubt, figures: [fireNotKnown, notKnown(true)] };
  if (boiler['steel-mass'] === undefined)
    return { curves: [], doubt, fire, figures: [fire.figure, notKnown(false)] };
  const heatW = fire.share * rate.si * fuelHeatPerM3(car, main.burner.fuel, library) * efficiencyOf(car);
  const curves = (['cold', 'warm'] as const).map((start) => curveFrom(car, start, heatW));
  const told = { burner: main.id, rate, heatW, fire, doubt };
  return {
    curves,
    doubt,
    fire,
    figures: [
      fire.figure,
      ...curves.flatMap((curve) => [
        ...asFigures(car, curve, told),
        ...(boiler['least-to-move'] === undefined ? [leastToMoveNotKnown(curve.start)] : []),
      ]),
    ],
  };
}

function curveFrom({ spec: { boiler } }: Car, start: 'cold' | 'warm', heatW: number): RaisingCurve {
  const raising = raiseSteam(
    {
      waterM3: boiler['water-at-working-level'].si,
      metalKg: boiler['steel-mass']?.si ?? 0,
      metalSpecificHeat: metalSpecificHeat.steel,
      heatW,
      lossWPerK: (lossShare * heatW) / 230,
      airTemperatureK: coldK,
      ambientPa: standardAir(0).pressurePa,
      startTemperatureK: start === 'cold' ? coldK : warmK,
    },
    boiler['burner-cuts-out'].si,
  );
  const pressures = [
    ['gauge-alive', quantity('gaugePressure', gaugeAlivePa)],
    ['least-to-move', boiler['least-to-move']],
    ['working', boiler['working-pressure']],
    ['cuts-out', boiler['burner-cuts-out']],
  ] as const;
  const checks = pressures.flatMap(([at, pressure]) => {
    if (pressure === undefined) return [];
    const seconds = timeToGaugeS(raising, pressure.si);
    return [{ at, pressure, ...(seconds === undefined ? {} : { seconds }) }];
  });
  return { start, raising, checks };
}

type Check = RaisingCurve['checks'][number]['at'];

const pressureNames: Readonly<Record<Check, string>> = {
  'gauge-alive': 'the first sure movement of the steam gauge',
  'least-to-move': 'the pressure for moving off',
  working: 'working pressure',
  'cuts-out': 'the pressure at which the burner goes out',
};

const pressureFrom: Readonly<Record<Check, string>> = {
  'gauge-alive': 'common practice, no source',
  'least-to-move': 'boiler.least-to-move',
  working: 'boiler.working-pressure',
  'cuts-out': 'boiler.burner-cuts-out',
};

function asFigures(
  car: Car,
  { start, checks }: RaisingCurve,
  told: {
    readonly burner: string;
    readonly rate: Quantity;
    readonly heatW: number;
    readonly fire: StandingFire;
    readonly doubt: number;
  },
): readonly Figure[] {
  const { boiler } = car.spec;
  return checks.map(({ at, pressure, seconds }) => ({
    id: `steam-${start}-${at}`,
    name: `time from lighting the main burner to ${pressureNames[at]}, boiler ${start}`,
    value:
      seconds === undefined
        ? {
            kind: 'unknown' as const,
            measure: 'the pressure is not reached in the model; time it with a watch',
          }
        : { kind: 'quantity' as const, quantity: quantity('time', seconds, true), rounding: 'up' as const },
    inputs: [
      {
        name: 'pressure',
        value: pressure,
        from: pressureFrom[at],
      },
      { name: 'water', value: boiler['water-at-working-level'], from: 'boiler.water-at-working-level' },
      { name: 'metal', value: boiler['steel-mass'] ?? 'not known', from: 'boiler.steel-mass' },
      { name: 'full fire', value: told.rate, from: `burners.${told.burner}.full-rate` },
      {
        name: 'of it with the car standing',
        value: told.fire.known
          ? quantity('share', told.fire.share, told.fire.estimated)
          : 'not known, taken as the whole',
        from: 'fire-standing',
      },
      {
        name: 'efficiency',
        value: boiler.efficiency ?? `${usualEfficiency * 100} %, from memory`,
        from: 'boiler.efficiency',
      },
      {
        name: 'heat to water and metal',
        value: quantity('power', told.heatW, true),
        from: 'fire standing still × lower heating value × efficiency',
      },
      { name: 'start', value: quantity('temperature', start === 'cold' ? coldK : warmK), from: 'taken' },
    ],
    formula:
      'heat balance: (water’s enthalpy rise + metal’s heat) / (heat of the fire that the draught feeds − losses), step by step along the boiling line',
    source:
      'IAPWS-IF97; specific heat of steel 0.49 kJ/(kg K) (engineering reference tables); losses 5 % (common practice, no source)',
    checkedAgainst:
      'its parts: steam tables and specific heats; trade: under about 10 minutes to 500 psi with a good burner (common practice, no source)',
    doubt: {
      basis: 'estimated' as const,
      share: told.doubt,
      words: told.fire.known
        ? 'a burner slow to come to its full fire makes it longer; the keeper’s watch is better'
        : 'whether the fire gets air enough with the car standing is not known; a fire with yellow tips takes longer; the keeper’s watch is better',
    },
  }));
}

const formula = 'heat balance';

/** What stands for the whole of it where the fire or the metal is not known. */
function notKnown(noRate: boolean): Figure {
  return notKnownFigure(
    {
      id: 'steam-cold-working',
      name: 'time from lighting the main burner to working pressure, boiler cold',
      formula,
      source: 'IAPWS-IF97',
    },
    noRate
      ? 'the fuel burnt at full fire (`full-rate` of the main burner)'
      : 'the mass of metal heated with the water (`boiler.steel-mass`)',
  );
}

/** The time to a pressure that the spec does not say. */
function leastToMoveNotKnown(start: RaisingCurve['start']): Figure {
  return notKnownFigure(
    {
      id: `steam-${start}-least-to-move`,
      name: `time from lighting the main burner to ${pressureNames['least-to-move']}, boiler ${start}`,
      formula,
      source: 'IAPWS-IF97',
    },
    'the least pressure at which the car is moved (`boiler.least-to-move`)',
  );
}
