import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { startUpContext } from '../../src/paper/context/raising';
import { startMinutes, timedRows } from '../../src/paper/context/runSheet';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();

type Row = Parameters<typeof startMinutes>[0][number];
const row = (rest: Partial<Row>): Row => ({ who: 'Driver', do: 'Look.', ...rest });
const lasts = ({ takes, waits }: Row) => (waits === undefined ? (takes ?? 0) : 15);

test('minutes before the fire are counted back from it, those after forward', () => {
  const rows = [
    row({ takes: 10 }),
    row({ waits: 'burning-on' }),
    row({ fire: true, takes: 1 }),
    row({ takes: 5 }),
    row({}),
  ];
  expect(startMinutes(rows, lasts, () => undefined)).toEqual([-25, -15, 0, 1, 6]);
});

test('a row that waits for steam comes when steam is there, or when the rows before are done', () => {
  const rows = [
    row({ fire: true, takes: 1 }),
    row({ until: 'gauge-alive', takes: 6 }),
    row({ until: 'working' }),
    row({}),
  ];
  const reached = (until: Row['until']) => (until === 'working' ? 7 : 4);
  expect(startMinutes(rows, lasts, reached)).toEqual([0, 4, 10, 10]);
});

test('what is not known leaves every row that hangs on it without a minute', () => {
  const rows = [
    row({ takes: 10 }),
    row({ waits: 'burning-on' }),
    row({ takes: 2 }),
    row({ fire: true }),
    row({ until: 'working' }),
    row({ takes: 3 }),
  ];
  expect(
    startMinutes(
      rows,
      (each) => (each.waits !== undefined ? undefined : lasts(each)),
      () => undefined,
    ),
  ).toEqual([undefined, undefined, -2, 0, undefined, undefined]);
});

describe.each(demoNames)('%s', (name) => {
  test('moves off on the run sheet when its manual says, with each go or no go added', async () => {
    const world = worldOf(await demo(name), shop);
    const rows = timedRows(world);
    const sheet = world.guide.docent['run-sheet'];
    const moves = minuteOf(rows, sheet.findIndex(({ plans }) => plans === 'warm') + 1);
    const { parts } = world.figures.startUp;
    expect(parts.length).toBeGreaterThan(5);
    const planned = sheet.flatMap(({ plans }) => plans ?? []);
    expect(planned).toEqual(parts.flatMap(({ id }) => (id === 'raise' ? [] : [id])));
    for (const { id, goodS } of parts.filter((part) => part.id !== 'raise')) {
      const at = sheet.findIndex(({ plans }) => plans === id);
      const gates = rows.slice(at).filter(({ gate, minute }) => gate && (minute ?? 0) < moves);
      const added = gates.reduce((sum, { lasts }) => sum + (lasts ?? 0), 0);
      expect([id, moves - minuteOf(rows, at) - added]).toEqual([id, Math.ceil(goodS / 60 - 1e-9)]);
    }
  });

  test('tells visitors the times that its manual has for the main fire and for the whole', async () => {
    const world = worldOf(await demo(name), shop);
    const said = world.guide.docent.questions
      .find(({ ask }) => ask === 'How long does it take to get going?')
      ?.says.join(' ');
    const { whole, parts } = startUpContext(world);
    const at = world.figures.startUp.parts.findIndex(({ id }) => id === 'light');
    expect(said).toContain(`we plan ${parts[at]?.good}; ${parts[at]?.least} is the least`);
    expect(said).toContain(`From the first look at the car it is ${whole}`);
  });
});

function minuteOf(rows: ReturnType<typeof timedRows>, at: number): number {
  const minute = rows[at]?.minute;
  if (minute === undefined) throw new Error(`row ${at} has no minute`);
  return minute;
}
