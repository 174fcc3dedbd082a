/** Problems for other programs. */
import { expect, test } from 'vitest';
import { printAsJson } from '../../src/diagnostic/print/json';
import { due, gallons, placeless, pressures } from './examples';

test('every field that says something, in a fixed order', () => {
  expect(printAsJson([gallons, due])).toMatchInlineSnapshot(`
    "{
      "format": 1,
      "errors": 1,
      "remarks": 1,
      "problems": [
        {
          "severity": "error",
          "code": "spec-quantity",
          "meaning": "A quantity that cannot be read: no unit, an unclear unit, or the wrong kind of unit.",
          "message": "\`tanks.water-tank.capacity\` cannot be used as it stands",
          "file": "cars/pipkin.yaml",
          "line": 63,
          "column": 15,
          "path": "tanks.water-tank.capacity",
          "found": "\`20 gal\`",
          "expected": "a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`",
          "mend": "write \`20 US gal\` or \`20 imp gal\`: a US gallon is 3.785 L and an imperial gallon 4.546 L"
        },
        {
          "severity": "remark",
          "code": "spec-inspection-due",
          "meaning": "The boiler’s inspection is past its date.",
          "message": "the boiler’s inspection was due on 2026-02-01",
          "file": "cars/pipkin.yaml",
          "line": 112,
          "column": 66,
          "mend": "do not raise steam before the inspector has seen it"
        }
      ]
    }"
  `);
});

test('counts, notes, and problems that stand nowhere', () => {
  const report: unknown = JSON.parse(printAsJson([pressures, placeless, due]));
  expect(report).toMatchObject({
    format: 1,
    errors: 2,
    remarks: 1,
    problems: [
      { notes: pressures.notes, path: 'boiler.burner-cuts-out' },
      { code: 'theme-yaml' },
      { severity: 'remark' },
    ],
  });
  const second: unknown = JSON.parse(printAsJson([placeless])).problems[0];
  expect(Object.keys(second ?? {})).toEqual(['severity', 'code', 'meaning', 'message', 'mend']);
});

test('nothing to tell', () => {
  expect(JSON.parse(printAsJson([]))).toEqual({ format: 1, errors: 0, remarks: 0, problems: [] });
});
