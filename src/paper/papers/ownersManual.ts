/** The owner's manual: the whole book of one car. */

import { signalWords } from '../../language/signal';
import type { Phase } from '../../procedure/procedure';
import { placesContext } from '../context/controls';
import { dataContext } from '../context/data';
import { drawnContext, manualDrawings } from '../context/drawings';
import { fuelAndWaterContext } from '../context/fuelAndWater';
import { fuelCutContext } from '../context/fuelCut';
import { howItWorksContext } from '../context/howItWorks';
import { identityContext } from '../context/identity';
import { issueRecord } from '../context/issueRecord';
import { logContext } from '../context/logSheet';
import { partIndex } from '../context/partIndex';
import { runsContext } from '../context/plantWords';
import { proceduresContext } from '../context/procedures';
import {
  criticalContext,
  criticalKeys,
  leaksContext,
  triedContext,
  valveTablesContext,
} from '../context/proof';
import { onTheRoadContext, raisingContext, roadSpeedsContext, startUpContext } from '../context/raising';
import { readingsContext } from '../context/readings';
import { signsOfTrouble } from '../context/signsOfTrouble';
import { subjectIndex } from '../context/subjectIndex';
import { upkeepContext } from '../context/upkeep';
import { workingsContext } from '../context/workings';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asBook } from '../ways';

/** The owner's manual. */
export const ownersManual = ({ title, what }: PaperTitle): Paper => ({
  name: 'owners-manual',
  title,
  what,
  template: 'owners-manual',
  marksChanges: true,
  context: manualContext,
  drawings: manualDrawings,
  ...asBook(title, { chaptersOnNewPage: true, chapterTabs: true }),
});

function manualContext(world: World): Readonly<Record<string, unknown>> {
  // in this order: what the proof finds may still be waited for
  return { ...ofTheCar(world), ...ofTheProof(world) };
}

/** What needs nothing of the proof but the order of the steps. */
function ofTheCar(world: World): Readonly<Record<string, unknown>> {
  const { car, phrases, words } = world;
  const index = partIndex(world);
  return {
    car: identityContext(car.spec, phrases),
    words,
    signals: signalWords.map((word) => ({ word: word.toUpperCase(), meaning: words.signals[word] })),
    generalCautions: world.front.cautions.map((caution) => ({ ...caution, brief: false, repeated: false })),
    notices: world.front.notices,
    howItWorks: howItWorksContext(car),
    runs: runsContext(car),
    drawn: drawnContext(world),
    places: placesContext(car, phrases),
    readings: readingsContext(world),
    data: dataContext(
      car,
      phrases,
      new Map([...world.liquids].map(([id, liquid]) => [id, phrases.told(liquid.name)])),
    ),
    steamTable: world.figures.steam.map((row) => ({
      where: words['steam-at'][row.at],
      pressure: phrases.both(row.pressure),
      temperature: phrases.both(row.temperature, { rounding: 'up' }),
    })),
    fuelAndWater: fuelAndWaterContext(world),
    raising: raisingContext(world),
    startUp: startUpContext(world),
    onTheRoad: onTheRoadContext(world),
    roadSpeeds: roadSpeedsContext(world),
    faults: byPlace(world.faults),
    workings: workingsContext(world),
    glossary: world.glossary,
    use: world.guide.use,
    running: world.guide.running,
    upkeep: upkeepContext(world),
    log: { ...logContext(world), title: world.plans.papers['log-sheet'].title },
    since: world.since ?? false,
    signs: signsIn(world),
    subjects: subjectIndex(world),
    index,
    issues: issueRecord(world, index),
  };
}

/** What the proof found, and the procedures, whose critical steps it found. */
function ofTheProof(world: World): Readonly<Record<string, unknown>> {
  const { car, plans, proof } = world;
  const chapterOf = (phase: Phase) =>
    plans.chapters.find(({ phases }) => phases.includes(phase))?.id ?? phase;
  const procedures = proceduresContext(proof.procedures, car, criticalKeys(world), chapterOf);
  const inPhases = (wanted: readonly Phase[]) =>
    procedures.filter((procedure) => wanted.some((phase) => phase === procedure.phase));
  return {
    parts: plans.chapters.map((chapter) => ({ ...chapter, procedures: inPhases(chapter.phases) })),
    emergencies: inPhases(['emergency']),
    signsOfTrouble: signsOfTrouble(
      proof.procedures.filter(({ phase }) => phase === 'emergency'),
      plans,
    ),
    valveTables: valveTablesContext(world),
    leaks: leaksContext(world),
    fuelCut: fuelCutContext(world),
    critical: criticalContext(world),
    triedOnModel: triedContext(world),
  };
}

/** The safety signs that stand beside cautions of this car, with what they mean. */
function signsIn({
  front,
  proof,
  signWords,
  language,
}: World): readonly { readonly number: string; readonly means: string }[] {
  const cautions = [
    ...front.cautions,
    ...proof.procedures.flatMap((procedure) => [
      ...procedure.cautions,
      ...procedure.steps.flatMap((step) => step.cautions),
    ]),
  ];
  const used = new Set(cautions.flatMap(({ signs }) => signs));
  return [...signWords]
    .filter(([number]) => used.has(number))
    .map(([number, { means }]) => ({ number, means: language.texts.say(means) }));
}

/** Signs of faults under the part of the car they concern, in the order of the file; what is to be done is numbered. */
function byPlace(faults: World['faults']) {
  const places = [...new Set(faults.map(({ where }) => where))];
  return places.map((where) => ({
    where,
    signs: faults
      .filter((fault) => fault.where === where)
      .map((fault) => ({ ...fault, do: fault.do.map((say, index) => ({ number: index + 1, say })) })),
  }));
}
