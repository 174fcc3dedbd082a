/** What all cars share, read and checked: the workshop in which papers are made. */
import { type Liquids, readLiquids } from './calc/fuel/liquids';
import { readTimeline, type Timeline } from './calc/time/timeline';
import { bad, type Diagnostic, good, type Outcome } from './diagnostic/diagnostic';
import type { Drawing } from './drawing/drawing';
import { picturesIn } from './drawing/pictures/picturesIn';
import { measureFonts } from './font/measure';
import type { Face, FontSet } from './font/metrics';
import { readScreenLook, type SilentLook } from './html/look';
import { type Languages, readLanguages } from './language/readLanguages';
import { readTheme, type SilentTheme } from './layout/theme';
import { allFoundGood, compileTemplates, type Templates } from './markup/template/compile';
import { type GuideFiles, readGuide } from './paper/guide/guide';
import type { Paper } from './paper/paper';
import { type Plans, readPlans } from './paper/plans';
import { papersOf } from './paper/registry';
import { readSigns, type Signs, unknownSigns } from './paper/signs';
import { templateHelpers } from './paper/templateHelpers';
import { type Library, readLibrary } from './procedure/library';
import { stepKeys } from './procedure/libraryForm';
import { type GlossaryEntry, readFaults, readGlossary, type SignsAndCauses } from './procedure/reference';
import { type Day, readDay } from './proof/day';

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
    timeline: timeline.ok ? timeline.value.parts.map(({ id }) => id) : [],
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

function absentFile(name: string): Diagnostic {
  return {
    code: 'shared-absent',
    severity: 'error',
    message: `\`${name}\` is not there`,
    mend: 'put it back as it came with the program',
  };
}
