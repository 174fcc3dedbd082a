/** The values of the car as a whole that the words of a step can use. Documented in `docs/procedures.md`. */
import type { Car } from '../car/car';
import { type Language, partName } from '../language/language';
import type { Values } from '../language/wording';
import { printDay } from '../quantity/day';
import type { Quantity } from '../quantity/quantity';
import { burnsOnOf } from '../spec/burnsOn';
import { duties } from './duties';
import { Printer, type PrintStyle } from './valuePrinter';

/** What the words can ask of the car as a whole, with its meaning. */
export const carValueMeanings = {
  car: 'The car’s name; also `car.name`.',
  'car.year': 'The year it was built.',
  'car.make': 'Who built it.',
  'car.steering': '`wheel` or `tiller`.',
  keeper: 'Whom to ask.',
  'keeper.emergency-number': 'The number for fire and ambulance.',
  'keeper.telephone': 'A number that is answered on a running day.',
  'issue.letter': 'The letter of this issue of the spec.',
  'issue.date': 'Its date.',
  boiler: 'The boiler’s name.',
  'boiler.working-level': 'Where the level should stand.',
  'boiler.cold-level': 'Where it should stand cold; the working level, if the spec says no other.',
  'boiler.highest-cold':
    'The highest at which it may stand cold before a fire; not there if the spec says nothing.',
  'boiler.lowest-level': 'The lowest at which a fire may burn.',
  'boiler.working': 'Working pressure.',
  'boiler.allowed': 'Allowed pressure.',
  'boiler.cut-out': 'Where the automatic shuts the burner.',
  'boiler.cut-in': 'Where it opens it again.',
  'boiler.least-to-move': 'The least at which the car is moved.',
  'boiler.standing-feed':
    'The feed pump that is worked while the car stands, with article and tag; not there if it has none.',
  'boiler.blow-down': 'The pressure at which it is blown down.',
  'boiler.draws-full': 'There if the boiler draws itself full as it cools.',
  'boiler.never-draws-full': 'There if it is known not to draw itself full.',
  'boiler.automatic': 'There if a steam automatic shuts its burner.',
  'boiler.glass': 'There if its level is read on a glass with steam up.',
  'boiler.coil': 'There if it is one long tube, fed as fast as it boils.',
  'boiler.cut-off-tripped': 'What shows that a cut-off of its burner has acted, if the spec says so.',
  'boiler.own-cut-off':
    'There if something puts the fire out by itself when water is short or the steam too hot.',
  'fire.burns-on':
    'How long a main burner burns on, at the most, after its fuel is shut; not there if it goes out at once.',
  'fire.airs-in':
    'How long a burner is left to air, at the least, after fuel went in and nothing lit: the longest of them; not there if no burner says so.',
  'fire.spark': 'There if a main burner is lit by a switch, and by nothing that burns.',
  'fire.vaporizes': 'There if a main burner burns vapour that a vaporizer makes.',
  'fuel.red-lines':
    'The gauges of the fuel’s pressure in tanks and at burners, each with its red line; not there if none has one.',
  'engine.reverses': 'There if it can be set to drive the car backwards.',
  inspector: 'Who inspects, by office.',
  'inspector.last': 'The last inspection.',
  'inspector.due': 'When the next is due.',
  'inspector.certificate': 'Where the certificate is kept.',
  'inspector.note': 'What the inspector asked for.',
  'oil.kind': 'What cylinder oil to use.',
  'oil.proof': 'How one sees that it goes in.',
  'oil.bearings': 'What bearings, pins and joints are oiled with; not there if the spec says nothing.',
  'tyres.size': 'What is written on the tyres.',
  'tyres.pressure': 'What they are blown to.',
} as const;

