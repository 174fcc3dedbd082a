/** Names that lead nowhere, lead to the wrong thing, or could mean two. */
import { describe, expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

describe('names nobody has', () => {
  test('near to one of the right kind', () => {
    expect(told(spoiled(['place: dash, kind: dial', 'place: dahs, kind: dial']))).toMatchInlineSnapshot(`
      "158:44 error spec-unknown-name at “dahs, kind: dial, reads:”
        nothing in the spec is called \`dahs\`
        found: \`dahs\`
        expected: \`dash\`
        mend: write \`dash\`, or add \`dahs\`"
    `);
  });

  test('near to none', () => {
    expect(told(spoiled(['place: dash, kind: dial', 'place: roof, kind: dial']))).toMatchInlineSnapshot(`
      "158:44 error spec-unknown-name at “roof, kind: dial, reads:”
        nothing in the spec is called \`roof\`
        found: \`roof\`
        expected: the key of a place
        mend: add \`roof\`, or name one that is there: \`dash\`, \`underneath\`"
    `);
  });

  test('in a list', () => {
    expect(told(spoiled(['drips: [drip-cock]', 'drips: [drip-cock, drip-tap]']))).toMatchInlineSnapshot(`
      "137:22 error spec-unknown-name at “drip-tap]”
        nothing in the spec is called \`drip-tap\`
        found: \`drip-tap\`
        expected: the key of a valve
        mend: add \`drip-tap\`, or name one that is there: \`fuel-stop-valve\`, \`pilot-valve\`, \`throttle\`, \`drip-cock\`, \`bypass-valve\`, \`blow-down-tap\`; if the car has none, take it out of this list"
    `);
  });

  test('on a line', () => {
    expect(
      told(
        spoiled(
          ['water-tank, feed-pump, check-valve', 'water-tank, strainer-two, check-valve'],
          ['- { carries: water, through: [feed-pump', '- { carries: water, through: [water-tank, feed-pump'],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "173:45 error spec-unknown-name at “strainer-two, check-valv”
        nothing in the spec is called \`strainer-two\`
        found: \`strainer-two\`
        expected: \`strainer\`
        mend: write \`strainer\`, or add \`strainer-two\`; if the car has none, take it out of this list"
    `);
  });

  test('a name that plain objects have', () => {
    expect(
      told(spoiled(['safety-valve: safety-valve\n', 'safety-valve: constructor\n'])),
    ).toMatchInlineSnapshot(`
      "104:17 error spec-unknown-name at “constructor”
        nothing in the spec is called \`constructor\`
        found: \`constructor\`
        expected: the key of a device
        mend: add \`constructor\`, or name one that is there: \`automatic\`, \`check-valve\`, \`safety-valve\`"
    `);
  });

  test('another such name', () => {
    expect(
      told(spoiled(['throttle-lock: throttle-lock\n', 'throttle-lock: toString\n'])),
    ).toMatchInlineSnapshot(`
      "136:18 error spec-unknown-name at “toString”
        nothing in the spec is called \`toString\`
        found: \`toString\`
        expected: the key of a lock
        mend: add \`toString\`, or name one that is there: \`throttle-lock\`"
    `);
  });

  test('a liquid that neither the spec nor the library has', () => {
    expect(told(spoiled(['liquid: kerosene', 'liquid: kerosine']))).toMatchInlineSnapshot(`
      "55:19 error spec-unknown-name at “kerosine, share: 90 % }”
        nothing in the spec is called \`kerosine\`
        found: \`kerosine\`
        expected: \`kerosene\`
        mend: write \`kerosene\`, or add \`kerosine\`"
    `);
  });
});

describe('names of the wrong kind', () => {
  test('a tank where a valve belongs', () => {
    expect(told(spoiled(['throttle: throttle\n', 'throttle: water-tank\n']))).toMatchInlineSnapshot(`
      "135:13 error spec-wrong-part at “water-tank”
        \`water-tank\` is a tank, which cannot stand in \`engine.throttle\`
        found: \`water-tank\`
        expected: the key of a valve
        mend: name one of: \`fuel-stop-valve\`, \`pilot-valve\`, \`throttle\`, \`drip-cock\`, \`bypass-valve\`, \`blow-down-tap\`"
    `);
  });

  test('a place on a line', () => {
    expect(told(spoiled(['through: [engine, open-air]', 'through: [engine, dash]']))).toMatchInlineSnapshot(`
      "180:43 error spec-wrong-part at “dash] }”
        \`dash\` is a place, which cannot stand in \`lines.10.through.2\`
        found: \`dash\`
        expected: the key of a tank, a boiler, a superheater, a feed-heater, a condenser, a burner, a vaporizer, an engine, a pump, a valve, a device, a gauge or a fitting, \`open-air\` or \`ground\`
        mend: name one of: \`boiler\`, \`engine\`, \`water-tank\`, \`fuel-tank\`, \`pilot-tank\`, \`main-burner\`, \`pilot-burner\`, \`coil\`, \`feed-pump\`, \`fuel-stop-valve\`, \`pilot-valve\`, \`throttle\` and 13 more"
    `);
  });

  test('an end of lines as the content of a tank', () => {
    expect(told(spoiled(['holds: water', 'holds: open-air']))).toMatchInlineSnapshot(`
      "62:12 error spec-wrong-part at “open-air”
        \`open-air\` is an end of lines, which cannot stand in \`tanks.water-tank.holds\`
        found: \`open-air\`
        expected: the key of a fuel, \`water\` or \`cylinder-oil\`
        mend: name one of: \`spirit\`, \`blend\`, \`water\`, \`cylinder-oil\`"
    `);
  });

  test('the content of tanks on a line', () => {
    expect(told(spoiled(['through: [engine, open-air]', 'through: [engine, water]']))).toMatchInlineSnapshot(`
      "180:43 error spec-wrong-part at “water] }”
        \`water\` is a content of tanks, which cannot stand in \`lines.10.through.2\`
        found: \`water\`
        expected: the key of a tank, a boiler, a superheater, a feed-heater, a condenser, a burner, a vaporizer, an engine, a pump, a valve, a device, a gauge or a fitting, \`open-air\` or \`ground\`
        mend: name one of: \`boiler\`, \`engine\`, \`water-tank\`, \`fuel-tank\`, \`pilot-tank\`, \`main-burner\`, \`pilot-burner\`, \`coil\`, \`feed-pump\`, \`fuel-stop-valve\`, \`pilot-valve\`, \`throttle\` and 13 more"
    `);
  });

  test('a device that is not a safety valve', () => {
    expect(
      told(spoiled(['safety-valve: safety-valve\n', 'safety-valve: check-valve\n'])),
    ).toMatchInlineSnapshot(`
      "104:17 error spec-wrong-part at “check-valve”
        \`check-valve\` is a check-valve, not a safety valve
        expected: a device of kind \`safety-valve\`
        mend: name the safety valve, or correct the kind of the device"
    `);
  });
});

describe('keys, names and tags used twice', () => {
  test('a key in two sections', () => {
    expect(told(spoiled(['  hand-brake:', '  throttle:']))).toMatchInlineSnapshot(`
      "165:3 error spec-name-twice at “throttle: { name: hand b”
        the key \`throttle\` is used twice
        found: \`controls.throttle\` and \`valves.throttle\` (line 147)
        expected: a key of its own for each
        mend: give one of them another key"
    `);
  });

  test('a name, whatever its capitals', () => {
    expect(told(spoiled(['name: hand brake,', 'name: Throttle Valve,']))).toMatchInlineSnapshot(`
      "165:23 error spec-name-twice at “Throttle Valve, place: d”
        the name \`Throttle Valve\` is used twice
        found: \`controls.hand-brake\` and \`valves.throttle\` (line 147)
        expected: a name of its own for each
        mend: give one of them another name"
    `);
  });

  test('a tag', () => {
    expect(told(spoiled(['tag: F2', 'tag: F1']))).toMatchInlineSnapshot(`
      "146:42 error spec-name-twice at “F1, place: dash, kind: n”
        the tag \`F1\` is used twice
        found: \`valves.pilot-valve\` and \`valves.fuel-stop-valve\` (line 145)
        expected: a tag of its own for each
        mend: give one of them another tag"
    `);
  });

  test('a key that means something in every spec', () => {
    expect(told(spoiled(['  hand-brake:', '  condenser:']))).toMatchInlineSnapshot(`
      "165:3 error spec-name-twice at “condenser: { name: hand”
        the key \`condenser\` already means something in every spec
        found: \`controls.condenser\`
        expected: a key of its own
        mend: rename it, such as \`condenser-control\`"
    `);
  });

  test('an end of lines as a key', () => {
    expect(told(spoiled(['  hand-brake:', '  ground:']))).toMatchInlineSnapshot(`
      "165:3 error spec-name-twice at “ground: { name: hand bra”
        the key \`ground\` already means something in every spec
        found: \`controls.ground\`
        expected: a key of its own
        mend: rename it, such as \`ground-control\`"
    `);
  });

  test('a fuel may be called what its liquid is called', () => {
    expect(
      told(
        spoiled(
          ['  spirit:\n    name: light spirit', '  gasoline:\n    name: gasoline'],
          ['holds: spirit', 'holds: gasoline'],
          ['    fuel: spirit', '    fuel: gasoline'],
        ),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });
});

test('the name that the papers print is told from the key', () => {
  expect(told(spoiled(['drips: [drip-cock]', 'drips: [Drip cock]'])).replace(/^.*\n/, '')).toBe(
    [
      '  `Drip cock` is what the papers call `drip-cock`, and not its key',
      '  found: `Drip cock`',
      '  expected: `drip-cock`',
      '  mend: write `drip-cock`',
    ].join('\n'),
  );
});

test('a fuel that is no liquid is told what this program knows', () => {
  expect(told(spoiled(['liquid: kerosene', 'liquid: coal']))).toMatch(
    /mend: describe `coal` under `liquids` if it is a liquid \(burners of solid fuel are not known here\), or name/,
  );
});

describe('names while other things are wrong', () => {
  test('a name is looked for although a field cannot be read', () => {
    expect(
      told(spoiled(['capacity: 20 US gal', 'capacity: 20'], ['drips: [drip-cock]', 'drips: [drip-tap]'])),
    ).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “20”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`20\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: say the unit: \`20 US gal\`, \`20 imp gal\` or \`20 L\`
      137:11 error spec-unknown-name at “drip-tap]”
        nothing in the spec is called \`drip-tap\`
        found: \`drip-tap\`
        expected: the key of a valve
        mend: add \`drip-tap\`, or name one that is there: \`fuel-stop-valve\`, \`pilot-valve\`, \`throttle\`, \`drip-cock\`, \`bypass-valve\`, \`blow-down-tap\`; if the car has none, take it out of this list"
    `);
  });

  test('a missing section does not make all its names unknown', () => {
    expect(
      told(
        spoiled([
          'locks:\n  throttle-lock: { name: throttle lock, place: dash, locks: throttle, how: turn the ring }\n',
          '',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "2:1 error spec-missing at “kettlebook: 1”
        \`locks\` is missing
        expected: every lock
        mend: add \`locks\`, or \`locks: {}\` if there is none"
    `);
  });

  test('a misspelt section does not make all its names unknown', () => {
    expect(told(spoiled(['valves:', 'valvs:']))).toMatchInlineSnapshot(`
      "144:1 error spec-unknown-key at “valvs:”
        there is no key \`valvs\` here
        found: \`valvs\`
        expected: \`valves\`
        mend: write \`valves\`"
    `);
  });

  test('an empty section does not make all its names unknown', () => {
    expect(
      told(
        spoiled([
          '  coil: { name: vaporizer, place: underneath, heated-by: [pilot-burner], hot-when: a drop of water dances off it }\n',
          '',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "124:1 error spec-wrong-type at “vaporizers:”
        \`vaporizers\` is empty
        found: nothing after the colon
        expected: every vaporizer
        mend: write what belongs to it, or \`{}\` if there is none"
    `);
  });

  test('a key that cannot be one still has its name', () => {
    expect(
      told(spoiled(['  strainer: {', '  Strainer: {'], ['fuel-tank, strainer,', 'fuel-tank, Strainer,'])),
    ).toMatchInlineSnapshot(`
      "168:3 error spec-key at “Strainer: { name: fuel s”
        \`Strainer\` cannot be a key
        found: \`Strainer\`
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named"
    `);
  });
});
