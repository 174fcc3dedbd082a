/**
 * Emergencies: where they begin, what they leave, how the fire is lit again; and every act of theirs left out, which the
 * proof has to refuse unless there is a reason why it does no harm.
 */
import { describe, expect, test } from 'vitest';
import { beginnings, type Ending, endings, meaningOf } from '../../src/procedure/circumstances';
import { allFuelValves } from '../../src/procedure/fuelWay';
import type { Procedure, Procedures, Step } from '../../src/procedure/procedure';
import { type Chain, chain } from '../../src/proof/chain';
import { areSo, notSo } from '../../src/proof/circumstances';
import { emergencyRuns } from '../../src/proof/emergencies';
import { Experience } from '../../src/proof/experience';
import { emergencyFindings } from '../../src/proof/findings';
import { modelOf } from '../../src/proof/model';
import { parkedState, type State } from '../../src/proof/state';
import { motion, no, open, steam, yes } from '../../src/proof/values';
import { demoCars } from '../cars/demo';
import { altered, type Edit, putIn, step, without } from './edits';
import { demo, theDay } from './library';

class Ground {
  readonly procedures: Procedures;
  readonly experience: Experience;
  readonly chain: Chain;

  constructor(name: string) {
    const { car, procedures } = demo(name);
    this.procedures = procedures;
    this.experience = new Experience(modelOf(car));
    this.chain = chain(this.experience, procedures, theDay());
  }

  get emergencies(): Procedures {
    return this.procedures.filter(({ phase }) => phase === 'emergency');
  }

  told(procedures: Procedures) {
    return emergencyFindings(
      this.experience.model,
      emergencyRuns(this.experience, procedures, this.chain, theDay()),
    );
  }

  /** What is wrong with one emergency that stands in place of the right one. */
  wrongWith(changed: Procedure) {
    const daily = this.procedures.filter(({ phase }) => phase !== 'emergency');
    return this.told([...daily, changed]);
  }

  after(...edits: readonly Edit[]) {
    return this.told(edits.reduce((all, edit) => edit(all), this.procedures)).map(
      ({ code, message }) => `${code} ${message}`,
    );
  }
}

const grounds = new Map(demoCars.map((name) => [name, new Ground(name)]));

function groundOf(name: (typeof demoCars)[number]): Ground {
  const ground = grounds.get(name);
  if (ground === undefined) throw new Error(name);
  return ground;
}

const marigold = groundOf('marigold');

describe('circumstances', () => {
  const { model, flows } = marigold.experience;
  const { slots } = model;
  const parked = parkedState(model);
  const changed = (...sets: readonly (readonly [number | undefined, number])[]) => {
    const draft = parked.draft();
    for (const [slot, value] of sets) if (slot !== undefined) draft.set(slot, value);
    return draft;
  };

  const undone = (state: State, which: readonly Ending[]) =>
    notSo(model, flows, state, which).map(({ what }) => what);

  test('each has a meaning', () => {
    for (const each of [...beginnings, ...endings]) expect(meaningOf[each]).toMatch(/^[A-Z].*\.$/);
  });

  test('on a car that is put away nothing is so that begins an emergency, and all is as one leaves it', () => {
    expect(beginnings.filter((each) => areSo(model, flows, parked, [each]))).toEqual(['no-unlit-fuel']);
    expect(undone(parked, endings)).toEqual([]);
  });

  test('steam, flames, fuel and motion are seen', () => {
    const [main] = model.mains;
    const [torch] = model.torches;
    const { throttle } = model.car.spec.engine;
    const up = changed([slots.steam, steam.low]);
    expect(areSo(model, flows, up, ['flame-or-steam', 'steam-up'])).toBe(true);
    expect(areSo(model, flows, up, ['steam-at-work'])).toBe(false);
    const pulling = changed([slots.steam, steam.working], [slots.valve.get(throttle), open]);
    expect(areSo(model, flows, pulling, ['steam-at-work', 'pulling'])).toBe(true);
    expect(undone(pulling, ['throttle-shut'])).toEqual(['the throttle valve (S1) is open']);
    const lit = changed([slots.flame.get(main ?? ''), yes]);
    expect(areSo(model, flows, lit, ['burning', 'main-burning'])).toBe(true);
    const torchLit = changed([slots.flame.get(torch ?? ''), yes]);
    expect(areSo(model, flows, torchLit, ['burning'])).toBe(false);
    expect(undone(torchLit, ['no-flame'])).toEqual(['the hand blowtorch burns']);
    const allOpen = changed(...[...slots.valve.values()].map((slot) => [slot, open] as const));
    expect(areSo(model, flows, allOpen, ['fuel-on', 'main-fuel-on'])).toBe(true);
    expect(areSo(model, flows, allOpen, ['no-unlit-fuel'])).toBe(false);
    expect(undone(allOpen, ['no-fuel', 'no-main-fuel']).length).toBe(2);
    const rolling = changed([slots.motion, motion.running]);
    expect(areSo(model, flows, rolling, ['moving'])).toBe(true);
    expect(undone(rolling, ['standing'])).toEqual(['the car moves']);
    const free = changed(
      ...[...slots.lock.values(), ...slots.control.values()].map((slot) => [slot, no] as const),
    );
    expect(undone(free, ['throttle-locked', 'held'])).toEqual([
      'the throttle lock is off',
      'nothing holds the car',
    ]);
  });
});

