/** What was learnt of a step in one state holds in every other state for which it is used: held against doing the step afresh. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply } from '../../src/proof/apply';
import { brokenAt, brokenAtEnd } from '../../src/proof/check';
import { Experience } from '../../src/proof/experience';
import { Flows } from '../../src/proof/flows';
import { modelOf } from '../../src/proof/model';
import { ViewOfStep } from '../../src/proof/rules/rule';
import { parkedState, type State } from '../../src/proof/state';
import { demo } from './library';

describe.each(['marigold', 'thimble', 'heron'])('%s', (name) => {
  const { car, procedures } = demo(name);
  const model = modelOf(car);
  const experience = new Experience(model);
  const fresh = new Flows(model);
  const { book } = experience;
  const met = procedures.flatMap((procedure) => {
    let state = parkedState(model);
    return procedure.steps.map((step) => {
      state = experience.do(state, step).after;
      return state;
    });
  });
  /** A state from the middle of some procedure, with a few bytes that are otherwise. */
  const states = fc
    .record({
      from: fc.constantFrom(...met),
      odd: fc.array(fc.tuple(fc.nat(model.size - 1), fc.nat(3)), { maxLength: 4 }),
    })
    .map(({ from, odd }): State => {
      const made = from.draft();
      for (const [slot, value] of odd) made.set(slot, value);
      return made;
    });
  const steps = fc.constantFrom(
    ...procedures.flatMap((procedure) => procedure.steps.map((step) => ({ procedure, step }))),
  );

  test('a step comes to the same, and breaks the same, as if it were done for the first time', () => {
    fc.assert(
      fc.property(states, steps, (before, { procedure, step }) => {
        const learnt = experience.do(before, step);
        const { after, during, lighting, hitches } = apply(model, fresh, before, step);
        expect(learnt.after.bytes).toEqual(after.bytes);
        expect(learnt.during.bytes).toEqual(during.bytes);
        expect(learnt.during === learnt.after).toBe(during === after);
        expect({ lighting: learnt.lighting, hitches: learnt.hitches }).toEqual({ lighting, hitches });
        const view = new ViewOfStep({
          model,
          flows: fresh,
          procedure,
          step,
          before,
          during,
          after,
          lighting,
        });
        expect(experience.broken(procedure, learnt).answer).toEqual(brokenAt(book, view));
      }),
      { numRuns: 2000 },
    );
  });

  test('so does the end of a procedure', () => {
    fc.assert(
      fc.property(states, fc.constantFrom(...procedures), fc.boolean(), (state, procedure, parked) => {
        const view = { model, flows: fresh, procedure, state, parked };
        expect(experience.brokenAtEnd(procedure, state, parked).answer).toEqual(brokenAtEnd(book, view));
      }),
      { numRuns: 500 },
    );
  });
});
