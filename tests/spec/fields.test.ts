/** Faults in single fields. */
import { describe, expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

describe('version', () => {
  test('another version', () => {
    expect(told(spoiled(['kettlebook: 1', 'kettlebook: 2']))).toMatchInlineSnapshot(`
      "2:13 error spec-version at “2”
        this program reads version 1 of the spec format
        found: \`2\`
        expected: \`1\`
        mend: read it with the newer program it was written for: what this one does not know it would leave out of the papers"
    `);
  });

  test('the version in quotes', () => {
    expect(told(spoiled(['kettlebook: 1', "kettlebook: '1'"]))).toMatchInlineSnapshot(`
      "2:13 error spec-version at “'1'”
        this program reads version 1 of the spec format
        found: \`1\`
        expected: \`1\`
        mend: write it without quotes"
    `);
  });

  test('no version', () => {
    expect(told(spoiled(['kettlebook: 1\n', '']))).toMatchInlineSnapshot(`
      "3:1 error spec-missing at “car:”
        \`kettlebook\` is missing
        expected: the version of this file format
        mend: add \`kettlebook\`, such as \`kettlebook: 1\`"
    `);
  });
});

describe('missing', () => {
  test('a field is told at the key it belongs under', () => {
    expect(told(spoiled(['  year: 1905\n', '']))).toMatchInlineSnapshot(`
      "4:1 error spec-missing at “car:”
        \`car.year\` is missing
        expected: the year it was built
        mend: add \`year\`, such as \`year: 1912\`"
    `);
  });

  test('a field of an entry in braces', () => {
    expect(told(spoiled(['tag: F1, ', '']))).toMatchInlineSnapshot(`
      "145:3 error spec-missing at “fuel-stop-valve: { name:”
        \`valves.fuel-stop-valve.tag\` is missing
        expected: the short tag hung on it
        mend: add \`tag\`, such as \`tag: F1\`"
    `);
  });

  test('a field of a field', () => {
    expect(told(spoiled(['right: 0 in, ', '']))).toMatchInlineSnapshot(`
      "39:5 error spec-missing at “at: { back: 3 ft, up: 3”
        \`places.dash.at.right\` is missing
        expected: to the right of the centre line, looking forward; to the left is negative
        mend: add \`right\`, such as \`right: -14 in\`"
    `);
  });

  test('a quantity', () => {
    expect(told(spoiled(['  length: 9 ft\n', '']))).toMatchInlineSnapshot(`
      "4:1 error spec-missing at “car:”
        \`car.length\` is missing
        expected: from the foremost to the rearmost point
        mend: add \`length\`, such as \`length: 14 ft 6 in\`"
    `);
  });

  test('a whole section is told at the top', () => {
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

  test('the word that tells a shape', () => {
    expect(
      told(
        spoiled([
          '    read: stick\n',
          '    read: stick\n    shape: { length: 3 ft, width: 2 ft, height: 1 ft }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "69:5 error spec-missing at “shape: { length: 3 ft, w”
        \`tanks.water-tank.shape.kind\` is missing
        expected: one of \`rectangular\`, \`lying-cylinder\`, \`standing-cylinder\`, \`lying-oval\`, \`wedge\`
        mend: add \`kind\`"
    `);
  });

  test('a measure of a shape', () => {
    expect(
      told(
        spoiled([
          '    read: stick\n',
          '    read: stick\n    shape: { kind: rectangular, length: 3 ft, width: 2 ft }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "69:5 error spec-missing at “shape: { kind: rectangul”
        \`tanks.water-tank.shape.height\` is missing
        expected: inside height
        mend: add \`height\`, such as \`height: 11 in\`"
    `);
  });
});

describe('unknown keys', () => {
  test('a misspelt key is not also told as missing', () => {
    expect(told(spoiled(['  wheelbase:', '  wheelbasis:']))).toMatchInlineSnapshot(`
      "16:3 error spec-unknown-key at “wheelbasis: 6 ft”
        there is no key \`wheelbasis\` here
        found: \`wheelbasis\`
        expected: \`wheelbase\`
        mend: write \`wheelbase\`"
    `);
  });

  test('a key like nothing', () => {
    expect(told(spoiled(['  seats: 2', '  seats: 2\n  colour: green']))).toMatchInlineSnapshot(`
      "12:3 error spec-unknown-key at “colour: green”
        there is no key \`colour\` here
        found: \`colour\`
        expected: one of \`name\`, \`make\`, \`model\`, \`year\`, \`invented\`, \`number-on-car\`, \`body\`, \`seats\`, \`driver-side\`, \`steering\`, \`length\`, \`width\`, \`outline\`, \`single-wheel\`, \`height\`, \`wheelbase\`, \`front-axle-back\`, \`story\`
        mend: take it out, or put it where it belongs"
    `);
  });

  test('the rest of a text that a comma in braces has cut in two', () => {
    expect(
      told(spoiled(['does: Lets steam to the engine.', 'does: Lets steam to the engine, no more.'])),
    ).toMatchInlineSnapshot(`
      "147:134 error spec-unknown-key at “no more. }”
        the text before this is cut off, since in braces a comma ends it
        found: \`no more.\` by itself
        expected: the whole text in quotes
        mend: put the text in quotes, from its beginning as far as \`no more.\`"
    `);
  });

  test('a key near one that is there already', () => {
    expect(told(spoiled(['  seats: 2', '  seats: 2\n  seat: 3']))).toMatchInlineSnapshot(`
      "12:3 error spec-unknown-key at “seat: 3”
        there is no key \`seat\` here
        found: \`seat\`
        expected: one of \`name\`, \`make\`, \`model\`, \`year\`, \`invented\`, \`number-on-car\`, \`body\`, \`seats\`, \`driver-side\`, \`steering\`, \`length\`, \`width\`, \`outline\`, \`single-wheel\`, \`height\`, \`wheelbase\`, \`front-axle-back\`, \`story\`
        mend: take it out, or put it where it belongs"
    `);
  });

  test('a key of an entry', () => {
    expect(told(spoiled(['    how: lift', '    hw: lift']))).toMatchInlineSnapshot(`
      "45:5 error spec-unknown-key at “hw: lift the seat cushio”
        there is no key \`hw\` here
        found: \`hw\`
        expected: \`how\`
        mend: write \`how\`"
    `);
  });

  test('a key indented too far', () => {
    expect(
      told(
        spoiled([
          '    vent: hole in the cap\n    filler: { place: underneath }',
          '    filler: { place: underneath, vent: hole in the cap }',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "59:3 error spec-missing at “water-tank:”
        \`tanks.water-tank.vent\` is missing
        expected: how air gets in or out; for a charged tank, how its pressure is let off
        mend: add \`vent\`, such as \`vent: hole in the filler cap\`
      66:34 error spec-unknown-key at “vent: hole in the cap }”
        there is no key \`vent\` here
        found: \`vent\`
        expected: one of \`place\`, \`cap\`
        mend: indent it less, so that it stands in \`tanks.water-tank\`"
    `);
  });

  test('a section', () => {
    expect(told(spoiled(['fittings:', 'fitings:']))).toMatchInlineSnapshot(`
      "167:1 error spec-unknown-key at “fitings:”
        there is no key \`fitings\` here
        found: \`fitings\`
        expected: \`fittings\`
        mend: write \`fittings\`"
    `);
  });

  test('a key that plain objects have already', () => {
    expect(
      told(spoiled(['  seats: 2', '  seats: 2\n  __proto__: 3\n  constructor: 4'])),
    ).toMatchInlineSnapshot(`
      "12:3 error spec-unknown-key at “__proto__: 3”
        there is no key \`__proto__\` here
        found: \`__proto__\`
        expected: one of \`name\`, \`make\`, \`model\`, \`year\`, \`invented\`, \`number-on-car\`, \`body\`, \`seats\`, \`driver-side\`, \`steering\`, \`length\`, \`width\`, \`outline\`, \`single-wheel\`, \`height\`, \`wheelbase\`, \`front-axle-back\`, \`story\`
        mend: take it out, or put it where it belongs
      13:3 error spec-unknown-key at “constructor: 4”
        there is no key \`constructor\` here
        found: \`constructor\`
        expected: one of \`name\`, \`make\`, \`model\`, \`year\`, \`invented\`, \`number-on-car\`, \`body\`, \`seats\`, \`driver-side\`, \`steering\`, \`length\`, \`width\`, \`outline\`, \`single-wheel\`, \`height\`, \`wheelbase\`, \`front-axle-back\`, \`story\`
        mend: take it out, or put it where it belongs"
    `);
  });

  test('a key of one kind of shape in another', () => {
    expect(
      told(
        spoiled([
          '    read: stick\n',
          '    read: stick\n    shape: { kind: rectangular, length: 3 ft, width: 2 ft, height: 1 ft, diameter: 2 ft }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "69:74 error spec-unknown-key at “diameter: 2 ft }”
        there is no key \`diameter\` here
        found: \`diameter\`
        expected: one of \`kind\`, \`length\`, \`width\`, \`height\`
        mend: take it out, or put it where it belongs"
    `);
  });
});

describe('keys of parts', () => {
  test('capitals', () => {
    expect(told(spoiled(['  hand-brake:', '  Hand-Brake:']))).toMatchInlineSnapshot(`
      "165:3 error spec-key at “Hand-Brake: { name: hand”
        \`Hand-Brake\` cannot be a key
        found: \`Hand-Brake\`
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named"
    `);
  });

  test('spaces', () => {
    expect(told(spoiled(['  hand-brake:', '  hand brake:']))).toMatchInlineSnapshot(`
      "165:3 error spec-key at “hand brake: { name: hand”
        \`hand brake\` cannot be a key
        found: \`hand brake\`
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named"
    `);
  });

  test('a number', () => {
    expect(told(spoiled(['  hand-brake:', '  1:']))).toMatchInlineSnapshot(`
      "165:3 error spec-key at “1: { name: hand brake, p”
        \`1\` cannot be a key
        found: \`1\`
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named"
    `);
  });

  test('nothing', () => {
    expect(told(spoiled(['  hand-brake:', '  "":']))).toMatchInlineSnapshot(`
      "165:3 error spec-key at “"": { name: hand brake,”
        an empty text cannot be a key
        found: an empty text
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named"
    `);
  });

  test('the names that plain objects have', () => {
    expect(
      told(
        spoiled([
          'controls:\n',
          'controls:\n  __proto__: { name: a }\n  constructor: { name: brake handle, place: dash, kind: other, does: Nothing. }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "165:3 error spec-key at “__proto__: { name: a }”
        \`__proto__\` cannot be a key
        found: \`__proto__\`
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named
      166:3 error spec-key at “constructor: { name: bra”
        \`constructor\` cannot be a key
        found: \`constructor\`
        expected: lower-case words joined by hyphens, such as \`pilot-valve\`
        mend: rename it, here and wherever it is named"
    `);
  });
});

describe('the wrong kind of value', () => {
  test('nothing after the colon', () => {
    expect(told(spoiled(['model: Smallest', 'model:']))).toMatchInlineSnapshot(`
      "7:3 error spec-wrong-type at “model:”
        \`car.model\` is empty
        found: nothing after the colon
        expected: the maker’s name for the type, such as \`Twelve-horse touring car\`
        mend: write a value after the colon, or take the key out; text after \` #\` is a comment"
    `);
  });

  test('nothing after the colon, for a quantity', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity:']))).toMatchInlineSnapshot(`
      "63:5 error spec-wrong-type at “capacity:”
        \`tanks.water-tank.capacity\` is empty
        found: nothing after the colon
        expected: what it holds, brim full, such as \`17 US gal\`
        mend: write a value after the colon, or take the key out; text after \` #\` is a comment"
    `);
  });

  test('a comment where the value should be', () => {
    expect(told(spoiled(['model: Smallest', 'model: #1']))).toMatchInlineSnapshot(`
      "7:3 error spec-wrong-type at “model: #1”
        \`car.model\` is empty
        found: nothing after the colon
        expected: the maker’s name for the type, such as \`Twelve-horse touring car\`
        mend: write a value after the colon, or take the key out; text after \` #\` is a comment"
    `);
  });

  test('nothing in a section', () => {
    expect(
      told(
        spoiled([
          '  hand-brake: { name: hand brake, place: dash, kind: parking-brake, does: Holds the rear wheels. }\n',
          '',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "164:1 error spec-wrong-type at “controls:”
        \`controls\` is empty
        found: nothing after the colon
        expected: controls that are not valves
        mend: write what belongs to it, or \`{}\` if there is none"
    `);
  });

  test('a word for true or false that is neither', () => {
    expect(told(spoiled(['invented: true', 'invented: no']))).toMatchInlineSnapshot(`
      "9:13 error spec-wrong-type at “no”
        \`car.invented\` is text; it should be \`true\` or \`false\`
        found: \`no\`
        expected: \`true\` or \`false\`
        mend: write \`false\`"
    `);
  });

  test('yes for true', () => {
    expect(told(spoiled(['invented: true', 'invented: yes']))).toMatchInlineSnapshot(`
      "9:13 error spec-wrong-type at “yes”
        \`car.invented\` is text; it should be \`true\` or \`false\`
        found: \`yes\`
        expected: \`true\` or \`false\`
        mend: write \`true\`"
    `);
  });

  test('a number for a name', () => {
    expect(told(spoiled(['model: Smallest', 'model: 12']))).toMatchInlineSnapshot(`
      "7:10 error spec-wrong-type at “12”
        \`car.model\` is a number; it should be text
        found: \`12\`
        expected: text, such as \`Twelve-horse touring car\`
        mend: put it in quotes: \`"12"\`"
    `);
  });

  test('a number with a leading nought for a telephone', () => {
    expect(
      told(spoiled(['{ name: Nobody’s workshop }', '{ name: Nobody’s workshop, telephone: 0500 }'])),
    ).toMatchInlineSnapshot(`
      "19:47 error spec-wrong-type at “0500 }”
        \`keeper.telephone\` is a number; it should be text
        found: \`0500\`
        expected: text, such as \`+1 000 555 0114\`
        mend: put it in quotes: \`"0500"\`"
    `);
  });

  test('a list for a name', () => {
    expect(told(spoiled(['model: Smallest', 'model: [Smallest]']))).toMatchInlineSnapshot(`
      "7:10 error spec-wrong-type at “[Smallest]”
        \`car.model\` is a list; it should be text
        found: a list
        expected: text, such as \`Twelve-horse touring car\`
        mend: write one value here"
    `);
  });

  test('text for a number', () => {
    expect(told(spoiled(['year: 1905', 'year: MCMV']))).toMatchInlineSnapshot(`
      "8:9 error spec-wrong-type at “MCMV”
        \`car.year\` is text; it should be a number
        found: \`MCMV\`
        expected: a number, such as \`1912\`
        mend: write a plain number, without quotes or unit"
    `);
  });

  test('a number that is not whole', () => {
    expect(told(spoiled(['seats: 2', 'seats: 2.5']))).toMatchInlineSnapshot(`
      "11:10 error spec-wrong-type at “2.5”
        \`car.seats\` is a number; it should be a whole number
        found: \`2.5\`
        expected: a whole number, such as \`5\`
        mend: write a plain number, without quotes or unit"
    `);
  });

  test('a number without end', () => {
    expect(told(spoiled(['turns-per-wheel-turn: 2.5', 'turns-per-wheel-turn: .inf']))).toMatchInlineSnapshot(`
      "134:25 error spec-wrong-type at “.inf”
        \`engine.turns-per-wheel-turn\` is a number without end; it should be a number
        found: \`.inf\`
        expected: a number, such as \`1.5\`
        mend: write a plain number, without quotes or unit"
    `);
  });

  test('a text for a list', () => {
    expect(
      told(spoiled(['changed: [New pilot valve.]', 'changed: New pilot valve.'])),
    ).toMatchInlineSnapshot(`
      "24:12 error spec-wrong-type at “New pilot valve.”
        \`issue.changed\` is text; it should be a list
        found: \`New pilot valve.\`
        expected: a list, such as \`[New pilot needle valve.]\`
        mend: write it as a list: \`[one, another]\`, or one to a line after \`- \`"
    `);
  });

  test('a text for keys and values', () => {
    expect(
      told(
        spoiled([
          '    filler: { place: underneath }\n    read: stick',
          '    filler: underneath\n    read: stick',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "67:13 error spec-wrong-type at “underneath”
        \`tanks.water-tank.filler\` is text; it should be keys and values
        found: \`underneath\`
        expected: keys and values
        mend: indent the keys that belong to it under it"
    `);
  });

  test('a list for a section', () => {
    expect(told(spoiled(['controls:\n  hand-brake: { ', 'controls:\n  - { ']))).toMatchInlineSnapshot(`
      "165:3 error spec-wrong-type at “- { name: hand brake, pl”
        \`controls\` is a list; it should be keys and values
        found: a list
        expected: keys and values
        mend: indent the keys that belong to it under it"
    `);
  });

  test('a list for a quantity', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: [20, US gal]']))).toMatchInlineSnapshot(`
      "63:15 error spec-wrong-type at “[20, US gal]”
        \`tanks.water-tank.capacity\` is a list; it should be one amount with its unit
        found: a list
        expected: one amount with its unit, such as \`17 US gal\`
        mend: write one value here"
    `);
  });

  test('keys and values for a quantity', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: { us: 20 gal }']))).toMatchInlineSnapshot(`
      "63:15 error spec-wrong-type at “{ us: 20 gal }”
        \`tanks.water-tank.capacity\` is keys and values; it should be one amount with its unit
        found: keys and values
        expected: one amount with its unit, such as \`17 US gal\`
        mend: write one value here"
    `);
  });
});

describe('choices', () => {
  test('a near word', () => {
    expect(told(spoiled(['steering: tiller', 'steering: tyller']))).toMatchInlineSnapshot(`
      "13:13 error spec-not-a-choice at “tyller”
        \`car.steering\` is not one of its choices
        found: \`tyller\`
        expected: one of \`wheel\`, \`tiller\`
        mend: write \`tiller\`"
    `);
  });

  test('a word like none', () => {
    expect(told(spoiled(['steering: tiller', 'steering: reins']))).toMatchInlineSnapshot(`
      "13:13 error spec-not-a-choice at “reins”
        \`car.steering\` is not one of its choices
        found: \`reins\`
        expected: one of \`wheel\`, \`tiller\`
        mend: choose one of them"
    `);
  });

  test('a boolean where a word belongs', () => {
    expect(told(spoiled(['draws-full: not-known', 'draws-full: false']))).toMatchInlineSnapshot(`
      "111:15 error spec-not-a-choice at “false”
        \`boiler.draws-full\` is not one of its choices
        found: \`false\`
        expected: one of \`yes\`, \`no\`, \`not-known\`
        mend: write \`no\`"
    `);
  });

  test('nothing', () => {
    expect(told(spoiled(['steering: tiller', 'steering:']))).toMatchInlineSnapshot(`
      "13:3 error spec-wrong-type at “steering:”
        \`car.steering\` is empty
        found: nothing after the colon
        expected: what the driver steers with, such as \`wheel\`
        mend: write a value after the colon, or take the key out; text after \` #\` is a comment"
    `);
  });

  test('the kind of a shape', () => {
    expect(
      told(
        spoiled([
          '    read: stick\n',
          '    read: stick\n    shape: { kind: lying-cilinder, diameter: 1 ft, length: 3 ft }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "69:20 error spec-not-a-choice at “lying-cilinder, diameter”
        \`tanks.water-tank.shape.kind\` is not one of its choices
        found: \`lying-cilinder\`
        expected: one of \`rectangular\`, \`lying-cylinder\`, \`standing-cylinder\`, \`lying-oval\`, \`wedge\`
        mend: write \`lying-cylinder\`"
    `);
  });
});

describe('quantities', () => {
  test('a bare number', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 20']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “20”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`20\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: say the unit: \`20 US gal\`, \`20 imp gal\` or \`20 L\`"
    `);
  });

  test('a gallon of no country', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 20 gal']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “20 gal”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`20 gal\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: write \`20 US gal\` or \`20 imp gal\`: a US gallon is 3.785 L and an imperial gallon 4.546 L"
    `);
  });

  test('a pressure against nothing', () => {
    expect(
      told(spoiled(['working-pressure: 200 psi gauge', 'working-pressure: 200 psi'])),
    ).toMatchInlineSnapshot(`
      "102:21 error spec-quantity at “200 psi”
        \`boiler.working-pressure\` cannot be used as it stands
        found: \`200 psi\`
        expected: a pressure as a gauge shows it, such as \`550 psi gauge\`, \`38 bar gauge\` or \`3800 kPa gauge\`
        mend: write \`200 psi gauge\`: a gauge reads from the air around it, an absolute pressure counts from vacuum"
    `);
  });

  test('an absolute pressure where a gauge is read', () => {
    expect(
      told(spoiled(['working-pressure: 200 psi gauge', 'working-pressure: 215 psi absolute'])),
    ).toMatchInlineSnapshot(`
      "102:21 error spec-quantity at “215 psi absolute”
        \`boiler.working-pressure\` cannot be used as it stands
        found: \`215 psi absolute\`
        expected: a pressure as a gauge shows it, such as \`550 psi gauge\`, \`38 bar gauge\` or \`3800 kPa gauge\`
        mend: \`psi absolute\` measures a pressure counted from vacuum; write it like \`550 psi gauge\`, \`38 bar gauge\` or \`3800 kPa gauge\`"
    `);
  });

  test('a unit of another kind', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 20 lb']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “20 lb”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`20 lb\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: \`lb\` measures a weight; write it like \`25 US gal\`, \`20 imp gal\` or \`95 L\`"
    `);
  });

  test('a misspelt unit', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 20 US gla']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “20 US gla”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`20 US gla\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: did you mean \`20 US gal\`?"
    `);
  });

  test('a number with an underscore', () => {
    expect(told(spoiled(['full-rate: 3 US gal/h', 'full-rate: 12_000 US gal/h']))).toMatchInlineSnapshot(`
      "115:91 error spec-quantity at “12_000 US gal/h, low-rat”
        \`burners.main-burner.full-rate\` cannot be used as it stands
        found: \`12_000 US gal/h\`
        expected: a volume used or moved in a time, such as \`5 US gal/h\`, \`4 imp gal/h\`, \`19 L/h\` or \`1 US pt/h\`
        mend: write a comma between thousands, or nothing, as in \`12,500\`"
    `);
  });

  test('a time as on a clock', () => {
    expect(told(spoiled(['good: 20 min', 'good: 1:30']))).toMatchInlineSnapshot(`
      "122:34 error spec-quantity at “1:30 }”
        \`burners.pilot-burner.soak.good\` cannot be used as it stands
        found: \`1:30\`
        expected: a time, such as \`20 min\`, \`1 h 30 min\`, \`45 s\` or \`2 days\`
        mend: write hours and minutes out, as in \`1 h 30 min\`"
    `);
  });

  test('a number with a leading nought', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 020']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “020”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`020\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: say the unit: \`20 US gal\`, \`20 imp gal\` or \`20 L\`"
    `);
  });

  test('a number as a computer writes it', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 2e1']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “2e1”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`2e1\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: say the unit: \`20 US gal\`, \`20 imp gal\` or \`20 L\`"
    `);
  });

  test('a word', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: plenty']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “plenty”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`plenty\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: write a number first, then its unit, like \`25 US gal\`, \`20 imp gal\` or \`95 L\`"
    `);
  });

  test('less than nothing', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: -20 US gal']))).toMatchInlineSnapshot(`
      "63:15 error spec-quantity at “-20 US gal”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`-20 US gal\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: write it without the minus sign, or look whether another figure was meant"
    `);
  });

  test('nothing at all', () => {
    expect(told(spoiled(['capacity: 20 US gal', 'capacity: 0 US gal']))).toMatchInlineSnapshot(`
      "63:15 error spec-below-zero at “0 US gal”
        \`tanks.water-tank.capacity\` cannot be used as it stands
        found: \`0 US gal\`
        expected: more than 0
        mend: measure again, and mind the sign"
    `);
  });

  test('nothing, where nothing may be', () => {
    expect(told(spoiled(['unusable: 1 US gal', 'unusable: 0 US gal']))).toMatchInlineSnapshot(`"fine"`);
  });

  test('less than nothing, where nothing may be', () => {
    expect(told(spoiled(['back: 3 ft', 'back: -3 in']))).toMatchInlineSnapshot(`
      "39:17 error spec-below-zero at “-3 in, right: 0 in, up:”
        \`places.dash.at.back\` cannot be used as it stands
        found: \`-3 in\`
        expected: nothing less than 0
        mend: measure again, and mind the sign"
    `);
  });

  test('a share above a whole', () => {
    expect(told(spoiled(['share: 90 %', 'share: 190 %']))).toMatchInlineSnapshot(`
      "55:36 error spec-quantity at “190 % }”
        \`fuels.blend.parts.1.share\` cannot be used as it stands
        found: \`190 %\`
        expected: a share of the whole, such as \`95 %\` or \`0.95\`
        mend: write a share between \`0 %\` and \`100 %\`, or a number between \`0\` and \`1\`"
    `);
  });

  test('a share as a plain number', () => {
    expect(told(spoiled(['share: 90 %', 'share: 0.9']))).toMatchInlineSnapshot(`"fine"`);
  });

  test('a share as a plain number above a whole', () => {
    expect(told(spoiled(['share: 90 %', 'share: 90']))).toMatchInlineSnapshot(`
      "55:36 error spec-quantity at “90 }”
        \`fuels.blend.parts.1.share\` cannot be used as it stands
        found: \`90\`
        expected: a share of the whole, such as \`95 %\` or \`0.95\`
        mend: write a share between \`0 %\` and \`100 %\`, or a number between \`0\` and \`1\`"
    `);
  });
});

describe('bounds', () => {
  test('a year before there was steam', () => {
    expect(told(spoiled(['year: 1905', 'year: 190']))).toMatchInlineSnapshot(`
      "8:9 error spec-value at “190”
        \`car.year\` is not as it should be
        found: \`190\`
        expected: at least 1770, such as \`1912\`
        mend: give: the year it was built"
    `);
  });

  test('no seats', () => {
    expect(told(spoiled(['seats: 2', 'seats: 0']))).toMatchInlineSnapshot(`
      "11:10 error spec-value at “0”
        \`car.seats\` is not as it should be
        found: \`0\`
        expected: at least 1, such as \`5\`
        mend: give: how many may ride"
    `);
  });

  test('no words', () => {
    expect(told(spoiled(['model: Smallest', "model: ''"]))).toMatchInlineSnapshot(`
      "7:10 error spec-value at “''”
        \`car.model\` is not as it should be
        found: nothing
        expected: some words, such as \`Twelve-horse touring car\`
        mend: give: the maker’s name for the type"
    `);
  });

  test('blanks for words', () => {
    expect(told(spoiled(['model: Smallest', "model: '  '"]))).toMatchInlineSnapshot(`
      "7:10 error spec-value at “'  '”
        \`car.model\` is not as it should be
        found: nothing
        expected: some words, such as \`Twelve-horse touring car\`
        mend: give: the maker’s name for the type"
    `);
  });

  test('an empty list', () => {
    expect(told(spoiled(['drips: [drip-cock]', 'drips: []']))).toMatchInlineSnapshot(`
      "137:10 error spec-value at “[]”
        \`engine.drips\` is not as it should be
        found: a list
        expected: at least 1 in the list
        mend: give: the valves that drain the steam chest and cylinders"
    `);
  });

  test('a day that is not in the calendar', () => {
    expect(told(spoiled(['date: 2026-03-14', 'date: 2026-02-30']))).toMatchInlineSnapshot(`
      "23:9 error spec-value at “2026-02-30”
        \`issue.date\` is not as it should be
        found: \`2026-02-30\`
        expected: a date as year-month-day, such as \`2026-03-14\`
        mend: write a day that is in the calendar"
    `);
  });

  test('a date written otherwise', () => {
    expect(told(spoiled(['date: 2026-03-14', 'date: 14.3.2026']))).toMatchInlineSnapshot(`
      "23:9 error spec-value at “14.3.2026”
        \`issue.date\` is not as it should be
        found: \`14.3.2026\`
        expected: a date as year-month-day, such as \`2026-03-14\`
        mend: write the year first, then month and day, each of two figures, with hyphens between"
    `);
  });

  test('an issue letter that is not one', () => {
    expect(told(spoiled(['letter: B', 'letter: second']))).toMatchInlineSnapshot(`
      "22:11 error spec-value at “second”
        \`issue.letter\` is not as it should be
        found: \`second\`
        expected: text of the right form, such as \`C\`
        mend: give: the issue letter, counted up with every change that is printed"
    `);
  });

  test('a language tag that is not one', () => {
    expect(told(spoiled(['language: en-US', 'language: english']))).toMatchInlineSnapshot(`
      "33:13 error spec-value at “english”
        \`print.language\` is not as it should be
        found: \`english\`
        expected: text of the right form, such as \`en-US\`
        mend: give: language tag of the papers (BCP 47)"
    `);
  });

  test('a line of one part', () => {
    expect(told(spoiled(['through: [engine, open-air]', 'through: [engine]']))).toMatchInlineSnapshot(`
      "180:34 error spec-value at “[engine] }”
        \`lines.10.through\` is not as it should be
        found: a list
        expected: at least 2 in the list, such as \`[pilot-tank, pilot-valve, pilot]\`
        mend: give: what it passes through, in the order of flow, from a source to where it ends or joins another line"
    `);
  });

  test('a number that must be more than nothing', () => {
    expect(told(spoiled(['turns-per-wheel-turn: 2.5', 'turns-per-wheel-turn: 0']))).toMatchInlineSnapshot(`
      "134:25 error spec-value at “0”
        \`engine.turns-per-wheel-turn\` is not as it should be
        found: \`0\`
        expected: more than 0, such as \`1.5\`
        mend: give: engine turns for one turn of the driven wheels"
    `);
  });
});
