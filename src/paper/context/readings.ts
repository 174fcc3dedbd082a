/** What every gauge and tank of the car should read, and at which reading one stops. */
import type { World } from '../paper';
import { type PlacedPart, partsOfKind } from './controls';

/** One gauge, and what it shows when. */
export type GaugeReadings = PlacedPart & {
  readonly cold: string;
  readonly ready: string;
  readonly road: string;
  readonly stop: string;
};

/** One tank, and how full it should be. */
export type TankReadings = PlacedPart & {
  readonly full: string;
  readonly start: string;
  readonly least: string;
};

/** Every gauge and every tank, in the order of the spec. */
export interface ReadingsContext {
  readonly gauges: readonly GaugeReadings[];
  readonly tanks: readonly TankReadings[];
}

/** What the prose says of each, and above it what the keeper wrote. */
export function readingsContext(world: World): ReadingsContext {
  const { readings } = world.guide;
  const { gauges, tanks } = world.car.spec;
  const worked = new Set(world.figures.sticks.map(({ model }) => model.id));
  return {
    gauges: partsOfKind(world, 'gauge').map((part) => {
      const said = readings.gauges.find(({ of }) => of.some(({ id }) => id === part.id));
      const gauge = gauges[part.id];
      const byKeeper = gauge?.['should-read'];
      // how much is in a tank is told of the start of a day; a glass has a mark, which holds on the road too
      const amount = gauge?.reads === 'level' && gauge.of in tanks;
      const startOnly = amount && gauge.kind !== 'glass';
      // a depth that is worked out is the same on every paper; one that was written down by hand need not be
      const isWorked = amount && gauge.kind === 'stick' && worked.has(gauge.of);
      return {
        ...part,
        cold: gauge?.['cold-reads'] ?? said?.cold ?? '',
        ready: gauge?.['ready-reads'] ?? (amount && !isWorked ? byKeeper : undefined) ?? said?.ready ?? '',
        road: (startOnly || part.from !== '' ? undefined : byKeeper) ?? said?.road ?? '',
        stop: gauge?.['stop-at'] ?? said?.stop ?? '',
      };
    }),
    tanks: partsOfKind(world, 'tank').map((part) => {
      const said = readings.tanks.find(({ of }) => of.some(({ id }) => id === part.id));
      return { ...part, full: said?.full ?? '', start: said?.start ?? '', least: said?.road ?? '' };
    }),
  };
}
