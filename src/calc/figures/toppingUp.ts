/** Filling up a tank by what the stick shows: how much of each liquid goes into the can. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure } from '../figure';
import { type Blend, blendOf, topUp } from '../fuel/blend';
import type { Liquids } from '../fuel/liquids';
import { blendOfFuel, liquidsOf, roundingOf } from './blends';
import type { StickChart } from './stickCharts';

/** One reading of the stick; amounts are absent where the tank is too full for the blend to be made right. */
export interface ToppingUpRow {
  readonly depthM: number;
  /** What fills the tank as far as it may be filled, m³. */
  readonly roomM3: number;
  /** Of each liquid, in the order of the blend, m³. */
  readonly amountsM3?: readonly number[];
}

/** What to add by the reading, for one content of the tank. */
export interface ToppingUpChart {
  readonly tankId: string;
  readonly tankName: string;
  /** `same`: the tank holds the right blend. `main-liquid`: it holds only the liquid there is most of. */
  readonly holds: 'same' | 'main-liquid';
  readonly wanted: Blend;
  readonly mainLiquid: string;
  readonly rows: readonly ToppingUpRow[];
  readonly figure: Figure;
}

/**
 * For every tank of a blend that is read with a stick and filled at its filler: what to add if it holds the blend, and if
 * somebody has put in the main liquid alone.
 */
export function toppingUpCharts(
  car: Car,
  sticks: readonly StickChart[],
  library: Liquids,
): readonly ToppingUpChart[] {
  const liquids = liquidsOf(car, library);
  return sticks.flatMap((stick) => {
    const fuelId = car.spec.tanks[stick.model.id]?.holds ?? '';
    const fuel = car.spec.fuels[fuelId];
    if (fuel === undefined || fuel.parts.length < 2) return [];
    const wanted = blendOfFuel(car, fuelId, liquids);
    return (['same', 'main-liquid'] as const).map((holds) => chartOf(stick, fuelId, wanted, holds));
  });
}

function chartOf(
  { model, rows }: StickChart,
  fuelId: string,
  wanted: Blend,
  holds: ToppingUpChart['holds'],
): ToppingUpChart {
  const most = wanted.reduce((a, b) => (b.share > a.share ? b : a)).liquid;
  const now = holds === 'same' ? wanted : blendOf([{ liquid: most, volume: 1 }]);
  const full = Math.min(model.fillToM3, model.tank.capacityM3);
  const filled = rows
    .filter(({ volumeM3 }) => volumeM3 < full * 0.99)
    .map(({ depthM, volumeM3 }): ToppingUpRow => {
      const added = topUp({ blend: now, volumeM3 }, wanted, full);
      const roomM3 = full - volumeM3;
      if (added.kind === 'too-much') return { depthM, roomM3 };
      const amountsM3 = wanted.map(
        ({ liquid }) => added.amounts.find((each) => each.liquid.key === liquid.key)?.volumeM3 ?? 0,
      );
      return { depthM, roomM3, amountsM3 };
    });
  const chart = {
    tankId: model.id,
    tankName: model.name,
    holds,
    wanted,
    mainLiquid: most.name,
    rows: filled,
  };
  return { ...chart, figure: figureOf(chart, fuelId, model.fillToM3) };
}

function figureOf(chart: Omit<ToppingUpChart, 'figure'>, fuelId: string, fillToM3: number): Figure {
  const { tankId, tankName, holds, wanted, mainLiquid, rows } = chart;
  return {
    id: `fill-up-${tankId}-${holds}`,
    name: `what fills up the ${tankName}, holding ${holds === 'same' ? 'the right blend' : `${mainLiquid} alone`}`,
    value: {
      kind: 'table',
      columns: [
        { heading: 'depth', dimension: 'length', rounding: 'nearest' },
        ...wanted.map(({ liquid }) => ({
          heading: liquid.name,
          dimension: 'volume' as const,
          rounding: holds === 'same' ? ('down' as const) : roundingOf(liquid, wanted),
          poured: true as const,
        })),
      ],
      rows: rows.flatMap(({ depthM, amountsM3 }) =>
        amountsM3 === undefined ? [] : [[depthM, ...amountsM3]],
      ),
    },
    inputs: [
      { name: 'filled to', value: quantity('volume', fillToM3), from: `tanks.${tankId}` },
      { name: 'in the tank at each depth', value: 'the stick chart', from: `stick-${tankId}` },
      ...wanted.map(({ liquid, share }) => ({
        name: `share of ${liquid.name}`,
        value: quantity('share', share),
        from: `fuels.${fuelId}.parts`,
      })),
    ],
    formula: 'of each liquid: its share × full tank − what of it is in the tank',
    source: 'shares by volume; volumes are taken to add up (common practice, no source)',
    checkedAgainst: 'what was in and what is added make the wanted blend, nothing lost',
    doubt: { basis: 'computed', words: 'as good as the stick and the measuring can' },
  };
}
