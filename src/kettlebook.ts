/**
 * The whole way, from text to bytes, as one composed expression. Pure: files, clock and terminal are the caller's.
 */
import { type CarFigures, carFigures } from './calc/figures/carFigures';
import { figureRemarks } from './calc/figures/remarks';
import { type Liquids, readLiquids } from './calc/fuel/liquids';
import { readTripLog, type TripLog } from './calc/range/trip-log';
import { readTimeline, type Timeline } from './calc/time/timeline';
import { buildCar } from './car/build';
import type { Car } from './car/car';
import { fillSince } from './compare/fillSince';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from './diagnostic/diagnostic';
import type { Drawing } from './drawing/drawing';
import { picturesIn } from './drawing/pictures/picturesIn';
import { measureFonts } from './font/measure';
import type { Face, FontSet } from './font/metrics';
import { lookInWords, readScreenLook, type SilentLook } from './html/look';
import { withoutMarksIn } from './language/lacking';
import { type Languages, readLanguages } from './language/readLanguages';
import { readTheme, type SilentTheme, themeInWords } from './layout/theme';
import { allFoundGood, compileTemplates, type Templates } from './markup/template/compile';
import { fillTemplate, unsaidIn } from './paper/fill';
import { type Guide, type GuideFiles, guideFor, readGuide } from './paper/guide/guide';
import {
  type MadePaper,
  makePaper,
  type Paper,
  type ScreenDraft,
  type SetPaper,
  screenFile,
  setPaper,
  type TakeDraft,
  type World,
} from './paper/paper';
import { phrasesFor } from './paper/phrase';
import { type Plans, readPlans } from './paper/plans';
import { papersOf } from './paper/registry';
import { type Sayings, sayingsIn } from './paper/sayings';
import { drawnSigns, readSigns, type Signs, unknownSigns } from './paper/signs';
import { templateHelpers } from './paper/templateHelpers';
import { notWhole } from './paper/whole';
import { calledForRemarks } from './procedure/calledFor';
import { expandProcedures } from './procedure/expand';
import { type FrontMatter, frontMatter } from './procedure/frontMatter';
import { type Library, readLibrary } from './procedure/library';
import { stepKeys } from './procedure/libraryForm';
import type { Procedures } from './procedure/procedure';
import {
  entriesFor,
  type GlossaryEntry,
  readFaults,
  readGlossary,
  type SignsAndCauses,
} from './procedure/reference';
import { type Day, readDay } from './proof/day';
import { prove } from './proof/prove';
import type { ShownProof } from './proof/shown';
import { type LoadedSpec, loadSpec } from './spec/load';

/** What all cars share, as text and bytes; the edge reads it from the folders `shared` and `templates`. */
export interface SharedFiles {
  /** Text files by name relative to `shared`. */
  readonly texts: ReadonlyMap<string, string>;
  /** Templates by name, without `.hbs`: `owners-manual`, `pieces/caution`. */
  readonly templates: ReadonlyMap<string, string>;
  /** The theme of the car, by name; `plain` if none is given. */
  readonly theme?: string;
  /** Files that are the keeper’s own and no language says otherwise: `papers.yaml`, or a template by its name. */
  readonly own?: ReadonlySet<string>;
  readonly fonts: Readonly<Record<Face, Uint8Array>>;
  /**
   * Whether texts and templates are letter for letter those that this very program has read before without fault, so that
   * names and templates in them need not be checked again. If not given, everything is checked.
   */
  readonly foundGood?: boolean;
}

/** What all cars share, read and checked; made once, used for any number of cars. */
export interface Workshop {
  readonly liquids: Liquids;
  readonly timeline: Timeline;
  readonly library: Library;
  readonly plans: Plans;
  readonly day: Day;
  readonly languages: Languages;
  readonly glossary: readonly GlossaryEntry[];
  readonly faults: readonly SignsAndCauses[];
  readonly signWords: Signs;
  readonly theme: SilentTheme;
  readonly screen: SilentLook;
  /** Text of each template as it stands in its file. */
  readonly templateSources: ReadonlyMap<string, string>;
  /** Templates as they stand in their files, before a language says them. */
  readonly plainTemplates: Templates;
  /** Files that are the keeper’s own and no language says otherwise. */
  readonly own: ReadonlySet<string>;
  readonly guideFiles: GuideFiles;
  readonly fonts: FontSet;
  readonly fontFiles: Readonly<Record<Face, Uint8Array>>;
  readonly papers: readonly Paper[];
  /** Pictures of the keeper’s own, which every template may show. */
  readonly pictures: readonly Drawing[];
}

