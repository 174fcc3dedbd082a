/** The library expanded for cars of many shapes: which parts, in which order, and what is lacking. */
import { describe, expect, test } from 'vitest';
import { expandProcedures } from '../../src/procedure/expand';
import { demoCar, demoCars } from '../cars/demo';
import { type Patch, smallCar, smallCars } from '../helpers/smallCars';
import { partsOf, procedure, proceduresOf, theLibrary } from './shared';

const library = theLibrary();

function shape(name: keyof typeof smallCars, ...more: readonly Patch[]) {
  const car = smallCar(...(smallCars[name] ?? []), ...more);
  return { car, procedures: proceduresOf(car, library) };
}

/** Parts that all steps of a procedure act on with one act. */
function acted(name: string, id: string, action: string): readonly (string | undefined)[] {
  return procedure(shape(name).procedures, id)
    .steps.filter((step) => step.action === action)
    .map((step) => step.part);
}

describe('every shape of car', () => {
  const cars = [
    ...Object.entries(smallCars).map(([name, patches]) => [name, smallCar(...patches)] as const),
    ...demoCars.map((name) => [name, demoCar(name)] as const),
  ];

  test.each(cars)('%s: every step names a part and place that the car has, once each', (_, car) => {
    for (const each of proceduresOf(car, library)) {
      const ids = each.steps.map((step) => step.id);
      expect(new Set(ids).size, each.id).toBe(ids.length);
      for (const step of each.steps) {
        if (step.part !== undefined) expect(car.parts.has(step.part), step.id).toBe(true);
        if (step.place !== undefined) expect(car.places.has(step.place), step.id).toBe(true);
        expect(step.say, step.id).not.toMatch(/\{|\}|undefined|\[object/);
        expect(step.result, step.id).not.toBe('');
      }
    }
  });

  test.each(cars)('%s: every procedure follows one that the car has', (_, car) => {
    const procedures = proceduresOf(car, library);
    const ids = procedures.map((each) => each.id);
    for (const each of procedures) {
      expect(each.after.filter((id) => !ids.includes(id))).toEqual([]);
      if (each.phase === 'emergency') expect(each.after).toEqual([]);
      else expect(each.after.length, each.id).toBeGreaterThan(0);
      expect(each.after).not.toContain(each.id);
    }
  });

  test.each(cars)('%s: shutting down shuts every fuel valve that firing up opens', (_, car) => {
    const procedures = proceduresOf(car, library);
    const opened = new Set(
      ['air', 'pilot', 'soak', 'main-burner']
        .flatMap((id) => procedures.find((each) => each.id === id)?.steps ?? [])
        .filter((step) => step.action === 'open' || step.action === 'crack')
        .map((step) => step.part),
    );
    const shut = new Set(
      ['coming-in', 'shut-down']
        .flatMap((id) => procedure(procedures, id).steps)
        .filter((step) => step.action === 'shut')
        .map((step) => step.part),
    );
    const fuel = [...opened].filter(
      (id) =>
        id !== undefined && car.plant.pipes.some((pipe) => pipe.to === id && pipe.carries.endsWith('fuel')),
    );
    expect(fuel.length).toBeGreaterThan(0);
    expect(fuel.filter((id) => !shut.has(id))).toEqual([]);
  });

  test.each(cars)('%s: is parked valve for valve as the spec says', (_, car) => {
    const last = new Map<string, string>();
    for (const step of procedure(proceduresOf(car, library), 'overnight').steps) {
      if (step.part !== undefined && (step.action === 'open' || step.action === 'shut'))
        last.set(step.part, step.action);
    }
    const parked = Object.entries(car.spec.valves).map(([id, valve]) => [id, valve.parked] as const);
    expect([...last].sort()).toEqual([...parked].sort());
  });

  test.each(cars)(
    '%s: reads the level before the first flame, and it or the feed again before each burner',
    (_, car) => {
      const procedures = proceduresOf(car, library);
      const day = ['level', 'pilot', 'soak', 'main-burner'].flatMap(
        (id) => procedures.find((each) => each.id === id)?.steps ?? [],
      );
      const firstFlame = day.findIndex((step) => step.action === 'light' || 'lighting' in step.sets);
      const levelKnown = day.findIndex((step) => step.proves.includes('level-known'));
      expect(levelKnown).toBeGreaterThanOrEqual(0);
      expect(levelKnown).toBeLessThan(firstFlame);
      const main = procedure(procedures, 'main-burner').steps;
      const lit = main.findIndex((step) => 'lighting' in step.sets);
      // a coil whose gauge shows only water that flows is read once its pump runs
      const flows = Object.values(car.spec.gauges).some((gauge) => gauge.reads === 'flow');
      const water = car.spec.boiler.kind === 'monotube' && flows ? 'feed-ready' : 'level-known';
      for (const fact of [water, 'igniter-proven', 'burner-front-clear', 'no-loose-fuel']) {
        const proven = main.findIndex((step) => step.proves.includes(fact));
        expect(proven, fact).toBeGreaterThanOrEqual(0);
        expect(proven, fact).toBeLessThan(lit);
      }
    },
  );

  test.each(cars)(
    '%s: is drained, held and clear before it first moves, and locked before the seat is left',
    (_, car) => {
      const steps = procedure(proceduresOf(car, library), 'moving-off').steps;
      const at = (id: string) => steps.findIndex((step) => step.id.split('/')[0] === id);
      const order = [
        'off-level',
        'off-brake',
        'sit',
        'off-drips',
        'off-way-clear',
        'off-unlock',
        'warm-engine',
        'drained',
        'off-release',
        'first-motion',
        'off-away',
      ].filter((id) => at(id) >= 0);
      expect(order.map(at)).toEqual(order.map(at).toSorted((a, b) => a - b));
      expect(order).toEqual(
        expect.arrayContaining(['off-drips', 'off-unlock', 'drained', 'first-motion', 'off-away']),
      );
      for (const id of ['short-stop', 'shut-down']) {
        const stop = procedure(proceduresOf(car, library), id).steps;
        expect(stop.findIndex((step) => step.action === 'lock')).toBeLessThan(
          stop.findIndex((step) => step.sets.seat === 'empty'),
        );
      }
    },
  );
});

describe('the pilot', () => {
  test('with one valve: that valve is cracked and then opened', () => {
    const steps = procedure(shape('one pilot valve').procedures, 'pilot').steps;
    expect(partsOf(steps, 'open-pilot-feed')).toEqual([]);
    expect(partsOf(steps, 'crack-pilot-valve')).toEqual(['pilot-valve']);
    expect(partsOf(steps, 'open-pilot-valve')).toEqual(['pilot-valve']);
  });

  test('with three valves: from the tank forward, the last one cracked', () => {
    const { procedures } = shape('three pilot valves and a starting branch');
    const steps = procedure(procedures, 'pilot').steps;
    expect(partsOf(steps, 'open-pilot-feed')).toEqual(['pilot-tank-valve', 'pilot-valve']);
    expect(partsOf(steps, 'crack-pilot-valve')).toEqual(['pilot-needle']);
    expect(partsOf(procedure(procedures, 'shut-down').steps, 'down-pilot-valve')).toEqual([
      'pilot-needle',
      'pilot-valve',
      'pilot-tank-valve',
    ]);
    expect(steps.find((step) => step.id.startsWith('crack-pilot-valve'))).toMatchObject({
      place: 'underneath',
      sets: { lighting: 'pilot-burner' },
      result:
        'the pilot burner lights at once; if not, shut it, put every flame out, air the burner, and begin this part again, once',
    });
  });

  test('fed from the main tank: the valve it shares is opened with it, and is not opened again for the main burner', () => {
    const { procedures } = shape('pilot fed from the main tank');
    expect(partsOf(procedure(procedures, 'pilot').steps, 'open-pilot-feed')).toEqual(['fuel-stop-valve']);
    expect(acted('pilot fed from the main tank', 'main-burner', 'open')).toEqual(['main-needle']);
    expect(partsOf(procedure(procedures, 'short-stop').steps, 'stop-main-burner')).toEqual(['main-needle']);
  });

  test('absent: no pilot, no soak; the fuel pump, nobody in front, the spark is seen, and then the valve', () => {
    const { procedures } = shape('electric ignition, monotube, condenser');
    expect(procedures.map((each) => each.id)).not.toEqual(expect.arrayContaining(['pilot']));
    expect(procedures.map((each) => each.id)).not.toContain('soak');
    const steps = procedure(procedures, 'main-burner').steps.map((step) => step.id.split('/')[0]);
    const order = ['blower-on', 'fuel-pump-on', 'clear-front', 'spark-on', 'crack-main-valve'];
    expect(steps.filter((id) => order.includes(id ?? ''))).toEqual(order);
    expect(procedure(procedures, 'main-burner').after).toEqual(['fuel', 'taking-fuel']);
  });
});

describe('the main burner', () => {
  test('with a starting branch: lit on the lighter fuel, changed over, and the branch shut', () => {
    const steps = procedure(
      shape('three pilot valves and a starting branch').procedures,
      'main-burner',
    ).steps;
    const moved = steps
      .filter((step) => ['open', 'crack', 'shut'].includes(step.action))
      .map((step) => `${step.action} ${step.part}`);
    expect(moved).toEqual([
      'shut main-needle',
      'open fuel-stop-valve',
      'crack starting-valve',
      'crack main-needle',
      'shut starting-valve',
      'open main-needle',
    ]);
  });

  test('two burners: what feeds both is opened once, and each is lit by its own valve', () => {
    const steps = procedure(shape('two burners fed by gravity').procedures, 'main-burner').steps;
    expect(partsOf(steps, 'open-main-feed')).toEqual(['fuel-stop-valve', 'by-stop-valve']);
    expect(
      steps.filter((step) => 'lighting' in step.sets).map((step) => [step.part, step.sets.lighting]),
    ).toEqual([
      ['front-valve', 'main-burner'],
      ['rear-valve', 'second-burner'],
    ]);
  });

  test('by gravity there is no pressure to be put on', () => {
    const { procedures } = shape('two burners fed by gravity', {
      tanks: { 'pilot-tank': { pressure: null, 'fill-to': null } },
    });
    expect(procedures.map((each) => each.id)).not.toContain('air');
    expect(procedure(procedures, 'pilot').after).toEqual(['fuel', 'taking-fuel']);
  });

  test('with a pressure tank: the supply is opened for pumping up, the return is not on the way, and both are shut after', () => {
    const { procedures } = shape('pressure tank and superheater');
    const air = procedure(procedures, 'air')
      .steps.filter((step) => step.part !== undefined)
      .map((step) => `${step.action} ${step.part}`);
    expect(air).toEqual([
      'shut return-valve',
      'open air-valve',
      'charge cushion',
      'shut air-valve',
      'charge pilot-tank',
      'open tank-valve',
      'pump cushion',
      'read pilot-tank',
      'read cushion',
    ]);
    expect(partsOf(procedure(procedures, 'main-burner').steps, 'open-main-feed')).toEqual([
      'fuel-stop-valve',
    ]);
    expect(partsOf(procedure(procedures, 'shut-down').steps, 'down-supply-valve')).toEqual(['tank-valve']);
    expect(acted('pressure tank and superheater', 'main-burner', 'open')).not.toContain('return-valve');
  });
});

describe('the level', () => {
  test('by clear tube: tube on, tap opened, read, shut, tube off', () => {
    const steps = procedure(shape('hand pumps, taps and try cocks').procedures, 'level').steps;
    const from = steps.findIndex(({ part }) => part === 'tube');
    expect(steps.slice(from, from + 5).map((step) => `${step.action} ${step.part}`)).toEqual([
      'place tube',
      'crack tube-tap',
      'read tube-tap',
      'shut tube-tap',
      'remove tube',
    ]);
  });

  test('known in one way only: a remark says that a second is lacking', () => {
    const car = smallCar(...(smallCars['one pilot valve'] ?? []));
    const outcome = expandProcedures(car, library, { system: 'us' });
    expect(outcome.ok ? outcome.remarks.map((remark) => [remark.code, remark.at?.path]) : []).toEqual([
      ['procedure-lacks', 'boiler.level'],
    ]);
  });

  test('not known cold: an error says so, and no level procedure is made', () => {
    const car = smallCar(...(smallCars['one pilot valve'] ?? []), {
      boiler: { level: [{ gauge: 'water-glass', when: 'steaming' }] },
    });
    const outcome = expandProcedures(car, library, { system: 'us' });
    const problems = outcome.ok ? [] : outcome.problems.filter((problem) => problem.severity === 'error');
    expect(problems.map((problem) => [problem.code, problem.message])).toEqual([
      [
        'procedure-lacks',
        '`level` needs what this car has not got: a way of reading the level with the boiler cold',
      ],
    ]);
    expect(problems[0]?.at?.file).toBe('small.yaml');
    expect(problems[0]?.notes?.[0]).toMatch(/procedures\/20-water\.yaml, line \d+/);
  });

  test('fill by hose only where there is a way in, and always with the way out for the air opened first and shut last', () => {
    expect(shape('one pilot valve').procedures.map((each) => each.id)).not.toContain('fill-cold');
    const steps = procedure(shape('hand pumps, taps and try cocks').procedures, 'fill-cold').steps.filter(
      (step) => step.action === 'open' || step.action === 'shut' || step.action === 'fill',
    );
    expect(steps.map((step) => `${step.action} ${step.part}`)).toEqual([
      'open vent-valve',
      'open fill-valve',
      'fill boiler',
      'shut fill-valve',
      'shut vent-valve',
      // cracked to read the level anew, and shut again
      'shut tube-tap',
    ]);
  });
});

describe('putting away', () => {
  test('two blow-down taps: one after the other, each shut before the next is opened', () => {
    const steps = procedure(shape('hand pumps, taps and try cocks').procedures, 'blow-down').steps.filter(
      (step) => ['crack', 'blow-down', 'shut'].includes(step.action),
    );
    expect(steps.map((step) => `${step.action} ${step.part}`)).toEqual([
      'crack blow-down-tap',
      'blow-down blow-down-tap',
      'shut blow-down-tap',
      'crack second-tap',
      'blow-down second-tap',
      'shut second-tap',
    ]);
  });

  test('no blow-down taps: no blow-down', () => {
    expect(shape('electric ignition, monotube, condenser').procedures.map((each) => each.id)).not.toContain(
      'blow-down',
    );
  });

  test('no blow-down pressure in the spec: an error that names it', () => {
    const car = smallCar(...(smallCars['one pilot valve'] ?? []), { boiler: { 'blow-down-pressure': null } });
    const outcome = expandProcedures(car, library, { system: 'us' });
    const problems = outcome.ok ? [] : outcome.problems.filter((problem) => problem.severity === 'error');
    expect(problems.map((problem) => problem.mend)).toEqual([
      'add `blow-down-pressure` under `boiler`, as the inspector and the maker have it',
    ]);
  });

  test('a boiler that draws itself full is shut while there is still pressure; another is not told so', () => {
    const remark = (name: string) =>
      procedure(shape(name).procedures, 'blow-down').steps.find((step) =>
        step.id.startsWith('shut-blow-down'),
      )?.remark;
    expect(remark('hand pumps, taps and try cocks')).toMatch(/drawing itself full/);
    expect(remark('one pilot valve')).not.toMatch(/drawing itself full/);
  });

  test('several drips are each opened and shut', () => {
    const steps = procedure(shape('hand pumps, taps and try cocks').procedures, 'moving-off').steps;
    expect(partsOf(steps, 'off-drips')).toEqual(['drip-cock', 'chest-drip']);
    expect(partsOf(steps, 'off-shut-drips')).toEqual(['drip-cock', 'chest-drip']);
  });

  test('from the seat outward: what is reached seated, then the seat is left, then the rest', () => {
    const car = demoCar('marigold');
    const steps = procedure(proceduresOf(car, library), 'shut-down').steps;
    const left = steps.findIndex((step) => step.sets.seat === 'empty');
    const outside = steps
      .slice(0, left)
      .filter((step) => step.place !== undefined && car.places.get(step.place)?.reach !== 'seated');
    expect(left).toBeGreaterThan(0);
    expect(outside.map((step) => step.id)).toEqual([]);
  });
});

describe('shut everything', () => {
  test.each(demoCars)('%s: what is reached from the seat comes first', (name) => {
    const car = demoCar(name);
    const steps = procedure(proceduresOf(car, library), 'shut-everything').steps;
    expect(steps[0]?.action).toBe('shut');
    const away = steps.findIndex((step) => step.sets.people === 'away');
    // a torch is put out by whoever has it in the hand
    const before = steps
      .slice(0, away)
      .filter((step) => step.who === 'driver')
      .filter((step) => step.place !== undefined && car.places.get(step.place)?.reach !== 'seated');
    expect(before.map((step) => step.id)).toEqual([]);
  });

  test('the valve that cuts both burners comes before those that cut one', () => {
    const { procedures } = shape('pilot fed from the main tank');
    const { steps } = procedure(procedures, 'shut-everything');
    expect(partsOf(steps, 'cut-fuel')).toEqual(['fuel-stop-valve']);
    expect(partsOf(steps, 'cut-fuel-more')).toEqual(['main-needle', 'pilot-valve']);
  });

  test('a valve that one stroke shuts comes before one that is screwed', () => {
    const car = demoCar('marigold');
    const { steps } = procedure(proceduresOf(car, library), 'shut-everything');
    expect(partsOf(steps, 'cut-fuel')).toEqual(['fuel-stop-valve']);
    expect(partsOf(steps, 'cut-fuel-more')[0]).toBe('main-burner-valve');
  });

  test('throttle and brake come before what takes turns of a hand', () => {
    const { steps } = procedure(proceduresOf(demoCar('thimble'), library), 'shut-everything');
    const at = (id: string) => steps.findIndex((step) => step.id.split('/')[0] === id);
    const order = ['cut-fuel', 'cut-throttle', 'stand-still', 'hold-brake', 'cut-fuel-more'].map(at);
    expect(order.every((each) => each >= 0)).toBe(true);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });

  test('nothing within reach of the seat: a remark says so', () => {
    const away: Patch = {
      places: { rear: { name: 'rear', at: { back: '6 ft', right: '0 in' }, reach: 'standing' } },
      valves: { 'fuel-stop-valve': { place: 'rear' }, 'pilot-valve': { place: 'rear' } },
    };
    const outcome = expandProcedures(smallCar(...(smallCars['one pilot valve'] ?? []), away), library, {
      system: 'us',
    });
    expect(outcome.ok ? outcome.remarks.map((remark) => remark.message) : []).toContain(
      "`shut-everything` needs what this car has not got: a way of cutting the main fuel from the driver's seat",
    );
  });
});

describe('what a car lacks', () => {
  test.each([
    [
      'how long the soak is',
      { burners: { 'pilot-burner': { soak: null } } },
      'how long the pilot burner has to heat the vaporizer',
    ],
    ['a brake', { controls: { 'hand-brake': { kind: 'other' } } }, 'a brake'],
    // lighting again after a stop speaks of the same time, and is not complained of besides
    [
      'how long a torch heats the vaporizer',
      {
        burners: { 'main-burner': { 'lit-by': 'torch' } },
        vaporizers: { coil: { 'heated-by': ['torch'] } },
        equipment: { torch: { name: 'torch', kind: 'torch', place: 'dash' } },
      },
      'how long the vaporizer has to be heated',
    ],
  ] as const)('%s', (_, patch, lacking) => {
    const outcome = expandProcedures(smallCar(...(smallCars['one pilot valve'] ?? []), patch), library, {
      system: 'us',
    });
    const errors = outcome.ok ? [] : outcome.problems.filter((problem) => problem.severity === 'error');
    expect(errors.map((problem) => problem.code)).toEqual(['procedure-lacks']);
    expect(errors[0]?.message).toContain(lacking);
  });

  test('a valve whose lines do not show what it is for: a remark', () => {
    const car = smallCar(...(smallCars['one pilot valve'] ?? []), {
      valves: {
        odd: {
          name: 'odd valve',
          tag: 'X1',
          place: 'dash',
          kind: 'needle',
          opens: 'clockwise',
          parked: 'shut',
          does: 'Nobody knows.',
        },
      },
      lines: [
        {
          carries: 'main fuel',
          through: ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'coil', 'main-burner'],
        },
        { carries: 'pilot fuel', through: ['pilot-tank', 'pilot-valve', 'pilot-burner'] },
        { carries: 'water', through: ['water-tank', 'feed-pump', 'check-valve', 'boiler'] },
        { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
        { carries: 'water', through: ['feed-pump', 'bypass-valve', 'water-tank'] },
        { carries: 'water', through: ['boiler', 'blow-down-tap', 'ground'] },
        { carries: 'water', through: ['boiler', 'water-glass'] },
        { carries: 'water', through: ['boiler', 'odd', 'water-tank'] },
        { carries: 'steam', through: ['boiler', 'throttle', 'engine'] },
        { carries: 'steam', through: ['boiler', 'safety-valve', 'open-air'] },
        { carries: 'steam', through: ['engine', 'drip-cock', 'ground'] },
        { carries: 'exhaust', through: ['engine', 'open-air'] },
      ],
    });
    const outcome = expandProcedures(car, library, { system: 'us' });
    expect(
      outcome.ok
        ? outcome.remarks
            .filter((remark) => remark.code === 'procedure-valve')
            .map((remark) => remark.at?.path)
        : [],
    ).toEqual(['valves.odd']);
  });
});

describe('words and figures', () => {
  test('are the car’s own: names, tags, ways, turns, units', () => {
    const { car } = shape('three pilot valves and a starting branch');
    const crack = (system: 'us' | 'metric') => {
      const outcome = expandProcedures(car, library, { system });
      const steps = outcome.ok ? procedure(outcome.value, 'pilot').steps : [];
      return {
        crack: steps.find((step) => step.id.startsWith('crack-pilot')),
        pressure: steps.find((step) => step.id === 'pilot-pressure/pilot-tank')?.result,
      };
    };
    expect(crack('us').crack?.say).toBe(
      'Hold the flame at the pilot burner, then crack the pilot needle valve (F4).',
    );
    expect(crack('us').crack?.remark).toMatch(
      /^First lift the seat cushion\. To open, turn anticlockwise, but only 1\/8\u00a0turn\./,
    );
    expect(crack('us').pressure).toBe('15\u00a0psi to 20\u00a0psi');
    // 15 psi = 1.034 bar, 20 psi = 1.379 bar (1 psi = 6894.757 Pa, NIST SP 811); the band may only grow narrower in print
    expect(crack('metric').pressure).toBe('1.1\u00a0bar to 1.3\u00a0bar');
  });

  test('a caution is dropped where it does not apply', () => {
    const cautions = (name: string) =>
      new Set(
        shape(name).procedures.flatMap((each) =>
          each.steps.flatMap((step) => step.cautions.map((caution) => caution.id)),
        ),
      );
    expect(cautions('one pilot valve')).toContain('only-air');
    expect(cautions('electric ignition, monotube, condenser')).not.toContain('only-air');
    expect(cautions('electric ignition, monotube, condenser')).toContain('monotube-feed');
  });
});
