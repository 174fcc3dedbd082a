/** Steps done one by one on Marigold: what each act does, what stops it, what is noticed. */
import { describe, expect, test } from 'vitest';
import { type Applied, apply } from '../../src/proof/apply';
import { Experience } from '../../src/proof/experience';
import { Flows } from '../../src/proof/flows';
import { afterNight } from '../../src/proof/lapses';
import { modelOf } from '../../src/proof/model';
import { at, burns, isHot, knows, of, parkedState, type State } from '../../src/proof/state';
import { showTrace } from '../../src/proof/trace';
import { content, level, motion, pressure, steam } from '../../src/proof/values';
import { procedure, step } from './edits';
import { demo } from './library';

const { car } = demo('marigold');
const model = modelOf(car);
const flows = new Flows(model);
const parked = parkedState(model);

type Parts = Omit<Parameters<typeof step>[0], 'id'>;

/** Do steps one after another; what the last one came to. */
function doing(start: State, ...steps: readonly Parts[]): Applied {
  let last: Applied | undefined;
  for (const each of steps) last = apply(model, flows, last?.after ?? start, step({ id: 'do', ...each }));
  if (last === undefined) throw new Error('no steps');
  return last;
}

const whats = (applied: Applied) => applied.hitches.map((hitch) => `${hitch.kind}: ${hitch.what}`);
const openPilot: readonly Parts[] = [
  { action: 'open', part: 'pilot-tank-valve' },
  { action: 'open', part: 'pilot-stop-valve' },
];
const warmPilot: readonly Parts[] = [
  { action: 'light', part: 'torch' },
  { action: 'warm', part: 'pilot-vaporizer' },
];
const litPilot: readonly Parts[] = [
  ...openPilot,
  ...warmPilot,
  { action: 'crack', part: 'pilot-needle-valve', sets: { lighting: 'pilot-burner' } },
];

describe('valves', () => {
  test('are opened, cracked and shut', () => {
    const slot = model.slots.valve;
    expect(
      of(doing(parked, { action: 'open', part: 'pilot-tank-valve' }).after, slot, 'pilot-tank-valve'),
    ).toBe(2);
    expect(
      of(doing(parked, { action: 'crack', part: 'pilot-tank-valve' }).after, slot, 'pilot-tank-valve'),
    ).toBe(1);
    expect(
      of(
        doing(
          parked,
          { action: 'open', part: 'pilot-tank-valve' },
          { action: 'shut', part: 'pilot-tank-valve' },
        ).after,
        slot,
        'pilot-tank-valve',
      ),
    ).toBe(0);
  });

  test('that are open already are felt to be', () => {
    expect(whats(doing(parked, { action: 'open', part: 'water-tank-valve' }))).toEqual([
      'idle: the water tank valve (W1) is open already',
    ]);
    expect(whats(doing(parked, { action: 'shut', part: 'pilot-tank-valve' }))).toEqual([]);
  });

  test('that are locked do not move', () => {
    const done = doing(parked, { action: 'open', part: 'throttle-valve' });
    expect(whats(done)).toEqual(['cannot: the throttle lock is on']);
    expect(of(done.after, model.slots.valve, 'throttle-valve')).toBe(0);
  });
});

