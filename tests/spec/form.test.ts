/** Faults of form: what the file is before it says anything. */
import { describe, expect, test } from 'vitest';
import { spoiled, tinySpec } from '../helpers/tinySpec';
import { codesOf, told } from './told';

describe('not well-formed', () => {
  test('an indentation that fits nothing', () => {
    expect(told(spoiled(['  make: Nobody', '   make: Nobody']))).toMatchInlineSnapshot(`
      "5:9 error spec-yaml at “Pipkin”
        the file cannot be read here: a second key, where the key before it has its value already
        mend: put the text in quotes if it holds a colon with a space after it; otherwise see that this line and the one before begin in the right column"
    `);
  });

  test('a line in a wrong column is told once, with how far the trouble goes', () => {
    const [first, ...rest] = told(spoiled(['  name: Pipkin', '   name: Pipkin'])).split(/\n(?=\d+:)/);
    expect(rest).toEqual([]);
    expect(first).toContain('this line does not begin in the column of the lines it belongs with');
  });

  test('spaces that only look like spaces', () => {
    expect(told(spoiled(['  make: Nobody', '\u00a0 make: Nobody']))).toContain('a space of another kind');
  });

  test('a tab for an indent', () => {
    expect(told(spoiled(['  make: Nobody', '\tmake: Nobody']))).toMatchInlineSnapshot(`
      "6:1 error spec-yaml at “	make: Nobody & Sons”
        the file cannot be read here: this line is set in with a tab
        mend: set it in with spaces, not tabs"
    `);
  });

  test('a colon in a text', () => {
    expect(told(spoiled(['model: Smallest', 'model: Smallest: the first']))).toMatchInlineSnapshot(`
      "7:10 error spec-yaml at “Smallest: the first”
        the file cannot be read here: a second key, where the key before it has its value already
        mend: put the text in quotes if it holds a colon with a space after it; otherwise see that this line and the one before begin in the right column"
    `);
  });

  test('a quote that is not closed', () => {
    expect(told(spoiled(['model: Smallest', 'model: "Smallest']))).toMatchInlineSnapshot(`
      "7:10 error spec-yaml at “"Smallest”
        the file cannot be read here: the quote that begins here is not closed
        mend: close it; a quote inside the text is written twice, or the text put in quotes of the other kind"
    `);
  });

  test('a bracket that is not closed', () => {
    expect(
      told(spoiled(['changed: [New pilot valve.]', 'changed: [New pilot valve.'])),
    ).toMatchInlineSnapshot(`
      "25:3 error spec-yaml at “earlier:”
        the file cannot be read here: a bracket that was opened is not closed before this line
        mend: close it with \`]\` or \`}\`, or put the text in quotes if the bracket belongs to it"
    `);
  });

  test('a text that begins with a letter YAML keeps for itself', () => {
    expect(told(spoiled(['model: Smallest', 'model: @home']))).toMatchInlineSnapshot(`
      "7:10 error spec-yaml at “@home”
        the file cannot be read here: this text begins with \`@\`, which means something else
        mend: put the text in quotes"
    `);
  });

  test('a tag nobody knows', () => {
    expect(told(spoiled(['model: Smallest', 'model: !best Smallest']))).toMatchInlineSnapshot(`
      "7:10 error spec-yaml at “!best Smallest”
        the file cannot be read here: a word that begins with \`!\`
        mend: put the text in quotes if it begins with \`!\`; otherwise take the word out"
    `);
  });

  test('two documents in one file', () => {
    expect(told(`${tinySpec}---\ncar: {}\n`)).toMatchInlineSnapshot(`
      "187:1 error spec-yaml at “---”
        the file holds more than one document
        found: \`---\` between two documents
        expected: one car in one file
        mend: take the second part out, into a file of its own"
    `);
  });

  test('an alias that has no anchor', () => {
    expect(told(spoiled(['place: dash, kind: dial', 'place: *dash, kind: dial']))).toMatchInlineSnapshot(`
      "158:44 error spec-yaml at “*dash, kind: dial, reads”
        \`*dash\` refers to an anchor that nothing above has
        expected: \`&dash\` at the value that is meant, further up
        mend: write the value out, or put the text in quotes if it really begins with a star"
    `);
  });

  test('the older YAML, in which times and words change their meaning', () => {
    expect(told(`%YAML 1.1\n---\n${tinySpec}`)).toMatchInlineSnapshot(`
      "1:1 error spec-yaml at “%YAML 1.1”
        the file asks to be read as YAML 1.1, in which \`1:30\` means ninety and \`no\` means false
        found: \`%YAML 1.1\`
        expected: YAML 1.2
        mend: take the line \`%YAML 1.1\` out"
    `);
  });

  test('brackets within brackets without end', () => {
    expect(codesOf(`kettlebook: ${'['.repeat(20_000)}`)).toEqual(['1 spec-yaml']);
    expect(told(`kettlebook: ${'['.repeat(20_000)}`)).toContain('far deeper than any spec needs');
    expect(codesOf('- '.repeat(20_000))).toEqual(['1 spec-yaml']);
  });

  test('brackets within brackets, closed', () => {
    expect(told(`kettlebook: ${'['.repeat(500)}${']'.repeat(500)}`)).toMatchInlineSnapshot(`
      "1:77 error spec-yaml at “[[[[[[[[[[[[[[[[[[[[[[[[”
        lists and keys stand inside each other far deeper than any spec needs
        mend: look for brackets that were opened and not closed"
    `);
  });
});

