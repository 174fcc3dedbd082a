/** Fuel and water: what goes in, what the stick says, how far it goes. */

import { type BlendChart, roundingOf } from '../../calc/figures/blends';
import type { ChargedFigures } from '../../calc/figures/charged';
import type { OtherTank } from '../../calc/figures/otherTanks';
import type { Planning } from '../../calc/figures/planning';
import { printedStepM, type RangeChart, rangesFor } from '../../calc/figures/rangeChart';
import type { StickChart } from '../../calc/figures/stickCharts';
import type { ToppingUpChart } from '../../calc/figures/toppingUp';
import type { PartId } from '../../car/car';
import { listed, partName } from '../../language/language';
import { type Quantity, quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';
import type { Phrases } from '../phrase';

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
  /** Whether the tank is read by a stick; a depth says nothing where it is not. */
  readonly byStick: boolean;
  /** Whether the tank is read on a gauge whose marks are known. */
  readonly byMark: boolean;
  readonly reserve: string;
  readonly unusable: string;
  /** Both together: what the stick or gauge shows as the reserve begins. */
  readonly kept: string;
  /** Whether anything is known at all. */
  readonly known: boolean;
  /** A trip that used more than is reckoned with: its day, and by how many in the hundred. */
  readonly thirsty: { readonly date: string; readonly inHundred: number } | false;
  readonly headings: readonly string[];
  readonly rows: readonly {
    /** Wet length of the stick; empty where the gauge is looked up. */
    readonly depth: string;
    /** What the gauge shows; empty where no mark of it stands at what is filled in. */
    readonly mark: string;
    /** The last mark of a stick that stands below half of what is filled in: who is asked for half a tank looks there. */
    readonly underHalf: boolean;
    readonly volume: string;
    readonly distances: readonly string[];
  }[];
  /** Further tanks of the same liquid that can be run on, each when it is read full. */
  readonly others: readonly {
    readonly tank: string;
    /** What has to be open or pumped for it. */
    readonly how: string;
    readonly volume: string;
    readonly distances: readonly string[];
  }[];
  /** Further tanks from which no line leads to where the liquid is used. */
  readonly notCounted: readonly string[];
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
  /** What fills up a tank, by the reading of its stick. */
  readonly toppingUp: readonly {
    readonly id: string;
    readonly tank: string;
    /** The liquid that is in the tank alone; empty where the tank holds the right blend. */
    readonly alone: string;
    readonly liquids: readonly string[];
    readonly rows: readonly {
      readonly depth: string;
      readonly room: string;
      /** Empty where the tank is too full for the blend to be made right. */
      readonly amounts: readonly string[];
    }[];
  }[];
  readonly ranges: readonly RangeContext[];
  /** Water and fuel together, a row for each kind of road; empty where one of the two is not known. */
  readonly planning: readonly PlanningRow[];
  /** What to measure where no range can be worked out. */
  readonly toMeasure: readonly { readonly liquid: string; readonly measure: string }[];
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
      /** On all the fuel there is, pumped up as needed; empty for a tank that pumps refill. */
      readonly endurance: string;
      readonly pumpings: string;
      readonly fall: readonly { readonly after: string; readonly pressure: string }[];
    }[];
    readonly changed: readonly {
      readonly change: string;
      readonly at: string;
      readonly pressure: string;
      /** The relief valve that should let go before, and where; empty where none would. */
      readonly relief: string;
      readonly reliefSet: string;
    }[];
  }[];
}

/** From full tanks, on one kind of road. */
export interface PlanningRow {
  readonly terrain: string;
  readonly first: string;
  readonly between: string;
  readonly turnBack: string;
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
      ghs:
        ghs === undefined
          ? phrases.notKnown
          : phrases.told(`${ghs.category}: ${ghs.signalWord}. ${ghs.statement}`),
      nfpa,
      asLightAs: phrases.told(asLightAs ?? ''),
    })),
    toppingUp: figures.toppingUp.map((chart) => toppingUpContext(chart, phrases)),
    charged: figures.charged.map((each) => chargedContext(each, world)),
    planning: planningContext(world, figures.planning),
    toMeasure: (['water', 'fuel'] as const).flatMap((liquid) => {
      const { value } = figures.all.find(({ id }) => id === `${liquid}-range`) ?? {};
      return value?.kind === 'unknown'
        ? [{ liquid: world.words['range-of'][liquid], measure: value.measure }]
        : [];
    }),
    ranges: [figures.water, figures.fuel].flatMap((chart) =>
      chart === undefined ? [] : [rangeContext(chart, world)],
    ),
  };
}

/** Water and fuel together, in both units or in one. */
export function planningContext(
  { phrases, words }: World,
  { byTerrain }: Planning,
  which: 'both' | 'first' | 'second' = 'both',
): readonly PlanningRow[] {
  const far = (metres: number): string =>
    phrases[which](quantity('distance', metres), { rounding: 'down', decimals: 0 });
  return byTerrain.map(({ terrain, first, betweenStopsM, turnBackM }) => ({
    terrain: words.terrain[terrain],
    first: words['range-of'][first],
    between: far(betweenStopsM),
    turnBack: far(turnBackM),
  }));
}

