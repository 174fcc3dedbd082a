import { expect, test } from 'vitest';
import { startMinutes } from '../../src/paper/context/runSheet';

type Row = Parameters<typeof startMinutes>[0][number];
const row = (rest: Partial<Row>): Row => ({ who: 'Driver', do: 'Look.', ...rest });
const lasts = ({ takes, waits }: Row) => (waits === 'soak' ? 15 : (takes ?? 0));

test('minutes before the fire are counted back from it, those after forward', () => {
  const rows = [
    row({ takes: 10 }),
    row({ waits: 'soak' }),
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
    row({ waits: 'soak' }),
    row({ takes: 2 }),
    row({ fire: true }),
    row({ until: 'working' }),
    row({ takes: 3 }),
  ];
  expect(
    startMinutes(
      rows,
      (each) => (each.waits === 'soak' ? undefined : lasts(each)),
      () => undefined,
    ),
  ).toEqual([undefined, undefined, -2, 0, undefined, undefined]);
});
