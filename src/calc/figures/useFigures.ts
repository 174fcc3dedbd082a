/** How each way of knowing what the car uses is told: the figure of one terrain, with its doubt. */
import { type Quantity, quantity } from '../../quantity/quantity';
import type { Figure, FigureInput } from '../figure';
import { wild } from '../numeric/robust-fit';
import type { Terrain } from '../range/trip-log';
import { meanUse, nextTripUse, type UseFit, type WildTrip } from '../range/use-fit';

/** Which liquid. */
export type UsedLiquid = 'water' | 'fuel';

/** Use on one terrain. */
export interface TerrainUse {
  readonly terrain: Terrain;
  /** What to plan with, m³ per m: the high end of what is known. Absent if nothing can be said. */
  readonly planPerM?: number;
  /** The middle of what is known, m³ per m. */
  readonly meanPerM?: number;
  readonly figure: Figure;
}

/** A reading of the keeper's. */
export interface Reading {
  readonly terrain: Terrain;
  readonly use: Quantity<'volumePerDistance'>;
  readonly where: string;
}

/** How much more each terrain uses than level road, and where that is known from. */
export interface Ratios {
  /** Driven without a stop; level is 1. */
  readonly by: Readonly<Record<Terrain, number>>;
  /** With as many stops as in the log. */
  readonly driven: Readonly<Record<Terrain, number>>;
  /** Level road that takes as much as a stop, m; stops for each metre of the log. */
  readonly stop: { readonly asLevelM: number; readonly perM: number };
  readonly basis: 'readings' | 'physics';
  readonly estimated: boolean;
}

/**
 * What is added to a use that no log tells the scatter of, so that the printed range is on the safe side; common
 * practice, no source.
 */
export const allowance = { reading: 0.1, estimate: 0.25, otherTerrain: 0.25, fewTrips: 0.25 } as const;

/** A day's stretch between fillings, for which one trip's own luck is reckoned in. */
const plannedTripM = 30_000;

/** Chance, in the hundred, that a trip uses no more than what is planned with. */
const planned = 95;

const inHundred = (share: number): string => `${Math.round(share * 100)} in 100`;
const threeDecimals = (value: number): number => Math.round(value * 1000) / 1000;

/** From the robust fit of a log of three trips or more. */
export function fromLog(
  terrain: Terrain,
  liquid: UsedLiquid,
  fit: UseFit,
  { by, driven, stop, basis, estimated }: Ratios,
  file: string,
): TerrainUse {
  const ratio = driven[terrain];
  const plan = nextTripUse(fit, ratio, plannedTripM, (2 * planned - 100) / 100);
  const mean = meanUse(fit, ratio);
  const ratioWords =
    basis === 'physics'
      ? 'how much harder each terrain is was worked out from the road load'
      : `how much harder each terrain is comes from the keeper’s readings${estimated ? ', one of them an estimate' : ''}`;
  const inputs: readonly FigureInput[] = [
    { name: 'trips in the log', value: fit.trips, from: file },
    {
      name: 'trips left out as wild',
      value: fit.wild.length === 0 ? 'none' : fit.wild.map(wildWords).join(', '),
      from: file,
    },
    { name: 'middle of the fit', value: quantity('volumePerDistance', mean.mean), from: file },
    {
      name: `use on ${terrain} road over use on level road`,
      value: threeDecimals(by[terrain]),
      from: basis === 'physics' ? 'road load' : `running.${liquid}-use`,
    },
    ...stopInputs(stop, file),
  ];
  return told(terrain, liquid, mean.mean, plan.high, {
    inputs,
    formula: `robust fit of use against distance and stops through nought, × terrain ratio, with the stops of the log; planned with the use that ${planned} trips in 100 do not pass`,
    source: `weighted least squares with Student’s interval; trips that lie off by more than ${wild} times the spread of the trips named and left out as wild`,
    checkedAgainst: 'NIST StRD NoInt1 and NoInt2',
    estimated,
    words: `${fit.trips} trips; ${ratioWords}`,
  });
}

/** A trip that was left out, by how much it stood off, and to which side. */
export function wildWords({ trip, timesExpected }: WildTrip): string {
  const off = Math.round((timesExpected - 1) * 100);
  return `${trip.date} (line ${trip.line}), which used ${Math.abs(off)} in 100 ${off < 0 ? 'less' : 'more'} than the fit says`;
}

/** How the stops of a log are counted; nothing where it tells of none. */
function stopInputs({ asLevelM, perM }: Ratios['stop'], file: string): readonly FigureInput[] {
  if (perM === 0) return [];
  return [
    { name: 'distance from stop to stop, on the mean', value: quantity('distance', 1 / perM), from: file },
    {
      name: 'level road that takes as much as a stop',
      value: quantity('distance', asLevelM, true),
      from: 'half mass × speed² / force on level road',
    },
  ];
}

/** From one reading of the keeper's on this terrain. */
export function fromReading(liquid: UsedLiquid, { terrain, use, where }: Reading): TerrainUse {
  const more = use.estimated ? allowance.estimate : allowance.reading;
  return told(terrain, liquid, use.si, use.si * (1 + more), {
    inputs: [{ name: 'the keeper’s reading', value: use, from: `running.${liquid}-use` }],
    formula: `as read, and ${inHundred(more)} more to plan with`,
    source: `${where}; what is added is common practice, no source`,
    checkedAgainst: 'nothing published; it is this car’s own',
    estimated: use.estimated,
    words: 'one reading tells nothing of how trips scatter about it; a log of trips would',
  });
}

