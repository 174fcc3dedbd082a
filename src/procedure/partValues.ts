/** The values of a part that the words of a step can use. Documented in `docs/procedures.md`. */

import { keptBackM3, pilotLasts } from '../calc/figures/endurance';
import type { Car, PartId } from '../car/car';
import { type Language, partName } from '../language/language';
import type { Words } from '../language/languageForm';
import type { Values } from '../language/wording';
import { quantity } from '../quantity/quantity';
import { burnsOnOf } from '../spec/burnsOn';
import { Printer, type PrintStyle } from './valuePrinter';

/** What the words can ask of a part, with its meaning; a part of another kind has not got it. */
export const partValueMeanings = {
  called: 'Its name with article and tag: `the pilot valve (F1)`. `{{part}}` alone gives the same.',
  name: 'Its name alone.',
  tag: 'Its tag.',
  place: 'The name of its place.',
  how: 'What has to be opened or lifted first to get at it.',
  opens: 'Valve: which way it opens, as an act: `turn anticlockwise`.',
  'opens-otherwise': 'Valve: which way it opens, if that is not by turning anticlockwise.',
  'cracks-otherwise': 'Valve: which way it is cracked, if it does not open by turning anticlockwise.',
  shuts: 'Valve: which way it shuts.',
  quickly: 'Valve: how it is shut in a hurry, if the spec says so.',
  turns: 'Valve: how far it is opened.',
  crack: 'Valve: how far it is cracked.',
  parked: 'Valve: `open` or `shut` when the car is put away.',
  'blown-down-until': 'Blow-down valve: what is seen when it is shut again.',
  'worked-from': 'Valve of a burner: from where it is opened as the burner lights, if the spec says so.',
  jet: 'Valve: which way what comes out of it goes, if the spec says so.',
  note: 'Valve, gauge, equipment: what there is to know about working it.',
  does: 'Valve: what it does.',
  holds: 'Tank: what is in it.',
  capacity: 'Tank: what it holds, brim full.',
  'fill-to': 'Tank: the most to put in.',
  cushion: 'Tank: the air pumped into it empty, before a pump fills it.',
  'room-for-air': 'Tank: the most to put in, where less than the capacity is given.',
  reserve: 'Tank: what is kept back.',
  'kept-back':
    'Tank with a reserve: what its stick or gauge shows as the reserve begins, with what cannot be drawn.',
  'pilot-lasts':
    'Tank that feeds a pilot and no main burner: how long the pilot burns on what may be drawn of it, filled as said.',
  from: 'Tank, gauge: bottom of the pressure band.',
  to: 'Tank, gauge: top of the pressure band.',
  vent: 'Tank: how air gets in or out, or its pressure is let off.',
  cap: 'Tank: what opens its filler.',
  'good-flame': 'Burner: what a good flame looks and sounds like.',
  'burns-on': 'Burner: how long it burns on, at the most, after its fuel is shut.',
  soak: 'Pilot: the least time of soak.',
  'soak-good': 'Pilot: the better time of soak.',
  fuel: 'Burner: what it burns.',
  'hot-when': 'Vaporizer: how one knows it is hot enough.',
  'warm-first': 'Vaporizer: how long it is warmed.',
  'red-line': 'Gauge: never past this.',
  'should-read': 'Gauge: what it should show.',
  'cold-how': 'Way of reading the level: how it is read cold.',
  'steaming-how': 'Way of reading the level: how it is read under steam.',
  'level-good':
    'Way of reading the level: what it shows when there is water enough, under steam if it is read so.',
  'level-good-cold':
    'Way of reading the level: what it shows when there is water enough, cold if it is read so.',
  'shuts-otherwise': 'Valve: which way it shuts, if that is not by turning clockwise.',
  set: 'Device: where it acts.',
  test: 'Device: how one sees that it works.',
  work: 'Lock, control: how it is worked.',
  'set-forward': 'Reverse: how it stands set forward, or how it is worked.',
  'set-middle': 'Reverse: how it stands where the engine pulls neither way, or how it is worked.',
  'set-back': 'Reverse: how it stands set back, or how it is worked.',
} as const;

const partValueNames = Object.keys(partValueMeanings);

/** Values of the parts of a car, each worked out when it is first spoken of. */
export class PartValues {
  private readonly known = new Map<PartId, Values>();

  constructor(
    private readonly car: Car,
    private readonly style: PrintStyle,
    private readonly language: Language,
  ) {}

  of(id: PartId): Values {
    const values = this.known.get(id) ?? partValues(this.car, id, this.style, this.language);
    this.known.set(id, values);
    return values;
  }
}

/** Values of one part: what every part has, and what its kind adds. */
function partValues(car: Car, id: PartId, style: PrintStyle, language: Language): Values {
  const part = car.parts.get(id);
  const place = car.places.get(part?.place ?? '');
  const name = part?.name ?? id;
  const print = new Printer(style, language);
  const unset: Values = Object.fromEntries(partValueNames.map((value) => [value, undefined]));
  return {
    ...unset,
    called: partName(language, { name, tag: part?.tag }),
    name,
    tag: part?.tag,
    place: place?.name,
    how: place?.how,
    ...valveValues(car, id, print, language),
    ...tankValues(car, id, print, language),
    ...fireValues(car, id, print),
    ...instrumentValues(car, id, print),
  };
}

