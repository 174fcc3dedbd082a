/** A planned way as text, for the card and for the terminal. */
import type { CarTour, TourLeg } from '../../calc/figures/tour';
import type { UsedOver } from '../../calc/figures/use';
import type { UnitSystem } from '../../quantity/dimension';
import { printQuantity } from '../../quantity/print';
import { quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';

/** Everything there is to say of a way. */
export interface TourContext {
  readonly name: string;
  readonly length: string;
  /** How often to stop, in words. */
  readonly stopping: string;
  /** How the country is known, in a sentence. */
  readonly country: string;
  readonly legs: readonly {
    readonly place: string;
    readonly at: string;
    readonly leg: string;
    readonly country: string;
    readonly water: string;
    readonly fuel: string;
    readonly waterLeft: string;
    readonly fuelLeft: string;
    /** `water`, `fuel`, `water and fuel`, or empty. */
    readonly take: string;
    readonly note: string;
  }[];
  /** What is used on the whole way. */
  readonly water: string;
  readonly fuel: string;
  /** Cylinder oil to have aboard; empty if its use is not known. */
  readonly oil: string;
}

/** Build it, in the first units of the car. */
export function tourContext(name: string, tour: CarTour, { car, words }: World): TourContext {
  const system = car.spec.print.units.first;
  const { way } = tour;
  return {
    name,
    length: far(way.lengthM, system),
    stopping: stopWords(tour.stops),
    country: countryWords(tour, system),
    legs: tour.legs.map((leg) => ({
      place: leg.to.name,
      at: far(leg.to.atM, system),
      leg: far(leg.distanceM, system),
      country: legCountry(leg, words.terrain, system),
      water: spread(leg.water, system),
      fuel: spread(leg.fuel, system),
      waterLeft: left(leg.waterLeftM3, system),
      fuelLeft: left(leg.fuelLeftM3, system),
      take: [...(leg.takeWater ? ['water'] : []), ...(leg.takeFuel ? ['fuel'] : [])].join(' and '),
      note: leg.to.note,
    })),
    water: spread(tour.water, system),
    fuel: spread(tour.fuel, system),
    oil:
      tour.oilM3 === undefined
        ? ''
        : printQuantity(quantity('volume', tour.oilM3), {
            system,
            unit: system === 'metric' ? 'L' : system === 'us' ? 'US qt' : 'imp qt',
            rounding: 'up',
            decimals: 1,
          }),
  };
}

function stopWords(stops: number): string {
  if (stops === 0) return 'no stop is needed';
  return stops === 1 ? 'stop once' : `stop ${stops} times`;
}

function far(metres: number, system: UnitSystem): string {
  return printQuantity(quantity('distance', metres), { system, decimals: 1 });
}

function left(m3: number, system: UnitSystem): string {
  return printQuantity(quantity('volume', Math.max(0, m3)), { system, rounding: 'down', decimals: 1 });
}

/** The middle, and the low and the high end: nine ways in ten by the scatter of the log, or what is allowed for without one. */
function spread({ mean, low, high }: UsedOver, system: UnitSystem): string {
  const number = (m3: number, rounding: 'nearest' | 'down' | 'up'): string =>
    printQuantity(quantity('volume', m3), { system, rounding, decimals: 1 });
  const bare = (text: string): string => text.replace(/\u00a0.*$/, '');
  return `${number(mean, 'nearest')} (${bare(number(low, 'down'))} to ${bare(number(high, 'up'))})`;
}

function legCountry(
  { lengths, climbM, distanceM }: TourLeg,
  names: Readonly<Record<(typeof terrains)[number], string>>,
  system: UnitSystem,
): string {
  const most = terrains
    .filter((terrain) => lengths[terrain] >= distanceM * 0.25)
    .map((terrain) => names[terrain]);
  const climb = climbM > 0 ? `, climbs ${height(climbM, system)}` : '';
  return `${most.join(' and ')}${climb}`;
}

function height(metres: number, system: UnitSystem): string {
  const unit = system === 'metric' ? 'm' : 'ft';
  return printQuantity(quantity('distance', metres), { system, unit, decimals: 0 });
}

function countryWords({ way: { heights } }: CarTour, system: UnitSystem): string {
  switch (heights.kind) {
    case 'said':
      return 'How hilly each leg is stands in the list.';
    case 'none':
      return 'The track has no heights; it is planned as hilly all along.';
    case 'smoothed':
      return `Heights of the track are averaged over ${height(2 * heights.windowM, system)} of road before climbing is added up: ${height(heights.climbM, system)} in all.`;
  }
}
