/** A rule of thumb for the road: how far the car goes, at the least, for each inch or centimetre that the stick falls. */
import type { UnitSystem } from '../../quantity/dimension';
import { quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import { rangeM } from '../range/range';
import type { RangeByTerrain, RangeChart } from './rangeChart';
import type { TankModel } from './tankModel';

/** One step of a stick. */
export interface StickStep {
  readonly stepM: number;
  /** The least that is in a step of the stick between the reserve and full, m³. */
  readonly leastM3: number;
  /** How far that goes, m, rounded down. */
  readonly rangeM: RangeByTerrain;
  readonly figure: Figure;
}

/** What a stick is read by on the road. */
const stepsM: Readonly<Record<UnitSystem, number>> = { us: 0.0254, imperial: 0.0254, metric: 0.01 };

/** Distances for a step are told in tenths of a mile or a kilometre. */
const printedTenthsM: Readonly<Record<UnitSystem, number>> = {
  us: 160.9344,
  imperial: 160.9344,
  metric: 100,
};

/** Places of the tank that are looked at for the narrowest. */
const looks = 400;

/** The step of a tank’s stick; nothing if less than one step lies between the reserve and full. */
export function stickStep({ liquid, model, use }: RangeChart, system: UnitSystem): StickStep | undefined {
  const stepM = stepsM[system];
  const leastM3 = leastInStep(model, stepM);
  if (leastM3 === undefined) return undefined;
  const known = terrains.flatMap((terrain) => {
    const perM = use.byTerrain[terrain].planPerM;
    return perM === undefined ? [] : [[terrain, rangeM(leastM3, perM, printedTenthsM[system])] as const];
  });
  return {
    stepM,
    leastM3,
    rangeM: Object.fromEntries(known),
    figure: {
      id: `${liquid}-stick-step`,
      name: `how far a step of the stick in the ${model.name} goes, at the least`,
      value:
        known.length === 0
          ? { kind: 'unknown', measure: `the ${liquid} used for a distance; write it into \`running\`` }
          : {
              kind: 'table',
              columns: [
                { heading: 'step', dimension: 'length', rounding: 'nearest' },
                ...known.map(([terrain]) => ({
                  heading: terrain,
                  dimension: 'distance' as const,
                  rounding: 'down' as const,
                  decimals: 1,
                })),
              ],
              rows: [[stepM, ...known.map(([, metres]) => metres)]],
            },
      inputs: [
        {
          name: 'least in a step of the stick between the reserve and full',
          value: quantity('volume', leastM3),
          from: `stick-${model.id}`,
        },
        ...known.map(([terrain]) => ({
          name: `use on ${terrain} road`,
          value: quantity('volumePerDistance', use.byTerrain[terrain].planPerM ?? 0),
          from: use.byTerrain[terrain].figure.id,
        })),
      ],
      formula: 'least volume between two marks one step apart / use per distance, rounded down',
      source: 'arithmetic on the stick chart and the use per distance',
      checkedAgainst: 'steps from full to the reserve never add up to more than the range',
      doubt:
        known.length === 0 ? { basis: 'unknown', words: 'the use is not known' } : doubtOf(use, known, model),
    },
  };
}

function doubtOf(
  use: RangeChart['use'],
  known: readonly (readonly [(typeof terrains)[number], number])[],
  { estimated }: TankModel,
): Figure['doubt'] {
  const bases = known.map(([terrain]) => use.byTerrain[terrain].figure.doubt.basis);
  return {
    basis: estimated || bases.includes('estimated') ? 'estimated' : 'measured',
    words: 'where the tank is narrowest; elsewhere a step goes farther',
  };
}

/** The least volume between two depths one step apart, from the reserve up to full. */
function leastInStep(
  { tank, unusableM3, reserveM3, fillToM3 }: TankModel,
  stepM: number,
): number | undefined {
  const low = tank.depthAtVolumeM(unusableM3 + reserveM3);
  const high = tank.depthAtVolumeM(Math.min(fillToM3, tank.capacityM3)) - stepM;
  if (high < low) return undefined;
  const volumes = Array.from({ length: looks + 1 }, (_, index) => {
    const depth = low + ((high - low) * index) / looks;
    return tank.volumeAtDepthM3(depth + stepM) - tank.volumeAtDepthM3(depth);
  });
  return Math.min(...volumes);
}
