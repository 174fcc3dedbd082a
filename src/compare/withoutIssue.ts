/** A car and its procedures as they would stand with no issue on them, so that two issues can be laid side by side. */
import type { World } from '../paper/paper';
import type { Procedures } from '../procedure/procedure';
import { printDay } from '../quantity/day';

const noIssue = { letter: 'A', date: '2000-01-01', changed: [] };

/** The same world, less the letter, the date and the record of its issue, and what it knows of the one before. */
export function withoutIssue(world: World): World {
  const { earlier: _, since: __, ...own } = world;
  const { car, proof } = world;
  return {
    ...own,
    proof: { ...proof, procedures: unissued(world) },
    car: { ...car, spec: { ...car.spec, issue: noIssue } },
  };
}

/**
 * The procedures with the issue taken out of their words, where a step names it: its letter, a word or two, its date as
 * the papers print it. Nothing shorter is taken out: another date of the car may be the same day.
 */
export function unissued({ car, proof }: Pick<World, 'car' | 'proof'>): Procedures {
  const { letter, date } = car.spec.issue;
  const day = printDay(date, car.spec.print.language).replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const named = new RegExp(`(?<![\\p{L}\\p{N}])${letter}([^.,;:\\d]{1,12})${day}`, 'gu');
  const without = (text: string) => text.replace(named, `${noIssue.letter}$1${noIssue.date}`);
  return proof.procedures.map((procedure) => ({
    ...procedure,
    steps: procedure.steps.map((step) => ({
      ...step,
      say: without(step.say),
      result: without(step.result),
      remark: without(step.remark),
    })),
  }));
}
