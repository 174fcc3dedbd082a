/** Everything that is said in words and is no car’s own, in the language of one car’s papers. */
import type { Timeline } from '../calc/time/timeline';
import type { Outcome } from '../diagnostic/diagnostic';
import { bad, good } from '../diagnostic/diagnostic';
import { type Dialect, formIn } from '../language/dialect';
import type { Language } from '../language/language';
import type { Words } from '../language/languageForm';
import { compileTemplates, type Templates } from '../markup/template/compile';
import type { Library } from '../procedure/library';
import type { GlossaryEntry, SignsAndCauses } from '../procedure/reference';
import type { Paper } from './paper';
import type { Plans } from './plans';
import { papersOf } from './registry';
import { templateHelpers } from './templateHelpers';
import { isWhole } from './whole';

/** Words of the library, of the language and of the templates. */
export interface Sayings {
  readonly language: Language;
  readonly words: Words;
  readonly library: Library;
  readonly timeline: Timeline;
  readonly plans: Plans;
  /** Every paper that is whole in the language, with its title in it. */
  readonly papers: readonly Paper[];
  /** Papers that the language does not say all of. */
  readonly leftOut: readonly Paper[];
  readonly glossary: readonly GlossaryEntry[];
  readonly faults: readonly SignsAndCauses[];
  readonly templates: Templates;
  /** Text of every template, for the fingerprint. */
  readonly templateText: string;
}

/** The same as it stands in the files, with the templates as text. */
export type PlainSayings = Pick<Sayings, 'library' | 'timeline' | 'plans' | 'glossary' | 'faults'> & {
  readonly templateSources: ReadonlyMap<string, string>;
  /** The same, read. */
  readonly plainTemplates: Templates;
  /** Files that are the keeper’s own: `papers.yaml`, or a template by its name. */
  readonly own: ReadonlySet<string>;
};

/** What is said in a language. */
export function sayingsIn(plain: PlainSayings, language: Language): Outcome<Sayings> {
  const { texts } = language;
  const sources = [...plain.templateSources]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, text]) => [name, plain.own.has(name) ? text : texts.sayTemplate(text)] as const);
  const templates = compileTemplates(
    Object.fromEntries(sources),
    templateHelpers,
    plain.plainTemplates.found,
  );
  if (!templates.ok) return bad(templates.problems);
  const plans = plain.own.has('papers.yaml') ? plain.plans : plansIn(texts, plain.plans);
  const papers = papersOf(plans);
  return good(
    {
      language,
      words: language.words,
      library: libraryIn(texts, plain.library, language),
      timeline: {
        ...plain.timeline,
        parts: plain.timeline.parts.map((part) => ({ ...part, name: texts.say(part.name) })),
      },
      plans,
      papers: papers.filter((paper) => isWhole(language, paper)),
      leftOut: papers.filter((paper) => !isWhole(language, paper)),
      glossary: formIn(texts, plain.glossary),
      faults: formIn(texts, plain.faults),
      templates: templates.value,
      templateText: sources.flat().join('\n'),
    },
    templates.remarks,
  );
}

function libraryIn(texts: Dialect, library: Library, language: Language): Library {
  return {
    procedures: library.procedures.map(({ form, spot }) => ({ form: formIn(texts, form), spot })),
    cautions: new Map(
      [...library.cautions].map(([id, { form, spot }]) => [id, { form: formIn(texts, form), spot }]),
    ),
    notices: library.notices.map(({ form, spot }) => ({ form: formIn(texts, form), spot })),
    language,
  };
}

function plansIn({ say }: Dialect, plans: Plans): Plans {
  const titled = <T extends { title: string }>(each: T): T => ({
    ...each,
    title: say(each.title),
  });
  return {
    ...plans,
    chapters: plans.chapters.map((chapter) => ({ ...chapter, title: say(chapter.title) })),
    cards: plans.cards.map(titled),
    'signs-of-trouble': plans['signs-of-trouble'].map((head) => ({
      ...head,
      ...(head.title === undefined ? {} : { title: say(head.title) }),
    })),
    papers: Object.fromEntries(
      Object.entries(plans.papers).map(([name, each]) => [name, titled(each)]),
    ) as Plans['papers'],
  };
}
