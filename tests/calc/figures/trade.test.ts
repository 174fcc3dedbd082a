/**
 * Models land where the trade says they land, with plausible inputs; a spec far outside gets a remark, never an error.
 * Every fact of this file is common practice, no source.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figureRemarks } from '../../../src/calc/figures/remarks';
import { mile, psi, usGallon } from '../../../src/quantity/base-units';
import { tinySpec } from '../../helpers/tinySpec';
import { demoCar, demoNames, type Figured, siOf, tiny } from './figured';

const marigold = demoCar('marigold');
const codes = ({ car, figures }: Figured): readonly string[] =>
  figureRemarks(car, figures).map(({ code }) => code);

describe('common practice, no source', () => {
  test('25 US gal of water take a car that does not condense some 25 to 40 miles at best', () => {
    const use = marigold.figures.water?.use.byTerrain.level.meanPerM ?? Number.NaN;
    const miles = (25 * usGallon) / use / mile;
    expect(miles).toBeGreaterThan(25);
    expect(miles).toBeLessThan(40);
    const [level] = marigold.figures.planning.byTerrain;
    expect((level?.betweenStopsM ?? 0) / mile).toBeGreaterThan(20);
    expect((level?.betweenStopsM ?? 0) / mile).toBeLessThan(40);
  });

  test('a pilot tank of about 1 US gal serves a whole day', () => {
    const hours = siOf(marigold, 'endurance-pilot-tank-pilot-burner-full') / 3600;
    expect(hours).toBeGreaterThan(8);
    expect(hours).toBeLessThan(24);
  });

  test('from lighting the main burner to 500 psi takes under about 10 minutes with a good burner', () => {
    const { boiler } = marigold.car.spec;
    expect(boiler['working-pressure'].si / psi).toBeCloseTo(500, 6);
    expect(siOf(marigold, 'steam-cold-working') / 60).toBeLessThan(10.5);
    expect(siOf(marigold, 'steam-cold-working') / 60).toBeGreaterThan(5);
  });

  test('from a cold car to moving off takes an hour and a half to two hours, half an hour of it soak', () => {
    expect(siOf(marigold, 'start-up-good') / 60).toBeGreaterThan(90);
    expect(siOf(marigold, 'start-up-good') / 60).toBeLessThan(150);
  });

  test('the demo cars lie where such cars lie', () => {
    for (const name of demoNames) expect(codes(demoCar(name)), name).toEqual([]);
  });

  test.each([
    [
      'figure-tank-capacity',
      ['capacity: 17 US gal\n    fill-to: 16 US gal', 'capacity: 12 US gal\n    fill-to: 11 US gal'],
    ],
    ['figure-stick-short', ['capacity: 25 US gal', 'capacity: 30 US gal']],
    ['figure-pilot-band', ['from: 15 psi gauge, to: 20 psi gauge', 'from: 50 psi gauge, to: 60 psi gauge']],
    ['figure-fuel-band', ['from: 100 psi gauge, to: 125 psi gauge', 'from: 20 psi gauge, to: 30 psi gauge']],
    [
      'figure-soak-short',
      [/soak: \{ least: \d+ min/.exec(specOfMarigold())?.[0] ?? '', 'soak: { least: 5 min'],
    ],
    ['figure-steam-slow', ['steel-mass: about 330 lb', 'steel-mass: about 1300 lb']],
    [
      'figure-blend-light',
      [
        'share: 95 % }\n      - { liquid: gasoline, share: 5 % }',
        'share: 60 % }\n      - { liquid: gasoline, share: 40 % }',
      ],
    ],
  ] as const)('%s', (code, [from, to]) => {
    const car = demoCar('marigold', [from, to]);
    const told = figureRemarks(car.car, car.figures).filter((each) => each.code === code);
    expect(told).toHaveLength(1);
    expect(told[0]?.severity).toBe('remark');
    expect(told[0]?.at?.line).toBeGreaterThan(1);
    expect(told[0]?.found).toBeTruthy();
    expect(told[0]?.expected).toBeTruthy();
  });

  test('a burner that cuts out far above 550 psi', () => {
    const car = demoCar(
      'marigold',
      ['burner-cuts-out: 530 psi gauge', 'burner-cuts-out: 640 psi gauge'],
      ['allowed-pressure: 600 psi gauge', 'allowed-pressure: 900 psi gauge'],
      ['set: 575 psi gauge', 'set: 700 psi gauge'],
    );
    expect(codes(car)).toContain('figure-cut-out-high');
  });

  test('water that goes ten times as far as any car goes, where it was measured', () => {
    const use =
      'running:\n  water-use:\n    - { terrain: level, use: 0.08 US gal/mi, where: a slip of the pen }\n';
    expect(codes(tiny(['running:\n', use]))).toContain('figure-range-far');
    expect(codes(tiny())).not.toContain('figure-range-far');
  });

  test('a stick with nothing to read it by', () => {
    const [shape] = /\n {4}stick:\n( {6}- .*\n)+/.exec(tinySpec) ?? [''];
    expect(codes(tiny([shape, '\n']))).toContain('figure-stick-unknown');
  });
});

function specOfMarigold(): string {
  return readFileSync(new URL('../../../cars/marigold.yaml', import.meta.url), 'utf8');
}
