/** Tanks charged with air: how full, how many strokes, how long a charge lasts. */
import type { Car, PartId } from '../../car/car';
import { fuelRoutes, tanksFeeding } from '../../car/flow';
import { quantity } from '../../quantity/quantity';
import { type ChargedTank, deliveredDownToM3, fillForOneChargeM3 } from '../air/cushion';
import { strokesToPumpUp } from '../air/pumping';
import type { Figure } from '../figure';
import { standardAir } from '../steam/atmosphere';
import {
  type ChangedCharge,
  type ChargeMoment,
  changedCharges,
  changeFigures,
  fallFigure,
  momentsOf,
  reliefOf,
} from './chargedLater';
import { boyle, ratesNotKnown, strokesNotKnown } from './chargedNotKnown';
import { enduranceFigures, enduranceOf, keptBackM3, type TankEndurance } from './endurance';

/** What is known of one charged tank. */
export interface ChargedFigures {
  readonly tankId: PartId;
  readonly name: string;
  /** The most fuel that leaves on one charge of air, m³. */
  readonly oneChargeM3: number;
  /** Fuel pressed out from the top of the band to its floor, filled as the spec says, m³. */
  readonly deliveredM3: number;
  /** For each burner fed from it with a known rate: minutes from the top of the band to its floor. */
  readonly lasts: readonly {
    readonly burner: PartId;
    readonly fire: 'full' | 'low';
    readonly seconds: number;
    /** The fall of pressure over that time. */
    readonly moments: readonly ChargeMoment[];
    /** Absent for a tank that pumps refill from another. */
    readonly endurance?: TankEndurance;
  }[];
  /** From the top of the band: after a cold night, in the sun, on a mountain. */
  readonly changed: readonly ChangedCharge[];
  /** Strokes of its air pump from the floor of the band to the top, as filled; absent without a pump of known stroke. */
  readonly strokes?: number;
  readonly figures: readonly Figure[];
}

type SpecTank = Car['spec']['tanks'][string];

/** Every tank with a pressure band, in the order of the spec. */
export function chargedFigures(car: Car): readonly ChargedFigures[] {
  return Object.entries(car.spec.tanks).flatMap(([id, tank]) =>
    tank.pressure === undefined ? [] : [figuresOf(car, id, tank, tank.pressure)],
  );
}

function figuresOf(
  car: Car,
  tankId: PartId,
  tank: SpecTank,
  band: NonNullable<SpecTank['pressure']>,
): ChargedFigures {
  const ambientPa = standardAir(0).pressurePa;
  const capacityM3 = tank.capacity.si;
  const fuelM3 = Math.min((tank['fill-to'] ?? tank.capacity).si, capacityM3 * 0.999);
  const full: ChargedTank = { capacityM3, fuelM3, gaugePa: band.to.si, ambientPa };
  const oneChargeM3 = fillForOneChargeM3({
    capacityM3,
    topGaugePa: band.to.si,
    floorGaugePa: band.from.si,
    ambientPa,
  });
  const deliveredM3 = deliveredDownToM3(full, band.from.si);
  const refilled = tanksFeeding(car, tankId).some((id) => id !== tankId);
  const keptM3 = keptBackM3(tank);
  const lastsAt = (burner: PartId, fire: 'full' | 'low', rateM3PerS: number | undefined) => {
    if (rateM3PerS === undefined) return [];
    const seconds = deliveredM3 / rateM3PerS;
    const moments = momentsOf(full, { rateM3PerS, seconds });
    const endurance = enduranceOf(full, { floorGaugePa: band.from.si, keptM3, rateM3PerS });
    return [{ burner, fire, seconds, moments, ...(refilled ? {} : { endurance }) }];
  };
  const lasts = burnersFed(car, tankId).flatMap(({ burner, full: most, low }) => [
    ...lastsAt(burner, 'full', most),
    ...lastsAt(burner, 'low', low),
  ]);
  const pump = Object.entries(car.spec.pumps).find(
    ([, each]) => each.moves === 'air' && each.charges === tankId && each['stroke-volume'] !== undefined,
  );
  const stroke = pump?.[1]['stroke-volume'];
  const strokes =
    stroke === undefined
      ? undefined
      : strokesToPumpUp({ ...full, gaugePa: band.from.si }, band.to.si, {
          strokeM3: stroke.si,
          delivers: pump?.[1].delivers?.si ?? usualDelivery,
        });
  const known = {
    tankId,
    name: tank.name,
    oneChargeM3,
    deliveredM3,
    lasts,
    changed: changedCharges(full, reliefOf(car, tankId)),
    ...(strokes === undefined ? {} : { strokes }),
  };
  const figures = [
    ...asFigures(car, known, tank, band, pump?.[0]),
    ...ratesNotKnown(car, { id: tankId, name: tank.name }, burnersFed(car, tankId)),
    ...(strokes === undefined ? [strokesNotKnown({ id: tankId, name: tank.name })] : []),
  ];
  return { ...known, figures };
}

/** Share of its stroke a hand air pump delivers where the spec does not say; common practice, no source. */
const usualDelivery = 0.8;

