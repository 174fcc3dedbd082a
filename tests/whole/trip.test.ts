/** Cards for the road, blank and planned: in both units of every car. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { carTour } from '../../src/calc/figures/tour';
import { readLegs } from '../../src/calc/stops/legs';
import { readGpxWay } from '../../src/calc/track/gpxWay';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { checkLaidOut } from '../../src/layout/check';
import type { SetPaper } from '../../src/paper/paper';
import { tourCard } from '../../src/paper/papers/tourCard';
import { demo, demoNames, goodOf, inWords, root, workshop } from './made';

const shop = await workshop();
const names = {
  us: ['mi', 'US gal', 'in'],
  imperial: ['mi', 'imp gal', 'in'],
  metric: ['km', 'L', 'mm'],
} as const;

/** The words of each face. */
const facesOf = ({ laidOut }: SetPaper) =>
  laidOut.pages.map(({ items }) =>
    items
      .flatMap((item) => (item.kind === 'text' ? [item.text] : []))
      .join(' ')
      .replace(/[\s\u00a0]+/g, ' '),
  );

describe.each(demoNames)('%s', (name) => {
  test('the blank card has more room for a place and for notes than for a figure', async () => {
    const paper = shop.papers.find((each) => each.name === 'trip-card');
    if (paper === undefined) throw new Error('there is no trip card');
    const { laidOut } = goodOf(setOnePaper(await demo(name), paper, shop));
    for (const { items } of laidOut.pages) {
      const widest = (of: string) =>
        Math.max(
          ...items.map((item) => (item.kind === 'field' && item.field.name.endsWith(of) ? item.widthPt : 0)),
        );
      expect(widest('-driven')).toBeGreaterThan(0);
      expect(widest('-place')).toBeGreaterThan(1.5 * widest('-driven'));
      expect(widest('-notes')).toBeGreaterThan(widest('-driven'));
    }
  });

  test('the blank card has a face in each units, with rules of thumb that are the range table’s', async () => {
    const ready = await demo(name);
    const paper = shop.papers.find((each) => each.name === 'trip-card');
    if (paper === undefined) throw new Error('there is no trip card');
    const faces = facesOf(goodOf(setOnePaper(ready, paper, shop)));
    const { first, second } = ready.car.spec.print.units;
    expect(faces).toHaveLength(2);
    const fuelByStick = ready.car.spec.tanks[ready.figures.fuel?.model.id ?? '']?.read === 'stick';
    for (const [index, system] of [first, second ?? first].entries()) {
      const [far, volume, depth] = names[system];
      expect(faces[index]).toContain(`${far} from start`);
      expect(faces[index]).toContain('Water, by the stick');
      expect(faces[index]).toContain(`Before the leg, ${depth} After it, ${depth} Taken on here, ${volume}`);
      expect(faces[index]).toContain('is written in the log of the day');
      expect(faces[index]).toMatch(
        new RegExp(
          `Example: \\d+ ${far} of \\S+ road takes the water stick from [^ ]+( \\S+)? ${depth} down to`,
        ),
      );
      expect(/Fuel: \S+ \S+ gives at least/.test(faces[index] ?? '')).toBe(fuelByStick);
      expect(faces[index]).toMatch(
        new RegExp(`Level (water|main fuel) \\d+ ${far} \\d+ ${far} \\d+\\.\\d ${far}`),
      );
    }
    const { planning } = ready.figures;
    const [level] = planning.byTerrain;
    const metres = first === 'metric' ? 1000 : 1609.344;
    expect(faces[0]).toContain(`${Math.round((level?.turnBackM ?? 0) / metres)} ${names[first][0]}`);
  });

  test('the range table gives depths for the tanks that are read by a stick, and for no others', async () => {
    const ready = await demo(name);
    const paper = shop.papers.find((each) => each.name === 'range-table');
    if (paper === undefined) throw new Error('there is no range table');
    const [face = ''] = facesOf(goodOf(setOnePaper(ready, paper, shop)));
    const { water, fuel } = ready.figures;
    for (const chart of [water, fuel]) {
      if (chart === undefined) throw new Error('a chart is not known');
      const { id, name: tank } = chart.model;
      expect(face).toContain(`${chart.marks.length > 0 ? 'by the gauge of' : 'in'} the ${tank};`);
      expect(face.includes(`stick in the ${tank};`)).toBe(ready.car.spec.tanks[id]?.read === 'stick');
    }
  });

  test('the card of a way has a face in each of the car’s units', async () => {
    const ready = await demo(name);
    const file = readdirSync(join(root, 'cars')).find((each) => each.startsWith(`${name}-tour.`)) ?? '';
    const text = readFileSync(join(root, 'cars', file), 'utf8');
    const way = goodOf(file.endsWith('.gpx') ? readGpxWay(text, file) : readLegs(text, file));
    const paper = tourCard(
      shop.plans.papers['tour-card'],
      file,
      goodOf(carTour(ready.car, ready.figures, way)),
    );
    for (const sheet of ['letter', 'a4'] as const) {
      const on = await demo(name, sheet);
      const set = goodOf(setOnePaper(on, paper, shop));
      const faces = facesOf(set);
      const { first, second } = ready.car.spec.print.units;
      const whole = (system: keyof typeof names) =>
        faces.filter((face) => new RegExp(`On the whole way: water [\\d.]+ ${names[system][1]} `).test(face));
      expect(whole(first)).toHaveLength(1);
      expect(whole(second ?? first)).toHaveLength(1);
      for (const { to } of goodOf(carTour(ready.car, ready.figures, way)).legs)
        expect(faces.join(' ').split(to.name).length - 1, to.name).toBeGreaterThanOrEqual(4);
      const leastPt = paper.leastPt(worldOf(on, shop));
      const { fonts, theme } = worldOf(on, shop);
      expect(checkLaidOut(set.blocks, set.laidOut, { fonts, theme, leastPt }).map(inWords)).toEqual([]);
    }
  });
});