/** What passed with an act left out, on any car. */
const excused = new Set<string>();

describe.each(demoCars)('%s', (name) => {
  const ground = groundOf(name);

  test('every emergency can begin somewhere in the middle of a procedure, and harms nobody', () => {
    const runs = emergencyRuns(ground.experience, ground.procedures, ground.chain, theDay());
    for (const { id } of ground.emergencies) {
      const places = runs.flatMap(({ procedure, struckAt }) =>
        procedure.id === id ? [`${struckAt.procedure.id} ${struckAt.done} ${struckAt.when}`] : [],
      );
      expect(places.length, id).toBeGreaterThan(0);
      expect(
        runs.some(
          ({ procedure, struckAt }) => procedure.id === id && struckAt.done < struckAt.procedure.steps.length,
        ),
        id,
      ).toBe(true);
    }
    expect(emergencyFindings(ground.experience.model, runs)).toEqual([]);
  });

  test('says of every emergency what it leaves', () => {
    expect(ground.emergencies.filter(({ leaves }) => leaves.length === 0).map(({ id }) => id)).toEqual([]);
  });

  test('what its words leave to danger is left undone in the proof too', () => {
    const said = ground.emergencies.flatMap(({ steps }) => steps);
    expect(said.filter(({ ifSafe }) => ifSafe).map(({ say }) => say)).toEqual(
      said.map(({ say }) => say).filter((say) => /if it can be reached without/i.test(say)),
    );
    expect(said.some(({ ifSafe }) => ifSafe)).toBe(true);
  });

  test('no emergency passes with every act on the fuel left out', () => {
    const passed = ground.emergencies.flatMap((procedure) => {
      const steps = procedure.steps.filter((each) => !isOnFuel(ground, each));
      if (steps.length === procedure.steps.length) return [];
      return ground.wrongWith({ ...procedure, steps }).length > 0 ? [] : [procedure.id];
    });
    expect(passed).toEqual([]);
  });

  test('no other act of an emergency can be left out unseen, but where there is a reason', () => {
    const passed = ground.emergencies.flatMap((procedure) =>
      procedure.steps.flatMap((left) => {
        if (!acts.has(left.action) || isOnFuel(ground, left)) return [];
        const steps = procedure.steps.filter((each) => each !== left);
        return ground.wrongWith({ ...procedure, steps }).length > 0
          ? []
          : [`${procedure.id} ${left.id.split('/')[0]}`];
      }),
    );
    for (const each of passed) excused.add(each);
    expect(passed.filter((each) => !(each in reasons))).toEqual([]);
  }, 60_000);
});

/** Valves, pumps and switches between a tank of fuel and a burner: there are several on every way, and one that is forgotten is made up for by the next. */
function isOnFuel({ experience }: Ground, { part = '' }: Step): boolean {
  const { spec } = experience.model.car;
  return spec.pumps[part]?.moves === 'fuel' || allFuelValves(experience.model.car).includes(part);
}

/** What moves something; the rest of an emergency looks, waits, calls and writes. */
const acts = new Set([
  'open',
  'shut',
  'crack',
  'set',
  'release',
  'lock',
  'unlock',
  'put-out',
  'stop',
  'light',
]);

