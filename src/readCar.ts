/** From the text of a spec to a car that papers may be made for. */
import { type CarFigures, carFigures } from './calc/figures/carFigures';
import { figureRemarks } from './calc/figures/remarks';
import { readTripLog, type TripLog } from './calc/range/trip-log';
import { buildCar } from './car/build';
import type { Car } from './car/car';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from './diagnostic/diagnostic';
import { withoutMarksIn } from './language/lacking';
import { type Guide, guideFor } from './paper/guide/guide';
import { phrasesFor } from './paper/phrase';
import { type Sayings, sayingsIn } from './paper/sayings';
import { notWhole } from './paper/whole';
import { airingUnknownRemarks } from './procedure/airingUnknown';
import { alikeByHandRemarks } from './procedure/alikeByHand';
import { calledForRemarks } from './procedure/calledFor';
import { expandProcedures } from './procedure/expand';
import { type FrontMatter, frontMatter } from './procedure/frontMatter';
import type { Procedures } from './procedure/procedure';
import { entriesFor } from './procedure/reference';
import type { Day } from './proof/day';
import { prove } from './proof/prove';
import type { ShownProof } from './proof/shown';
import { type LoadedSpec, loadSpec } from './spec/load';
import type { Workshop } from './workshop';

/** A car that has been read and proven fit to have papers. */
export interface ProvenCar extends Sayings {
  readonly car: Car;
  /** Its log of trips, if it has one. */
  readonly log: TripLog | undefined;
  readonly proof: ShownProof;
  readonly front: FrontMatter;
}

/** The same with its figures worked out, and what is said by them. */
export interface ReadyCar extends ProvenCar {
  readonly figures: CarFigures;
  readonly guide: Guide;
}

/** A spec and the files it names. */
export interface CarFiles {
  readonly file: string;
  readonly text: string;
  /** Files named in the spec, by the name it gives them, such as its log of trips; absent ones are left out. */
  readonly beside: ReadonlyMap<string, string>;
  /** Paper to print on instead of the spec's. */
  readonly paper?: 'letter' | 'a4';
}

/** What proves the procedures of a car. */
export type Prover = (car: Car, given: Procedures, options: { readonly day: Day }) => ProofMade;

/** What comes of it. */
export interface ProofMade extends ShownProof {
  /** What is wrong, which stops the making of papers if it is an error; nothing if it is told by whoever proves the car elsewhere. */
  readonly diagnostics: readonly Diagnostic[] | undefined;
}

/** From spec text to a car that papers may be made for. */
export function readCar(files: CarFiles, workshop: Workshop, prover: Prover = prove): Outcome<ReadyCar> {
  const proven = proveCar(files, workshop, prover);
  if (!proven.ok) return proven;
  const ready = workOut(proven.value, workshop);
  if (!ready.ok) return bad([...proven.remarks, ...ready.problems]);
  return good(ready.value, [...proven.remarks, ...ready.remarks]);
}

/** From spec text to a car that has been proven; its figures, which need no proof, are left to be worked out. */
export function proveCar(files: CarFiles, workshop: Workshop, prover: Prover = prove): Outcome<ProvenCar> {
  const loaded = loadSpec(files.text, files.file, [...workshop.liquids.keys()]);
  if (!loaded.ok) return loaded;
  const car = buildCar(onPaper(loaded.value, files.paper));
  const system = car.spec.print.units.first;
  const [burner, ...others] = Object.values(car.spec.burners);
  const language = workshop.languages.of(
    car.spec.print.language,
    others.length === 0 ? burner?.name : undefined,
  );
  if (!language.ok)
    return bad([
      ...loaded.remarks,
      ...language.problems.map((problem) => ({ at: car.spotOf('print.language'), ...problem })),
    ]);
  const sayings = sayingsIn(workshop, language.value);
  if (!sayings.ok) return sayings;
  const { library, leftOut } = sayings.value;
  const log = tripLog(car, files);
  const procedures = expandProcedures(car, library, { system });
  const front = frontMatter(car, library, { system });
  const problems: readonly Diagnostic[] = [
    ...loaded.remarks,
    ...(leftOut.length === 0 ? [] : [notWhole(leftOut, language.value, car.spotOf('print.language'))]),
    ...(log.ok ? log.remarks : log.problems),
    ...(procedures.ok ? procedures.remarks : procedures.problems),
    ...(front.ok ? front.remarks : front.problems),
  ];
  if (!log.ok || !procedures.ok || !front.ok || hasErrors(problems)) return bad(withoutMarksIn(problems));
  const proof = prover(car, procedures.value, { day: workshop.day });
  const { diagnostics } = proof;
  if (hasErrors(diagnostics ?? [])) return bad(withoutMarksIn([...problems, ...(diagnostics ?? [])]));
  const proven: ProvenCar = {
    ...sayings.value,
    car,
    log: log.value,
    proof,
    front: front.value,
    glossary: entriesFor(car, sayings.value.glossary),
    faults: entriesFor(car, sayings.value.faults),
  };
  // whoever tells what is wrong tells these too: they ask for the order of the steps, which may not be known here yet
  if (diagnostics === undefined) return good(proven);
  return good(
    proven,
    withoutMarksIn([
      ...problems,
      ...diagnostics,
      ...calledForRemarks(
        car,
        workshop.library.procedures,
        proof.procedures,
        workshop.guideFiles.upkeep.form['called-for'],
      ),
      ...alikeByHandRemarks(car, proof.procedures, workshop.day.wayOut),
      ...airingUnknownRemarks(car),
    ]),
  );
}

/** Work out the figures of a proven car, and what is said by them. */
export function workOut(proven: ProvenCar, workshop: Workshop): Outcome<ReadyCar> {
  const { car, language, timeline, log } = proven;
  const system = car.spec.print.units.first;
  const figures = carFigures(car, {
    liquids: workshop.liquids,
    timeline,
    face: { name: 'small letters of the text face', xHeight: workshop.fonts.text.xHeight },
    system,
    ...(log === undefined ? {} : { log }),
  });
  const phrases = phrasesFor(car.spec, language);
  const guide = guideFor(car, figures, workshop.guideFiles, { print: { system }, phrases, language });
  if (!guide.ok) return bad(withoutMarksIn(guide.problems));
  return good({ ...proven, figures, guide: guide.value }, withoutMarksIn(figureRemarks(car, figures)));
}

/** The same spec, printed on other paper; a card size that the spec names stays. */
function onPaper(loaded: LoadedSpec, paper: CarFiles['paper']): LoadedSpec {
  if (paper === undefined) return loaded;
  return { ...loaded, spec: { ...loaded.spec, print: { ...loaded.spec.print, paper } } };
}

function tripLog(car: Car, { beside }: CarFiles): Outcome<TripLog | undefined> {
  const name = car.spec.running.log;
  if (name === undefined) return good(undefined);
  const text = beside.get(name);
  if (text !== undefined) return readTripLog(text, name);
  return bad([
    {
      code: 'spec-no-log',
      severity: 'error',
      at: car.spotOf('running.log'),
      message: `the log \`${name}\` is not there`,
      found: `\`${name}\``,
      expected: 'a file beside the spec',
      mend: 'put the log beside the spec, or take `log` out',
    },
  ]);
}
