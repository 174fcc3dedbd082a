/** The car's data as printed strings, section by section; what the spec does not say is `not known`. */
import type { Car, PartId } from '../../car/car';
import type { Phrases } from '../phrase';

/** The data tables of the manual. Each value is text ready to print. */
export interface DataContext {
  readonly body: {
    readonly length: string;
    readonly width: string;
    readonly height: string;
    readonly wheelbase: string;
    readonly mass: string;
    readonly seats: number;
    readonly tyres: string;
    readonly tyrePressure: string;
    readonly usualSpeed: string;
    readonly mostSpeed: string;
  };
  readonly boiler: {
    readonly kind: string;
    readonly coil: boolean;
    readonly allowed: string;
    readonly working: string;
    /** A steam automatic shuts its burner; else a hand does. */
    readonly automatic: boolean;
    readonly cutsOut: string;
    readonly cutsIn: string;
    readonly safety: string;
    readonly leastToMove: string;
    readonly blowDown: string;
    /** When each blow-down valve is shut again; empty where the spec does not say. */
    readonly blownDownUntil: readonly string[];
    readonly water: string;
    readonly metal: string;
    readonly surface: string;
    readonly workingLevel: string;
    /** Where the working level stands cold; empty if the spec says nothing. */
    readonly coldLevel: string;
    /** The highest at which it may stand cold before a fire; empty if the spec says nothing. */
    readonly highestCold: string;
    readonly lowestLevel: string;
    readonly drawsFull: string;
  };
  readonly inspection: {
    readonly by: string;
    readonly last: string;
    readonly due: string;
    readonly certificate: string;
    readonly note: string;
  };
  readonly superheater: boolean;
  readonly condenser: boolean;
  readonly engine: {
    readonly cylinders: number;
    readonly bore: string;
    readonly stroke: string;
    readonly action: string;
    readonly ratio: string;
    readonly exhaust: string;
    readonly oil: string;
    readonly oilUse: string;
    readonly oilProof: string;
  };
  readonly tanks: readonly TankData[];
  readonly burners: readonly BurnerData[];
  readonly pumps: readonly {
    readonly tag: string;
    readonly name: string;
    readonly moves: string;
    readonly drive: string;
    readonly stroke: string;
    readonly delivers: string;
  }[];
  readonly fuels: readonly {
    readonly name: string;
    readonly parts: readonly { readonly liquid: string; readonly share: string; readonly last: boolean }[];
    readonly cautions: readonly string[];
  }[];
  /** What is carried: tools, extinguishers, spares. */
  readonly equipment: readonly {
    readonly name: string;
    readonly kind: string;
    readonly place: string;
    readonly note: string;
  }[];
}

/** One tank. */
export interface TankData {
  readonly id: PartId;
  readonly tag: string;
  readonly name: string;
  readonly holds: string;
  readonly capacity: string;
  readonly fillTo: string;
  readonly unusable: string;
  readonly reserve: string;
  readonly from: string;
  readonly to: string;
  readonly vent: string;
  readonly fillerPlace: string;
  readonly cap: string;
  readonly read: string;
}

/** One burner. */
export interface BurnerData {
  readonly name: string;
  readonly job: string;
  readonly fuel: string;
  readonly full: string;
  readonly low: string;
  readonly litBy: string;
  readonly soakLeast: string;
  readonly soakGood: string;
  readonly goodFlame: string;
}

/** Liquids by key, for the names in a blend. */
export type LiquidNames = ReadonlyMap<string, string>;