describe('flames', () => {
  test('a pilot lights with fuel and a torch, and heats the main vaporizer with time', () => {
    const lit = doing(parked, ...litPilot);
    expect(burns(model, lit.after, 'pilot-burner')).toBe(true);
    expect(isHot(model, doing(lit.after, { action: 'wait', sets: { minutes: 14 } }).after, 'vaporizer')).toBe(
      false,
    );
    expect(
      isHot(
        model,
        doing(lit.after, { action: 'wait', sets: { minutes: 14 } }, { action: 'wait', sets: { minutes: 1 } })
          .after,
        'vaporizer',
      ),
    ).toBe(true);
    expect(isHot(model, doing(lit.after, { action: 'wait' }).after, 'vaporizer')).toBe(true);
  });

  test('nothing lights without fuel, or without what lights it', () => {
    expect(
      whats(
        doing(
          parked,
          { action: 'light', part: 'torch' },
          { action: 'crack', part: 'pilot-needle-valve', sets: { lighting: 'pilot-burner' } },
        ),
      ),
    ).toEqual(['cannot: no fuel reaches the pilot burner']);
    expect(
      whats(
        doing(parked, ...openPilot, {
          action: 'crack',
          part: 'pilot-needle-valve',
          sets: { lighting: 'pilot-burner' },
        }),
      ),
    ).toEqual(['cannot: the hand blowtorch does not work or does not burn']);
  });

  test('a burner goes out when its fuel is cut, and its vaporizer cools', () => {
    const out = doing(
      parked,
      ...litPilot,
      { action: 'wait' },
      { action: 'put-out', part: 'torch' },
      { action: 'shut', part: 'pilot-stop-valve' },
    ).after;
    expect(burns(model, out, 'pilot-burner')).toBe(false);
    expect(isHot(model, out, 'vaporizer')).toBe(false);
  });

  test('a burner that still has fuel is seen to burn on', () => {
    expect(whats(doing(parked, ...litPilot, { action: 'put-out', part: 'pilot-burner' }))).toEqual([
      'contrary: the pilot burner still burns',
    ]);
  });

  test('fuel that does not burn lies in the burner', () => {
    const spilt = doing(parked, ...openPilot, { action: 'open', part: 'pilot-needle-valve' });
    expect(at(spilt.after, model.slots.spilt)).toBe(1);
    expect(whats(doing(spilt.after, { proves: ['no-loose-fuel'] }))).toEqual([
      'contrary: fuel has run where it should not',
    ]);
  });
});

describe('tanks', () => {
  test('are charged only shut, and lose their pressure when vented or opened', () => {
    const air: readonly Parts[] = [
      { action: 'open', part: 'pilot-air-valve' },
      { action: 'charge', part: 'pilot-tank' },
    ];
    expect(of(doing(parked, ...air).after, model.slots.pressure, 'pilot-tank')).toBe(pressure.charged);
    expect(whats(doing(parked, { action: 'charge', part: 'pilot-tank' }))).toEqual([
      'cannot: the way from the pilot tank air pump (U7) to the pilot tank (T3) is shut',
    ]);
    expect(whats(doing(parked, { action: 'open', part: 'pilot-vent-valve' }, ...air))).toEqual([
      'cannot: the pilot vent valve (P5) is open, so no pressure builds',
    ]);
    expect(
      of(
        doing(parked, ...air, { action: 'open', part: 'pilot-vent-valve' }).after,
        model.slots.pressure,
        'pilot-tank',
      ),
    ).toBe(pressure.none);
    expect(
      of(
        doing(parked, ...air, { action: 'remove', part: 'pilot-tank', sets: { cap: 'off' } }).after,
        model.slots.pressure,
        'pilot-tank',
      ),
    ).toBe(pressure.none);
  });

  test('are pumped up through valves that stand open', () => {
    expect(whats(doing(parked, { action: 'pump', part: 'fuel-hand-pump' }))).toEqual([
      'cannot: no fuel comes to the hand fuel pump (U1)',
    ]);
    const pumped = doing(
      parked,
      { action: 'open', part: 'main-tank-valve' },
      { action: 'pump', part: 'fuel-hand-pump' },
    );
    expect(of(pumped.after, model.slots.pressure, 'pressure-tank')).toBe(pressure.charged);
    expect(of(pumped.after, model.slots.pump, 'fuel-hand-pump')).toBe(0);
    expect(of(pumped.during, model.slots.pump, 'fuel-hand-pump')).toBe(1);
  });

  test('are filled only with the cap off', () => {
    expect(whats(doing(parked, { action: 'fill', part: 'main-tank' }))).toEqual([
      'cannot: the cap of the main fuel tank (T1) is on',
    ]);
    const filled = doing(
      parked,
      { action: 'remove', part: 'main-tank', sets: { cap: 'off' } },
      { action: 'fill', part: 'main-tank' },
    );
    expect(of(filled.after, model.slots.content, 'main-tank')).toBe(content.enough);
  });
});

