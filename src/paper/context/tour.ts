/** A planned way as text, for the card and for the terminal. */
import type { CarTour, TourLeg } from '../../calc/figures/tour';
import type { UsedOver } from '../../calc/figures/use';
import { listed } from '../../language/language';
import type { UnitSystem } from '../../quantity/dimension';
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

/** Build it, in one system of units. */
export function tourContext(name: string, tour: CarTour, world: World, system: UnitSystem): TourContext {
  const said = new TourWords(world, system);
  return {
    name,
    length: said.far(tour.way.lengthM),
    stopping: said.stops(tour.stops),
    country: said.country(tour),
    legs: tour.legs.map((leg) => ({
      place: leg.to.name,
      at: said.far(leg.to.atM),
      leg: said.far(leg.distanceM),
      country: said.legCountry(leg),
      water: said.spread(leg.water),
      fuel: said.spread(leg.fuel),
      waterLeft: said.left(leg.waterLeftM3),
      fuelLeft: said.left(leg.fuelLeftM3),
      take: said.take(leg),
      note: leg.to.note,
    })),
    water: said.spread(tour.water),
    fuel: said.spread(tour.fuel),
    oil: tour.oilM3 === undefined ? '' : said.oil(tour.oilM3),
  };
}

/** Says things of a way in one system of units. */
class TourWords {
  constructor(
    private readonly world: World,
    private readonly system: UnitSystem,
  ) {}

  private get messages() {
    return this.world.language.messages;
  }

  private get print() {
    return this.world.phrases.plain;
  }

  stops(stops: number): string {
    if (stops === 0) return this.messages.say('no-stop', {});
    return stops === 1 ? this.messages.say('stop-once', {}) : this.messages.say('stop-often', { stops });
  }

  far(metres: number): string {
    return this.print(quantity('distance', metres), { system: this.system, decimals: 1 });
  }

  left(m3: number): string {
    return this.print(quantity('volume', Math.max(0, m3)), {
      system: this.system,
      rounding: 'down',
      decimals: 1,
    });
  }

  oil(m3: number): string {
    const units = { metric: 'L', us: 'US qt', imperial: 'imp qt' } as const;
    return this.print(quantity('volume', m3), {
      system: this.system,
      unit: units[this.system],
      rounding: 'up',
      decimals: 1,
    });
  }

  /** The middle, and the low and the high end: nine ways in ten by the scatter of the log, or what is allowed for without one. */
  spread({ mean, low, high }: UsedOver): string {
    const number = (m3: number, rounding: 'nearest' | 'down' | 'up'): string =>
      this.print(quantity('volume', m3), { system: this.system, rounding, decimals: 1 });
    const bare = (text: string): string => text.replace(/\u00a0.*$/, '');
    const band = this.messages.say('band', { from: bare(number(low, 'down')), to: bare(number(high, 'up')) });
    return `${number(mean, 'nearest')} (${band})`;
  }

  /** What to take on at the end of a leg; empty if nothing. */
  take({ takeWater, takeFuel }: TourLeg): string {
    const { contents } = this.world.words;
    const wanted = [
      ...(takeWater ? [contents.water] : []),
      ...(takeFuel ? [this.messages.say('fuel', {})] : []),
    ];
    return listed(this.world.language, wanted);
  }

  legCountry({ lengths, climbM, distanceM }: TourLeg): string {
    const most = terrains
      .filter((terrain) => lengths[terrain] >= distanceM * 0.25)
      .map((terrain) => this.world.words.terrain[terrain]);
    const country = listed(this.world.language, most);
    return climbM > 0 ? this.messages.say('leg-climbs', { country, height: this.height(climbM) }) : country;
  }

  country({ way: { heights } }: CarTour): string {
    switch (heights.kind) {
      case 'said':
        return this.messages.say('heights-said', {});
      case 'none':
        return this.messages.say('heights-none', {});
      case 'smoothed':
        return this.messages.say('heights-smoothed', {
          window: this.height(2 * heights.windowM),
          climb: this.height(heights.climbM),
        });
    }
  }

  private height(metres: number): string {
    const unit = this.system === 'metric' ? 'm' : 'ft';
    return this.print(quantity('distance', metres), { system: this.system, unit, decimals: 0 });
  }
}