/** From a reading on another terrain: physics gives the ratio, the reading the level. */
export function fromOtherTerrain(
  terrain: Terrain,
  liquid: UsedLiquid,
  other: Reading,
  { by }: Ratios,
): TerrainUse {
  const ratio = by[terrain] / by[other.terrain];
  const mean = other.use.si * ratio;
  const inputs: readonly FigureInput[] = [
    {
      name: `the keeper’s reading on ${other.terrain} road`,
      value: other.use,
      from: `running.${liquid}-use`,
    },
    { name: `${terrain} over ${other.terrain} road`, value: threeDecimals(ratio), from: 'road load' },
  ];
  return told(terrain, liquid, mean, mean * (1 + allowance.otherTerrain), {
    inputs,
    formula: `reading × work for each distance on this terrain / on that one, and ${inHundred(allowance.otherTerrain)} more to plan with`,
    source:
      'rolling, climbing and air (Bosch Automotive Handbook, from memory); gradients assumed; what is added is common practice, no source',
    checkedAgainst: 'nothing published for such cars',
    estimated: true,
    words: 'not measured on this terrain',
  });
}

/** From a log of one or two trips: their mean, which tells nothing of the scatter. */
export function fromFewTrips(
  terrain: Terrain,
  liquid: UsedLiquid,
  trips: { readonly count: number; readonly levelPerM: number; readonly file: string },
  { by, driven, stop }: Ratios,
): TerrainUse {
  const mean = trips.levelPerM * driven[terrain];
  return told(terrain, liquid, mean, mean * (1 + allowance.fewTrips), {
    inputs: [
      { name: 'trips in the log', value: trips.count, from: trips.file },
      {
        name: `use on ${terrain} road over use on level road`,
        value: threeDecimals(by[terrain]),
        from: 'road load',
      },
      ...stopInputs(stop, trips.file),
    ],
    formula: `all that was used / all that was driven, stops counted in, × terrain ratio, and ${inHundred(allowance.fewTrips)} more to plan with`,
    source: 'arithmetic; what is added is common practice, no source',
    checkedAgainst: 'worked by hand',
    estimated: true,
    words: `${trips.count === 1 ? 'one trip only' : `${trips.count} trips only`}; from three on the log tells its own scatter`,
  });
}

/** From physics alone, where nothing was measured. */
export function fromWork(
  terrain: Terrain,
  liquid: UsedLiquid,
  use: { readonly mean: number; readonly high: number; readonly inputs: readonly FigureInput[] },
): TerrainUse {
  return told(terrain, liquid, use.mean, use.high, {
    inputs: use.inputs,
    formula:
      liquid === 'water'
        ? 'work at the wheels × steam for each unit of work; planned with the upper end of what engines take'
        : 'work at the wheels × steam for each unit of work × heat of the steam / (efficiency × heating value); planned with the upper end',
    source:
      'rolling, climbing, air (Bosch Automotive Handbook, from memory) and stops; steam rate of good engines from the Cyclopedia of Mechanical Engineering vol. 4, times two to four from memory; IAPWS-IF97',
    checkedAgainst: 'nothing published for such cars',
    estimated: true,
    words:
      'nothing was measured; fill up, drive a marked distance, fill up again, and write it into `running`',
  });
}

/** Nothing can be said. */
export function notMeasured(terrain: Terrain, liquid: UsedLiquid): TerrainUse {
  return {
    terrain,
    figure: {
      id: `${liquid}-use-${terrain}`,
      name: `${liquid} used on ${terrain} road, for planning`,
      value: {
        kind: 'unknown',
        measure: `fill up, drive a marked distance of ${terrain} road, fill up again, and write what went in over the distance into \`running\``,
      },
      inputs: [],
      formula: 'not known',
      source: 'not measured yet',
      checkedAgainst: 'nothing published; it is this car’s own',
      doubt: { basis: 'unknown', words: 'not measured' },
    },
  };
}

function told(
  terrain: Terrain,
  liquid: UsedLiquid,
  meanPerM: number,
  planPerM: number,
  how: {
    readonly inputs: readonly FigureInput[];
    readonly formula: string;
    readonly source: string;
    readonly checkedAgainst: string;
    readonly estimated: boolean;
    readonly words: string;
  },
): TerrainUse {
  const { inputs, formula, source, checkedAgainst, estimated, words } = how;
  return {
    terrain,
    meanPerM,
    planPerM,
    figure: {
      id: `${liquid}-use-${terrain}`,
      name: `${liquid} used on ${terrain} road, for planning`,
      value: {
        kind: 'quantity',
        quantity: quantity('volumePerDistance', planPerM, estimated),
        rounding: 'up',
      },
      inputs,
      formula,
      source,
      checkedAgainst,
      doubt: { basis: estimated ? 'estimated' : 'measured', share: planPerM / meanPerM - 1, words },
    },
  };
}