describe('twice the same key', () => {
  test('in a mapping over lines', () => {
    expect(told(spoiled(['  seats: 2', '  seats: 2\n  make: Somebody']))).toMatchInlineSnapshot(`
      "12:3 error spec-duplicate-key at “make: Somebody”
        the key \`make\` stands twice in the same place
        found: \`make\`, already in line 6
        expected: each key once
        mend: take one of the two out, or give it another name"
    `);
  });

  test('in a mapping in brackets', () => {
    expect(told(spoiled(['keeper: {', 'keeper: { name: Me,']))).toMatchInlineSnapshot(`
      "19:21 error spec-duplicate-key at “name: Nobody’s workshop”
        the key \`name\` stands twice in the same place
        found: \`name\`, already in line 19
        expected: each key once
        mend: take one of the two out, or give it another name"
    `);
  });

  test('among the sections', () => {
    expect(told(spoiled(['kettlebook: 1\n', 'kettlebook: 1\nrunning: {}\n']))).toMatchInlineSnapshot(`
      "183:1 error spec-duplicate-key at “running:”
        the key \`running\` stands twice in the same place
        found: \`running\`, already in line 3
        expected: each key once
        mend: take one of the two out, or give it another name"
    `);
  });

  test('once plain and once in quotes', () => {
    expect(told(spoiled(['  seats: 2', '  seats: 2\n  "make": Somebody']))).toMatchInlineSnapshot(`
      "12:3 error spec-duplicate-key at “"make": Somebody”
        the key \`make\` stands twice in the same place
        found: \`make\`, already in line 6
        expected: each key once
        mend: take one of the two out, or give it another name"
    `);
  });
});

