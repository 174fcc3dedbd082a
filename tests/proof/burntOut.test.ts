/** A burner that burns on after its fuel is shut: a flame to every rule until somebody has waited and seen it out. */
import { describe, expect, test } from 'vitest';
import type { Procedures } from '../../src/procedure/procedure';
import { chain } from '../../src/proof/chain';
import { emergencyRuns } from '../../src/proof/emergencies';
import { wayOutOf } from '../../src/proof/escape';
import { Experience } from '../../src/proof/experience';
import { emergencyFindings, wayOutFindings } from '../../src/proof/findings';
import { modelOf } from '../../src/proof/model';
import { stepFaults } from '../../src/proof/stepFaults';
import { quantity } from '../../src/quantity/quantity';
import { demoCar, fixtureCar } from '../cars/demo';
import { burningOn } from '../helpers/burningOn';
import { altered, brokenIn, type Edit, putIn, step, without } from './edits';
import { fixture, proceduresFor, theDay } from './library';

const { car, procedures } = fixture('lapwing');
const pot = 'pot-burner';

/** What a day with these edits breaks, rule and clause, each told once. */
function broken(...edits: readonly Edit[]): readonly string[] {
  const edited = edits.reduce((all, edit) => edit(all), procedures);
  const { runs } = chain(new Experience(modelOf(car)), edited, theDay());
  return [...new Set(runs.flatMap((run) => run.breaches.map(({ rule, what }) => `${rule.id}: ${what}`)))];
}

const shutPot = step({ id: 'shut-pot', action: 'shut', part: 'pot-valve' });
const noWait = [without('short-stop', 'stop-burnt-out'), without('shut-down', 'down-burnt-out')];

describe('what is refused as long as nobody has waited', () => {
  test.each<readonly [string, string, readonly Edit[]]>([
    [
      'counting it as out because its valve is shut',
      'burnt-out: the pot burner burns on, and nobody has waited until it is out',
      [
        altered('shut-down', 'down-burnt-out', (each) => ({
          ...each,
          action: 'put-out',
          part: pot,
          sets: {},
        })),
      ],
    ],
    [
      'waiting without seeing it out',
      'burnt-out: the pot burner burns on, the seat is empty, and nobody has waited until it is out',
      [altered('shut-down', 'down-burnt-out', (each) => ({ ...each, sets: { minutes: 1 } }))],
    ],
    [
      'leaving the seat for good',
      'burnt-out: the pot burner burns on, the seat is empty, and nobody has waited until it is out',
      noWait,
    ],
    [
      'letting fuel on again',
      'burnt-out: fuel is let on to the pot burner, and nobody has waited until it is out',
      [putIn('running', 'road-listen', shutPot, step({ id: 'open-pot', action: 'open', part: 'pot-valve' }))],
    ],
    [
      'filling a fuel tank',
      'no-filling-with-flame: the pot burner burns while the paraffin tank (T1) is opened',
      [...noWait, without('taking-fuel', 'fuel-stop-burnt-out')],
    ],
    ['blowing down', 'fires-out-for-blow-down: the pot burner burns', noWait],
    ['putting the car away', 'ends-cold: the pot burner still burns', noWait],
    [
      'opening the boiler',
      'boiler-opened-under-pressure: the pot burner still burns under the boiler',
      [putIn('coming-in', undefined, step({ id: 'hose', action: 'fill', part: 'boiler' }))],
    ],
    [
      'letting the water fall',
      'fire-on-low-water: the water falls to its lowest level or below with the main burner on',
      [putIn('running', 'road-listen', shutPot, step({ id: 'leak', sets: { level: 'low' } }))],
    ],
    [
      'pumping into a boiler that ran dry over it',
      'water-into-dry-boiler: the boiler has run dry with the fire on, and water is put into it',
      [putIn('running', 'road-only-hand-pump', shutPot, step({ id: 'leak', sets: { level: 'low' } }))],
    ],
  ])('%s', (_, rule, edits) => {
    expect(broken(...edits)).toContain(rule);
  });

  test('a boiler that runs dry after the fire was seen out has not run dry with the fire on', () => {
    const waited = step({ id: 'waited', action: 'wait', sets: { 'burnt-out': pot } });
    const told = broken(
      putIn('running', 'road-only-hand-pump', shutPot, waited, step({ id: 'leak', sets: { level: 'low' } })),
    );
    expect(told.filter((each) => /^(fire-on-low-water|water-into-dry-boiler)/.test(each))).toEqual([]);
  });

  test('a fire is not seen out while fuel comes to it', () => {
    const waited = step({ id: 'waited', action: 'wait', sets: { 'burnt-out': pot } });
    expect(brokenIn(car, putIn('running', 'road-listen', waited)(procedures)).snags).toContain(
      'waited: the pot burner still burns',
    );
  });
});

test('a step that waits for what is no burner is told', () => {
  const odd = putIn(
    'running',
    'road-listen',
    step({ id: 'odd', action: 'wait', sets: { 'burnt-out': 'boiler' } }),
  )(procedures);
  expect(stepFaults(modelOf(car), odd).map(({ message, mend }) => `${message}; ${mend}`)).toEqual([
    expect.stringMatching(/: it waits for `boiler`, which is no burner of the car; name the burner/),
  ]);
  expect(stepFaults(modelOf(car), procedures)).toEqual([]);
});

