/** The demo runabout’s manual with bars against the issue before. */
import { describe, expect, test } from 'vitest';
import { changesOf } from '../../src/compare/changes';
import { fillSince } from '../../src/compare/fillSince';
import { type Unit, unitsOf } from '../../src/compare/units';
import { worldOf } from '../../src/kettlebook';
import type { Block, ChangeMark } from '../../src/markup/block';
import { fillPaper } from '../../src/paper/paper';
import { carFrom, demo, goodOf, specText, workshop } from '../whole/made';
import { type Edit, edited, nextIssue } from './issues';

const shop = await workshop();
const manual = shop.papers.find(({ name }) => name === 'owners-manual');
if (manual === undefined) throw new Error('there is no manual');
const paper = manual;
const before = await demo('thimble');

/** The runabout with some words of its spec changed, and its manual against the issue it comes with. */
async function since(edits: readonly Edit[], issue = nextIssue) {
  const after = goodOf(await carFrom(edited(specText('thimble'), [...issue, ...edits])));
  const world = worldOf(after, shop, { ready: before, workshop: shop });
  return { world, outcome: fillSince(paper, world) };
}

type Marked = Unit & ChangeMark;

/** Every unit that has a mark, gathered without the walk that made the marks. */
function markedIn(blocks: readonly Block[]): readonly Marked[] {
  const found: { change: ChangeMark; thing: object }[] = [];
  const gather = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('change' in value && !('heightPt' in value))
      found.push({ change: value.change as ChangeMark, thing: value });
    for (const [key, each] of Object.entries(value)) if (key !== 'drawing') gather(each);
  };
  gather(blocks);
  return found.map(({ change, thing }) => ({ ...unitOf(thing), ...change }));
}

/** One thing as a unit, by putting it into a paper of its own. */
function unitOf(thing: object): Unit {
  const origin = { template: 'test', line: 1, column: 1 };
  const alone = {
    ...('action' in thing ? { kind: 'steps', origin, mark: 'number', start: 1, items: [thing] } : {}),
    ...('cells' in thing ? { kind: 'table', origin, caption: [], columns: [], head: [], body: [thing] } : {}),
    ...('term' in thing ? { kind: 'definitions', origin, items: [thing] } : {}),
    ...('kind' in thing ? thing : {}),
  } as Block;
  const unit = unitsOf([alone]).at(-1);
  if (unit === undefined) throw new Error('something without words has a mark');
  return unit;
}

const key = ({ kind, says }: Unit) => `${kind} ${says}`;

/** What the manual of the newer issue says and that of the older nowhere does, but for the list of it. */
function saidAnew(blocks: readonly Block[]): readonly Unit[] {
  const old = new Set(unitsOf(goodOf(fillPaper(paper, worldOf(before, shop))).blocks).map(key));
  return unitsOf(blocks).filter(
    (unit) => !old.has(key(unit)) && !unit.section.startsWith('cover') && !unit.section.startsWith('record'),
  );
}

describe('the manual against the issue before', () => {
  test('one valve’s place: bars beside what names the valve, what was set in another order for it, and nothing else', async () => {
    const { world, outcome } = await since([
      ['tag: F5\n    place: toe-board', 'tag: F5\n    place: seat-box-left'],
    ]);
    const { blocks } = goodOf(outcome);
    const marked = markedIn(blocks);
    const changed = marked.filter((unit) => unit.changed);
    const reordered = changesOf(worldOf(before, shop), world)
      .filter(({ kind }) => kind === 'reordered')
      .map(({ what }) => what.slice(what.indexOf(': ') + 2));
    expect(changed.length).toBeGreaterThan(10);
    const plain = (text: string) => text.replaceAll('*', '');
    const others = changed.filter(
      ({ kind, says }) =>
        kind !== 'figure' &&
        !says.includes('fuel tank air valve') &&
        // what was tried on the model counts the states of the car, and whoever works the valve is at another place
        !/\d+ steps in \d+ states of the car\./.test(says),
    );
    for (const { says } of others)
      expect(reordered.some((step) => plain(says).includes(plain(step)))).toBe(true);
    const keys = new Set(changed.map(key));
    const anew = saidAnew(blocks).filter(({ says }) => !says.includes('issue C'));
    expect(anew.map(key).filter((each) => !keys.has(each))).toEqual([]);
    expect(anew.length).toBeGreaterThan(6);
    expect(changed.filter(({ kind }) => kind === 'figure')).toHaveLength(2);
    const gone = marked.filter(({ goneAfter }) => goneAfter);
    expect(gone.map(({ says }) => plain(says)).join('\n')).toContain('hand air pump');
    const text = JSON.stringify(blocks);
    expect(text).toContain(
      `"link":"part-${Object.entries(world.car.spec.valves).find(([, { tag }]) => tag === 'F5')?.[0]}"`,
    );
    expect(text).toContain('"kind":"page-of","target":"what-changed"');
    // the same again is the same, letter for letter, and not the manual that has no bars
    expect(JSON.stringify(fillSince(paper, world))).toBe(JSON.stringify(outcome));
    const { earlier: _, ...alone } = world;
    expect(goodOf(fillPaper(paper, alone)).fingerprint).not.toBe(goodOf(outcome).fingerprint);
  });

  test('a figure of one valve: bars beside exactly what says it', async () => {
    const { outcome } = await since([
      [
        'tag: F5\n    place: toe-board\n    feel: the small wheel at the foot of the pump\n    kind: needle\n    opens: anticlockwise\n    turns: 1 turn',
        'tag: F5\n    place: toe-board\n    feel: the small wheel at the foot of the pump\n    kind: needle\n    opens: anticlockwise\n    turns: 2 turns',
      ],
    ]);
    const { blocks } = goodOf(outcome);
    const marked = markedIn(blocks);
    const anew = saidAnew(blocks).filter(({ says }) => !says.includes('issue C'));
    expect(marked.map(key)).toEqual(anew.map(key));
    expect(anew.length).toBeGreaterThan(1);
    for (const { says } of marked) expect(says).toContain('fuel tank air valve');
  });

  test('a step taken out is marked where it stood', async () => {
    const text = specText('thimble');
    const { outcome } = await since([[text.slice(text.indexOf('  - in: running\n    add:')), '']]);
    const { blocks } = goodOf(outcome);
    const gone = markedIn(blocks).filter(({ goneAfter }) => goneAfter);
    expect(gone.length).toBeGreaterThan(0);
    expect(JSON.stringify(blocks)).toContain('Every half minute, read the water glass aloud');
  });

  test('nothing but the issue: no bar, and the manual says so', async () => {
    const { outcome } = await since([]);
    const { blocks } = goodOf(outcome);
    expect(markedIn(blocks)).toEqual([]);
    expect(JSON.stringify(blocks)).toContain('Nothing in this book reads otherwise');
  });

  test('another car, or a letter that was kept, makes no manual', async () => {
    const kept = await since([['reserve: 1.5 US gal', 'reserve: 2 US gal']], []);
    expect(kept.outcome.ok ? [] : kept.outcome.problems.map(({ code }) => code)).toEqual([
      'compare-letter-kept',
    ]);
    const heron = worldOf(await demo('heron'), shop, { ready: before, workshop: shop });
    const other = fillSince(paper, heron);
    expect(other.ok ? [] : other.problems.map(({ code }) => code)).toEqual(['compare-other-car']);
  });
});