function valveValues(car: Car, id: PartId, print: Printer, { ways, words }: Language): Values {
  const valve = car.spec.valves[id];
  if (valve === undefined) return {};
  return {
    opens: ways[valve.opens]?.open,
    'opens-otherwise': valve.opens === 'anticlockwise' ? undefined : ways[valve.opens]?.open,
    'cracks-otherwise': valve.opens === 'anticlockwise' ? undefined : ways[valve.opens]?.crack,
    shuts: ways[valve.opens]?.shut,
    'shuts-otherwise': valve.opens === 'anticlockwise' ? undefined : ways[valve.opens]?.shut,
    quickly: valve.quickly,
    turns: print.show(valve.turns),
    crack: print.show(valve['first-crack']),
    parked: words.parked[valve.parked],
    'blown-down-until': blownDownUntil(car, id),
    'worked-from': valve['worked-from'],
    jet: valve.jet,
    note: valve.note,
    does: valve.does,
  };
}

function blownDownUntil({ spec: { boiler } }: Car, id: PartId): string | undefined {
  const index = boiler['blow-down'].indexOf(id);
  return index < 0 ? undefined : boiler['blown-down-until']?.[index];
}

function tankValues(car: Car, id: PartId, print: Printer, { words }: Language): Values {
  const tank = car.spec.tanks[id];
  if (tank === undefined) return {};
  return {
    holds: holdsWords(car, tank.holds, words),
    capacity: print.show(tank.capacity, 'down'),
    'fill-to': print.show(tank['fill-to'] ?? tank.capacity, 'down'),
    cushion: print.show(tank.cushion, 'nearest'),
    'room-for-air': tank['fill-to'] === undefined ? undefined : print.show(tank['fill-to'], 'down'),
    reserve: print.show(tank.reserve, 'up'),
    'kept-back':
      tank.reserve === undefined
        ? undefined
        : print.show(quantity('volume', keptBackM3(tank), tank.reserve.estimated), 'up'),
    'pilot-lasts': print.hours(pilotLasts(car, id)),
    from: print.show(tank.pressure?.from, 'up'),
    to: print.show(tank.pressure?.to, 'down'),
    vent: tank.vent,
    cap: tank.filler.cap,
  };
}

/** What a tank holds: the fuel's own name, or the word for water or oil. */
function holdsWords(car: Car, holds: string, { contents }: Words): string {
  const known: Readonly<Record<string, string>> = contents;
  return car.spec.fuels[holds]?.name ?? known[holds] ?? holds;
}

function fireValues(car: Car, id: PartId, print: Printer): Values {
  const burner = car.spec.burners[id];
  const vaporizer = car.spec.vaporizers?.[id];
  if (burner !== undefined) {
    return {
      'good-flame': burner['good-flame'],
      'burns-on': print.show(burnsOnOf(burner), 'up'),
      soak: print.show(burner.soak?.least, 'up'),
      'soak-good': print.show(burner.soak?.good, 'up'),
      fuel: car.spec.fuels[burner.fuel]?.name ?? burner.fuel,
    };
  }
  return vaporizer === undefined
    ? {}
    : { 'hot-when': vaporizer['hot-when'], 'warm-first': print.show(vaporizer['warm-first'], 'up') };
}

/** What a gauge or cock shows when there is water enough: when it is read so, and else at any time. */
function goodOf(
  ways: readonly Car['spec']['boiler']['level'][number][],
  wanted: 'cold' | 'steaming',
): string | undefined {
  const said = ways.filter(({ good }) => good !== undefined);
  return (said.find(({ when }) => when === wanted) ?? said[0])?.good;
}

function instrumentValues(car: Car, id: PartId, print: Printer): Values {
  const gauge = car.spec.gauges[id];
  const ways = car.spec.boiler.level.filter((way) => way.gauge === id);
  const device = car.spec.devices[id];
  const lock = car.spec.locks[id];
  const control = car.spec.controls[id];
  const work = lock?.how ?? control?.how;
  return {
    ...(gauge === undefined
      ? {}
      : {
          from: print.show(gauge.from, 'up'),
          to: print.show(gauge.to, 'down'),
          'red-line': print.show(gauge['red-line'], 'down'),
          'should-read': gauge['should-read'],
          note: gauge.note,
        }),
    ...(ways.length === 0
      ? {}
      : {
          'cold-how': ways.find((way) => way.when !== 'steaming')?.how,
          'steaming-how': ways.find((way) => way.when !== 'cold')?.how,
          'level-good': goodOf(ways, 'steaming'),
          'level-good-cold': goodOf(ways, 'cold'),
        }),
    ...(device === undefined ? {} : { set: print.show(device.set), test: device.test }),
    ...(lock === undefined && control === undefined ? {} : { work }),
    ...(control?.kind === 'reverse'
      ? {
          'set-forward': control.stands?.forward ?? work,
          'set-middle': control.stands?.middle ?? work,
          'set-back': control.stands?.back ?? work,
        }
      : {}),
    ...(car.spec.equipment[id] === undefined ? {} : { note: car.spec.equipment[id]?.note }),
  };
}
