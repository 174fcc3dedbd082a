/** Amounts, pressures, dates and places that cannot be so. */
import { describe, expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

describe('tanks', () => {
  test('filled above the brim', () => {
    expect(told(spoiled(['fill-to: 6 US gal', 'fill-to: 9 US gal']))).toMatchInlineSnapshot(`
      "77:14 error spec-tank at “9 US gal”
        \`fill-to\` of fuel tank (9 US gal) is above its capacity (8 US gal)
        found: \`9 US gal\`
        expected: at most \`8 US gal\`
        mend: correct one of the two; its capacity stands in line 76
        note: More cannot be put in than it holds."
    `);
  });

  test('filled to the brim in other units is not above it', () => {
    expect(
      told(
        spoiled(
          ['capacity: 1 US gal', 'capacity: 0.8 US gal'],
          ['    pressure: { from: 15 psi gauge, to: 20 psi gauge }\n', ''],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "87:14 remark spec-tank at “0.8 US gal”
        pilot tank is filled so full that its fuel has no room to swell
        found: \`0.8 US gal\` of \`0.8 US gal\`
        expected: a twentieth left empty
        mend: put \`fill-to\` at 95 % of the capacity or less
        note: Fuel poured in cool swells beside a hot boiler, and comes out at the cap or the vent."
    `);
  });

  test('fuel with nineteen twentieths of its tank has room to swell', () => {
    expect(
      told(
        spoiled(
          ['fill-to: 0.8 US gal', 'fill-to: 0.95 US gal'],
          ['    pressure: { from: 15 psi gauge, to: 20 psi gauge }\n', ''],
        ),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('charged with air and filled to the brim', () => {
    expect(told(spoiled(['fill-to: 6 US gal', 'fill-to: 8 US gal']))).toMatchInlineSnapshot(`
      "77:14 error spec-tank at “8 US gal”
        fuel tank is charged with air, but filled to the brim
        found: \`8 US gal\`
        expected: less than \`8 US gal\`
        mend: leave room for the air; it is the air that drives the fuel out"
    `);
  });

  test('charged with air, and nothing says how far to fill it', () => {
    expect(told(spoiled(['    fill-to: 6 US gal\n', '']))).toMatchInlineSnapshot(`
      "77:5 remark spec-tank at “pressure: { from: 40 psi”
        fuel tank is charged with air, but nothing says how full it may be
        expected: \`fill-to\`, below the capacity
        mend: add \`fill-to\`; a charged tank needs air over the liquid
        note: The less air, the faster the pressure falls as fuel is used."
    `);
  });

  test('a reserve above the capacity', () => {
    expect(told(spoiled(['reserve: 4 US gal', 'reserve: 24 US gal']))).toMatchInlineSnapshot(`
      "65:14 error spec-tank at “24 US gal”
        reserve and unusable part of water tank leave nothing to run on
        found: 24 US gal and 1 US gal of 20 US gal
        expected: together less than what is put in
        mend: correct the reserve, the unusable part or the capacity"
    `);
  });

  test('reserve and unusable part together', () => {
    expect(told(spoiled(['reserve: 4 US gal', 'reserve: 19 US gal']))).toMatchInlineSnapshot(`
      "65:14 error spec-tank at “19 US gal”
        reserve and unusable part of water tank leave nothing to run on
        found: 19 US gal and 1 US gal of 20 US gal
        expected: together less than what is put in
        mend: correct the reserve, the unusable part or the capacity"
    `);
  });

  test('an unusable part above the capacity', () => {
    expect(
      told(spoiled(['unusable: 1 US gal\n    reserve: 4 US gal', 'unusable: 30 L\n    reserve: 60 L'])),
    ).toMatchInlineSnapshot(`
      "65:14 error spec-tank at “60 L”
        reserve and unusable part of water tank leave nothing to run on
        found: 60 L and 30 L of 20 US gal
        expected: together less than what is put in
        mend: correct the reserve, the unusable part or the capacity"
    `);
  });

  test('stick readings that fall', () => {
    expect(told(spoiled(['volume: 4 US gal', 'volume: 20 US gal']))).toMatchInlineSnapshot(`
      "71:9 error spec-tank at “{ depth: 10 in, volume:”
        the stick readings of water tank do not rise
        found: \`10 in\` with \`20 US gal\` after \`2 in\` with \`20 US gal\`
        expected: each reading deeper and fuller than the one before
        mend: put them in order, or measure again"
    `);
  });

  test('a stick reading above the capacity', () => {
    expect(told(spoiled(['volume: 20 US gal', 'volume: 25 US gal']))).toMatchInlineSnapshot(`
      "71:33 error spec-tank at “25 US gal }”
        a stick reading of water tank holds more than the tank
        found: \`25 US gal\`
        expected: at most \`20 US gal\`
        mend: correct the reading or the capacity"
    `);
  });
});

describe('marks of a gauge', () => {
  const read = (marks: string, by = 'gauge') =>
    told(
      spoiled([
        'read: stick\n    stick:\n      - { depth: 2 in',
        `read: ${by}\n    marks:\n${marks}    stick:\n      - { depth: 2 in`,
      ]),
    );
  const rising = '      - { mark: 1/2, volume: 9 US gal }\n      - { mark: full, volume: 19 US gal }\n';

  test('that do not rise', () => {
    expect(read(rising.replace('19 US gal', '8 US gal'))).toMatchInlineSnapshot(`
      "71:9 error spec-tank at “{ mark: full, volume: 8”
        the marks of water tank do not rise
        found: \`8 US gal\` after \`9 US gal\`
        expected: each mark fuller than the one before
        mend: put them in order from the lowest up, or measure again"
    `);
  });

  test('above the capacity', () => {
    expect(read(rising.replace('19 US gal', '22 US gal'))).toMatchInlineSnapshot(`
      "71:31 error spec-tank at “22 US gal }”
        a mark of water tank stands for more than the tank holds
        found: \`22 US gal\`
        expected: at most \`20 US gal\`
        mend: correct the mark or the capacity"
    `);
  });

  test('on a tank that is not read on one', () => {
    expect(read(rising, 'stick')).toMatchInlineSnapshot(`
      "69:5 error spec-tank at “marks:”
        marks of a gauge are given for water tank, which is not read on one
        found: \`read: stick\`
        expected: \`read: gauge\` or \`read: glass\`
        mend: change \`read\`, or write depths under \`stick\` instead"
    `);
  });

  test('in order', () => {
    expect(read(rising)).toMatchInlineSnapshot(`"fine"`);
  });
});

describe('blends', () => {
  test('too much', () => {
    expect(told(spoiled(['share: 90 %', 'share: 95 %']))).toMatchInlineSnapshot(`
      "54:5 error spec-shares at “parts:”
        the shares of kerosene blend make 105 %
        expected: 100 %
        mend: correct the shares"
    `);
  });

  test('too little', () => {
    expect(told(spoiled(['share: 10 %', 'share: 5 %']))).toMatchInlineSnapshot(`
      "54:5 error spec-shares at “parts:”
        the shares of kerosene blend make 95 %
        expected: 100 %
        mend: correct the shares"
    `);
  });

  test('rounded thirds are a whole', () => {
    expect(
      told(spoiled(['share: 90 %', 'share: 66.7 %'], ['share: 10 %', 'share: 33.3 %'])),
    ).toMatchInlineSnapshot(`"fine"`);
  });
});

describe('pressures', () => {
  test('the working pressure above the cut-out', () => {
    expect(
      told(spoiled(['working-pressure: 200 psi gauge', 'working-pressure: 230 psi gauge'])),
    ).toMatchInlineSnapshot(`
      "102:21 error spec-pressures at “230 psi gauge”
        the working pressure (230 psi gauge) is above the pressure at which the burner cuts out (220 psi gauge)
        found: \`230 psi gauge\`
        expected: at most \`220 psi gauge\`
        mend: correct one of the two; the pressure at which the burner cuts out stands in line 103
        note: The burner would go out before the working pressure is reached."
    `);
  });

  test('the cut-out above the safety valve', () => {
    expect(
      told(spoiled(['burner-cuts-out: 220 psi gauge', 'burner-cuts-out: 260 psi gauge'])),
    ).toMatchInlineSnapshot(`
      "103:20 error spec-pressures at “260 psi gauge”
        the pressure at which the burner cuts out (260 psi gauge) is not below the safety valve’s set pressure (250 psi gauge)
        found: \`260 psi gauge\`
        expected: less than \`250 psi gauge\`
        mend: correct one of the two; the safety valve’s set pressure stands in line 155
        note: The safety valve would lift before the automatic shuts the burner, and be worn out when it is needed."
    `);
  });

  test('the safety valve above what is allowed', () => {
    expect(told(spoiled(['set: 250 psi gauge', 'set: 310 psi gauge']))).toMatchInlineSnapshot(`
      "155:83 error spec-pressures at “310 psi gauge, does: Let”
        the safety valve’s set pressure (310 psi gauge) is above the allowed pressure (300 psi gauge)
        found: \`310 psi gauge\`
        expected: at most \`300 psi gauge\`
        mend: correct one of the two; the allowed pressure stands in line 101
        note: A safety valve set above the allowed pressure protects nothing; the boiler inspector decides what is allowed."
    `);
  });

  test('the safety valve at what is allowed', () => {
    expect(told(spoiled(['set: 250 psi gauge', 'set: 300 psi gauge']))).toMatchInlineSnapshot(`"fine"`);
  });

  test('the burner cutting in above its cutting out', () => {
    expect(
      told(
        spoiled([
          'burner-cuts-out: 220 psi gauge',
          'burner-cuts-out: 220 psi gauge\n  burner-cuts-in: 16 bar gauge',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "104:19 error spec-pressures at “16 bar gauge”
        the pressure at which the burner cuts in (16 bar gauge) is not below the pressure at which it cuts out (220 psi gauge)
        found: \`16 bar gauge\`
        expected: less than \`220 psi gauge\`
        mend: correct one of the two; the pressure at which it cuts out stands in line 103
        note: An automatic opens below the pressure at which it shuts."
    `);
  });

  test('moving only above the cut-out', () => {
    expect(
      told(
        spoiled([
          'burner-cuts-out: 220 psi gauge',
          'burner-cuts-out: 220 psi gauge\n  least-to-move: 220 psi gauge',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "104:18 error spec-pressures at “220 psi gauge”
        the least pressure to move at (220 psi gauge) is not below the pressure at which the burner cuts out (220 psi gauge)
        found: \`220 psi gauge\`
        expected: less than \`220 psi gauge\`
        mend: correct one of the two; the pressure at which the burner cuts out stands in line 103
        note: The car could never be moved."
    `);
  });

  test('blowing down above working pressure', () => {
    expect(
      told(
        spoiled([
          'blow-down: [blow-down-tap]',
          'blow-down: [blow-down-tap]\n  blow-down-pressure: 210 psi gauge',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "111:23 error spec-pressures at “210 psi gauge”
        the blow-down pressure (210 psi gauge) is above the working pressure (200 psi gauge)
        found: \`210 psi gauge\`
        expected: at most \`200 psi gauge\`
        mend: correct one of the two; the working pressure stands in line 102
        note: Blowing down above working pressure empties the boiler faster than it can be watched."
    `);
  });

  test('the end of blowing down is said of each valve or of none', () => {
    const until = (ends: string) =>
      told(
        spoiled([
          'blow-down: [blow-down-tap]',
          `blow-down: [blow-down-tap]\n  blow-down-pressure: 60 psi gauge\n  blown-down-until: ${ends}`,
        ]),
      );
    expect(until('[down by a third of the glass]')).toBe('fine');
    expect(until('[a third, two thirds]')).toMatchInlineSnapshot(`
      "112:3 error spec-not-for-each at “blown-down-until: [a thi”
        \`blown-down-until\` does not say of every blow-down valve when it is shut again
        found: 2
        expected: 1, one for each valve of \`blow-down\`, in the same order
        mend: write for each valve what is seen when it is shut again"
    `);
  });

  test('a safety valve without its pressure', () => {
    expect(told(spoiled(['set: 250 psi gauge, ', '']))).toMatchInlineSnapshot(`
      "155:3 error spec-no-set-pressure at “safety-valve: { name: sa”
        safety valve has no set pressure
        expected: \`set\`, as gauge pressure
        mend: add \`set\`, from the plate or the last test"
    `);
  });

  test('an automatic that says another figure than the boiler', () => {
    expect(
      told(spoiled(['kind: steam-automatic, does', 'kind: steam-automatic, set: 200 psi gauge, does'])),
    ).toMatchInlineSnapshot(`
      "153:86 error spec-pressures at “200 psi gauge, does: Shu”
        steam automatic is set to 200 psi gauge, but the boiler says the burner cuts out at 220 psi gauge
        found: \`200 psi gauge\`
        expected: \`220 psi gauge\`
        mend: take \`set\` out of the device; the boiler’s figure is enough"
    `);
  });

  test('an automatic that says the same figure in other units', () => {
    expect(
      told(
        spoiled(
          ['burner-cuts-out: 220 psi gauge', 'burner-cuts-out: 15 bar gauge'],
          ['kind: steam-automatic, does', 'kind: steam-automatic, set: 1500 kPa gauge, does'],
        ),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('a gauge’s band upside down', () => {
    expect(
      told(spoiled(['from: 150 psi gauge, to: 220 psi gauge', 'from: 220 psi gauge, to: 150 psi gauge'])),
    ).toMatchInlineSnapshot(`
      "158:97 error spec-pressures at “220 psi gauge, to: 150 p”
        \`from\` of steam gauge (220 psi gauge) is not below \`to\` (150 psi gauge)
        found: \`220 psi gauge\`
        expected: less than \`150 psi gauge\`
        mend: correct one of the two; \`to\` stands in line 158
        note: The card would print a band that no needle can be in."
    `);
  });

  test('a gauge’s band above its red line', () => {
    expect(told(spoiled(['red-line: 300 psi gauge', 'red-line: 210 psi gauge']))).toMatchInlineSnapshot(`
      "158:116 error spec-pressures at “220 psi gauge, red-line:”
        \`to\` of steam gauge (220 psi gauge) is above \`red-line\` (210 psi gauge)
        found: \`220 psi gauge\`
        expected: at most \`210 psi gauge\`
        mend: correct one of the two; \`red-line\` stands in line 158
        note: The card would print a band that no needle can be in."
    `);
  });

  test('temperatures of a gauge that reads pressure', () => {
    const words = [
      'from: 150 psi gauge, to: 220 psi gauge',
      'temperatures: { from: 380 °C }, to: 220 psi gauge',
    ] as const;
    expect(told(spoiled(words))).toContain('`temperatures`, but it reads pressure');
  });

  test('a band of temperatures upside down, or above its red line', () => {
    const band = (marks: string) =>
      told(
        spoiled([
          'reads: pressure, of: boiler, from: 150 psi gauge, to: 220 psi gauge, red-line: 300 psi gauge',
          `reads: temperature, of: boiler, temperatures: { ${marks} }`,
        ]),
      );
    expect(band('from: 420 °C, to: 380 °C')).toContain(
      '`from` of steam gauge (420 °C) is not below `to` (380 °C)',
    );
    expect(band('from: 380 °C, to: 420 °C, red-line: 400 °C')).toContain(
      '(420 °C) is above `red-line` (400 °C)',
    );
    expect(band('from: 380 °C, to: 420 °C, red-line: 420 °C')).not.toContain('temperatures');
  });

  test('a red line above what is allowed', () => {
    expect(told(spoiled(['red-line: 300 psi gauge', 'red-line: 350 psi gauge']))).toMatchInlineSnapshot(`
      "158:141 error spec-pressures at “350 psi gauge }”
        \`red-line\` of steam gauge (350 psi gauge) is above the allowed pressure (300 psi gauge)
        found: \`350 psi gauge\`
        expected: at most \`300 psi gauge\`
        mend: correct one of the two; the allowed pressure stands in line 101
        note: Nothing printed may invite a pressure above the allowed one."
    `);
  });

  test('a band above what is allowed, without a red line', () => {
    expect(
      told(spoiled(['to: 220 psi gauge, red-line: 300 psi gauge', 'to: 320 psi gauge'])),
    ).toMatchInlineSnapshot(`
      "158:116 error spec-pressures at “320 psi gauge }”
        \`to\` of steam gauge (320 psi gauge) is above the allowed pressure (300 psi gauge)
        found: \`320 psi gauge\`
        expected: at most \`300 psi gauge\`
        mend: correct one of the two; the allowed pressure stands in line 101
        note: Nothing printed may invite a pressure above the allowed one."
    `);
  });

  test('a tank’s band upside down', () => {
    expect(
      told(spoiled(['from: 15 psi gauge, to: 20 psi gauge', 'from: 20 psi gauge, to: 15 psi gauge'])),
    ).toMatchInlineSnapshot(`
      "88:23 error spec-pressures at “20 psi gauge, to: 15 psi”
        the lowest pressure of pilot tank (20 psi gauge) is not below its highest (15 psi gauge)
        found: \`20 psi gauge\`
        expected: less than \`15 psi gauge\`
        mend: correct one of the two; its highest stands in line 88
        note: There would be no pressure at which it serves."
    `);
  });
});

describe('orders', () => {
  test('the low rate above the full rate', () => {
    expect(told(spoiled(['low-rate: 1 US gal/h', 'low-rate: 5 US gal/h']))).toMatchInlineSnapshot(`
      "115:113 error spec-order at “5 US gal/h, lit-by: pilo”
        the low rate of main burner (5 US gal/h) is not below its full rate (3 US gal/h)
        found: \`5 US gal/h\`
        expected: less than \`3 US gal/h\`
        mend: correct one of the two; its full rate stands in line 115
        note: The two may be changed about."
    `);
  });

  test('the least soak above the good soak', () => {
    expect(told(spoiled(['least: 10 min', 'least: 1 h']))).toMatchInlineSnapshot(`
      "122:20 error spec-order at “1 h, good: 20 min }”
        the least soak (1 h) is above the good soak (20 min)
        found: \`1 h\`
        expected: at most \`20 min\`
        mend: correct one of the two; the good soak stands in line 122
        note: A hurried soak floods the burner with liquid fuel."
    `);
  });

  test('the usual speed above the most', () => {
    expect(told(spoiled(['usual-speed: 12 mph', 'usual-speed: 40 km/h']))).toMatchInlineSnapshot(`
      "183:16 error spec-order at “40 km/h”
        the usual speed (40 km/h) is above the most (20 mph)
        found: \`40 km/h\`
        expected: at most \`20 mph\`
        mend: correct one of the two; the most stands in line 184
        note: The two may be changed about."
    `);
  });

  test('an inspection due before the last', () => {
    expect(told(spoiled(['due: 2027-01-10', 'due: 2026-01-10']))).toMatchInlineSnapshot(`
      "112:66 error spec-order at “2026-01-10 }”
        the next inspection is not due after the last one
        found: \`2026-01-10\`
        expected: later than \`2026-01-10\`
        mend: look at the certificate"
    `);
  });

  test('an inspection past its date is a remark', () => {
    expect(told(spoiled(['due: 2027-01-10', 'due: 2026-02-01']))).toMatchInlineSnapshot(`
      "112:66 remark spec-inspection-due at “2026-02-01 }”
        the boiler’s inspection was due on 2026-02-01
        mend: do not raise steam before the inspector has seen it; then bring this up to date"
    `);
  });

  test('an earlier issue with a later date', () => {
    expect(told(spoiled(['date: 2025-11-02', 'date: 2026-11-02']))).toMatchInlineSnapshot(`
      "27:13 error spec-order at “2026-11-02”
        issue A is dated after issue B
        found: \`2026-11-02\`
        expected: not later than \`2026-03-14\`
        mend: put the newest issue first, and give each its own letter"
    `);
  });

  test('an earlier issue with a later letter', () => {
    expect(told(spoiled(['letter: A', 'letter: C']))).toMatchInlineSnapshot(`
      "26:15 error spec-order at “C”
        issue C cannot come before issue B
        found: \`C\`
        expected: a letter before \`B\`
        mend: put the newest issue first, and give each its own letter"
    `);
  });

  test('AA comes after Z', () => {
    expect(told(spoiled(['letter: B', 'letter: AA'], ['letter: A\n', 'letter: Z\n']))).toMatchInlineSnapshot(
      `"fine"`,
    );
  });
});

describe('places', () => {
  test('behind the car', () => {
    expect(told(spoiled(['back: 4 ft', 'back: 14 ft']))).toMatchInlineSnapshot(`
      "43:17 error spec-outside-car at “14 ft, right: -10 in }”
        under the seat lies outside the car
        found: \`14 ft\`
        expected: at most the length, \`9 ft\`
        mend: measure \`back\` from the foremost point, \`right\` from the centre line and \`up\` from the ground"
    `);
  });

  test('beside the car', () => {
    expect(told(spoiled(['right: -10 in', 'right: -48 in']))).toMatchInlineSnapshot(`
      "43:30 error spec-outside-car at “-48 in }”
        under the seat lies outside the car
        found: \`-48 in\`
        expected: at most half the width, \`4 ft 6 in\`
        mend: measure \`back\` from the foremost point, \`right\` from the centre line and \`up\` from the ground"
    `);
  });

  test('above the car', () => {
    expect(
      told(
        spoiled(['front-axle-back: 1 ft', 'front-axle-back: 1 ft\n  height: 5 ft'], ['up: 3 ft', 'up: 8 ft']),
      ),
    ).toMatchInlineSnapshot(`
      "40:40 error spec-outside-car at “8 ft }”
        dash lies outside the car
        found: \`8 ft\`
        expected: at most the height, \`5 ft\`
        mend: measure \`back\` from the foremost point, \`right\` from the centre line and \`up\` from the ground"
    `);
  });

  test('a little outside is fine: a lamp sticks out', () => {
    expect(told(spoiled(['back: 4 ft', 'back: 9 ft 10 in']))).toMatchInlineSnapshot(`"fine"`);
  });

  test('a rear axle behind the car', () => {
    expect(told(spoiled(['wheelbase: 6 ft', 'wheelbase: 9 ft']))).toMatchInlineSnapshot(`
      "16:14 error spec-outside-car at “9 ft”
        the rear axle lies behind the car
        found: \`9 ft\` behind a front axle at \`1 ft\`
        expected: together at most the length, \`9 ft\`
        mend: measure \`length\`, \`wheelbase\` and \`front-axle-back\` again"
    `);
  });
});

describe('what no car may be without', () => {
  test('an extinguisher', () => {
    expect(told(spoiled(['kind: extinguisher', 'kind: other']))).toMatchInlineSnapshot(`
      "93:1 error spec-lacks at “equipment:”
        the car has no extinguisher
        mend: carry one for liquid fuel, and add it with \`kind: extinguisher\`"
    `);
  });

  test('a lighter and a heater that burn on by themselves', () => {
    const text = spoiled(
      ['lit-by: torch', 'lit-by: extinguisher'],
      ['heated-by: [pilot-burner', 'heated-by: [extinguisher'],
    );
    expect(told(text)).toMatchInlineSnapshot(`
      "121:13 error spec-lit-by at “extinguisher”
        the pilot burner is lit by the dry-powder extinguisher, which is no torch
        found: \`kind: extinguisher\`
        expected: equipment of \`kind: torch\`: what stands by itself and burns on while everybody is clear
        mend: name what is set burning there, such as a blowlamp, or a wick on a wire, with \`kind: torch\`; a match in the hand keeps the hand there
      125:59 error spec-lit-by at “extinguisher], hot-when:”
        the vaporizer is heated by the dry-powder extinguisher, which is no torch
        found: \`kind: extinguisher\`
        expected: equipment of \`kind: torch\`: what stands by itself and burns on while everybody is clear
        mend: name what is set burning there, such as a blowlamp, or a wick on a wire, with \`kind: torch\`; a match in the hand keeps the hand there"
    `);
  });

  test('a parking brake that keeps on what is no brake', () => {
    const keeps = (what: string) =>
      told(
        spoiled([
          'kind: parking-brake, does: Holds the rear wheels. }',
          `kind: parking-brake, does: Holds the pedal down., keeps-on: ${what} }\n  pedal: { name: foot pedal, place: dash, kind: brake, does: Stops the car. }`,
        ]),
      );
    expect(keeps('pedal')).toBe('fine');
    expect(keeps('hand-brake')).toMatchInlineSnapshot(`
      "165:108 error spec-wrong-part at “hand-brake }”
        the hand brake cannot keep the hand brake on
        found: \`kind: parking-brake\` and \`kind: parking-brake\`
        expected: a control of \`kind: parking-brake\` that keeps on one of \`kind: brake\`
        mend: name the brake that it holds on, or leave \`keeps-on\` out"
    `);
  });

  test('the height of a roof that is to be drawn', () => {
    expect(told(spoiled(['steering: tiller', 'steering: tiller\n  outline: van']))).toMatchInlineSnapshot(`
      "14:12 error spec-lacks at “van”
        the roof is to be drawn and has no height
        found: \`outline: van\` without \`height\`
        expected: the height of the roof above the ground
        mend: measure from the ground to the top of the roof and give it as \`height\`"
    `);
    expect(
      told(spoiled(['steering: tiller', 'steering: tiller\n  outline: van\n  height: 6 ft 6 in'])),
    ).toMatchInlineSnapshot(`"fine"`);
    expect(told(spoiled(['steering: tiller', 'steering: tiller\n  outline: bare']))).toMatchInlineSnapshot(
      `"fine"`,
    );
  });

  test('a steam gauge', () => {
    expect(
      told(spoiled(['reads: pressure, of: boiler', 'reads: pressure, of: engine'])),
    ).toMatchInlineSnapshot(`
      "157:1 error spec-lacks at “gauges:”
        the car has no steam gauge
        mend: add the gauge with \`reads: pressure\` and \`of: boiler\`"
    `);
  });

  test('a main burner', () => {
    expect(told(spoiled(['job: main,', 'job: pilot,']))).toMatchInlineSnapshot(`
      "114:1 error spec-lacks at “burners:”
        the car has no main burner
        mend: add a burner with \`job: main\`"
    `);
  });

  test('water', () => {
    expect(told(spoiled(['holds: water\n', 'holds: spirit\n']))).toMatchInlineSnapshot(`
      "58:1 error spec-lacks at “tanks:”
        the car has no water tank
        mend: add the tank that holds \`water\`
      59:3 remark spec-feeds-nothing at “water-tank:”
        water tank feeds no burner
        expected: a line that carries fuel from \`water-tank\` on to a burner
        mend: write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up
      63:15 remark spec-tank at “20 US gal”
        water tank is filled so full that its fuel has no room to swell
        found: \`20 US gal\` of \`20 US gal\`
        expected: a twentieth left empty
        mend: put \`fill-to\` at 95 % of the capacity or less
        note: Fuel poured in cool swells beside a hot boiler, and comes out at the cap or the vent.
      173:33 error spec-two-fluids at “water-tank, feed-pump, c”
        water tank holds light spirit, but this line carries water
        expected: a line that carries what the tank holds
        mend: correct \`carries\`, or what the tank \`holds\`
      174:58 error spec-two-fluids at “water-tank] }”
        water tank holds light spirit, but this line carries water
        expected: a line that carries what the tank holds
        mend: correct \`carries\`, or what the tank \`holds\`"
    `);
  });
});

describe('changes', () => {
  test('one that says nothing', () => {
    expect(
      told(spoiled(['running:\n', 'changes:\n  - { in: inspect, because: The tray fills. }\n\nrunning:\n'])),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, because:”
        this change says nothing
        expected: one of \`add\`, \`replace\`, \`move\`, \`leave-out\`
        mend: write one change to an entry"
    `);
  });

  test('one that says two things', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, move: look-under, leave-out: oil-round, after: look-round, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, move: loo”
        this change says \`move\` and \`leave-out\`
        expected: one of \`add\`, \`replace\`, \`move\`, \`leave-out\`
        mend: write one change to an entry"
    `);
  });

  test('a step that goes nowhere', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, move: look-under, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, move: loo”
        this change does not say where the step goes
        expected: either \`before\` or \`after\`, naming a step
        mend: add one of the two"
    `);
  });

  test('a step that goes to two places', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, move: look-under, before: oil-round, after: look-round, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, move: loo”
        this change says twice where the step goes
        expected: either \`before\` or \`after\`, naming a step
        mend: take one of the two out"
    `);
  });

  test('a replacement by nothing', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, replace: look-under, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, replace:”
        this change does not say what the step is replaced with
        expected: \`with\`, and the new step
        mend: add it"
    `);
  });

  test('a step too many', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, leave-out: look-under, with: { id: look, act: look, say: Look. }, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, leave-out”
        \`with\` belongs to \`replace\`, but the change says \`leave-out\`
        expected: \`leave-out\` without \`with\`
        mend: take \`with\` out, or write \`replace\`"
    `);
  });

  test('a place too many', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, leave-out: look-under, after: look-round, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "183:5 error spec-change at “{ in: inspect, leave-out”
        \`leave-out\` leaves steps where they are, but the change says \`after\`
        expected: \`leave-out\` without \`before\` and \`after\`
        mend: take it out, or write a \`move\` of its own"
    `);
  });

  test('good ones', () => {
    expect(
      told(
        spoiled([
          'running:\n',
          'changes:\n  - { in: inspect, leave-out: look-under, because: The tray fills. }\n  - { in: inspect, move: oil-round, after: look-round, because: The tray fills. }\n  - { in: inspect, replace: oil-round, with: { id: look, act: look, say: Look. }, because: The tray fills. }\n  - { in: inspect, add: { id: wipe, act: check, on: strainer, say: Wipe it. }, before: look-round, because: The tray fills. }\n\nrunning:\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });
});
