/** What the docent guide says of the car: what to show, what to answer, what stays shut, how a demonstration runs. */
import type { PartId } from '../../car/car';
import type { Named } from '../guide/speak';
import type { World } from '../paper';
import { type PartContext, partsOfKind } from './controls';
import { readingsContext } from './readings';
import { runSheetContext } from './runSheet';

/** Everything of the guide that is not the same for every paper. */
export function docentContext(world: World): Readonly<Record<string, unknown>> {
  const { car, guide, phrases } = world;
  const { docent } = guide;
  const ofKind = (kind: PartContext['kind']) => partsOfKind(world, kind);
  return {
    parts: docent.parts.map(({ of, says }) => ({
      names: of.map(({ name }) => name),
      places: placesOf(of),
      says,
    })),
    questions: docent.questions,
    neverTouch: neverTouchRows(world),
    neverTouchElse: docent['never-touch-else'],
    proofOfCold: docent['proof-of-cold'],
    valves: ofKind('valve'),
    readings: readingsContext(world),
    locks: ofKind('lock'),
    tanks: ofKind('tank'),
    devices: ofKind('device'),
    roles: docent.roles,
    distances: docent.distances.map(({ from, least, why }, index) => ({
      number: index + 1,
      from,
      why,
      least: phrases.paced(least),
    })),
    signs: docent.signs,
    weather: docent.weather,
    decides: docent.decides,
    go: docent.go,
    runSheet: runSheetContext(world),
    trouble: troubleRows(world),
    access: docent.access,
    facts: {
      body: car.spec.car.body,
      seats: car.spec.car.seats,
      mass: phrases.both(car.spec.running['mass-empty']),
      usualSpeed: phrases.both(car.spec.running['usual-speed']),
      mostSpeed: phrases.both(car.spec.running['most-speed'], { rounding: 'down' }),
      working: phrases.both(car.spec.boiler['working-pressure']),
      fuels: Object.values(car.spec.fuels).map(({ name }) => name),
      length: phrases.both(car.spec.car.length),
    },
  };
}

/** Parts that nobody touches, and why. */
export interface NeverTouchRow {
  readonly parts: readonly Named[];
  readonly why: string;
}

/** A part stands in the first row that names it; a row that names none that is new falls away. */
export function neverTouchRows({ guide }: World): readonly NeverTouchRow[] {
  const named = new Set<PartId>();
  return guide.docent['never-touch'].flatMap(({ of, why }) => {
    const parts = of.filter(({ id }) => !named.has(id));
    for (const { id } of parts) named.add(id);
    return parts.length === 0 ? [] : [{ parts, why }];
  });
}

/** Where the parts of an entry are, each place once. */
function placesOf(parts: World['guide']['docent']['parts'][number]['of']): readonly string[] {
  return [...new Set(parts.map(({ place }) => place).filter((place) => place !== ''))];
}

/** What is done in an emergency with people near. */
export interface TroubleRow {
  /** Key of the procedure. */
  readonly id: string;
  readonly title: string;
  readonly seen: string | undefined;
  /** The driver’s first act. */
  readonly first: string;
  /** What whoever minds the public does. */
  readonly crowd: string;
}

/** The emergencies that this car can have, in the order of the guide. */
export function troubleRows({ guide, proof }: World): readonly TroubleRow[] {
  return guide.docent.trouble.flatMap(({ emergency, public: crowd }) => {
    const procedure = proof.procedures.find(({ id }) => id === emergency);
    const [first] = procedure?.steps ?? [];
    if (procedure === undefined || first === undefined) return [];
    return [{ id: emergency, title: procedure.title, seen: procedure.seen, first: first.say, crowd }];
  });
}
