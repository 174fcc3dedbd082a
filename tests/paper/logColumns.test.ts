import { expect, test } from 'vitest';
import { readTripLog } from '../../src/calc/range/trip-log';
import { logColumns } from '../../src/paper/context/logColumns';

test.each([
  ['us', 1609.344, 0.003785411784],
  ['imperial', 1609.344, 0.00454609],
  ['metric', 1000, 0.001],
] as const)(
  'the columns of the log sheet in %s units are a head that the log reads',
  (system, distanceM, volumeM3) => {
    const log = readTripLog(`${logColumns(system).join(',')}\n2026-05-02,1,1,1,hilly,2,windy\n`, 'log.csv');
    expect(log.ok ? log.value.trips : log.problems).toEqual([
      {
        line: 2,
        date: '2026-05-02',
        distanceM,
        waterM3: expect.closeTo(volumeM3, 12),
        fuelM3: expect.closeTo(volumeM3, 12),
        terrain: 'hilly',
        stops: 2,
        note: 'windy',
      },
    ]);
  },
);