describe('the boiler', () => {
  test('is fed by a pump whose way is open', () => {
    const feed: Parts = { action: 'pump', part: 'hand-water-pump', proves: ['feed-ready'] };
    expect(whats(doing(parked, feed))).toEqual([]);
    expect(whats(doing(parked, { action: 'shut', part: 'water-tank-valve' }, feed))).toContain(
      'contrary: no water goes from the hand water pump (U5) to the boiler',
    );
  });

  test('is read on a glass whose cocks are open, and is seen to be low', () => {
    const read: Parts = { action: 'read', part: 'water-glass', proves: ['level-known'] };
    expect(knows(model, doing(parked, read).after, 'level-known')).toBe(true);
    expect(whats(doing(parked, { action: 'shut', part: 'glass-top-cock' }, read))).toEqual([
      'contrary: the glass top cock (W7) is shut, so that the glass shows nothing',
    ]);
    expect(whats(doing(parked, { sets: { level: 'low' } }, read))).toEqual([
      'contrary: the boiler’s water is below its working level',
    ]);
  });

  test('is not known any more when it has been filled, blown down, or has cooled', () => {
    const known = doing(parked, { action: 'read', part: 'water-glass', proves: ['level-known'] }).after;
    const filled = doing(
      known,
      { action: 'open', part: 'boiler-fill-valve' },
      { action: 'fill', part: 'boiler' },
    );
    expect(at(filled.after, model.slots.level)).toBe(level.doubtful);
    expect(knows(model, filled.after, 'level-known')).toBe(false);
    const cooled = doing(known, { sets: { steam: 'working' } }, { sets: { steam: 'none' } });
    expect(knows(model, cooled.after, 'level-known')).toBe(false);
  });
});

describe('people and motion', () => {
  test('a driver who walks off has left the seat, and gets in again by a step that says so', () => {
    const away = doing(parked, { sets: { seat: 'driver' } }, { place: 'rear-filler' });
    expect(at(away.after, model.slots.seat)).toBe(0);
    expect(at(doing(away.after, { place: 'dash-glass' }).after, model.slots.seat)).toBe(0);
    expect(
      at(
        doing(parked, { sets: { seat: 'driver' } }, { who: 'helper', place: 'rear-filler' }).after,
        model.slots.seat,
      ),
    ).toBe(1);
  });

  test('the car moves only if nothing holds it', () => {
    const go: Parts = { action: 'move', sets: { motion: 'creeping' } };
    const steamUp = doing(parked, { sets: { steam: 'working' } }).after;
    expect(whats(doing(steamUp, go))).toEqual(['cannot: the throttle is locked']);
    const free = doing(
      steamUp,
      { action: 'unlock', part: 'throttle-lock' },
      { action: 'crack', part: 'throttle-valve' },
    ).after;
    expect(whats(doing(free, go))).toEqual(['cannot: the hand brake lever is set']);
    const off = doing(free, { action: 'release', part: 'hand-brake' }).after;
    expect(at(doing(off, go).after, model.slots.motion)).toBe(motion.creeping);
    expect(whats(doing(off, { action: 'place', part: 'chocks' }, go))).toEqual([
      'cannot: the wheels are chocked',
    ]);
  });
});

test('a night leaves the car cold and little known', () => {
  const evening = doing(
    parked,
    { action: 'read', part: 'water-glass', proves: ['level-known'] },
    { proves: ['fires-out', 'log-read', 'inspection-in-date'] },
    { sets: { steam: 'low' } },
  ).after;
  const morning = afterNight(model, evening);
  expect(at(morning, model.slots.steam)).toBe(steam.none);
  expect(knows(model, morning, 'level-known')).toBe(false);
  expect(knows(model, morning, 'log-read')).toBe(false);
  expect(knows(model, morning, 'fires-out')).toBe(true);
  expect(knows(model, morning, 'inspection-in-date')).toBe(true);
});

test('a trace can be printed', () => {
  const shown = showTrace(
    model,
    new Experience(model).leg(
      procedure(
        'light-up',
        [
          step({ id: 'a', action: 'open', part: 'pilot-tank-valve', say: 'Open the pilot tank valve (P1).' }),
          step({ id: 'b', action: 'light', part: 'pilot-burner', say: 'Light the pilot burner.' }),
        ],
        { title: 'Light up' },
      ),
      parked,
    ),
  );
  expect(shown).toBe(
    [
      'Light up',
      '  1. Open the pilot tank valve (P1).',
      '       pilot tank valve (P1): shut → open',
      '  2. Light the pilot burner.',
      '     ! no fuel reaches the pilot burner',
      '     at the end: no flame',
      '',
    ].join('\n'),
  );
});
