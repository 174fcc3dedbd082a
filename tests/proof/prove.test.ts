/** The whole proof: clean for every car that has its procedures from the library, exact in what it counts, plain in what it says. */
import { describe, expect, test } from 'vitest';
import { hasErrors } from '../../src/diagnostic/diagnostic';
import type { Procedures } from '../../src/procedure/procedure';
import { prove } from '../../src/proof/prove';
import { byPlace } from '../../src/proof/tables';
import { demoCars } from '../cars/demo';
import { smallCar, smallCars } from '../helpers/smallCars';
import { altered, putIn, step, without } from './edits';
import { demo, proceduresFor, theDay } from './library';

const proofs = new Map(
  demoCars.map((name) => [name, prove(demo(name).car, demo(name).procedures, { day: theDay() })]),
);

function proofOf(name: (typeof demoCars)[number]) {
  const proof = proofs.get(name);
  if (proof === undefined) throw new Error(name);
  return proof;
}

function withChanges(name: string, ...edits: readonly ((all: Procedures) => Procedures)[]) {
  const { car, procedures } = demo(name);
  return prove(
    car,
    edits.reduce((all, edit) => edit(all), procedures),
    { day: theDay(), walkingOrder: false },
  );
}

describe.each(demoCars)('%s', (name) => {
  const proof = proofOf(name);

  test('is proven without an error', () => {
    expect(proof.diagnostics.filter((each) => each.severity === 'error').map((each) => each.message)).toEqual(
      [],
    );
  });

  test('has a way out from every step, and its longest is short', () => {
    expect(proof.escape?.failures).toEqual([]);
    expect(proof.statistics.situations).toBeGreaterThan(1000);
    expect(proof.escape?.longest?.acts.length).toBeLessThan(9);
  });

  test('knows every valve in every phase', () => {
    for (const row of proof.tables.valves.rows) {
      expect(row.at.length).toBe(proof.tables.valves.columns.length);
      expect(row.at, row.name).not.toContain('either');
      expect(
        row.at[proof.tables.valves.columns.findIndex((column) => column.id === 'overnight')] === 'shut',
      ).toBe(row.parked === 'shut');
    }
  });

  test('counts every slip once', () => {
    for (const count of proof.statistics.slips)
      expect(count.caughtAtOnce + count.caughtLater + count.harmless + count.critical).toBe(count.tried);
    expect(proof.statistics.slips.reduce((sum, count) => sum + count.tried, 0)).toBe(proof.slips.length);
    expect(proof.statistics.slips.find((count) => count.kind === 'left out')?.tried).toBe(
      proof.procedures
        .filter((each) => each.phase !== 'emergency')
        .reduce((sum, each) => sum + each.steps.length, 0),
    );
  });

  test('a valve found wrong in the morning does no harm before somebody finds it', () => {
    expect(proof.statistics.slips.find((count) => count.kind === 'found wrong')?.critical).toBe(0);
  });

  test('saves walking, and loses no step by it', () => {
    const given = demo(name).procedures;
    for (const procedure of proof.procedures) {
      const before = given.find((each) => each.id === procedure.id);
      expect(procedure.steps.map((each) => each.id).sort()).toEqual(
        before?.steps.map((each) => each.id).sort(),
      );
    }
    const round = proof.savings.find((saving) => saving.procedure.id === 'walk-round');
    expect(round?.afterM).toBeLessThan((round?.beforeM ?? 0) / 2);
    for (const saving of proof.savings) expect(saving.afterM).toBeLessThanOrEqual(saving.beforeM);
  });

  test('names each critical step with what comes of forgetting it', () => {
    expect(proof.tables.critical.length).toBeGreaterThan(20);
    for (const critical of proof.tables.critical) {
      const procedure = proof.procedures.find((each) => each.id === critical.procedure);
      expect(procedure?.steps[critical.number - 1]?.id).toBe(critical.step);
      expect(critical.forgotten).not.toBe('');
    }
  });

  test('groups steps by place, each place once in a row', () => {
    for (const procedure of proof.procedures) {
      const groups = byPlace(proof.model, procedure);
      expect(groups.flatMap((group) => group.steps)).toEqual(procedure.steps);
      for (const [index, group] of groups.entries())
        if (index > 0) expect(group.place).not.toBe(groups[index - 1]?.place);
    }
  });
});

test('the same car gives the same proof', () => {
  const { car, procedures } = demo('thimble');
  const [one, two] = [prove(car, procedures, { day: theDay() }), prove(car, procedures, { day: theDay() })];
  expect(two.statistics).toEqual(one.statistics);
  expect(two.tables).toEqual(one.tables);
});

describe('cars it was not written for', () => {
  test.each(Object.entries(smallCars))('%s', (_, patches) => {
    const car = smallCar(...patches);
    const proof = prove(car, proceduresFor(car), { day: theDay() });
    expect(proof.diagnostics.filter((each) => each.severity === 'error').map((each) => each.message)).toEqual(
      [],
    );
    for (const procedure of proof.procedures)
      for (const each of procedure.steps)
        if (each.part !== undefined) expect(car.parts.has(each.part)).toBe(true);
  });
});

