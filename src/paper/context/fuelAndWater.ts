/** Fuel and water: what goes in, what the stick says, how far it goes. */

import type { BlendChart } from '../../calc/figures/blends';
import type { RangeChart } from '../../calc/figures/rangeChart';
import type { StickChart } from '../../calc/figures/stickCharts';
import { quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';
import { notKnown, type Phrases } from '../phrase';

/** One stick chart as text. */
export interface StickContext {
  readonly id: string;
  readonly tank: string;
  readonly basis: string;
  readonly unusable: string;
  readonly reserve: string;
  readonly rows: readonly { readonly depth: string; readonly volume: string; readonly toRunOn: string }[];
}

/** One range table as text. */
export interface RangeContext {
  readonly liquid: string;
  readonly tank: string;
  readonly reserve: string;
  readonly unusable: string;
  /** Whether anything is known at all. */
  readonly known: boolean;
  readonly headings: readonly string[];
  readonly rows: readonly {
    readonly depth: string;
    readonly volume: string;
    readonly distances: readonly string[];
  }[];
  /** Use for planning, by terrain. */
  readonly uses: readonly {
    readonly terrain: string;
    readonly plan: string;
    readonly basis: string;
    readonly doubt: string;
  }[];
}

/** Everything of the chapter. */
export interface FuelAndWaterContext {
  readonly sticks: readonly StickContext[];
  readonly blends: readonly {
    readonly id: string;
    readonly name: string;
    readonly liquids: readonly string[];
    readonly rows: readonly { readonly wanted: string; readonly amounts: readonly string[] }[];
  }[];
  readonly ranges: readonly RangeContext[];
  readonly hazards: readonly {
    readonly name: string;
    readonly flashPoint: string;
    readonly ghs: string;
    readonly nfpa: string;
    /** The lightest liquid in it, if the whole is to be handled as that one. */
    readonly asLightAs: string;
  }[];
  readonly charged: readonly {
    readonly name: string;
    readonly oneCharge: string;
    readonly delivered: string;
    readonly strokes: string;
    readonly lasts: readonly {
      readonly burner: string;
      readonly fire: 'full' | 'low';
      readonly time: string;
    }[];
  }[];
}

/** Build it. */
export function fuelAndWaterContext(world: World): FuelAndWaterContext {
  const { figures, phrases } = world;
  return {
    sticks: figures.sticks.map((chart) => stickContext(chart, phrases)),
    blends: figures.blends.map((chart) => blendContext(chart, phrases)),
    hazards: figures.hazards.map(({ name, flashPoint, ghs, nfpa, asLightAs }) => ({
      name,
      flashPoint: phrases.both(quantity('temperature', flashPoint.cautiousK), { rounding: 'down' }),
      ghs: ghs === undefined ? notKnown : `${ghs.category}: ${ghs.signalWord}. ${ghs.statement}`,
      nfpa,
      asLightAs: asLightAs ?? '',
    })),
    charged: figures.charged.map(({ name, oneChargeM3, deliveredM3, strokes, lasts }) => ({
      name,
      oneCharge: phrases.both(quantity('volume', oneChargeM3), { rounding: 'down', decimals: 1 }),
      delivered: phrases.both(quantity('volume', deliveredM3), { rounding: 'down', decimals: 2 }),
      strokes: strokes === undefined ? '' : String(strokes),
      lasts: lasts.map(({ burner, fire, seconds }) => ({
        burner: world.car.parts.get(burner)?.name ?? burner,
        fire,
        time: phrases.first(quantity('time', seconds), { rounding: 'down' }),
      })),
    })),
    ranges: [figures.water, figures.fuel].flatMap((chart) =>
      chart === undefined ? [] : [rangeContext(chart, world)],
    ),
  };
}

function stickContext({ model, rows }: StickChart, phrases: Phrases): StickContext {
  return {
    id: model.id,
    tank: model.name,
    basis: model.basis,
    unusable: phrases.both(quantity('volume', model.unusableM3), { rounding: 'up' }),
    reserve: phrases.both(quantity('volume', model.reserveM3), { rounding: 'up' }),
    rows: rows.slice(1).map((row) => ({
      depth: phrases.both(quantity('length', row.depthM)),
      volume: phrases.both(quantity('volume', row.volumeM3), { rounding: 'down' }),
      toRunOn:
        row.toRunOnM3 > 0 ? phrases.both(quantity('volume', row.toRunOnM3), { rounding: 'down' }) : '–',
    })),
  };
}

function blendContext(
  { fuelId, name, blend, rows }: BlendChart,
  phrases: Phrases,
): FuelAndWaterContext['blends'][number] {
  return {
    id: fuelId,
    name,
    liquids: blend.map(({ liquid }) => liquid.name),
    rows: rows.map((row) => ({
      wanted: phrases.both(quantity('volume', row.wantedM3)),
      amounts: row.amountsM3.map((amount) => phrases.both(quantity('volume', amount), { decimals: 2 })),
    })),
  };
}

/** A range table as text; `which` picks the units: both, or one alone for a table read at a distance. */
export function rangeContext(
  { liquid, model, use, rows }: RangeChart,
  { phrases, words }: World,
  which: 'both' | 'first' | 'second' = 'both',
): RangeContext {
  const print = phrases[which];
  const known = terrains.filter((terrain) => use.byTerrain[terrain].planPerM !== undefined);
  return {
    liquid: words['range-of'][liquid],
    tank: model.name,
    known: known.length > 0,
    unusable: print(quantity('volume', model.unusableM3), { rounding: 'up' }),
    reserve: print(quantity('volume', model.reserveM3), { rounding: 'up' }),
    headings: known.map((terrain) => words.terrain[terrain]),
    rows: rows
      .filter((row) => known.some((terrain) => (row.rangeM[terrain] ?? 0) > 0))
      .map((row) => ({
        depth: print(quantity('length', row.depthM)),
        volume: print(quantity('volume', row.volumeM3), { rounding: 'down' }),
        distances: known.map((terrain) =>
          print(quantity('distance', row.rangeM[terrain] ?? 0), { rounding: 'down', decimals: 0 }),
        ),
      })),
    uses: terrains.map((terrain) => {
      const { planPerM, figure } = use.byTerrain[terrain];
      return {
        terrain: words.terrain[terrain],
        basis: figure.doubt.basis,
        doubt: figure.doubt.words,
        plan:
          planPerM === undefined
            ? notKnown
            : print(quantity('volumePerDistance', planPerM), { rounding: 'up' }),
      };
    }),
  };
}