/** Build the data tables. */
export function dataContext(car: Car, phrases: Phrases, liquids: LiquidNames): DataContext {
  const { spec } = car;
  const { both } = phrases;
  return {
    body: {
      length: both(spec.car.length),
      width: both(spec.car.width),
      height: both(spec.car.height),
      wheelbase: both(spec.car.wheelbase),
      seats: spec.car.seats,
      mass: both(spec.running['mass-empty']),
      tyres: spec.running.tyres.size,
      tyrePressure: both(spec.running.tyres.pressure),
      usualSpeed: both(spec.running['usual-speed']),
      mostSpeed: both(spec.running['most-speed'], { rounding: 'down' }),
    },
    boiler: boilerData(car, phrases),
    inspection: {
      by: spec.boiler.inspection.by,
      last: phrases.date(spec.boiler.inspection.last),
      due: phrases.date(spec.boiler.inspection.due),
      certificate: spec.boiler.inspection.certificate ?? phrases.notKnown,
      note: spec.boiler.inspection.note ?? '',
    },
    superheater: spec.superheater !== undefined,
    condenser: spec.condenser !== undefined,
    engine: {
      cylinders: spec.engine.cylinders,
      bore: both(spec.engine.bore),
      stroke: both(spec.engine.stroke),
      action: spec.engine.action,
      ratio: String(spec.engine['turns-per-wheel-turn']),
      exhaust: spec.engine.exhaust,
      oil: spec.engine.oil.kind,
      oilUse: both(spec.engine.oil.use, { rounding: 'up' }),
      oilProof: spec.engine.oil.proof ?? '',
    },
    tanks: tankData(car, phrases),
    burners: burnerData(car, phrases),
    pumps: Object.values(spec.pumps).map((pump) => ({
      tag: pump.tag ?? '',
      name: pump.name,
      moves: pump.moves,
      drive: pump.drive,
      stroke: phrases.smallVolume(pump['stroke-volume']),
      delivers: both(pump.delivers),
    })),
    fuels: Object.values(spec.fuels).map((fuel) => ({
      name: fuel.name,
      cautions: fuel.cautions ?? [],
      parts: fuel.parts.map((part, index) => ({
        liquid: spec.liquids?.[part.liquid]?.name ?? liquids.get(part.liquid) ?? part.liquid,
        share: phrases.first(part.share),
        last: index === fuel.parts.length - 1,
      })),
    })),
    equipment: Object.values(spec.equipment).map((each) => ({
      name: each.name,
      kind: each.kind,
      place: car.places.get(each.place)?.name ?? each.place,
      note: each.note ?? '',
    })),
  };
}

function boilerData({ spec }: Car, { both }: Phrases): DataContext['boiler'] {
  const { boiler } = spec;
  return {
    kind: boiler.kind,
    coil: boiler.kind === 'monotube',
    allowed: both(boiler['allowed-pressure'], { rounding: 'down' }),
    working: both(boiler['working-pressure']),
    automatic: Object.values(spec.devices).some(({ kind }) => kind === 'steam-automatic'),
    cutsOut: both(boiler['burner-cuts-out']),
    cutsIn: both(boiler['burner-cuts-in']),
    safety: both(spec.devices[boiler['safety-valve']]?.set),
    leastToMove: both(boiler['least-to-move']),
    blowDown: both(boiler['blow-down-pressure']),
    blownDownUntil: boiler['blown-down-until'] ?? [],
    water: both(boiler['water-at-working-level']),
    metal: both(boiler['steel-mass']),
    surface: both(boiler['heating-surface']),
    workingLevel: boiler['working-level'],
    coldLevel: boiler['working-level-cold'] ?? '',
    highestCold: boiler['highest-level-cold'] ?? '',
    lowestLevel: boiler['lowest-level'],
    drawsFull: boiler['draws-full'],
  };
}

function tankData({ spec, places }: Car, { both, contents }: Phrases): readonly TankData[] {
  return Object.entries(spec.tanks).map(([id, tank]) => ({
    id,
    tag: tank.tag ?? '',
    name: tank.name,
    holds: contents(tank.holds),
    capacity: both(tank.capacity, { rounding: 'down' }),
    fillTo: both(tank['fill-to'] ?? tank.capacity, { rounding: 'down' }),
    unusable: both(tank.unusable, { rounding: 'up' }),
    reserve: both(tank.reserve, { rounding: 'up' }),
    from: tank.pressure === undefined ? '' : both(tank.pressure.from, { rounding: 'up' }),
    to: tank.pressure === undefined ? '' : both(tank.pressure.to, { rounding: 'down' }),
    vent: tank.vent,
    fillerPlace: places.get(tank.filler.place)?.name ?? tank.filler.place,
    cap: tank.filler.cap ?? '',
    read: tank.read,
  }));
}

function burnerData({ spec, parts }: Car, { both }: Phrases): readonly BurnerData[] {
  return Object.values(spec.burners).map((burner) => ({
    name: burner.name,
    job: burner.job,
    fuel: spec.fuels[burner.fuel]?.name ?? burner.fuel,
    full: both(burner['full-rate']),
    low: both(burner['low-rate']),
    litBy: parts.get(burner['lit-by'])?.name ?? burner['lit-by'],
    soakLeast: burner.soak === undefined ? '' : both(burner.soak.least),
    soakGood: burner.soak === undefined ? '' : both(burner.soak.good),
    goodFlame: burner['good-flame'] ?? '',
  }));
}