/** Values of the car as a whole. */
export function carValues(car: Car, style: PrintStyle, language: Language): Values {
  const { boiler, engine, running, keeper, issue } = car.spec;
  const { inspection } = boiler;
  const print = new Printer(style, language);
  const day = (iso: string): string => printDay(iso, language.tag);
  return {
    car: {
      called: car.spec.car.name,
      name: car.spec.car.name,
      year: String(car.spec.car.year),
      make: car.spec.car.make,
      steering: language.words.steering[car.spec.car.steering],
    },
    keeper: {
      called: keeper.name,
      telephone: keeper.telephone,
      'emergency-number': keeper['emergency-number'],
    },
    issue: { letter: issue.letter, date: day(issue.date) },
    boiler: {
      called: boiler.name,
      'working-level': boiler['working-level'],
      'cold-level': boiler['working-level-cold'] ?? boiler['working-level'],
      'highest-cold': boiler['highest-level-cold'],
      'lowest-level': boiler['lowest-level'],
      working: print.show(boiler['working-pressure']),
      allowed: print.show(boiler['allowed-pressure'], 'down'),
      'cut-out': print.show(boiler['burner-cuts-out']),
      'cut-in': print.show(boiler['burner-cuts-in']),
      'least-to-move': print.show(boiler['least-to-move'], 'up'),
      'standing-feed': standingFeed(car, language),
      'blow-down': print.show(boiler['blow-down-pressure'], 'down'),
      'draws-full': boiler['draws-full'] === 'yes' ? 'yes' : undefined,
      'never-draws-full': boiler['draws-full'] === 'no' ? 'yes' : undefined,
      automatic: Object.values(car.spec.devices).some(({ kind }) => kind === 'steam-automatic')
        ? 'yes'
        : undefined,
      glass: car.spec.boiler.level.some(
        ({ gauge, when }) => when !== 'cold' && car.spec.gauges[gauge]?.kind === 'glass',
      )
        ? 'yes'
        : undefined,
      coil: boiler.kind === 'monotube' ? 'yes' : undefined,
      'cut-off-tripped': Object.values(car.spec.devices).find(({ tripped }) => tripped !== undefined)
        ?.tripped,
      'own-cut-off': Object.values(car.spec.devices).some(
        ({ kind }) => kind === 'low-water-cut-off' || kind === 'temperature-cut-off',
      )
        ? 'yes'
        : undefined,
    },
    fire: {
      'burns-on': print.show(longestBurnOn(car), 'up'),
      'airs-in': print.show(longestAiring(car), 'up'),
      spark: isLitBySpark(car) ? 'yes' : undefined,
      vaporizes: Object.values(car.spec.burners).some(
        ({ job, vaporizer }) => job === 'main' && vaporizer !== undefined,
      )
        ? 'yes'
        : undefined,
    },
    fuel: { 'red-lines': fuelRedLines(car, print) },
    engine: {
      reverses: Object.values(car.spec.controls).some(({ kind }) => kind === 'reverse') ? 'yes' : undefined,
    },
    inspector: {
      called: inspection.by,
      last: day(inspection.last),
      due: day(inspection.due),
      certificate: inspection.certificate,
      note: inspection.note,
    },
    oil: { kind: engine.oil.kind, proof: engine.oil.proof, bearings: engine.oil.bearings },
    tyres: { size: running.tyres.size, pressure: print.show(running.tyres.pressure) },
  };
}

/** What a level that has fallen is brought up with before the car moves. */
function standingFeed(car: Car, language: Language): string | undefined {
  const [pump] = duties['standing-pump']?.parts(car) ?? [];
  const part = pump === undefined ? undefined : car.parts.get(pump);
  return part === undefined ? undefined : partName(language, { name: part.name, tag: part.tag });
}

/** The longest time for which a main burner burns on. */
function longestBurnOn({ spec }: Car): Quantity | undefined {
  const times = Object.values(spec.burners).flatMap((burner) =>
    burner.job === 'main' ? (burnsOnOf(burner) ?? []) : [],
  );
  return times.sort((a, b) => b.si - a.si)[0];
}

/** `fuel gauge 140 psi, pilot gauge 25 psi`: no word but names and figures, so that it reads in any language. */
function fuelRedLines(car: Car, print: Printer): string | undefined {
  const { spec } = car;
  const ofBurners = duties['burner-fuel-gauge']?.parts(car) ?? [];
  const lines = Object.entries(spec.gauges).flatMap(([id, gauge]) =>
    gauge.reads === 'pressure' &&
    (gauge.of in spec.tanks || ofBurners.includes(id)) &&
    gauge['red-line'] !== undefined
      ? [`${gauge.name} ${print.show(gauge['red-line'], 'down') ?? ''}`]
      : [],
  );
  return lines.length === 0 ? undefined : lines.join(', ');
}

/** Whether every main burner is lit by a switch. */
function isLitBySpark({ spec }: Car): boolean {
  const mains = Object.values(spec.burners).filter(({ job }) => job === 'main');
  return mains.length > 0 && mains.every((burner) => (burner['lit-by'] ?? '') in spec.controls);
}

/** The longest that any burner asks to be aired, since procedures speak of the fire as one; nothing if none says. */
function longestAiring({ spec }: Car): Quantity | undefined {
  return Object.values(spec.burners)
    .flatMap((burner) => burner['airs-in'] ?? [])
    .sort((a, b) => b.si - a.si)[0];
}
