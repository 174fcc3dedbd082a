/** Water and fuel together, from full tanks: what runs out first, how far between stops, where to turn back. */
import { quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { Figure, FigureInput, FigureValue } from '../figure';
import { rangeM, runsOutFirst, type Supply, turnBackAt, usableM3 } from '../range/range';
import type { Terrain } from '../range/trip-log';
import { flowingM3 } from './otherTanks';
import type { RangeChart } from './rangeChart';
import type { UsedLiquid } from './useFigures';

/** One terrain. */
export interface TerrainPlan {
  readonly terrain: Terrain;
  readonly first: UsedLiquid;
  /** From full to the reserve, m, rounded down. */
  readonly betweenStopsM: number;
  /** The farthest out from which the same road leads home, m, rounded down. */
  readonly turnBackM: number;
}

/** All terrains, and the figures. */
export interface Planning {
  /** Empty unless both water and fuel are known. */
  readonly byTerrain: readonly TerrainPlan[];
  readonly figures: readonly Figure[];
}

/** What may be planned with on full tanks, reserve kept back, m³: further tanks count where they run by themselves. */
export function fillingM3({ model, others }: Pick<RangeChart, 'model' | 'others'>): number {
  return usableM3(Math.min(model.fillToM3, model.tank.capacityM3), model) + flowingM3(others);
}

/** From both range charts; `stepM` is what distances are rounded down to. */
export function planningOf(
  water: RangeChart | undefined,
  fuel: RangeChart | undefined,
  stepM: number,
): Planning {
  if (water === undefined || fuel === undefined) return { byTerrain: [], figures: figuresOf([], []) };
  const charts = [water, fuel];
  const byTerrain = terrains.flatMap((terrain): readonly TerrainPlan[] => {
    const supplies = charts.flatMap((chart): readonly Supply[] => {
      const usePerM = chart.use.byTerrain[terrain].planPerM;
      return usePerM === undefined ? [] : [{ name: chart.liquid, usableM3: fillingM3(chart), usePerM }];
    });
    if (supplies.length < charts.length) return [];
    const [first] = runsOutFirst(supplies);
    const limit = supplies.find(({ name }) => name === first?.name);
    const turn = turnBackAt(
      supplies.map(({ name, usableM3: usable, usePerM }) => ({
        name,
        usableM3: usable,
        useOutPerM: usePerM,
        useHomePerM: usePerM,
      })),
      stepM,
    );
    if (limit === undefined || turn === undefined) return [];
    return [
      {
        terrain,
        first: limit.name === 'water' ? 'water' : 'fuel',
        betweenStopsM: rangeM(limit.usableM3, limit.usePerM, stepM),
        turnBackM: turn.rangeM,
      },
    ];
  });
  return { byTerrain, figures: figuresOf(byTerrain, charts) };
}

function figuresOf(byTerrain: readonly TerrainPlan[], charts: readonly RangeChart[]): readonly Figure[] {
  const inputs = charts.flatMap((chart): readonly FigureInput[] => [
    {
      name: `${chart.liquid} to run on, full`,
      value: quantity('volume', fillingM3(chart)),
      from: [chart.model.id, ...chart.others.flatMap(({ id, way }) => (way.kind === 'open' ? [id] : []))]
        .map((id) => `tanks.${id}`)
        .join(', '),
    },
    ...byTerrain.map(({ terrain }) => ({
      name: `${chart.liquid} used on ${terrain} road`,
      value: quantity('volumePerDistance', chart.use.byTerrain[terrain].planPerM ?? 0),
      from: `${chart.liquid}-use-${terrain}`,
    })),
  ]);
  const estimated = charts.some((chart) =>
    byTerrain.some(({ terrain }) => chart.use.byTerrain[terrain].figure.doubt.basis === 'estimated'),
  );
  const known = byTerrain.length > 0;
  const common = {
    inputs,
    source: 'arithmetic (common practice, no source)',
    checkedAgainst: 'never rises with harder terrain; out and home together never use more than there is',
    doubt: {
      basis: !known ? ('unknown' as const) : estimated ? ('estimated' as const) : ('measured' as const),
      words: known
        ? 'from tanks as full as they may be; rounded down'
        : 'water or fuel is not known for any road',
    },
  };
  const unknown: FigureValue = {
    kind: 'unknown',
    measure: 'both tanks by the stick, and the water used for a distance',
  };
  const distances = (of: (plan: TerrainPlan) => number): FigureValue =>
    known
      ? {
          kind: 'table',
          columns: byTerrain.map(({ terrain }) => ({
            heading: terrain,
            dimension: 'distance',
            rounding: 'down',
            decimals: 0,
          })),
          rows: [byTerrain.map(of)],
        }
      : unknown;
  return [
    {
      id: 'runs-out-first',
      name: 'what runs out first',
      value: known
        ? {
            kind: 'words',
            words: byTerrain.map(({ terrain, first }) => `${first} on ${terrain} road`).join(', '),
          }
        : unknown,
      formula: 'the shorter of the two ranges',
      ...common,
    },
    {
      id: 'between-stops',
      name: 'how far between stops, from full tanks',
      value: distances(({ betweenStopsM }) => betweenStopsM),
      formula: 'to run on / use, of water and of fuel; the shorter, rounded down',
      ...common,
    },
    {
      id: 'turn-back',
      name: 'how far out to turn back at the latest, home by the same road',
      value: distances(({ turnBackM }) => turnBackM),
      formula: 'to run on / (use out + use home), of water and of fuel; the shorter, rounded down',
      ...common,
    },
  ];
}