/** Acts that may be left out as far as the model knows, by emergency and step, and why. */
const reasons: Readonly<Record<string, string>> = {
  'shut-everything cut-blower': 'a fan blows air, not fuel',
  'fire-outside cut-blower': 'a fan blows air, not fuel',
  'electrics-fail cut-blower': 'a fan blows air, not fuel',
  'low-water cut-blower': 'a fan blows air, not fuel',
  'pressure-high cut-blower': 'a fan blows air, not fuel',
  'feed-fails cut-blower': 'a fan blows air, not fuel',
  'steam-in-burner cut-blower': 'a fan blows air, not fuel',
  'burn-or-scald cut-blower': 'a fan blows air, not fuel',
  'gauge-dead cut-blower': 'a fan blows air, not fuel',
  'fire-outside fire-power-off': 'the model holds no wires; every switch is off before',
  'electrics-fail electrics-feed-off': 'a coil that is fed with its fire out fills up, and nothing burns',
  'electrics-fail power-off': 'the model holds no wires; every switch is off before',
  'shut-everything cut-igniter': 'a spark without fuel lights nothing',
  'shut-everything cut-feed-pump': 'a coil that is fed with its fire out fills up, and nothing burns',
  'fire-outside cut-feed-pump': 'a coil that is fed with its fire out fills up, and nothing burns',
  'fuel-pressure-falls cut-feed-pump': 'a coil that is fed with its fire out fills up, and nothing burns',
  'gauge-dead coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'throttle-sticks coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'feed-fails coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'pressure-high coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'brakes-fade coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'burn-or-scald coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'spark-fails coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'fuel-pressure-high cut-igniter': 'the model holds no fuel beside its pipes for a spark to light',
  'fuel-pressure-high cut-blower': 'a fan blows air, not fuel',
  'fuel-pressure-high cut-feed-pump': 'a coil that is fed with its fire out fills up, and nothing burns',
  'condenser-high coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'steam-in-burner cut-feed-pump': 'a coil that is fed with its fire out fills up, and nothing burns',
  'low-water cut-igniter': 'a spark without fuel lights nothing',
  'fire-outside cut-igniter': 'a spark without fuel lights nothing',
  'fuel-pressure-falls cut-igniter': 'the model holds no fuel beside its pipes for a spark to light',
  'fuel-pressure-falls cut-blower': 'a fan blows air, not fuel',
  'steam-in-burner cut-igniter': 'a spark without fuel lights nothing',
  'steam-in-burner low-feed-off': 'the car is brought to a stand, and the pump of its engine with it',
  'glass-full full-feed-back': 'the motor pump feeds past it, and it is shut again before the car moves',
  'low-water low-feed-off': 'the car is brought to a stand, and the pump of its engine with it',
  'glass-full full-feed-off': 'the car is brought to a stand, and the pump of its engine with it',
  'feed-fails feed-bypass-shut': 'the car is brought to a stand, and the pump of its engine with it',
  'glass-full cut-throttle': 'the car is brought to a stand, and the throttle is shut before it is locked',
  'glass-full hold-brake': 'the wheels are chocked, and the foot brake is pressed',
  'glass-full full-drips': 'water stays in the engine, and is let out before it moves off',
  'glass-full full-spend': 'water stays in the engine, and is let out before it moves off',
  'glass-broken glass-cocks': 'the model holds no water or steam that leaves by a broken glass',
  'fire-outside fire-extinguish': 'the model holds no fire outside the burner',
  'throttle-sticks sticks-reverse': 'the car is brought to a stand by the brake in any case',
  'throttle-sticks sticks-brake': 'the wheels are chocked as well',
  'throttle-sticks sticks-drips': 'the steam is spent more slowly; the stop valve is shut',
  'brakes-fade fade-hold': 'the brake was brought in to stop the car, and is on',
  'brakes-fade cut-throttle': 'the throttle is shut once more as the car comes to a stand',
  'brakes-fade fade-parking-brake': 'the wheels are chocked as well',
  'brakes-fade fade-reverse': 'the car is brought to a stand in a step of its own',
  'brakes-fade fade-middle': 'the throttle is shut and locked; no steam comes to the engine either way',
  'brakes-fade fade-steam': 'the car is brought to a stand in a step of its own',
  'rolls-back coil-cools': 'a coil that is fed with its fire out fills up, and nothing burns',
  'rolls-back rolls-brake': 'the parking brake is set as well, and the wheels are chocked',
  'rolls-back rolls-parking-brake': 'the wheels are chocked as well',
  'rolls-back rolls-forward': 'the model does not hold which way the engine turns',
  'rolls-back rolls-steam': 'the car is brought to a stand in a step of its own',
};

