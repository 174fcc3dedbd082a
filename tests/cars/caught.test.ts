/** The faults told in `docs/demo-cars.md`: each spec, broken as it says, gets the message that it gives. */
import { describe, expect, test } from 'vitest';
import { printForTerminal } from '../../src/diagnostic/print/terminal';
import { readCar } from '../../src/kettlebook';
import { demoNames, logs, specText, workshop } from '../whole/made';
import { textOf } from './demo';

/** The width of the terminal of which the document shows a part. */
const columns = 100;

interface Told {
  readonly car: string;
  readonly before: string;
  readonly after: string;
  readonly message: string;
}

/** Every car’s fault, as the document tells it. */
const told = textOf('docs/demo-cars.md')
  .split(/^## /m)
  .slice(1)
  .map((section): Told => {
    const car = /^\w+/.exec(section)?.[0].toLowerCase() ?? '';
    const [, before = '', after = ''] = /```yaml\n# before\n(.*?)\n# after\n(.*?)\n```/s.exec(section) ?? [];
    const message = /```\n(.*?)\n```/s.exec(section.replace(/```yaml.*?```/s, ''))?.[1] ?? '';
    return { car, before, after, message };
  });

/** Without the line of the step library, which moves when the library is written in. */
const withoutLine = (text: string) => text.replace(/^(procedures\/\S+?):\d+:\d+/gm, '$1');

describe('what a check caught', () => {
  test('is told for each demo car', () => {
    expect(told.map(({ car }) => car).sort()).toEqual([...demoNames].sort());
  });

  test.each(told)('on $car', async ({ car, before, after, message }) => {
    const text = specText(car);
    expect(text.split(`\n${before}\n`)).toHaveLength(2);
    expect(message).toContain('error[');
    const broken = text.replace(`\n${before}\n`, () => `\n${after}\n`);
    const outcome = readCar({ file: `${car}.yaml`, text: broken, beside: logs() }, await workshop());
    const said = printForTerminal(outcome.ok ? outcome.remarks : outcome.problems, columns);
    expect(withoutLine(said)).toContain(withoutLine(message));
  });
});
