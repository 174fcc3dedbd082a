/** Further tanks of a liquid, beside the one whose reading the range table goes by: what each adds when it is full. */
import type { Car, PartId } from '../../car/car';
import { carrying, carryingFuel } from '../../car/flow';
import { type TankWay, wayBeside } from '../../car/sharedTanks';
import { quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import { usableM3 } from '../range/range';
import type { LiquidUse, UsedLiquid } from './use';

/** One further tank. */
export interface OtherTank {
  readonly id: PartId;
  readonly name: string;
  /** How its content comes to where it is used. */
  readonly way: TankWay;
  /** What may be planned with when it is filled as far as it may be: reserve and what cannot be drawn left out, m³. */
  readonly usableM3: number;
  /** Whether any of the measures is an estimate. */
  readonly estimated: boolean;
}

/** Where a liquid goes: to the boiler, or to the main burners. */
function endsOf({ spec }: Car, liquid: UsedLiquid): readonly PartId[] {
  if (liquid === 'water') return ['boiler'];
  return Object.entries(spec.burners).flatMap(([id, { job }]) => (job === 'main' ? [id] : []));
}

/**
 * Every other tank that holds what the tank `read` holds, in the order of the spec. A tank with air over it passes on
 * what comes from another, or is itself the one that is read: it is no further tank.
 */
export function otherTanks(car: Car, liquid: UsedLiquid, read: PartId): readonly OtherTank[] {
  const { tanks } = car.spec;
  const use = liquid === 'water' ? carrying('water') : carryingFuel;
  const ends = endsOf(car, liquid);
  return Object.entries(tanks).flatMap(([id, tank]): readonly OtherTank[] => {
    if (id === read || tank.holds !== tanks[read]?.holds || tank.pressure !== undefined) return [];
    const filled = tank['fill-to'] ?? tank.capacity;
    return [
      {
        id,
        name: tank.name,
        way: wayBeside(car, id, read, ends, use),
        usableM3: usableM3(filled.si, {
          unusableM3: tank.unusable?.si ?? 0,
          reserveM3: tank.reserve?.si ?? 0,
        }),
        estimated: [filled, tank.unusable, tank.reserve].some((each) => each?.estimated === true),
      },
    ];
  });
}

/** What runs to the place of use by itself, with nothing opened or pumped for it: counted in what full tanks give, m³. */
export function flowingM3(others: readonly OtherTank[]): number {
  return others.reduce((sum, { way, usableM3: usable }) => sum + (way.kind === 'open' ? usable : 0), 0);
}

/** How a further tank is reached, for the workings. */
function wayWords(car: Car, way: TankWay): string {
  const named = (ids: readonly PartId[]) =>
    ids
      .map((id) => {
        const part = car.parts.get(id);
        return part?.tag === undefined ? (part?.name ?? id) : `${part.name} ${part.tag}`;
      })
      .join(', ');
  switch (way.kind) {
    case 'open':
      return 'it runs by itself';
    case 'valves':
      return `only with these open: ${named(way.valves)}`;
    case 'pumped':
      return `only pumped over with: ${named([...way.pumps, ...way.valves])}`;
    case 'none':
      return 'no line leads from it to where it is used, so that it is not counted';
  }
}

/** One figure for each further tank: how far it goes, full; nought where no line leads from it. */
export function otherTankFigures(
  car: Car,
  liquid: UsedLiquid,
  others: readonly OtherTank[],
  use: LiquidUse,
  rangeOf: (usable: number) => Readonly<Partial<Record<(typeof terrains)[number], number>>>,
): readonly Figure[] {
  const known = terrains.filter((terrain) => use.byTerrain[terrain].planPerM !== undefined);
  return others.map(({ id, name, way, usableM3: usable, estimated }): Figure => {
    const counted = way.kind === 'none' ? 0 : usable;
    const far = rangeOf(counted);
    const tank = car.spec.tanks[id];
    const bases = known.map((terrain) => use.byTerrain[terrain].figure.doubt.basis);
    return {
      id: `${liquid}-from-${id}`,
      name: `how far the ${liquid} in the ${name} goes, filled`,
      value:
        known.length === 0
          ? { kind: 'unknown', measure: `the ${liquid} used for a distance; write it into \`running\`` }
          : {
              kind: 'table',
              columns: known.map((terrain) => ({
                heading: terrain,
                dimension: 'distance' as const,
                rounding: 'down' as const,
                decimals: 0,
              })),
              rows: [known.map((terrain) => far[terrain] ?? 0)],
            },
      inputs: [
        {
          name: 'filled to',
          value: tank?.['fill-to'] ?? tank?.capacity ?? quantity('volume', 0),
          from: `tanks.${id}.${tank?.['fill-to'] === undefined ? 'capacity' : 'fill-to'}`,
        },
        {
          name: 'part that cannot be drawn',
          value: tank?.unusable ?? quantity('volume', 0),
          from: `tanks.${id}.unusable`,
        },
        { name: 'reserve', value: tank?.reserve ?? quantity('volume', 0), from: `tanks.${id}.reserve` },
        { name: 'its way to where it is used', value: wayWords(car, way), from: 'lines' },
        ...known.map((terrain) => ({
          name: `use on ${terrain} road`,
          value: quantity('volumePerDistance', use.byTerrain[terrain].planPerM ?? 0),
          from: use.byTerrain[terrain].figure.id,
        })),
      ],
      formula:
        'filled to − cannot be drawn − reserve, where a line leads from it; / use per distance, rounded down',
      source: 'arithmetic; the lines of the spec',
      checkedAgainst: 'worked by hand',
      doubt:
        known.length === 0
          ? { basis: 'unknown', words: 'the use is not known' }
          : {
              basis: estimated || bases.includes('estimated') ? 'estimated' : 'measured',
              words: 'counted only when it is read full; in between, it counts for nothing',
            },
    };
  });
}