describe('a finding', () => {
  const proof = withChanges('marigold', without('main-burner', 'clear-front'));
  const found = proof.diagnostics.find((each) => each.code === 'rule-burner-front-clear');

  test('names procedure, step and words, the place in the library, the rule, why, and what would mend it', () => {
    expect(found?.message).toMatch(
      /^Light the main burner, step \d+, “Crack the starting valve .*”: nobody has called the burner front clear$/,
    );
    expect(found?.at?.file).toBe('procedures/40-fire.yaml');
    expect(found?.expected).toBe('nobody is in front of the burner when main fuel is let on');
    expect(found?.mend).toContain('call the burner front clear');
    expect(found?.notes?.join('\n')).toContain('The rule `burner-front-clear` is there because');
    expect(found?.notes?.join('\n')).toContain('pilot burner alight');
  });

  test('stops the papers', () => {
    expect(hasErrors(proof.diagnostics)).toBe(true);
  });

  test('tells of steps that cannot be done, cannot be seen, or act on nothing', () => {
    const codes = (edit: (all: Procedures) => Procedures) =>
      new Set(
        withChanges('marigold', edit)
          .diagnostics.filter((each) => each.severity === 'error')
          .map((each) => each.code),
      );
    expect(codes(without('air', 'open-supply-valve'))).toContain('proof-cannot-do');
    expect(codes(without('soak', 'soak-with-pilot'))).toContain('proof-cannot-see');
    expect(
      codes(altered('air', 'watch-pressure', (each) => ({ ...each, proves: ['pressure-holds'] }))),
    ).toContain('proof-step-part');
    expect(codes(altered('air', 'watch-pressure', (each) => ({ ...each, part: 'flux-tank' })))).toContain(
      'proof-step-part',
    );
    expect(
      codes(altered('main-burner', 'crack-starting-valve', (each) => ({ ...each, cautions: [] }))),
    ).not.toContain('proof-caution-missing');
    expect(
      codes(altered('blow-down', 'blow-call', (each) => ({ ...each, proves: ['blow-down-clea'] }))),
    ).toContain('proof-step-part');
  });

  test('a dangerous step without its caution is told', () => {
    const bare = (all: Procedures) =>
      all.map((each) => (each.id === 'blow-down' ? { ...each, cautions: [] } : each));
    const told = withChanges('marigold', bare).diagnostics.filter(
      (each) => each.code === 'proof-caution-missing',
    );
    expect(told.map((each) => each.message)[0]).toMatch(
      /^Blow down, step \d+, .*: this blows the boiler down, and no caution stands by it$/,
    );
  });

  test('an emergency that does harm is told', () => {
    const worse = withChanges(
      'marigold',
      putIn('low-water', undefined, step({ id: 'pour', action: 'open', part: 'boiler-fill-valve' })),
    );
    // After hours the boiler is cold; opened at once it is not.
    expect(worse.diagnostics.some((each) => each.code === 'rule-boiler-opened-under-pressure')).toBe(false);
    const worst = withChanges(
      'marigold',
      putIn('low-water', 'low-cool', step({ id: 'pour', action: 'open', part: 'boiler-fill-valve' })),
    );
    expect(worst.diagnostics.some((each) => each.code === 'rule-boiler-opened-under-pressure')).toBe(true);
  });

  test('a lighting that cannot be done from where an emergency ends is told', () => {
    const told = (name: (typeof demoCars)[number], edit: (all: Procedures) => Procedures) =>
      withChanges(name, edit)
        .diagnostics.filter((each) => each.severity === 'error')
        .map(({ code, message }) => `${code} ${message}`);
    // the stop valve of the fuel was shut in the emergency, and nothing opens it again
    expect(told('marigold', without('going-on', 'again-feed-open')).join('\n')).toMatch(
      /Going on after a stop, step \d+, .*main burner valve/,
    );
  });

  test('a way out that does not make the car safe is told', () => {
    const short = withChanges('marigold', (all) =>
      without('shut-everything', 'cut-fuel-more')(without('shut-everything', 'cut-fuel')(all)),
    );
    expect(short.diagnostics.filter((each) => each.code === 'proof-no-way-out')[0]?.message).toMatch(
      /still (burns|comes)/,
    );
    const none = withChanges('marigold', (all) => all.filter((each) => each.id !== 'shut-everything'));
    expect(none.diagnostics.map((each) => each.code)).toContain('proof-no-way-out');
  });

  test('a valve whose position depends on what came before is told', () => {
    const loose = withChanges('thimble', without('level', 'shut-road-bypass'));
    expect(loose.diagnostics.map((each) => each.code)).toContain('proof-valve-unknown');
  });
});

describe('rules a car overrules', () => {
  const { car, procedures } = demo('marigold');
  const overruling = (rule: string) => ({
    ...car,
    spec: { ...car.spec, overrules: [{ rule, because: 'It stands in a field.' }] },
  });
  const indoors = [without('main-burner', 'main-outdoors'), without('walk-round', 'stand-outdoors')].reduce(
    (all, edit) => edit(all),
    procedures,
  );

  test('are not held against it, and it is said that they are not', () => {
    expect(prove(car, indoors, { day: theDay() }).diagnostics.map((each) => each.code)).toContain(
      'rule-main-outdoors',
    );
    const proof = prove(overruling('main-outdoors'), indoors, { day: theDay() });
    expect(hasErrors(proof.diagnostics)).toBe(false);
    expect(proof.overruled.map(({ rule, because }) => [rule.id, because])).toEqual([
      ['main-outdoors', 'It stands in a field.'],
    ]);
    const told = proof.diagnostics.find((each) => each.code === 'proof-overruled');
    expect(told?.severity).toBe('remark');
    expect(told?.found).toBe('It stands in a field.');
  });

  test('must exist', () => {
    const told = prove(overruling('main-outdors'), procedures, { day: theDay() }).diagnostics.find(
      (each) => each.code === 'proof-overrule-unknown',
    );
    expect(told?.severity).toBe('error');
    expect(told?.expected).toBe('`main-outdoors`');
  });
});
