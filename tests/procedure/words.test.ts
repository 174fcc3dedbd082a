/**
 * The words of the steps, as a reader in a hurry needs them.
 *
 * A response gives the desired status or value, not "checked" or "set" (Degani and Wiener 1990, NASA CR-177549,
 * Appendix A, guideline 4). Length, imperative and condition first: common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { frontMatter } from '../../src/procedure/frontMatter';
import type { Step } from '../../src/procedure/procedure';
import { demoCar, demoCars } from '../cars/demo';
import { english } from '../helpers/english';
import { smallCar, smallCars } from '../helpers/smallCars';
import { procedure, proceduresOf, theLibrary } from './shared';

const library = theLibrary();

const verbs = new Set(
  (
    'Agree Aim Ask Begin Blow Brake Bring Call Come Compare Cover Crack Dip Dress Empty Feel Fill Find Fit Get Give Go Hang Have Hold Join Keep Lay Leave Let Light ' +
    'Listen Look Mop Oil Open Play Press Prove Pull Pump Push Put Read Rock Say See Send Set Shut Sit Slacken Smell Sound Stand Stay Steer Stop Stow Strain Switch Take Tighten Touch Try Wait Walk ' +
    'Watch Work Write'
  ).split(' '),
);

/** How a condition begins that stands before its act. */
const condition =
  /^(?:If|When|While|Before|With|Only if|Every minute or two|A minute before)\b[^,]*, (?:[a-z]+)/;

/** Words of a library step, as counted by somebody reading it aloud; a tag in brackets is read with its name. */
function wordsIn(text: string): number {
  return text.replace(/\s*\([A-Z]\d+\)/g, '').split(/\s+/).length;
}

const cars = [
  ...Object.entries(smallCars).map(([name, patches]) => [name, smallCar(...patches)] as const),
  ...demoCars.map((name) => [name, demoCar(name)] as const),
];

describe.each(cars)('%s', (_, car) => {
  const procedures = proceduresOf(car, library);
  const steps: readonly (Step & { readonly at: string })[] = procedures.flatMap((each) =>
    each.steps
      .filter((step) => step.origin.kind === 'library')
      .map((step) => ({ ...step, at: `${each.id} ${step.id}` })),
  );

  test('no step says more than 20 words', () => {
    expect(steps.filter((step) => wordsIn(step.say) > 20).map((step) => `${step.at}: ${step.say}`)).toEqual(
      [],
    );
  });

  test('every step is one sentence that begins with its verb, or with its condition', () => {
    const wrong = steps.filter((step) => {
      const [first = ''] = step.say.split(/[\s,]/);
      return (
        !(verbs.has(first) || condition.test(step.say)) ||
        !/[.”]$/.test(step.say) ||
        /[.!?] [A-Z]/.test(step.say)
      );
    });
    expect(wrong.map((step) => `${step.at}: ${step.say}`)).toEqual([]);
  });

  test('what a step sends to is a procedure of this car', () => {
    const titles = new Set(library.procedures.map(({ form }) => form.title));
    const own = new Set(procedures.map(({ title }) => title));
    const sent = procedures.flatMap(({ id, seen, never, steps: all }) =>
      [seen, ...never, ...all.flatMap(({ say, result, remark }) => [say, result, remark])].flatMap((text) =>
        [...text.matchAll(/“([^”]+)”/g)].flatMap(([, quoted = '']) =>
          titles.has(quoted) && !own.has(quoted) ? [`${id}: ${text}`] : [],
        ),
      ),
    );
    expect(sent).toEqual([]);
  });

  test('a valve that does not turn anticlockwise to open says how at every step on it', () => {
    const silent = steps.filter(({ action, part = '', say, result }) => {
      const valve = car.spec.valves[part];
      if (action !== 'open' && action !== 'crack' && action !== 'shut') return false;
      if (valve === undefined || valve.opens === 'anticlockwise') return false;
      const way = english.ways[valve.opens]?.[action] ?? '';
      const quickly = action === 'shut' ? valve.quickly : undefined;
      return ![way, quickly].some(
        (each) => each !== undefined && `${say} ${result}`.toLowerCase().includes(each.toLowerCase()),
      );
    });
    expect(silent.map(({ at, say, result }) => `${at}: ${say} ${result}`)).toEqual([]);
  });

  test('no result says that something was checked', () => {
    const empty = /\b(?:checked|ok|okay|done|good|fine|normal|as required|correct)\b/i;
    const own = /working-level|good-flame/;
    const wrong = steps.filter(
      (step) => step.result === '' || (empty.test(step.result) && !own.test(step.result)),
    );
    expect(wrong.map((step) => `${step.at}: ${step.result}`)).toEqual([]);
  });

  test('no text is left with a gap, a doubled stop or a lone bracket', () => {
    const texts = [
      ...steps.flatMap((step) => [
        step.say,
        step.result,
        step.remark,
        ...step.cautions.flatMap((each) => [each.hazard, each.consequence, each.avoidance]),
      ]),
      ...procedures.flatMap((each) => [
        each.title,
        each.purpose,
        each.good,
        each.seen,
        ...each.toldBy.map(({ say }) => say),
        ...each.wrong,
        ...each.never,
      ]),
    ];
    expect(texts.filter((text) => / {2}|\.\.|,,|;\.| [.,;:]|\(\)|\{|\}|“”/.test(text))).toEqual([]);
  });

  test('every procedure says what it is for, what good looks like and what goes wrong', () => {
    const bare = procedures.filter(
      (each) => each.purpose === '' || each.good === '' || each.wrong.length === 0,
    );
    expect(bare.map((each) => each.id)).toEqual([]);
    const emergencies = procedures.filter((each) => each.phase === 'emergency');
    expect(
      emergencies.filter((each) => each.seen === '' || each.never.length === 0).map((each) => each.id),
    ).toEqual([]);
  });

  test('a card of each procedure has something on it, and the first and last thing of a fire', () => {
    expect(
      procedures.filter((each) => each.steps.every((step) => !step.onCard)).map((each) => each.id),
    ).toEqual([]);
    const card = procedure(procedures, 'shut-down')
      .steps.filter((step) => step.onCard)
      .map((step) => step.proves);
    expect(card.flat()).toContain('fires-out');
  });

  test('the front matter speaks of the car and defers by name', () => {
    const outcome = frontMatter(car, library, { system: 'us' });
    const matter = outcome.ok ? outcome.value : { cautions: [], notices: [] };
    expect(matter.cautions.map((each) => each.id)).toEqual(
      expect.arrayContaining([
        'steam-burns',
        'fuel-vapour',
        'carbon-monoxide',
        'boiler-dry',
        'moving-car',
        'unattended-steam',
        'inspector-defers',
      ]),
    );
    expect(matter.notices.map((each) => each.id)).toEqual([
      'inspector',
      'fire-code',
      'road-law',
      'licensed-practice',
      'not-a-teacher',
    ]);
    expect(matter.notices[0]?.says.join(' ')).toContain(car.spec.boiler.inspection.by);
  });
});
