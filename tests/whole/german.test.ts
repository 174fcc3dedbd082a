/** A second language, proved on a car whose papers are German: whole, no English in them, nothing lost on the way. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { good } from '../../src/diagnostic/diagnostic';
import {
  makePapers,
  openWorkshop,
  type ReadyCar,
  readCar,
  setOnePaper,
  unsaidOf,
  worldOf,
} from '../../src/kettlebook';
import { lackingIn } from '../../src/language/lacking';
import type { Language } from '../../src/language/language';
import { segmentsIn } from '../../src/language/segments';
import { checkLaidOut } from '../../src/layout/check';
import { themeInWords } from '../../src/layout/theme';
import type { Block } from '../../src/markup/block';
import type { MadePaper, Paper } from '../../src/paper/paper';
import type { EntryForm } from '../../src/procedure/libraryForm';
import { quantity } from '../../src/quantity/quantity';
import { languageFiles } from '../helpers/english';
import { pdfBreaches } from '../helpers/pdfChecks';
import { PdfFile } from '../helpers/pdfFile';
import { lettersIn } from '../helpers/pdfLetters';
import { openPdf, textOf } from '../helpers/pdfText';
import { demoNames, goodOf, inWords, leastOf, logs, root, shared, specText, workshop } from './made';

const shop = await workshop();
const spec = readFileSync(join(root, 'cars', 'de', 'fingerhut.yaml'), 'utf8');

function car(language: string, text = spec): ReadyCar {
  const said = text.replace('language: de', `language: ${language}`);
  return goodOf(readCar({ file: 'fingerhut.yaml', text: said, beside: new Map() }, shop));
}

const german = car('de');
const english = car('en-GB');
const { furniture } = german.language;
const papers = german.papers.map((paper) => [paper.name, paper] as const);

async function made(): Promise<readonly MadePaper[]> {
  const list: MadePaper[] = [];
  goodOf(await makePapers(german, german.papers, shop, (paper) => void list.push(paper)));
  return list;
}
let known: ReturnType<typeof made> | undefined;
/** The German papers, made once. */
function all(): ReturnType<typeof made> {
  known ??= made();
  return known;
}

/** Words of two letters and more, small. */
const wordsOf = (text: string) => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];

test('the dash cards and the page for a visiting driver are whole in German, and the others are told', () => {
  const names = papers.map(([name]) => name);
  expect(names).toEqual(expect.arrayContaining(shop.plans.cards.map(({ name }) => name)));
  expect(names).toEqual(
    expect.arrayContaining([
      'visiting-driver',
      'card-burner-front',
      'card-for-the-dark',
      'card-valve-positions',
    ]),
  );
  expect([...names, ...german.leftOut.map(({ name }) => name)].sort()).toEqual(
    shop.papers.map(({ name }) => name).sort(),
  );
  expect(german.leftOut.map(({ name }) => name)).toContain('owners-manual');
});

describe('in German', () => {
  test.each(papers)('%s: everything in order, inside, legible', (_, paper) => {
    const set = goodOf(setOnePaper(german, paper, shop));
    const theme = themeInWords(shop.theme, furniture);
    const options = { fonts: shop.fonts, theme, ...leastOf(paper, german, shop) };
    expect(checkLaidOut(set.blocks, set.laidOut, options).map(inWords)).toEqual([]);
    expect(JSON.stringify(set.laidOut)).not.toContain('\u00ad');
  });

  test.each(papers)('%s says what it says in English, block for block and step for step', (name, paper) => {
    const plain = english.papers.find((each) => each.name === name);
    if (plain === undefined) throw new Error(`there is no ${name}`);
    const [de, en] = [setOnePaper(german, paper, shop), setOnePaper(english, plain, shop)];
    expect(shapeOf(goodOf(de).blocks)).toEqual(shapeOf(goodOf(en).blocks));
  });

  test('a triangle beside a step has the letter of its caution, higher up on the page', async () => {
    const marks = await Promise.all(
      (await all()).map(async ({ name, bytes, blocks }) => {
        const found = await lettersIn(bytes, blocks, furniture.sheets.saidAbove);
        expect(found.faults, name).toEqual([]);
        return found.marks;
      }),
    );
    expect(Math.max(...marks)).toBeGreaterThan(2);
  });

  test('the files keep every clause, say that they are German, and are the same when made again', async () => {
    const again = await made();
    for (const [index, paper] of (await all()).entries()) {
      expect(pdfBreaches(new PdfFile(Buffer.from(paper.bytes))), paper.name).toEqual([]);
      const { info } = await (await openPdf(paper.bytes)).getMetadata();
      expect((info as { Language?: string }).Language).toBe('de');
      expect(new TextDecoder().decode(paper.screen?.bytes)).toContain('<html lang="de"');
      expect(isDeepStrictEqual(paper.bytes, again[index]?.bytes), paper.name).toBe(true);
      expect(isDeepStrictEqual(paper.screen?.bytes, again[index]?.screen?.bytes), paper.name).toBe(true);
    }
  });
});

