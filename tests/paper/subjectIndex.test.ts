/** The subjects in the index of the manual. */
import { describe, expect, test } from 'vitest';
import { subjectIndex } from '../../src/paper/context/subjectIndex';
import { readGuide } from '../../src/paper/guide/guide';
import { demo, demoNames, shared, workshop } from '../whole/made';

const files = await shared();
const shop = await workshop();

describe.each(demoNames)('the subjects of %s', (name) => {
  test('name only what its book has, in the order of the alphabet', async () => {
    const ready = await demo(name);
    const subjects = subjectIndex(ready);
    expect(subjects.length).toBeGreaterThan(30);
    const held = new Set([
      ...ready.proof.procedures.map(({ id }) => `procedure-${id}`),
      ...ready.faults.map(({ id }) => `fault-${id}`),
      ...ready.guide.running.road.map(({ id }) => `road-${id}`),
      ...ready.guide.upkeep.jobs.map(({ id }) => `job-${id}`),
    ]);
    const templates = [...files.templates.values()].join('\n');
    const links = subjects.flatMap(({ at }) => at.map(({ link }) => link));
    expect(links.filter((link) => !held.has(link) && !templates.includes(` id="${link}"`))).toEqual([]);
    const names = subjects.map(({ subject }) => subject);
    expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, 'en')));
  });

  test('lead to every emergency and every sign of a fault', async () => {
    const ready = await demo(name);
    const links = new Set(subjectIndex(ready).flatMap(({ at }) => at.map(({ link }) => link)));
    const emergencies = ready.proof.procedures.filter(({ phase }) => phase === 'emergency');
    expect(emergencies.map(({ id }) => `procedure-${id}`).filter((link) => !links.has(link))).toEqual([]);
    expect(ready.faults.map(({ id }) => `fault-${id}`).filter((link) => !links.has(link))).toEqual([]);
  });
});

test('a subject that names what is not there is told, with its line', () => {
  const text =
    'subjects:\n  - subject: frost\n    at: [{ procedure: lay-upp }, { fault: cold }, { road: colt }, { job: colt }]\n';
  const outcome = readGuide(new Map([...files.texts, ['subjects.yaml', text]]), {
    procedures: shop.library.procedures.map(({ form }) => form.id),
    cautions: [...shop.library.cautions.keys()],
    faults: shop.faults.map(({ id }) => id),
    signs: [...shop.signWords.keys()],
    timeline: shop.timeline.parts.map(({ id }) => id),
  });
  expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => [code, at?.line])).toEqual([
    ['library-unknown', 3],
    ['library-unknown', 3],
    ['library-unknown', 3],
    ['library-unknown', 3],
  ]);
});