/** A car that has been read, worked out and found fit to have papers. */
export interface ReadyCar extends Sayings {
  readonly car: Car;
  readonly figures: CarFigures;
  readonly procedures: Procedures;
  readonly proof: ShownProof;
  readonly front: FrontMatter;
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

/** Read everything that all cars share. */
export function openWorkshop(shared: SharedFiles): Outcome<Workshop> {
  const fonts = measureFonts(shared.fonts);
  const from = <T>(name: string, read: (text: string, file: string) => Outcome<T>): Outcome<T> => {
    const text = shared.texts.get(name);
    return text === undefined ? bad([absentFile(`shared/${name}`)]) : read(text, `shared/${name}`);
  };
  const liquids = from('liquids.yaml', readLiquids);
  const timeline = from('timeline.yaml', readTimeline);
  const languages = readLanguages(shared.texts);
  if (!languages.ok) return languages;
  const library = readLibrary(shared.texts, languages.value.plain, { foundGood: shared.foundGood === true });
  const plans = from('papers.yaml', readPlans);
  const procedures = library.ok ? library.value.procedures.map(({ form }) => form) : [];
  const procedureIds = procedures.map(({ id }) => id);
  const stepsOf = new Map(procedures.map(({ id, steps }) => [id, stepKeys(steps)]));
  const cautionIds = library.ok ? [...library.value.cautions.keys()] : undefined;
  const day = from('day.yaml', (text, file) => readDay(text, file, stepsOf, cautionIds));
  const glossary = from('glossary.yaml', readGlossary);
  const faults = from('faults.yaml', readFaults);
  const screen = readScreenLook({
    data: shared.texts.get('screen/screen.yaml') ?? '',
    style: shared.texts.get('screen/page.css') ?? '',
    script: shared.texts.get('screen/page.js') ?? '',
  });
  const signs = from('signs.yaml', readSigns);
  const theme = from(`themes/${shared.theme ?? 'plain'}.yaml`, (text, file) => readTheme(text, file, fonts));
  const guideFiles = readGuide(shared.texts, {
    procedures: procedureIds,
    cautions: cautionIds ?? [],
    faults: faults.ok ? faults.value.map(({ id }) => id) : [],
    signs: signs.ok ? [...signs.value.keys()] : [],
  });
  const all = [
    liquids,
    timeline,
    library,
    plans,
    ...(library.ok ? [day] : []),
    glossary,
    faults,
    signs,
    theme,
    screen,
    ...(library.ok && signs.ok && faults.ok ? [guideFiles] : []),
  ];
  const problems = all.flatMap((each) => (each.ok ? each.remarks : each.problems));
  if (
    !liquids.ok ||
    !timeline.ok ||
    !library.ok ||
    !plans.ok ||
    !day.ok ||
    !glossary.ok ||
    !faults.ok ||
    !signs.ok ||
    !theme.ok ||
    !screen.ok ||
    !guideFiles.ok
  )
    return bad(problems);
  const pictures = picturesIn(shared.texts);
  if (!pictures.ok) return bad([...problems, ...pictures.problems]);
  const strange = unknownSigns(library.value, signs.value);
  if (strange.length > 0) return bad([...problems, ...strange]);
  const templates = compileTemplates(
    Object.fromEntries(shared.templates),
    templateHelpers,
    shared.foundGood === true ? allFoundGood : undefined,
  );
  if (!templates.ok) return bad([...problems, ...templates.problems]);
  return good(
    {
      liquids: liquids.value,
      timeline: timeline.value,
      library: library.value,
      plans: plans.value,
      day: day.value,
      languages: languages.value,
      glossary: glossary.value,
      faults: faults.value,
      signWords: signs.value,
      theme: theme.value,
      screen: screen.value,
      templateSources: shared.templates,
      plainTemplates: templates.value,
      own: shared.own ?? new Set(),
      guideFiles: guideFiles.value,
      fonts,
      fontFiles: shared.fonts,
      papers: papersOf(plans.value),
      pictures: pictures.value,
    },
    problems,
  );
}

/** What proves the procedures of a car: its errors stop the making of papers. */
export type Prover = (
  car: Car,
  given: Procedures,
  options: { readonly day: Day },
) => ShownProof & { readonly diagnostics: readonly Diagnostic[] };

/** From spec text to a car that papers may be made for. */
export function readCar(files: CarFiles, workshop: Workshop, prover: Prover = prove): Outcome<ReadyCar> {
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
  const { library, timeline, leftOut } = sayings.value;
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
  if (hasErrors(proof.diagnostics)) return bad(withoutMarksIn([...problems, ...proof.diagnostics]));
  const figures = carFigures(car, {
    liquids: workshop.liquids,
    timeline,
    face: { name: 'small letters of the text face', xHeight: workshop.fonts.text.xHeight },
    system,
    ...(log.value === undefined ? {} : { log: log.value }),
  });
  const phrases = phrasesFor(car.spec, language.value);
  const style = { print: { system }, phrases, language: language.value };
  const guide = guideFor(car, figures, workshop.guideFiles, style);
  if (!guide.ok) return bad(withoutMarksIn([...problems, ...guide.problems]));
  return good(
    {
      ...sayings.value,
      car,
      figures,
      procedures: proof.procedures,
      proof,
      front: front.value,
      guide: guide.value,
      glossary: entriesFor(car, sayings.value.glossary),
      faults: entriesFor(car, sayings.value.faults),
    },
    withoutMarksIn([
      ...problems,
      ...proof.diagnostics,
      ...calledForRemarks(
        car,
        workshop.library.procedures,
        proof.procedures,
        workshop.guideFiles.upkeep.form['called-for'],
      ),
      ...figureRemarks(car, figures),
    ]),
  );
}

/** The issue of a car before the one that papers are made for, as it was read. */
export interface EarlierIssue {
  readonly ready: ReadyCar;
  readonly workshop: Workshop;
}

/** Make papers one after the other; `each` is called with every finished one, so that no more than one is held. */
export async function makePapers(
  ready: ReadyCar,
  papers: Iterable<Paper>,
  workshop: Workshop,
  each: (paper: MadePaper) => Promise<void> | void,
  earlier?: EarlierIssue,
): Promise<Outcome<readonly MadePaper['name'][]>> {
  const problems: Diagnostic[] = [];
  const made: string[] = [];
  for await (const [paper, outcome] of oneByOne(ready, papers, workshop, earlier)) {
    problems.push(...(outcome.ok ? outcome.remarks : outcome.problems));
    if (!outcome.ok) continue;
    made.push(paper.name);
    await each(outcome.value);
  }
  return hasErrors(problems) ? bad(problems) : good(made, problems);
}

/**
 * Make papers one after the other, each when it is asked for, good or not. The page for a screen of a paper is left out where
 * `take` has taken its draft, to have it written elsewhere.
 */
export async function* oneByOne(
  ready: ReadyCar,
  papers: Iterable<Paper>,
  workshop: Workshop,
  earlier?: EarlierIssue,
  take?: TakeDraft,
): AsyncGenerator<readonly [Paper, Outcome<MadePaper>]> {
  const world = worldOf(ready, workshop, earlier);
  for (const paper of papers) yield [paper, await makePaper(paper, world, fillSince, take)];
}

/** The page for a screen of a paper that is made elsewhere, from its draft. */
export function writeScreen(
  draft: ScreenDraft,
  ready: ReadyCar,
  workshop: Workshop,
): ReturnType<typeof screenFile> {
  return screenFile(draft, worldOf(ready, workshop));
}

/** What the language of a car’s papers does not say of each of these papers: texts of the library, in English. */
export function unsaidOf(
  ready: ReadyCar,
  papers: readonly Paper[],
  workshop: Workshop,
): Outcome<readonly UnsaidPaper[]> {
  const world = worldOf(ready, workshop);
  const unsaid: UnsaidPaper[] = [];
  for (const paper of papers) {
    const filled = fillTemplate(paper, world);
    if (!filled.ok) return filled;
    unsaid.push({ paper, texts: unsaidIn(paper, world, filled.value) });
  }
  return good(unsaid);
}

/** A paper with the texts of the library that it would print and its language does not say. */
export interface UnsaidPaper {
  readonly paper: Paper;
  readonly texts: readonly string[];
}

/** A paper up to its pages, for checks and for looking at. */
export function setOnePaper(
  ready: ReadyCar,
  paper: Paper,
  workshop: Workshop,
  earlier?: EarlierIssue,
): Outcome<SetPaper> {
  return setPaper(paper, worldOf(ready, workshop, earlier), fillSince);
}

/** Everything the papers of a car are made from. */
export function worldOf(ready: ReadyCar, workshop: Workshop, earlier?: EarlierIssue): World {
  const { car, language } = ready;
  return {
    ...workshop,
    ...ready,
    theme: themeInWords(workshop.theme, language.furniture),
    screen: lookInWords(workshop.screen, language.furniture),
    phrases: phrasesFor(car.spec, language),
    ...(earlier === undefined ? {} : { earlier: worldOf(earlier.ready, earlier.workshop) }),
    signs: drawnSigns(workshop.signWords, language),
  };
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

function absentFile(name: string): Diagnostic {
  return {
    code: 'shared-absent',
    severity: 'error',
    message: `\`${name}\` is not there`,
    mend: 'put it back as it came with the program',
  };
}