describe('emergencies', () => {
  const experience = new Experience(modelOf(car));
  const day = chain(experience, procedures, theDay());
  const toldOf = (edited: Procedures) =>
    emergencyFindings(experience.model, emergencyRuns(experience, edited, day, theDay())).map(
      ({ code, message }) => `${code}: ${message}`,
    );

  test('wait for it, each in its way', () => {
    expect(toldOf(procedures)).toEqual([]);
  });

  test.each(['shut-everything', 'low-water', 'fire-outside', 'steam-in-burner'])(
    '%s has to end with it out',
    (id) => {
      const said = toldOf(without(id, 'burnt-out-away')(procedures));
      expect(said.some((each) => /^proof-emergency-leaves: .*the pot burner burns$/.test(each))).toBe(true);
    },
  );

  test.each(['glass-full', 'pressure-high'])('%s has to wait before the fire is lit again', (id) => {
    const said = toldOf(without(id, 'burnt-out-here')(procedures));
    expect(said.some((each) => /^rule-burnt-out: .*nobody has waited until it is out$/.test(each))).toBe(
      true,
    );
  });

  test('from the seat its fuel is cut from every step; a valve out of reach is no way out', () => {
    const wayOut = procedures.find(({ id }) => id === 'shut-everything');
    if (wayOut === undefined) throw new Error('no way out');
    expect(wayOutFindings(experience.model, wayOut, wayOutOf(experience, day, wayOut))).toEqual([]);
    const far = without('shut-everything', 'cut-fuel')(procedures).find(({ id }) => id === wayOut.id);
    const left = wayOutOf(experience, day, far ?? wayOut).failures.map(({ what }) => what);
    expect(new Set(left)).toContain('the pot burner still burns');
  });
});

/** Steps that wait until a burner is out, of every procedure of a car, less those left to care. */
function waits(all: Procedures, ...leftToCare: readonly string[]): readonly (readonly [string, string])[] {
  return all
    .filter(({ id }) => !leftToCare.includes(id))
    .flatMap(({ id, steps }) =>
      steps.flatMap((each) =>
        each.sets['burnt-out'] === undefined ? [] : [[id, each.id.split('/')[0] ?? ''] as const],
      ),
    );
}

describe('every wait is asked for', () => {
  // these end at the car with its fuel cut and somebody there, or with nobody near it: nothing follows that wants the fire out
  const leftToCare = ['throttle-sticks', 'glass-broken', 'feed-fails'];
  // a short stop has waited before fuel is taken on, and the pilot burns on there alone
  const again = 'taking-fuel';

  test('of a pot burner', () => {
    const experience = new Experience(modelOf(car));
    const day = chain(experience, procedures, theDay());
    const passed = waits(procedures, ...leftToCare, again).filter(([id, wait]) => {
      const edited = without(id, wait)(procedures);
      if (edited.find((each) => each.id === id)?.phase !== 'emergency')
        return brokenIn(car, edited).rules.size === 0;
      return (
        emergencyFindings(experience.model, emergencyRuns(experience, edited, day, theDay())).length === 0
      );
    });
    expect(passed).toEqual([]);
    expect(waits(procedures, ...leftToCare, again).length).toBeGreaterThan(8);
  });

  test('of a pilot that burns on, before fuel is taken on', () => {
    const shape = burningOn(demoCar('thimble'), 'pilot-burner');
    const steps = proceduresFor(shape);
    expect(waits(steps).map(([id]) => id)).toContain(again);
    expect([...brokenIn(shape, without(again, 'fuel-stop-burnt-out')(steps)).rules]).toContain(
      'no-filling-with-flame',
    );
  });
});

describe('other plants', () => {
  test.each([
    ['a main burner with a pilot', demoCar('marigold'), ['main-burner']],
    ['a pilot', demoCar('thimble'), ['pilot-burner']],
    ['both', demoCar('thimble'), ['main-burner', 'pilot-burner']],
    ['one of two main burners', fixtureCar('quartet'), ['rear-burner']],
    ['a burner with a blower', fixtureCar('bramble'), ['main-burner']],
    ['a burner heated and lit with a torch', fixtureCar('merganser'), ['burner']],
  ])('%s that burns on breaks no rule', (_, plain, which) => {
    const shape = burningOn(plain, ...which);
    const steps = proceduresFor(shape);
    const found = brokenIn(shape, steps);
    expect([...found.rules]).toEqual([]);
    expect(found.snags).toEqual([]);
    const experience = new Experience(modelOf(shape));
    const day = chain(experience, steps, theDay());
    expect(
      emergencyFindings(experience.model, emergencyRuns(experience, steps, day, theDay())).map(
        ({ message }) => message,
      ),
    ).toEqual([]);
  });

  test('one that goes out at once is not waited for', () => {
    const burner = car.spec.burners[pot];
    if (burner === undefined) throw new Error('no pot');
    const atOnce = {
      ...car,
      spec: { ...car.spec, burners: { [pot]: { ...burner, 'burns-on': quantity('time', 0) } } },
    };
    const steps = proceduresFor(atOnce);
    expect(steps.flatMap((each) => each.steps).filter(({ id }) => id.includes('burnt-out'))).toEqual([]);
    expect([...brokenIn(atOnce, steps).rules]).toEqual([]);
  });
});
