/** What becomes of a charge of air: as fuel goes, over a cold night, in the sun, on a mountain. */
import type { Car, PartId } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import { type ChargedTank, gaugeAfterChangePa, gaugeWhenLeftPa } from '../air/cushion';
import type { Figure, FigureInput } from '../figure';
import { standardAir } from '../steam/atmosphere';

type SpecTank = Car['spec']['tanks'][string];

/** Temperatures and altitude that the changes are told for; taken, not measured. */
const chargedAtK = 288.15;
const changes = {
  'cold-night': { toK: 273.15, altitudeM: 0, words: 'after a night at freezing' },
  'in-the-sun': { toK: 313.15, altitudeM: 0, words: 'after standing in the sun' },
  'up-high': { toK: chargedAtK, altitudeM: 1500, words: 'on a high pass' },
} as const;

/** One way the charge changes. */
export type ChargeChange = keyof typeof changes;

/** A relief valve on a charged tank, which lets go before the air over the fuel reaches what a change would bring it to. */
export interface LetsGo {
  readonly name: string;
  readonly tag: string;
  readonly setPa: number;
}

/** The relief valve of a tank with a set pressure; nothing if it has none. */
export function reliefOf(car: Car, tankId: PartId): LetsGo | undefined {
  const found = (car.plant.out.get(tankId) ?? [])
    .map(({ to }) => car.spec.devices[to])
    .find((device) => device?.kind === 'relief-valve' && device.set !== undefined);
  return found?.set === undefined
    ? undefined
    : { name: found.name, tag: found.tag ?? '', setPa: found.set.si };
}

/** Pressure after a change, from the top of the band. */
export interface ChangedCharge {
  readonly change: ChargeChange;
  /** Temperature and altitude after it. */
  readonly toK: number;
  readonly altitudeM: number;
  readonly gaugePa: number;
  /** The relief valve that should have let go before; absent where none would. */
  readonly letsGo?: LetsGo;
}

/** A moment while a burner draws on the charge and nobody pumps. */
export interface ChargeMoment {
  readonly seconds: number;
  readonly gaugePa: number;
}

const common = {
  source: 'Boyle’s and Charles’s laws with absolute pressures; air of the US Standard Atmosphere 1976',
  checkedAgainst: 'worked examples of the gas laws; the tables of the standard atmosphere',
} as const;

/** The tank charged to its top at 15 °C at the sea, then changed, as if no relief valve let go. */
export function changedCharges(full: ChargedTank, relief?: LetsGo): readonly ChangedCharge[] {
  return (Object.keys(changes) as ChargeChange[]).map((change) => {
    const { toK, altitudeM } = changes[change];
    const ambientPa = standardAir(altitudeM).pressurePa;
    const gaugePa = gaugeAfterChangePa(full, { fromK: chargedAtK, toK, ambientPa });
    return {
      change,
      toK,
      altitudeM,
      gaugePa,
      ...(relief === undefined || gaugePa <= relief.setPa ? {} : { letsGo: relief }),
    };
  });
}

/** Pressure at each quarter of the time in which a burner brings it from top to floor. */
export function momentsOf(
  full: ChargedTank,
  burner: { readonly rateM3PerS: number; readonly seconds: number },
): readonly ChargeMoment[] {
  return [0, 1, 2, 3, 4].map((quarter) => {
    const seconds = (burner.seconds * quarter) / 4;
    const left = Math.max(0, full.fuelM3 - burner.rateM3PerS * seconds);
    return { seconds, gaugePa: gaugeWhenLeftPa(full, left) };
  });
}

/** Figures of the changes. What falls is rounded down, what rises up: both to the side that is sooner wrong. */
export function changeFigures(
  tankId: PartId,
  tank: SpecTank,
  inputs: readonly FigureInput[],
  changed: readonly ChangedCharge[],
): readonly Figure[] {
  return changed.map(({ change, gaugePa, letsGo }): Figure => {
    const { toK, altitudeM, words } = changes[change];
    return {
      id: `${change}-${tankId}`,
      name: `pressure of the ${tank.name} ${words}, charged to its top before`,
      value: {
        kind: 'quantity',
        quantity: quantity('gaugePressure', Math.max(0, gaugePa), true),
        rounding: change === 'cold-night' ? 'down' : 'up',
      },
      inputs: [
        ...inputs,
        { name: 'charged at', value: quantity('temperature', chargedAtK), from: 'taken' },
        { name: 'then at', value: quantity('temperature', toK), from: 'taken' },
        ...(altitudeM === 0
          ? []
          : [
              {
                name: 'altitude',
                value: `${altitudeM} m (${Math.round(altitudeM / 0.3048)} ft)`,
                from: 'taken',
              },
            ]),
      ],
      formula: 'absolute pressure × temperature after / temperature before − air of the place',
      ...common,
      doubt: {
        basis: 'estimated',
        words: [
          change === 'in-the-sun'
            ? 'the vapour of a light fuel adds to it; vent down to the band before lighting'
            : 'temperatures are taken, not measured; a leak makes it less',
          ...(letsGo === undefined ? [] : [`the ${letsGo.name} is taken not to let go, as it should`]),
        ].join('; '),
      },
    };
  });
}

/** The fall of pressure while a burner draws and nobody pumps. */
export function fallFigure(
  names: {
    readonly tankId: PartId;
    readonly tank: string;
    readonly burnerId: PartId;
    readonly burner: string;
  },
  fire: 'full' | 'low',
  moments: readonly ChargeMoment[],
  inputs: readonly FigureInput[],
): Figure {
  return {
    id: `fall-${names.tankId}-${names.burnerId}-${fire}`,
    name: `pressure of the ${names.tank} while the ${names.burner} burns at ${fire} fire and nobody pumps`,
    value: {
      kind: 'table',
      columns: [
        { heading: 'after', dimension: 'time', rounding: 'down' },
        { heading: 'pressure', dimension: 'gaugePressure', rounding: 'down' },
      ],
      rows: moments.map(({ seconds, gaugePa }) => [seconds, gaugePa]),
    },
    inputs,
    formula: 'absolute top × air at first / (air at first + fuel burnt) − air of the place',
    ...common,
    doubt: { basis: 'estimated', words: 'an engine pump or a warming tank holds it up longer' },
  };
}
