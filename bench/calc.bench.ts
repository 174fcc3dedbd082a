/**
 * How long the heavier calculations take on input far larger than a keeper's.
 */
import { bench, describe } from 'vitest';
import { readTripLog } from '../src/calc/range/trip-log';
import { fitUse } from '../src/calc/range/use-fit';
import { chartByVolume } from '../src/calc/tank/stick-chart';
import { tankOf } from '../src/calc/tank/tank';
import { readGpx } from '../src/calc/track/gpx';
import { profileOf } from '../src/calc/track/profile';
import { stretchesOf } from '../src/calc/track/tour-use';
import { raiseSteam } from '../src/calc/water/raise-steam';

const track = Array.from({ length: 50_000 }, (_, i) => {
  const height = 300 + 80 * Math.sin(i / 400) + (i % 3);
  return `<trkpt lat="${45 + i * 1e-5}" lon="7"><ele>${height.toFixed(1)}</ele></trkpt>`;
});
const gpx = `<gpx version="1.1"><trk><trkseg>${track.join('')}</trkseg></trk></gpx>`;

const lines = Array.from({ length: 10_000 }, (_, i) => {
  const miles = 5 + (i % 40);
  const terrain = ['level', 'rolling', 'hilly'][i % 3];
  return `2025-06-${String((i % 28) + 1).padStart(2, '0')},${miles},${(miles * (0.9 + (i % 7) / 50)).toFixed(2)},${terrain},${i}`;
});
const log = ['date,distance (mi),water used (US gal),terrain,stops', ...lines].join('\n');

describe('a track of 50,000 points', () => {
  bench('read, smoothed, cut into stretches', () => {
    const read = readGpx(gpx, 'track.gpx');
    if (read.ok) stretchesOf(profileOf(read.value));
  });
});

describe('a log of 10,000 trips', () => {
  bench('read and fitted', () => {
    const read = readTripLog(log, 'trips.csv');
    if (read.ok) fitUse(read.value.trips, 'water', { level: 1, rolling: 1.2, hilly: 1.5 });
  });
});

describe('one car', () => {
  const end = { kind: 'torispherical', dishRadiusShare: 1, cornerRadiusShare: 0.06 } as const;
  const tank = tankOf({ kind: 'horizontal-cylinder', diameterM: 0.4, lengthM: 1, ends: [end, end] });
  bench('stick chart of a tank with dished ends, a mark for each of 100 volumes', () => {
    chartByVolume(tank, tank.capacityM3 / 100);
  });
  bench('raising steam from cold', () => {
    raiseSteam(
      {
        waterM3: 0.025,
        metalKg: 170,
        metalSpecificHeat: 490,
        heatW: 1e5,
        lossWPerK: 10,
        airTemperatureK: 288,
        ambientPa: 101325,
        startTemperatureK: 288,
      },
      4e6,
    );
  });
});