/** Burners that burn what the tank holds and whose nearest tank upstream it is; a starting branch does not count. */
function burnersFed(
  car: Car,
  tankId: PartId,
): readonly { readonly burner: PartId; readonly full?: number; readonly low?: number }[] {
  return Object.entries(car.spec.burners).flatMap(([burner, { 'full-rate': full, 'low-rate': low }]) => {
    const burnsIt = car.spec.burners[burner]?.fuel === car.spec.tanks[tankId]?.holds;
    const isNearest =
      burnsIt &&
      fuelRoutes(car, burner).some(
        (route) => route[0] === tankId && route.slice(1).every((id) => car.parts.get(id)?.kind !== 'tank'),
      );
    return isNearest
      ? [
          {
            burner,
            ...(full === undefined ? {} : { full: full.si }),
            ...(low === undefined ? {} : { low: low.si }),
          },
        ]
      : [];
  });
}

function asFigures(
  car: Car,
  known: Omit<ChargedFigures, 'figures'>,
  tank: SpecTank,
  band: NonNullable<SpecTank['pressure']>,
  pumpId: PartId | undefined,
): readonly Figure[] {
  const { tankId, name } = known;
  const bandInputs = [
    { name: 'capacity', value: tank.capacity, from: `tanks.${tankId}.capacity` },
    { name: 'top of the band', value: band.to, from: `tanks.${tankId}.pressure.to` },
    { name: 'floor of the band', value: band.from, from: `tanks.${tankId}.pressure.from` },
  ];
  const filled = {
    name: 'filled to',
    value: tank['fill-to'] ?? tank.capacity,
    from: `tanks.${tankId}.${tank['fill-to'] === undefined ? 'capacity' : 'fill-to'}`,
  };
  const common = {
    source: boyle,
    checkedAgainst: 'worked examples of Boyle’s law',
    doubt: {
      basis: 'computed' as const,
      words: 'air and fuel at one temperature; a warm tank holds its pressure better, a leak worse',
    },
  };
  return [
    {
      id: `one-charge-${tankId}`,
      name: `most fuel in the ${name} that leaves on one charge of air`,
      value: { kind: 'quantity', quantity: quantity('volume', known.oneChargeM3), rounding: 'down' },
      inputs: bandInputs,
      formula: 'capacity × (1 − absolute floor / absolute top)',
      ...common,
    },
    {
      id: `delivered-${tankId}`,
      name: `fuel the ${name} presses out between top and floor, filled as said`,
      value: { kind: 'quantity', quantity: quantity('volume', known.deliveredM3), rounding: 'down' },
      inputs: [...bandInputs, filled],
      formula: 'air × (absolute top / absolute floor − 1), at most the fuel',
      ...common,
    },
    ...known.lasts.map(({ burner, fire, seconds }): Figure => {
      const rate = car.spec.burners[burner]?.[`${fire}-rate`];
      return {
        id: `charge-lasts-${tankId}-${burner}-${fire}`,
        name: `one charge of the ${name} lasts the ${car.parts.get(burner)?.name ?? burner} at ${fire} fire`,
        value: {
          kind: 'quantity',
          quantity: quantity('time', seconds, rate?.estimated ?? false),
          rounding: 'down',
        },
        inputs: [
          ...(rate === undefined
            ? []
            : [{ name: `${fire} fire`, value: rate, from: `burners.${burner}.${fire}-rate` }]),
          {
            name: 'fuel pressed out',
            value: quantity('volume', known.deliveredM3),
            from: `delivered-${tankId}`,
          },
        ],
        formula: 'fuel pressed out between top and floor / rate; pumps standing still',
        ...common,
        doubt: {
          basis: rate?.estimated === true ? 'estimated' : 'computed',
          words: 'with nobody pumping, and no pump that the engine drives',
        },
      };
    }),
    ...known.lasts.flatMap(({ burner, fire, moments, endurance }) => {
      const rate = car.spec.burners[burner]?.[`${fire}-rate`];
      const job = car.spec.burners[burner]?.job ?? 'main';
      const names = { tankId, tank: name, burnerId: burner, burner: car.parts.get(burner)?.name ?? burner };
      const inputs = [
        ...bandInputs,
        filled,
        ...(rate === undefined
          ? []
          : [{ name: `${fire} fire`, value: rate, from: `burners.${burner}.${fire}-rate` }]),
      ];
      return [
        fallFigure(names, fire, moments, inputs),
        ...(endurance === undefined
          ? []
          : enduranceFigures({ ...names, job }, fire, endurance, inputs, tank)),
      ];
    }),
    ...changeFigures(tankId, tank, bandInputs.slice(1, 2), known.changed),
    ...(known.strokes === undefined || pumpId === undefined
      ? []
      : [
          {
            id: `strokes-${tankId}`,
            name: `strokes of the ${car.parts.get(pumpId)?.name ?? pumpId} from floor to top`,
            value: { kind: 'number' as const, number: known.strokes, rounding: 'up' as const },
            inputs: [
              ...bandInputs,
              filled,
              {
                name: 'one stroke',
                value: car.spec.pumps[pumpId]?.['stroke-volume'] ?? '',
                from: `pumps.${pumpId}.stroke-volume`,
              },
            ],
            formula: 'air × (top − floor) / (air pressure × stroke × share delivered)',
            ...common,
            doubt: {
              basis: 'estimated' as const,
              words: `share delivered ${car.spec.pumps[pumpId]?.delivers === undefined ? 'taken as 80 %, common practice, no source' : 'as the spec says'}`,
            },
          },
        ]),
  ];
}
