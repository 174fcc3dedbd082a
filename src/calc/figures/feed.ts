/** Feed pumps driven by the engine against what the boiler takes. */
import type { Car } from '../../car/car';
import { feedPumps } from '../../car/waterPumps';
import { type Quantity, quantity } from '../../quantity/quantity';
import type { Figure, FigureInput } from '../figure';
import type { Liquids } from '../fuel/liquids';
import { engineTurnsPerM } from '../road/speeds';
import { waterDensity } from '../steam/water-at';
import { deliveryPerM, type EnginePump, feedBalance } from '../water/feed-pump';
import { gearingInputs, gearingOf } from './gearing';
import { efficiencyOf, feedK, fuelHeatPerM3, heatPerKgSteam, mainBurnerOf } from './plant';
import type { LiquidUse } from './use';

/** Share of its stroke a feed pump delivers where the spec does not say; common practice, no source. */
export const usualDelivery = 0.8;

type SpecPump = Car['spec']['pumps'][string];

/** Share of each mile with the bypass shut that keeps the level on level road, for each engine-driven feed pump alone. */
export function feedFigures(
  car: Car,
  uses: { readonly water: LiquidUse; readonly fuel: LiquidUse },
  liquids: Liquids,
): readonly Figure[] {
  const taken = takenByBoiler(car, uses, liquids);
  return feedPumps(car).flatMap((id) => {
    const pump = car.spec.pumps[id];
    if (pump?.drive !== 'engine') return [];
    const stroke = pump['stroke-volume'];
    if (stroke === undefined) return [strokeNotKnown(id, pump.name)];
    return [figureOf(car, id, pump, stroke, taken)];
  });
}

/** Water the boiler takes on level road, and where that is known from. */
interface Taken {
  readonly perM: number;
  readonly estimated: boolean;
  readonly input: FigureInput;
}

/**
 * What the boiler takes. A condenser brings most of it back to the tank, so that there it follows from the fuel burnt
 * (dry saturated steam; superheat makes it less, so the share errs high).
 */
function takenByBoiler(
  car: Car,
  { water, fuel }: { readonly water: LiquidUse; readonly fuel: LiquidUse },
  liquids: Liquids,
): Taken | undefined {
  const condensing = car.spec.engine.exhaust === 'condenser';
  const use = (condensing ? fuel : water).byTerrain.level;
  if (use.meanPerM === undefined) return undefined;
  const estimated = use.figure.doubt.basis === 'estimated';
  if (!condensing) {
    const value = quantity('volumePerDistance', use.meanPerM, estimated);
    return { perM: use.meanPerM, estimated, input: { name: 'used', value, from: 'water-use-level' } };
  }
  const main = mainBurnerOf(car);
  if (main === undefined) return undefined;
  const heatPerM = use.meanPerM * fuelHeatPerM3(car, main.burner.fuel, liquids) * efficiencyOf(car);
  const perM = heatPerM / heatPerKgSteam(car) / waterDensity(feedK);
  const value = quantity('volumePerDistance', perM, true);
  return { perM, estimated: true, input: { name: 'evaporated by the fuel', value, from: 'fuel-use-level' } };
}

function figureOf(
  car: Car,
  id: string,
  spec: SpecPump,
  stroke: Quantity<'volume'>,
  taken: Taken | undefined,
): Figure {
  const pump: EnginePump = {
    strokeM3: stroke.si,
    strokesPerEngineTurn: spec['strokes-per-engine-turn'] ?? 1,
    delivers: spec.delivers?.si ?? usualDelivery,
  };
  const turns = engineTurnsPerM(gearingOf(car));
  const balance = taken === undefined ? undefined : feedBalance([pump], turns, taken.perM);
  const perTurn = spec['strokes-per-engine-turn'];
  const guessed =
    perTurn === undefined || spec.delivers === undefined || spec.delivers.estimated || stroke.estimated;
  return {
    id: `feed-${id}`,
    name: nameOf(spec.name),
    value:
      balance === undefined
        ? { kind: 'unknown', measure: 'the water used for a distance' }
        : {
            kind: 'words',
            words: balance.keepsUp
              ? `${Math.ceil(balance.shareShut * 100)} in 100`
              : `always, and it still falls short: it delivers ${Math.floor(100 / balance.shareShut)} in 100 of what is taken`,
          },
    inputs: [
      { name: 'one stroke', value: stroke, from: `pumps.${id}.stroke-volume` },
      {
        name: 'strokes in a turn of the engine',
        value: perTurn ?? 'not said, taken as one',
        from: `pumps.${id}.strokes-per-engine-turn`,
      },
      {
        name: 'share delivered',
        value: spec.delivers ?? `${usualDelivery * 100} %, common practice, no source`,
        from: `pumps.${id}.delivers`,
      },
      ...gearingInputs(car),
      {
        name: 'delivered',
        value: quantity('volumePerDistance', deliveryPerM(pump, turns)),
        from: 'worked out',
      },
      ...(taken === undefined ? [] : [taken.input]),
    ],
    formula: 'taken / (stroke × strokes per engine turn × engine turns per distance × share delivered)',
    source: 'arithmetic (common practice, no source)',
    checkedAgainst: 'delivery and use balance to nothing left over',
    doubt: {
      basis: balance === undefined ? 'unknown' : guessed || taken?.estimated ? 'estimated' : 'computed',
      words: 'a worn valve or a hot tank lowers the delivery; hills and speed take more',
    },
  };
}

function nameOf(pump: string): string {
  return `how much of the way the bypass of the ${pump} stands shut on level road`;
}

function strokeNotKnown(id: string, name: string): Figure {
  return {
    id: `feed-${id}`,
    name: nameOf(name),
    value: { kind: 'unknown', measure: `what one stroke moves (\`pumps.${id}.stroke-volume\`)` },
    inputs: [],
    formula: 'taken / (stroke × strokes per engine turn × engine turns per distance × share delivered)',
    source: 'arithmetic (common practice, no source)',
    checkedAgainst: 'nothing, as nothing is worked out',
    doubt: { basis: 'unknown', words: 'not measured' },
  };
}
