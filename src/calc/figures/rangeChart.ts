/** How far the car goes on what the stick shows, by terrain, with the reserve kept back. */
import type { Car } from '../../car/car';
import { carrying, tanksFeeding } from '../../car/flow';
import { startsOf } from '../../car/routes';
import type { UnitSystem } from '../../quantity/dimension';
import { quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import { rangeM } from '../range/range';
import type { Terrain } from '../range/trip-log';
import type { OtherTank } from './otherTanks';
import { type StickChart, type StickRow, stickChart } from './stickCharts';
import { depthOnStick, markWidthM } from './stickReading';
import type { TankModel } from './tankModel';
import type { LiquidUse, UsedLiquid } from './use';

/** Distance by terrain, m, rounded down; absent where the use is not known. */
export type RangeByTerrain = Readonly<Partial<Record<Terrain, number>>>;

/** One reading of the stick, or of the tank's gauge. */
export interface RangeRow {
  /** What its gauge shows, in the keeper's words, where the tank is read on one whose marks are known. */
  readonly mark?: string;
  readonly depthM: number;
  readonly volumeM3: number;
  readonly toRunOnM3: number;
  readonly rangeM: RangeByTerrain;
}

/** The range table of one liquid. */
export interface RangeChart {
  readonly liquid: UsedLiquid;
  readonly model: TankModel;
  readonly use: LiquidUse;
  /** What the marks of its gauge stand for; empty where it is not read on one, or nobody has found out. */
  readonly marks: readonly GaugeMark[];
  /** Further tanks of the same liquid; the rows do not count them. */
  readonly others: readonly OtherTank[];
  readonly rows: readonly RangeRow[];
  /** The range of a full tank. */
  readonly full: RangeRow;
  readonly figure: Figure;
}

/** A mark of a tank's gauge, and what is in the tank then, m³. */
export interface GaugeMark {
  readonly mark: string;
  readonly volumeM3: number;
}

/** The marks of the gauge that a tank is read on. */
export function gaugeMarks({ spec }: Car, tankId: string): readonly GaugeMark[] {
  return (spec.tanks[tankId]?.marks ?? []).map(({ mark, volume }) => ({ mark, volumeM3: volume.si }));
}

/** Distances are printed in whole miles or kilometres, rounded down. */
export const printedStepM: Readonly<Record<UnitSystem, number>> = {
  us: 1609.344,
  imperial: 1609.344,
  metric: 1000,
};

/**
 * The tank a liquid is planned by: the largest that can be read and from which a line leads to the boiler or to a main
 * burner. Where no line of water comes to the boiler, the largest that holds water.
 */
export function plannedTank(
  car: Car,
  liquid: UsedLiquid,
  models: readonly TankModel[],
): TankModel | undefined {
  const mains = Object.entries(car.spec.burners)
    .filter(([, burner]) => burner.job === 'main')
    .map(([id]) => id);
  const feeding = startsOf(
    car.plant,
    'boiler',
    (id) => car.spec.tanks[id]?.holds === 'water',
    carrying('water'),
  );
  const wanted =
    liquid === 'water'
      ? (model: TankModel) =>
          car.spec.tanks[model.id]?.holds === 'water' && (feeding.size === 0 || feeding.has(model.id))
      : (model: TankModel) => mains.some((burner) => tanksFeeding(car, burner).includes(model.id));
  return models
    .filter(wanted)
    .reduce<TankModel | undefined>(
      (best, model) => (best === undefined || model.tank.capacityM3 > best.tank.capacityM3 ? model : best),
      undefined,
    );
}

/** The range table for a tank; with a row for every mark of its gauge, if they are known, else of its stick. */
export function rangeChart(
  { model, use, marks, others }: Pick<RangeChart, 'model' | 'use' | 'marks' | 'others'>,
  system: UnitSystem,
): RangeChart {
  const chart: StickChart = stickChart(model, system);
  const read = marks.length > 0 ? rowsOfMarks(marks, chart) : chart.rows;
  const rows = [...read.filter((row) => isFilled(row, model)), ...filledRow(read, chart, system)].map(
    (row): RangeRow => ({ ...row, rangeM: rangesFor(row.toRunOnM3, use, printedStepM[system]) }),
  );
  const full = rows.at(-1) ?? { depthM: 0, volumeM3: 0, toRunOnM3: 0, rangeM: {} };
  return {
    liquid: use.liquid,
    model,
    use,
    marks,
    others,
    rows,
    full,
    figure: figureOf(model, use, marks, rows),
  };
}

/** Whether a tank may be filled so far, but for the last bits of a number. */
function isFilled({ volumeM3 }: StickRow, { fillToM3 }: TankModel): boolean {
  return volumeM3 <= fillToM3 * (1 + 1e-9);
}

/** A mark this near below what may be filled in serves as the mark of a full tank. */
const likeFull = 0.02;

function rowsOfMarks(
  marks: readonly GaugeMark[],
  { model, kept }: StickChart,
): readonly (StickRow & { readonly mark: string })[] {
  return marks.map(({ mark, volumeM3 }) => ({
    mark,
    depthM: model.tank.depthAtVolumeM(Math.min(volumeM3, model.tank.capacityM3)),
    volumeM3,
    toRunOnM3: Math.max(0, volumeM3 - kept),
  }));
}

/**
 * The reading of a tank filled as far as it may be, where no mark of stick or gauge stands near it. On a stick that is the mark below, as
 * nobody fills to the one above; what is in the tank is then counted as it stands at that mark.
 */
function filledRow(
  rows: readonly StickRow[],
  { model, kept }: StickChart,
  system: UnitSystem,
): readonly StickRow[] {
  const { tank, fillToM3 } = model;
  const volumeM3 = Math.min(fillToM3, tank.capacityM3);
  const marked = rows.some((row) => isFilled(row, model) && row.volumeM3 >= volumeM3 * (1 - likeFull));
  if (marked) return [];
  const filledM = tank.depthAtVolumeM(volumeM3);
  const depthM = model.byStick ? depthOnStick(filledM, 'keep-under', system) : filledM;
  const readM3 = filledM - depthM <= markWidthM ? volumeM3 : tank.volumeAtDepthM3(depthM);
  return [{ depthM, volumeM3: readM3, toRunOnM3: Math.max(0, readM3 - kept) }];
}

/** How far a volume goes on each terrain whose use is known, rounded down to whole steps. */
export function rangesFor(toRunOnM3: number, use: LiquidUse, stepM: number): RangeByTerrain {
  const known = terrains.flatMap((terrain) => {
    const perM = use.byTerrain[terrain].planPerM;
    return perM === undefined ? [] : [[terrain, rangeM(toRunOnM3, perM, stepM)] as const];
  });
  return Object.fromEntries(known);
}

function figureOf(
  model: TankModel,
  use: LiquidUse,
  marks: readonly GaugeMark[],
  rows: readonly RangeRow[],
): Figure {
  const known = terrains.filter((terrain) => use.byTerrain[terrain].planPerM !== undefined);
  const bases = known.map((terrain) => use.byTerrain[terrain].figure.doubt.basis);
  return {
    id: `${use.liquid}-range`,
    name: `how far on the ${use.liquid} in the ${model.name}`,
    value:
      known.length === 0
        ? { kind: 'unknown', measure: `the ${use.liquid} used for a distance; write it into \`running\`` }
        : {
            kind: 'table',
            columns: [
              // a gauge tells nobody the depth
              marks.length > 0
                ? { heading: 'in the tank', dimension: 'volume', rounding: 'down' }
                : { heading: 'depth', dimension: 'length', rounding: 'nearest' },
              ...known.map((terrain) => ({
                heading: terrain,
                dimension: 'distance' as const,
                rounding: 'down' as const,
              })),
            ],
            rows: rows.map((row) => [
              marks.length > 0 ? row.volumeM3 : row.depthM,
              ...known.map((terrain) => row.rangeM[terrain] ?? 0),
            ]),
          },
    inputs: [
      {
        name: 'part that cannot be drawn',
        value: quantity('volume', model.unusableM3),
        from: `tanks.${model.id}.unusable`,
      },
      {
        name: 'reserve kept back',
        value: quantity('volume', model.reserveM3),
        from: `tanks.${model.id}.reserve`,
      },
      ...known.map((terrain) => ({
        name: `use on ${terrain} road`,
        value: quantity('volumePerDistance', use.byTerrain[terrain].planPerM ?? 0),
        from: use.byTerrain[terrain].figure.id,
      })),
    ],
    formula: '(in the tank − cannot be drawn − reserve) / use per distance, rounded down',
    source: 'arithmetic on the stick chart and the use per distance',
    checkedAgainst: 'a range never rises with harder terrain and never with less in the tank',
    doubt: {
      basis: bases.includes('estimated') || model.estimated ? 'estimated' : 'measured',
      words: 'rounded down; wind, stops and a hurried driver shorten it',
    },
  };
}

/** What is said where no tank of a liquid can be read by depth, or no tank holds it. */
export function rangeNotKnown(liquid: UsedLiquid): Figure {
  return {
    id: `${liquid}-range`,
    name: `how far on the ${liquid === 'fuel' ? 'main fuel' : liquid}`,
    value: {
      kind: 'unknown',
      measure:
        'the inside of the tank (`shape`), or what is in it at a few depths, filled by a measure (`stick`)',
    },
    inputs: [],
    formula: '(in the tank − cannot be drawn − reserve) / use per distance, rounded down',
    source: 'arithmetic on the stick chart and the use per distance',
    checkedAgainst: 'nothing, as nothing is worked out',
    doubt: { basis: 'unknown', words: 'not measured' },
  };
}