/** The blocks without their words: which kinds, how many, what is in what. */
function shapeOf(blocks: readonly Block[]): unknown {
  return JSON.parse(
    JSON.stringify(blocks, (key, value: unknown) => {
      if (['text', 'title', 'alt', 'origin', 'drawing', 'drawings'].includes(key)) return undefined;
      if (key === 'id' || key === 'lang') return undefined;
      return Array.isArray(value) && isInlines(value) ? [value.length > 0, ...ledTo(value)] : value;
    }),
  );
}

function isInlines(list: readonly unknown[]): boolean {
  return list.every(
    (each) =>
      typeof each === 'object' &&
      each !== null &&
      'kind' in each &&
      (each.kind === 'text' || each.kind === 'page-of'),
  );
}

/** What the pages or faces in a text are of: the words round them have another order in another language. */
function ledTo(list: readonly unknown[]): readonly unknown[] {
  return list
    .flatMap((each) => (typeof each === 'object' && each !== null && 'target' in each ? [each.target] : []))
    .sort();
}

/** Words that are German as well as English, and symbols of units. */
const both = new Set(
  (
    'in an kind so was warm hand tank tanks bar mm km min lose loses falls reserve gas minute signal hang halt rest frost ' +
    'stand person butter alarm start browser text name form ring pdf arm'
  ).split(' '),
);

/** What the spec says in its keeper’s words: names and sentences, no fixed choices. */
function ownTexts(value: unknown, field = ''): readonly string[] {
  if (typeof value === 'string') {
    const isChoice = field === 'carries' || field === 'written' || /^[a-z0-9-]+$/.test(value);
    return isChoice && field !== 'name' ? [] : [value];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => ownTexts(each, key));
}