function chargedContext(
  { name, oneChargeM3, deliveredM3, strokes, lasts, changed }: ChargedFigures,
  { car, phrases, words }: World,
): FuelAndWaterContext['charged'][number] {
  const pressure = (gaugePa: number, rounding: 'up' | 'down'): string =>
    phrases.both(quantity('gaugePressure', gaugePa), { rounding });
  return {
    name,
    oneCharge: phrases.both(quantity('volume', oneChargeM3), { rounding: 'down', decimals: 1 }),
    delivered: phrases.both(quantity('volume', deliveredM3), { rounding: 'down', decimals: 2 }),
    strokes: strokes === undefined ? '' : String(strokes),
    lasts: lasts.map(({ burner, fire, seconds, moments, endurance }) => {
      const estimated = car.spec.burners[burner]?.[`${fire}-rate`]?.estimated === true;
      return {
        burner: car.parts.get(burner)?.name ?? burner,
        fire,
        time: phrases.duration(quantity('time', seconds, estimated), 'down'),
        endurance:
          endurance === undefined
            ? ''
            : phrases.duration(quantity('time', endurance.seconds, estimated), 'down'),
        pumpings: endurance === undefined ? '' : String(endurance.pumpings),
        fall: moments.map((moment) => ({
          after: phrases.duration(quantity('time', moment.seconds, estimated && moment.seconds > 0), 'down'),
          pressure: pressure(moment.gaugePa, 'down'),
        })),
      };
    }),
    changed: changed.map(({ change, gaugePa, toK, altitudeM, letsGo }) => ({
      change: words['charge-after'][change],
      at: altitudeM === 0 ? phrases.both(quantity('temperature', toK)) : heightWords(altitudeM, phrases),
      pressure: pressure(Math.max(0, gaugePa), change === 'cold-night' ? 'down' : 'up'),
      relief: letsGo === undefined ? '' : [letsGo.name, letsGo.tag && `(${letsGo.tag})`].join(' ').trim(),
      reliefSet: letsGo === undefined ? '' : phrases.both(quantity('gaugePressure', letsGo.setPa)),
    })),
  };
}

/** A height above the sea in metres and feet. */
function heightWords(altitudeM: number, { systems, plain }: Phrases): string {
  const unit = { us: 'ft', imperial: 'ft', metric: 'm' } as const;
  return [
    ...new Set(
      systems.map((system) => plain(quantity('distance', altitudeM), { system, unit: unit[system] })),
    ),
  ].join(', ');
}

function toppingUpContext(
  { tankId, tankName, holds, wanted, mainLiquid, rows }: ToppingUpChart,
  phrases: Phrases,
): FuelAndWaterContext['toppingUp'][number] {
  const least = leastOf(rows.flatMap(({ amountsM3 }) => (amountsM3 === undefined ? [] : [amountsM3])));
  return {
    id: `${tankId}-${holds}`,
    tank: tankName,
    alone: holds === 'same' ? '' : phrases.told(mainLiquid),
    liquids: wanted.map(({ liquid }) => phrases.told(liquid.name)),
    rows: rows.map(({ depthM, roomM3, amountsM3 }) => ({
      depth: markWords(depthM, phrases),
      room: phrases.poured(quantity('volume', roomM3), 'down'),
      amounts: (amountsM3 ?? []).map((amount, index) => {
        const portion = wanted[index];
        const rounding =
          holds === 'same' || portion === undefined ? 'down' : roundingOf(portion.liquid, wanted);
        return phrases.poured(quantity('volume', amount), rounding, least[index]);
      }),
    })),
  };
}

/** A mark of the stick in the first units, and about where that is in the second: the same in every table. */
function markWords(depthM: number, phrases: Phrases): string {
  return phrases.both(quantity('length', depthM));
}

function stickContext({ model, rows }: StickChart, phrases: Phrases): StickContext {
  return {
    id: model.id,
    tank: model.name,
    basis: phrases.basis[model.basis],
    unusable: phrases.both(quantity('volume', model.unusableM3), { rounding: 'up' }),
    reserve: phrases.both(quantity('volume', model.reserveM3), { rounding: 'up' }),
    rows: rows.slice(1).map((row) => ({
      depth: markWords(row.depthM, phrases),
      volume: phrases.both(quantity('volume', row.volumeM3), { rounding: 'down' }),
      toRunOn:
        row.toRunOnM3 > 0 ? phrases.both(quantity('volume', row.toRunOnM3), { rounding: 'down' }) : '–',
    })),
  };
}

/** The smallest volume of each column that is anything at all. */
function leastOf(rows: readonly (readonly number[])[]): readonly (Quantity<'volume'> | undefined)[] {
  return (rows[0] ?? []).map((_, column) => {
    const amounts = rows.map((row) => row[column] ?? 0).filter((amount) => amount > 0);
    return amounts.length === 0 ? undefined : quantity('volume', Math.min(...amounts));
  });
}

