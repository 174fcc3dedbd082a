/** What the cards of the day say when a look finds something wrong, and where they send to. */
import { describe, expect, test } from 'vitest';
import { chargedFigures } from '../../src/calc/figures/charged';
import { pilotLasts } from '../../src/calc/figures/endurance';
import { rangeChart } from '../../src/calc/figures/rangeChart';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import type { Inline } from '../../src/markup/block';
import { standsOn } from '../../src/paper/context/standsOn';
import { tripCardContext } from '../../src/paper/context/tripCard';
import { dashCard } from '../../src/paper/papers/dashCard';
import { duties } from '../../src/procedure/duties';
import type { Procedure, Step } from '../../src/procedure/procedure';
import { parseQuantity } from '../../src/quantity/parse';
import { terrains } from '../../src/spec/schema/running';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();

function stepsOf(procedures: readonly Procedure[], id: string): readonly Step[] {
  return procedures.find((procedure) => procedure.id === id)?.steps ?? [];
}

const words = (content: readonly Inline[]) =>
  content.map((each) => (each.kind === 'text' ? each.text : '')).join('');

const indexOf = (steps: readonly Step[], id: string) =>
  steps.findIndex((step) => step.id === id || step.id.startsWith(`${id}/`));

describe.each(demoNames)('%s', (name) => {
  test('a look that finds the pilot out says at once which valves are shut: the last one, and one before it', async () => {
    const { car, proof } = await demo(name);
    const last = duties['pilot-last-valve']?.parts(car) ?? [];
    const feeds = (duties['pilot-feed-valve']?.parts(car) ?? []).map((id) => `(${car.parts.get(id)?.tag})`);
    const looks = proof.procedures.flatMap(({ steps }) =>
      steps.filter(({ id }) => /^(again-pilot|see-pilot|pilot-still-good|stop-pilot)\//.test(id)),
    );
    expect(looks.length > 0).toBe(last.length > 0);
    for (const { id, say, result } of looks) {
      for (const valve of last) expect(`${say} ${result}`, id).toContain(`(${car.parts.get(valve)?.tag})`);
      if (feeds.length > 0)
        expect(
          feeds.some((tag) => `${say} ${result}`.includes(tag)),
          id,
        ).toBe(true);
      expect(result, id).toContain('“Light the pilot”');
    }
  });

  test('the pilot is seen to burn before anything else is read, and again once all are clear, right before the fuel', async () => {
    const { car, proof } = await demo(name);
    const steps = stepsOf(proof.procedures, 'going-on');
    if (duties.pilot?.parts(car).length === 0) return expect(indexOf(steps, 'again-pilot')).toBe(-1);
    expect(indexOf(steps, 'again-pilot')).toBeGreaterThan(0);
    expect(indexOf(steps, 'again-pilot')).toBeLessThan(indexOf(steps, 'again-level'));
    expect(indexOf(steps, 'see-pilot')).toBe(indexOf(steps, 'clear-front') + 1);
    expect(indexOf(steps, 'see-pilot')).toBe(indexOf(steps, 'again-crack-main') - 1);
  });

  test('a glass that can be cut off is looked at before it is read for a fire', async () => {
    const { car, proof } = await demo(name);
    const cocks = duties['glass-cock']?.parts(car) ?? [];
    const drains = duties['glass-drain']?.parts(car) ?? [];
    for (const [procedure, read] of [
      ['pilot', 'level-before-fire'],
      ['going-on', 'again-level'],
    ] as const) {
      const steps = stepsOf(proof.procedures, procedure);
      const at = indexOf(steps, 'glass-on');
      expect(at >= 0, procedure).toBe(cocks.length > 0 && drains.length > 0);
      if (at < 0) continue;
      expect(at, procedure).toBeLessThan(indexOf(steps, read));
      for (const id of [...cocks, ...drains])
        expect(`${steps[at]?.say} ${steps[at]?.result}`).toContain(`(${car.parts.get(id)?.tag})`);
      expect(steps[at]?.onCard).toBe(true);
    }
  });

  test('a card of three parts or more begins with a list of them, a short list across the whole face', async () => {
    const ready = await demo(name);
    let seen = 0;
    for (const plan of worldOf(ready, shop).plans.cards) {
      const { blocks } = goodOf(setOnePaper(ready, dashCard(plan), shop));
      const parts = blocks.flatMap((block) => (block.kind === 'steps' ? [block] : []));
      if (parts.length === 0 || plan.phases?.includes('emergency') === true) continue;
      seen += 1;
      const [lookUp] = blocks.flatMap((block) => (block.kind === 'group' ? [block.blocks] : []));
      const inColumns = lookUp?.[0]?.kind === 'group' ? lookUp[0].blocks : undefined;
      const [list] = inColumns ?? lookUp ?? [];
      const rows = list?.kind === 'table' && JSON.stringify(list).includes('"page') ? list.body.length : 0;
      expect([rows, inColumns !== undefined], plan.name).toEqual([
        parts.length < 3 ? 0 : parts.length,
        parts.length > 6,
      ]);
    }
    expect(seen).toBeGreaterThan(3);
  });

  test('every step of a card that sends to another card names it', async () => {
    const ready = await demo(name);
    const { procedures } = ready.proof;
    const { cards } = worldOf(ready, shop).plans;
    const sent = cards
      .filter(({ phases = [] }) => phases.length > 0 && !phases.includes('emergency'))
      .flatMap((plan) => {
        const titles = procedures
          .filter(
            (procedure) => cards.some((each) => standsOn(each, procedure)) && !standsOn(plan, procedure),
          )
          .map(({ title }) => title);
        const { blocks } = goodOf(setOnePaper(ready, dashCard(plan), shop));
        return blocks
          .flatMap((block) => (block.kind === 'steps' ? block.items : []))
          .flatMap(({ action, result = [] }) => [words(action), words(result)])
          .filter((text) => titles.some((title) => text.includes(`“${title}”`)));
      });
    expect(sent.length).toBeGreaterThan(0);
    expect(sent.filter((text) => !text.includes('(card “'))).toEqual([]);
  });

  test('the example of the trip card asks for no more than the mark from which the range table goes as far', async () => {
    const world = worldOf(await demo(name), shop);
    const { water } = world.figures;
    if (water === undefined) throw new Error('no water tank');
    for (const { system, example } of tripCardContext(world).faces) {
      const start = parseQuantity((example?.start ?? '').replaceAll('\u00a0', ' '), 'length');
      const leg = parseQuantity((example?.distance ?? '').replaceAll('\u00a0', ' '), 'distance');
      if (!start.ok || !leg.ok) throw new Error(`no example: ${JSON.stringify(example)}`);
      const terrain = terrains.find((each) => world.words.terrain[each] === example?.road);
      if (terrain === undefined) throw new Error(`no such road: ${example?.road}`);
      const mark = rangeChart(water, system)
        .rows.filter((row) => (row.rangeM[terrain] ?? 0) >= leg.quantity.si - 1)
        .sort((one, other) => one.depthM - other.depthM)[0];
      // printed rounded up, by a sixteenth of an inch at the most
      expect(mark?.depthM).toBeGreaterThanOrEqual(start.quantity.si - 0.0254 / 16);
    }
  });

  test('how long a pilot burns on its tank is the figure of the manual', async () => {
    const { car } = await demo(name);
    const charged = chargedFigures(car);
    let seen = 0;
    for (const id of Object.keys(car.spec.tanks)) {
      const told = pilotLasts(car, id);
      if (told === undefined) continue;
      seen += 1;
      const figure = charged
        .find(({ tankId }) => tankId === id)
        ?.lasts.find(
          ({ burner, fire }) => fire === 'full' && car.spec.burners[burner]?.job === 'pilot',
        )?.endurance;
      expect(told.si).toBeCloseTo(figure?.seconds ?? Number.NaN, 3);
    }
    // Heron has no pilot, and Thimble’s tank feeds the main burner too
    expect(seen).toBe(name === 'marigold' ? 1 : 0);
  });
});