describe('anchors', () => {
  test('an anchor that holds itself', () => {
    expect(told(spoiled(['changed: [New pilot valve.]', 'changed: &a [*a]']))).toMatchInlineSnapshot(`
      "24:16 error spec-endless at “*a]”
        the anchor \`a\` expands without end
        found: \`*a\`, which refers to itself or is used over and over
        expected: each value written where it belongs
        mend: write the values out instead of referring to an anchor"
    `);
  });

  test('an anchor within an anchor that holds it', () => {
    expect(
      told(spoiled(['changed: [New pilot valve.]', 'changed: &a [{ b: [*a] }]'])),
    ).toMatchInlineSnapshot(`
      "24:22 error spec-endless at “*a] }]”
        the anchor \`a\` expands without end
        found: \`*a\`, which refers to itself or is used over and over
        expected: each value written where it belongs
        mend: write the values out instead of referring to an anchor"
    `);
  });

  test('a few words that become millions', () => {
    expect(
      told(
        spoiled([
          'changed: [New pilot valve.]',
          'changed:\n    - &a [x, x, x, x, x, x, x, x, x]\n    - &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]\n    - &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]\n    - &d [*c, *c, *c, *c, *c, *c, *c, *c, *c]\n    - &e [*d, *d, *d, *d, *d, *d, *d, *d, *d]\n    - &f [*e, *e, *e, *e, *e, *e, *e, *e, *e]\n    - &g [*f, *f, *f, *f, *f, *f, *f, *f, *f]\n    - &h [*g, *g, *g, *g, *g, *g, *g, *g, *g]',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "29:15 error spec-endless at “*d, *d, *d, *d, *d, *d,”
        the anchor \`d\` expands without end
        found: \`*d\`, which refers to itself or is used over and over
        expected: each value written where it belongs
        mend: write the values out instead of referring to an anchor"
    `);
  });

  test('an honest anchor is read', () => {
    expect(
      told(
        spoiled(
          ['name: dash\n', 'name: &name the dash\n'],
          ['name: under the seat', 'name: underneath\n    how: *name'],
          ['    how: lift the seat cushion\n', ''],
        ),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('a fault behind an alias is told where it is written', () => {
    expect(
      told(
        spoiled(
          ['reserve: 4 US gal', 'reserve: &four 4 gal'],
          ['unusable: 1 US gal', 'unusable: &one 1 US gal'],
          ['capacity: 1 US gal', 'capacity: *four'],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "65:20 error spec-quantity at “4 gal”
        \`tanks.water-tank.reserve\` cannot be used as it stands
        found: \`4 gal\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: write \`4 US gal\` or \`4 imp gal\`: a US gallon is 3.785 L and an imperial gallon 4.546 L
      65:20 error spec-quantity at “4 gal”
        \`tanks.pilot-tank.capacity\` cannot be used as it stands
        found: \`4 gal\`
        expected: a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
        mend: write \`4 US gal\` or \`4 imp gal\`: a US gallon is 3.785 L and an imperial gallon 4.546 L"
    `);
  });
});

describe('empty', () => {
  test('no text at all', () => {
    expect(told('')).toMatchInlineSnapshot(`
      "1:1 error spec-empty at “”
        the file holds no keys and values
        expected: a spec that begins with \`kettlebook: 1\`
        mend: start from one of the cars in the folder \`cars\`"
    `);
  });

  test('comments alone', () => {
    expect(told('# to be written\n\n')).toMatchInlineSnapshot(`
      "1:1 error spec-empty at “# to be written”
        the file holds no keys and values
        expected: a spec that begins with \`kettlebook: 1\`
        mend: start from one of the cars in the folder \`cars\`"
    `);
  });

  test('three dashes alone', () => {
    expect(told('---\n')).toMatchInlineSnapshot(`
      "1:1 error spec-empty at “---”
        the file holds no keys and values
        expected: a spec that begins with \`kettlebook: 1\`
        mend: start from one of the cars in the folder \`cars\`"
    `);
  });

  test('a list', () => {
    expect(told('- kettlebook: 1\n')).toMatchInlineSnapshot(`
      "1:1 error spec-empty at “- kettlebook: 1”
        the file holds no keys and values
        expected: a spec that begins with \`kettlebook: 1\`
        mend: start from one of the cars in the folder \`cars\`"
    `);
  });

  test('one word', () => {
    expect(told('kettlebook\n')).toMatchInlineSnapshot(`
      "1:1 error spec-empty at “kettlebook”
        the file holds no keys and values
        expected: a spec that begins with \`kettlebook: 1\`
        mend: start from one of the cars in the folder \`cars\`"
    `);
  });
});

describe('forms that are as good', () => {
  test('a byte order mark', () => {
    expect(told(`\uFEFF${tinySpec}`)).toMatchInlineSnapshot(`"fine"`);
  });

  test('lines that end as Windows ends them', () => {
    expect(told(tinySpec.replaceAll('\n', '\r\n'))).toMatchInlineSnapshot(`"fine"`);
  });

  test('no newline at the end', () => {
    expect(told(tinySpec.trimEnd())).toMatchInlineSnapshot(`"fine"`);
  });

  test('a document mark at the beginning', () => {
    expect(told(`---\n${tinySpec}...\n`)).toMatchInlineSnapshot(`"fine"`);
  });

  test('places after a byte order mark and Windows lines', () => {
    expect(
      told(`\uFEFF${spoiled(['seats: 2', 'seats: two'])}`.replaceAll('\n', '\r\n')),
    ).toMatchInlineSnapshot(`
      "11:10 error spec-wrong-type at “two”
        \`car.seats\` is text; it should be a number
        found: \`two\`
        expected: a number, such as \`5\`
        mend: write a plain number, without quotes or unit"
    `);
  });

  test('a fault in the first line after a byte order mark', () => {
    expect(told('\uFEFFkettlebok: 1')).toMatchInlineSnapshot(`
      "1:1 error spec-unknown-key at “kettlebok: 1”
        there is no key \`kettlebok\` here
        found: \`kettlebok\`
        expected: \`kettlebook\`
        mend: write \`kettlebook\`
      1:1 error spec-missing at “kettlebok: 1”
        \`car\` is missing
        expected: what the car is
        mend: add \`car\`
      1:1 error spec-missing at “kettlebok: 1”
        \`keeper\` is missing
        expected: whom to ask
        mend: add \`keeper\`
      1:1 error spec-missing at “kettlebok: 1”
        \`issue\` is missing
        expected: which issue of the spec this is
        mend: add \`issue\`
      1:1 error spec-missing at “kettlebok: 1”
        \`print\` is missing
        expected: how the papers are printed
        mend: add \`print\`
      1:1 error spec-missing at “kettlebok: 1”
        \`places\` is missing
        expected: places on the car
        mend: add \`places\`, or \`places: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`fuels\` is missing
        expected: fuels as they go into the tanks
        mend: add \`fuels\`, or \`fuels: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`tanks\` is missing
        expected: every tank on the car
        mend: add \`tanks\`, or \`tanks: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`equipment\` is missing
        expected: what is carried; at least an extinguisher
        mend: add \`equipment\`, or \`equipment: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`boiler\` is missing
        expected: the boiler
        mend: add \`boiler\`
      1:1 error spec-missing at “kettlebok: 1”
        \`burners\` is missing
        expected: every burner, main and pilot
        mend: add \`burners\`, or \`burners: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`engine\` is missing
        expected: the engine
        mend: add \`engine\`
      1:1 error spec-missing at “kettlebok: 1”
        \`pumps\` is missing
        expected: every pump
        mend: add \`pumps\`, or \`pumps: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`valves\` is missing
        expected: every valve, cock and tap that is worked by hand or foot
        mend: add \`valves\`, or \`valves: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`devices\` is missing
        expected: everything that acts by itself: automatics, check valves, relief and safety valves
        mend: add \`devices\`, or \`devices: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`gauges\` is missing
        expected: every gauge, glass and indicator
        mend: add \`gauges\`, or \`gauges: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`locks\` is missing
        expected: every lock
        mend: add \`locks\`, or \`locks: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`controls\` is missing
        expected: controls that are not valves
        mend: add \`controls\`, or \`controls: {}\` if there is none
      1:1 error spec-missing at “kettlebok: 1”
        \`lines\` is missing
        expected: every run of pipe
        mend: add \`lines\`
      1:1 error spec-missing at “kettlebok: 1”
        \`running\` is missing
        expected: what the car does on the road
        mend: add \`running\`"
    `);
  });
});