function blendContext(
  { fuelId, name, blend, rows }: BlendChart,
  phrases: Phrases,
): FuelAndWaterContext['blends'][number] {
  const least = leastOf(rows.map(({ amountsM3 }) => amountsM3));
  return {
    id: fuelId,
    name,
    liquids: blend.map(({ liquid }) => phrases.told(liquid.name)),
    rows: rows.map((row) => ({
      wanted: phrases.both(quantity('volume', row.wantedM3)),
      amounts: row.amountsM3.map((amount, index) => {
        const portion = blend[index];
        const rounding = portion === undefined ? 'down' : roundingOf(portion.liquid, blend);
        return phrases.poured(quantity('volume', amount), rounding, least[index]);
      }),
    })),
  };
}

/** The trip of the log that used most beyond the fit and was left out of it, and by how many in the hundred; nothing where none did. */
function thirstyOf(
  { fit }: RangeChart['use'],
  phrases: Phrases,
): { readonly date: string; readonly inHundred: number } | false {
  const [most] = [...(fit?.wild ?? [])].sort((a, b) => b.timesExpected - a.timesExpected);
  if (most === undefined || most.timesExpected <= 1) return false;
  return { date: phrases.date(most.trip.date), inHundred: Math.round((most.timesExpected - 1) * 100) };
}

/** A range table as text; `which` picks the units: both, or one alone for a table read at a distance. */
export function rangeContext(
  { liquid, model, use, marks, others, rows }: RangeChart,
  world: World,
  which: 'both' | 'first' | 'second' = 'both',
): RangeContext {
  const { car, phrases, words } = world;
  const print = phrases[which];
  const stepM =
    printedStepM[which === 'second' ? (phrases.systems[1] ?? 'metric') : (phrases.systems[0] ?? 'metric')];
  const byStick = car.spec.tanks[model.id]?.read === 'stick';
  const byMark = marks.length > 0;
  const known = terrains.filter((terrain) => use.byTerrain[terrain].planPerM !== undefined);
  const half = byMark ? undefined : rows.findLast((row) => row.volumeM3 <= model.fillToM3 / 2);
  return {
    liquid: words['range-of'][liquid],
    tank: model.name,
    byStick,
    byMark,
    known: known.length > 0,
    unusable: print(quantity('volume', model.unusableM3), { rounding: 'up' }),
    kept: print(quantity('volume', model.unusableM3 + model.reserveM3), { rounding: 'up' }),
    reserve: print(quantity('volume', model.reserveM3), { rounding: 'up' }),
    thirsty: thirstyOf(use, phrases),
    headings: known.map((terrain) => words.terrain[terrain]),
    rows: rows
      .filter((row) => known.some((terrain) => (row.rangeM[terrain] ?? 0) > 0))
      .map((row) => ({
        depth: byMark
          ? ''
          : which === 'both'
            ? markWords(row.depthM, phrases)
            : print(quantity('length', row.depthM), { rounding: 'up' }),
        mark: row.mark ?? '',
        underHalf: byStick && row === half,
        // what is in the tank is looked up where there is nothing else to read, and less must not do for the distance
        volume: print(quantity('volume', row.volumeM3), { rounding: byStick || byMark ? 'down' : 'up' }),
        distances: known.map((terrain) =>
          print(quantity('distance', row.rangeM[terrain] ?? 0), { rounding: 'down', decimals: 0 }),
        ),
      })),
    others: others
      .filter(({ way }) => way.kind !== 'none')
      .map(({ name, way, usableM3 }) => {
        const far = rangesFor(usableM3, use, stepM);
        return {
          tank: name,
          how: wayOf(way, world),
          volume: print(quantity('volume', usableM3), { rounding: 'down' }),
          distances: known.map((terrain) =>
            print(quantity('distance', far[terrain] ?? 0), { rounding: 'down', decimals: 0 }),
          ),
        };
      }),
    notCounted: others.flatMap(({ name, way }) => (way.kind === 'none' ? [name] : [])),
  };
}

/** What the driver has to open or to work before a further tank gives anything. */
function wayOf(way: OtherTank['way'], { car, language }: World): string {
  const { say } = language.messages;
  const named = (ids: readonly PartId[]) =>
    listed(
      language,
      ids.map((id) => partName(language, car.parts.get(id) ?? { name: id })),
    );
  switch (way.kind) {
    case 'open':
    case 'none':
      return say('tank-runs', {});
    case 'valves':
      return say('tank-open', { valves: named(way.valves) });
    case 'pumped': {
      const pumps = say('tank-pumped', { pumps: named(way.pumps) });
      return way.valves.length === 0
        ? pumps
        : say('tank-open-and-pumped', { open: say('tank-open', { valves: named(way.valves) }), pumps });
    }
  }
}