describe('no English is left', () => {
  const own = new Set(ownTexts(german.car.spec).flatMap(wordsOf));

  /** Words that the library, the templates and the language have in English, but those that are German too. */
  const strange = shared().then(({ texts, templates }) => {
    const library = [...texts].filter(([name]) => /\.yaml$/.test(name) && !name.startsWith('languages/de/'));
    const prose = library.map(([, text]) => text.replace(/^\s*(?:- )?[\w-]+:|#.*$|\{\{.*?\}\}/gm, ' '));
    const markup = [...templates.values()].map((text) => text.replace(/\{\{[\s\S]*?\}\}|<[^>]*>/g, ' '));
    const known = new Set([...prose, ...markup].flatMap(wordsOf));
    return (words: readonly string[]) => [
      ...new Set(words.filter((word) => known.has(word) && !both.has(word) && !own.has(word))),
    ];
  });

  test('on paper', async () => {
    for (const paper of await all()) {
      const pages = await textOf(paper.bytes);
      const words = pages.flatMap((page) =>
        page.flatMap(({ text }) => wordsOf(text.replace(paper.fingerprint, ' '))),
      );
      expect(words.length, paper.name).toBeGreaterThan(40);
      expect((await strange)(words), paper.name).toEqual([]);
    }
  });

  test('on a screen, down to what is only read out', async () => {
    for (const { name, screen, fingerprint } of await all()) {
      const page = new TextDecoder()
        .decode(screen?.bytes)
        .replaceAll(fingerprint, ' ')
        .replace(/<(style|script)[\s\S]*?<\/\1>/g, ' ');
      const readOut = [...page.matchAll(/ (?:alt|title|aria-label)="([^"]*)"/g)].map(([, text = '']) => text);
      const words = wordsOf([...readOut, page.replace(/<[^>]*>|&[a-z]+;/g, ' ')].join(' '));
      expect(words.length, name).toBeGreaterThan(100);
      expect((await strange)(words), name).toEqual([]);
    }
  });

  test('and a word of English that were left would be seen', async () => {
    const some = 'Open the pilot valve slowly: Front of the seat; continued; face 2 of 3';
    expect((await strange)(wordsOf(some))).toEqual(
      expect.arrayContaining(['open', 'the', 'pilot', 'valve', 'slowly', 'seat', 'continued', 'face']),
    );
  });
});

/** The files of the German folder that say texts of the library, as lists of texts. */
const said = [...languageFiles()].flatMap(([name, text]) => {
  if (!name.startsWith('languages/de/')) return [];
  const data: unknown = parse(text);
  const list = (data as { texts?: readonly { english: string; say: string }[] }).texts ?? [];
  return list.map((each) => ({ name, ...each }));
});

describe('the German of the library', () => {
  const phases = shop.plans.cards.flatMap((card) => card.phases ?? []);
  /** What a step says and shows on a card, with the steps of its group. */
  const cardTexts = ({ say, result, card = true, steps = [] }: EntryForm): readonly string[] => [
    ...(card ? [say, result].flatMap((text) => text ?? []) : []),
    ...steps.flatMap(cardTexts),
  ];
  /** The steps that stand on cards. */
  const orders = german.proof.procedures
    .filter(({ phase }) => phases.includes(phase))
    .flatMap(({ steps }) => steps.filter(({ onCard }) => onCard));

  test('says nothing that the library no longer says', () => {
    const seen = new Set<string>();
    const even = (text: string) => text.replace(/\s+/g, ' ').trim();
    const { texts } = german.language;
    const language: Language = {
      ...german.language,
      papers: shop.papers.map(({ name }) => name),
      texts: {
        say: (text) => {
          seen.add(even(text));
          return texts.say(text);
        },
        sayTemplate: (template) => {
          for (const { words, isText } of segmentsIn(template)) if (isText) seen.add(even(words));
          return texts.sayTemplate(template);
        },
      },
    };
    const listening = { ...shop, languages: { ...shop.languages, of: () => good(language) } };
    const ready = goodOf(readCar({ file: 'fingerhut.yaml', text: spec, beside: new Map() }, listening));
    worldOf(ready, listening);
    expect(seen.size).toBeGreaterThan(1000);
    expect(said.filter(({ english }) => !seen.has(even(english))).map(({ english }) => english)).toEqual([]);
  });

  test('says every step that may stand on a card, for whatever car', () => {
    const { say } = german.language.texts;
    const lacking = shop.library.procedures
      .map(({ form }) => form)
      .filter(({ phase }) => phases.includes(phase))
      .flatMap(({ title, seen, never = [], 'told-by': toldBy = [], steps }) => [
        ...[
          title,
          ...(seen === undefined ? [] : [seen]),
          ...toldBy.map(({ say: sign }) => sign),
          ...never.map((each) => (typeof each === 'string' ? each : each.say)),
        ],
        ...steps.flatMap(cardTexts),
      ])
      .filter((text) => lackingIn(say(text)).length > 0);
    expect(lacking).toEqual([]);
    const cautions = [...shop.library.cautions.values()].map(({ form }) => form.short);
    expect(cautions.filter((text) => lackingIn(say(text)).length > 0)).toEqual([]);
  });

  test('gives orders in the infinitive and addresses nobody', () => {
    expect(said.length).toBeGreaterThan(600);
    const polite = /\b(?:Sie|Ihr|Ihre|Ihren|Ihnen|du|dich|dir|dein|deine)\b/;
    expect(said.filter(({ say }) => polite.test(say.replace(/„[^“]*“/g, '')))).toEqual([]);
    expect(orders.length).toBeGreaterThan(150);
    expect(orders.map(({ say }) => say).filter((say) => !/\p{L}(?:en|ern|eln|tun)\b/u.test(say))).toEqual([]);
  });

  test('names parts as the spec does: no article, and no form of another case, before a name', () => {
    const article =
      /(?<!\p{L})(?:der|die|das|den|dem|des|eine?[mnrs]?|am|im|zum|zur|beim|vom|ins|ans)\s+\{\{(?:the\.|name\.|it|part|pump)[^}]*\}\}/iu;
    expect(said.filter(({ say }) => article.test(say)).map(({ say }) => say)).toEqual([]);
    expect(german.language.messages.say('part', { name: 'Ventil' })).toBe('Ventil');
  });

  test('stays within about twenty words a step', () => {
    expect(orders.map(({ say }) => say).filter((say) => say.split(' ').length > 22)).toEqual([]);
  });

  test('writes signal words, numbers and days as German does', () => {
    expect(furniture.signals).toEqual({
      danger: 'GEFAHR',
      warning: 'WARNUNG',
      caution: 'VORSICHT',
      notice: 'HINWEIS',
    });
    const { phrases } = worldOf(german, shop);
    expect(phrases.first(quantity('volume', 0.0025))).toBe('2,5\u00a0L');
    expect(phrases.date('2026-03-14')).toBe('14. März 2026');
  });
});

describe('what German does not say', () => {
  test('is told of each paper that is left out, and of none that is whole', () => {
    const unsaid = (list: readonly Paper[]) =>
      goodOf(unsaidOf(german, list, shop)).map(({ paper, texts }) => [paper.name, texts.length > 0] as const);
    expect(unsaid(german.papers).filter(([, lacks]) => lacks)).toEqual([]);
    expect(unsaid(german.leftOut).filter(([, lacks]) => !lacks)).toEqual([]);
    expect(goodOf(unsaidOf(english, english.papers, shop)).flatMap(({ texts }) => texts)).toEqual([]);
  });

  test.each(demoNames)('is nothing on those papers of %s, whose names alone stay English', async (name) => {
    const text = specText(name).replace(/language: en-\w\w/, 'language: de');
    const ready = goodOf(readCar({ file: 'car.yaml', text, beside: logs() }, shop));
    expect(ready.language.name).toBe('Deutsch');
    expect(goodOf(unsaidOf(ready, ready.papers, shop)).flatMap(({ texts }) => texts)).toEqual([]);
  });

  test('refuses the paper that would print it, in English words, and no other paper', async () => {
    const files = await shared();
    const name = 'languages/de/procedures/40-fire.yaml';
    const from = /english: Light the pilot\n/;
    expect(files.texts.get(name)).toMatch(from);
    const texts = new Map(files.texts);
    texts.set(name, (texts.get(name) ?? '').replace(from, 'english: Light the little pilot\n'));
    const spoilt = goodOf(openWorkshop({ ...files, texts }));
    const ready = goodOf(readCar({ file: 'fingerhut.yaml', text: spec, beside: new Map() }, spoilt));
    const refused = ready.papers.flatMap((paper) => {
      const set = setOnePaper(ready, paper, spoilt);
      return set.ok ? [] : set.problems.map(({ code, found }) => `${paper.name} ${code} ${found}`);
    });
    expect(refused.length).toBeGreaterThan(0);
    expect(refused.length).toBeLessThan(ready.papers.length);
    for (const each of refused) expect(each).toMatch(/ language-lacks-text “Light the pilot”$/);
  });
});
