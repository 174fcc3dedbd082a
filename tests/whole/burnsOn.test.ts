/** What the papers of a car say whose burner burns on after its valve is shut, and that those of other cars say none of it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { figureRemarks } from '../../src/calc/figures/remarks';
import { type ReadyCar, setOnePaper, unsaidOf, worldOf } from '../../src/kettlebook';
import { timedRows } from '../../src/paper/context/runSheet';
import { carFrom, demo, demoNames, goodOf, root, workshop } from './made';
import { wordsOfPaper } from './partWords';

const shop = await workshop();
const spec = readFileSync(join(root, 'tests/fixtures/cars/lapwing.yaml'), 'utf8');
const lapwing = goodOf(await carFrom(spec));

function words(ready: ReadyCar, name: string): string {
  const paper = ready.papers.find((each) => each.name === name);
  if (paper === undefined) throw new Error(`there is no paper ${name}`);
  return wordsOfPaper(goodOf(setOnePaper(ready, paper, shop)));
}

describe('a van with a pot burner', () => {
  test.each([
    ['card-shut-everything', 'Stay away until the pot burner has burnt out, up to 6 min.'],
    ['card-something-is-wrong', 'shut off the air of the pot burner with the pot damper'],
    ['card-something-is-wrong', 'Never open a burner that burns on'],
    ['card-running', 'Well before the steam gauge is at 165 psi'],
    ['card-running', 'Wait until the pot burner has burnt out, up to 6 min.'],
    ['card-running', 'at once: the fire burns on'],
    ['card-running', 'See that the pot burner is out; if not, wait, up to 6 min.'],
    ['card-cold-start', 'burnt out, and then lit again'],
    ['card-filling-up', 'Wait until the pot burner has burnt out, up to 6 min.'],
    ['card-cold-start', 'See that the pot damper is open, so that the pot burner has air.'],
    ['card-shutting-down', 'About 6 min before arriving'],
    ['card-shutting-down', 'Wait until the pot burner has burnt out, up to 6 min.'],
    ['card-cold-start', 'shut it, let it cool, mop it out, air it, and begin this part again'],
    ['card-burner-front', 'Count on the pot burner to burn on for up to 6 min after its valve is shut'],
    ['card-for-the-dark', 'no glow 6 min after its valve is shut'],
    ['visiting-driver', 'It burns on with its fuel shut: a flame until you have seen it out.'],
    ['docent-guide', 'see a flame that grows, almost without a sound'],
    ['docent-guide', 'Wait until the pot burner has burnt out'],
    ['owners-manual', 'Burns on for up to 6 min after its valve is shut'],
    ['owners-manual', 'It counts as a flame until neither flame nor glow is seen in it.'],
    ['owners-manual', 'It goes on boiling water away, about 1.2 imp gal at the most.'],
  ])('%s: %s', (name, said) => {
    expect(words(lapwing, name)).toContain(said);
  });

  test('waits before anything that wants the fire out', () => {
    const order = (name: string, ...said: readonly string[]) =>
      said.map((each) => words(lapwing, name).indexOf(each));
    const [pot, level, stay] = order(
      'card-shutting-down',
      'Wait until the pot burner has burnt out',
      'every fire is out',
      'Stay with the car',
    );
    expect(pot).toBeGreaterThan(0);
    expect(level).toBeGreaterThan(pot ?? 0);
    expect(stay).toBeGreaterThan(level ?? 0);
    const [out, filler] = order(
      'card-filling-up',
      'Wait until the pot burner',
      'Open the filler of the paraffin',
    );
    expect(out).toBeGreaterThan(0);
    expect(filler).toBeGreaterThan(out ?? 0);
  });

  test('nobody is told to listen for a roar, or that there is another burner', () => {
    for (const paper of lapwing.papers) {
      const said = words(lapwing, paper.name);
      expect(said, paper.name).not.toMatch(/main (?:burner|fuel|fire)/i);
      expect(said.replaceAll('a jet of steam that roars', ''), paper.name).not.toMatch(/\broar/i);
    }
  });

  test('the run sheet of a demonstration gives the fire its minutes', () => {
    const rows = timedRows(worldOf(lapwing, shop));
    const at = rows.findIndex(
      ({ lasts }, index) => lasts === 6 && index > rows.findIndex(({ fire }) => fire),
    );
    expect(at).toBe(rows.length - 2);
    expect(rows[at + 1]?.minute).toBe((rows[at]?.minute ?? Number.NaN) + 6);
  });

  test('German has every word of its cards', async () => {
    const german = goodOf(await carFrom(spec.replace('language: en-GB', 'language: de')));
    const lacking = goodOf(unsaidOf(german, german.papers, shop)).flatMap(({ texts }) => texts);
    expect(lacking).toEqual([]);
    expect(words(german, 'card-shut-everything')).toContain('bis zu 6 min');
    expect(words(german, 'card-cold-start')).not.toMatch(/Hauptbrenn/);
  });

  test('a car that calls its only burner the main burner is left its name', async () => {
    const named = goodOf(await carFrom(spec.replace('name: pot burner', 'name: main burner')));
    expect(words(named, 'card-cold-start')).toContain('Light the main burner');
    const plain = goodOf(await carFrom(spec.replace('name: pot burner', 'name: burner')));
    expect(words(plain, 'card-cold-start')).toContain('Light the burner');
  });
});

describe('a time that such burners do not have gets a remark', () => {
  const remarks = async (time: string) => {
    const { car, figures } = goodOf(
      await carFrom(spec.replace('    burns-on: 6 min\n    damper: ash-damper\n', time)),
    );
    return figureRemarks(car, figures).flatMap(({ code, message, severity }) =>
      code === 'figure-burns-on' ? [`${severity}: ${message}`] : [],
    );
  };

  test.each([
    ['    burns-on: 6 min\n', []],
    ['    burns-on: 0 min\n', []],
    ['    burns-on: 15 min\n', []],
    ['    burns-on: 16 min\n', ['remark: the pot burner burns on for very long after its valve is shut']],
    ['    burns-on: 5 s\n', ['remark: the pot burner burns on for so short a time that nobody waits for it']],
    ['', ['remark: nothing says how long the pot burner burns on after its valve is shut']],
  ])('%j', async (time, told) => {
    expect(await remarks(time)).toEqual(told);
  });

  test('not where vapour comes to the burner, or a spark lights it', async () => {
    for (const name of demoNames) {
      const { car, figures } = await demo(name);
      expect(figureRemarks(car, figures).map(({ code }) => code)).not.toContain('figure-burns-on');
    }
  });
});

test.each(demoNames)('%s, whose burners go out at once, is told nothing of it', async (name) => {
  const ready = await demo(name);
  for (const paper of ready.papers)
    expect(words(ready, paper.name), paper.name).not.toMatch(/burn(?:s|ed|t)? (?:on for|out)/i);
});