test('no reason stands for nothing', () => {
  expect(Object.keys(reasons).filter((each) => !excused.has(each))).toEqual([]);
});

describe('what was once wrong is told', () => {
  test('a torch that nobody puts out', () => {
    expect(marigold.after(without('shut-everything', 'torch-down')).join('\n')).toMatch(
      /proof-emergency-leaves Shut everything: when all is done the hand blowtorch burns/,
    );
  });

  test('a throttle cracked with its lock on, and left without it', () => {
    expect(marigold.after(without('glass-full', 'full-unlock')).join('\n')).toMatch(
      /proof-cannot-do Boiler too full, step \d+, .*the throttle lock is on/,
    );
    expect(marigold.after(without('glass-full', 'full-lock')).join('\n')).toMatch(
      /proof-emergency-leaves Boiler too full: when all is done the throttle lock is off/,
    );
  });

  test('a fire that goes out only if a valve can be reached without danger', () => {
    const ifSafe = (step: Step): Step => ({ ...step, ifSafe: true });
    const hoped = marigold.told(
      altered(
        'low-water',
        'cut-fuel-more',
        ifSafe,
      )(altered('low-water', 'cut-fuel', ifSafe)(marigold.procedures)),
    );
    const [left] = hoped.filter(({ code }) => code === 'proof-emergency-leaves');
    expect(left?.message).toMatch(/^Low water with the fire on: when all is done .* burns$/);
    expect(left?.notes?.join(' ')).toMatch(/What cannot be reached without danger is left undone there\./);
  });

  test('a spark that nobody switches off', () => {
    const heron = groundOf('heron');
    const [left] = heron.after(without('pressure-high', 'spark-off'));
    expect(left).toMatch(
      /proof-emergency-leaves Pressure above the cut-out: when all is done .*ignition switch.* is on/,
    );
  });

  test('a seat that is left while the car moves', () => {
    const moving = marigold.after(without('pressure-high', 'stand-still'));
    expect(moving.join('\n')).toMatch(/rule-driver-in-seat Pressure above the cut-out/);
  });

  test('a starting valve that stays open, before steam was up', () => {
    expect(marigold.after(without('pressure-high', 'cut-starting')).join('\n')).toMatch(
      /when all is done fuel comes to the main burner/,
    );
  });

  test('fuel that has run out and is not mopped up before the fire is lit again', () => {
    const aired = altered('pilot-out', 'pilot-out-air', (step) => ({
      ...step,
      sets: { 'vapour-in-burner': false },
    }));
    expect(marigold.after(aired).join('\n')).toMatch(/fuel has run/);
  });

  test('steam that is raised on past its walk round, with nobody in the seat', () => {
    const day = theDay();
    const past: typeof day = {
      ...day,
      litAgain: new Map(
        [...day.litAgain].map(([id, ways]) => [id, ways.map((way) => ({ ...way, atLatestFrom: undefined }))]),
      ),
    };
    const runs = emergencyRuns(marigold.experience, marigold.procedures, marigold.chain, past);
    const told = emergencyFindings(marigold.experience.model, runs).map(({ message }) => message);
    expect(told.join('\n')).toMatch(/Raise steam, step \d+, .*throttle lock/);
  });

  test('the finding says where the trouble came', () => {
    const [first] = marigold
      .told(
        putIn(
          'low-water',
          'low-cool',
          step({ id: 'pour', action: 'open', part: 'boiler-fill-valve' }),
        )(marigold.procedures),
      )
      .filter(({ code }) => code === 'rule-boiler-opened-under-pressure');
    expect(first?.notes?.join(' ')).toMatch(
      /It is so when the trouble comes (before|in the middle of|after) \S/,
    );
  });
});
