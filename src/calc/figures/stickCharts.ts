/** Stick charts: what is in each tank at each depth, and what of it can be run on. */

import type { Car } from '../../car/car';
import type { UnitSystem } from '../../quantity/dimension';
import { quantity } from '../../quantity/quantity';
import { type Figure, notKnownFigure } from '../figure';
import { chartByDepth } from '../tank/stick-chart';
import type { TankModel } from './tankModel';

/** One reading. */
export interface StickRow {
  readonly depthM: number;
  /** All that is in the tank, m³. */
  readonly volumeM3: number;
  /** What can be run on before the reserve is touched, m³; never below nothing. */
  readonly toRunOnM3: number;
}

/** The chart of one tank. */
export interface StickChart {
  readonly model: TankModel;
  readonly rows: readonly StickRow[];
  /** What is not run on: what cannot be drawn, and the reserve, m³. */
  readonly kept: number;
  readonly figure: Figure;
}

const inchM = 0.0254;

/** Steps a stick is marked in, the finest first. */
const stepsM: Readonly<Record<UnitSystem, readonly number[]>> = {
  us: [inchM / 4, inchM / 2, inchM, 2 * inchM, 4 * inchM],
  imperial: [inchM / 4, inchM / 2, inchM, 2 * inchM, 4 * inchM],
  metric: [0.005, 0.01, 0.02, 0.05, 0.1],
};

/** About as many marks as a stick can carry and a reader can find. */
const mostRows = 14;

/** The chart of a tank, with a row at every mark of the stick and one for the tank full. */
export function stickChart(model: TankModel, system: UnitSystem): StickChart {
  const steps = stepsM[system];
  const step =
    steps.find((each) => model.tank.fullDepthM / each <= mostRows) ?? steps.at(-1) ?? model.tank.fullDepthM;
  const kept = model.unusableM3 + model.reserveM3;
  const rows = chartByDepth(model.tank, step).map(({ depthM, volumeM3 }) => ({
    depthM,
    volumeM3,
    toRunOnM3: Math.max(0, volumeM3 - kept),
  }));
  return { model, rows, kept, figure: figureOf(model, rows) };
}

function figureOf(model: TankModel, rows: readonly StickRow[]): Figure {
  const measured = model.basis === 'measured';
  return {
    id: `stick-${model.id}`,
    name: `stick chart of the ${model.name}`,
    value: {
      kind: 'table',
      columns: [
        { heading: 'depth', dimension: 'length', rounding: 'nearest' },
        { heading: 'in the tank', dimension: 'volume', rounding: 'down' },
        { heading: 'to run on', dimension: 'volume', rounding: 'down' },
      ],
      rows: rows.map((row) => [row.depthM, row.volumeM3, row.toRunOnM3]),
    },
    inputs: [
      {
        name: measured ? 'stick readings' : 'inside shape',
        value: measured ? 'as written in the spec' : model.tank.shape.kind.replaceAll('-', ' '),
        from: `tanks.${model.id}.${measured ? 'stick' : 'shape'}`,
      },
      {
        name: 'part that cannot be drawn',
        value: quantity('volume', model.unusableM3),
        from: `tanks.${model.id}.unusable`,
      },
      { name: 'reserve', value: quantity('volume', model.reserveM3), from: `tanks.${model.id}.reserve` },
    ],
    formula: measured
      ? 'monotone cubic curve through the readings; to run on = in the tank − cannot be drawn − reserve'
      : 'volume below the depth in the given shape; to run on = in the tank − cannot be drawn − reserve',
    source: measured
      ? 'Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238'
      : 'plane geometry; ends by D. Jones, Calculating Tank Volume (2003)',
    checkedAgainst: measured
      ? 'its own readings, and that it never falls or swings between them'
      : 'worked examples of D. Jones, Calculating Tank Volume',
    doubt: measured
      ? { basis: 'measured', words: 'as good as the measure and the level ground it was filled on' }
      : {
          basis: model.estimated ? 'estimated' : 'computed',
          words: 'as good as the inside dimensions; dents and baffles are not in it',
        },
  };
}

/** Tanks that are read with a stick while nothing says what a depth means. */
export function sticksNotKnown(car: Car, models: readonly TankModel[]): readonly Figure[] {
  return Object.entries(car.spec.tanks).flatMap(([id, { name, read }]) => {
    if (read !== 'stick' || models.some((model) => model.id === id)) return [];
    return [
      notKnownFigure(
        {
          id: `stick-${id}`,
          name: `stick chart of the ${name}`,
          formula: 'volume below the depth',
          source: 'plane geometry, or readings made by filling with a measure',
        },
        `the inside of the tank (\`tanks.${id}.shape\`), or what is in it at a few depths, filled by a measure (\`stick\`)`,
      ),
    ];
  });
}
