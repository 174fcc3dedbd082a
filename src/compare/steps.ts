/** Steps of procedures that came, went, read otherwise or stand elsewhere. */
import type { Procedure, Procedures, Step } from '../procedure/procedure';
import type { Change } from './comparison';
import type { NewKeys } from './keys';
import { movedEntries } from './order';
import { nameOf, type Speech } from './said';
import { differingWords } from './stretch';

/** Every difference of the procedures, in their order. */
export function changedSteps(
  before: Procedures,
  after: Procedures,
  keys: NewKeys,
  speech: Speech,
): readonly Change[] {
  const old = new Map(before.map((procedure) => [procedure.id, procedure]));
  const now = new Set(after.map(({ id }) => id));
  return [
    ...after.flatMap((procedure) => {
      const was = old.get(procedure.id);
      return was === undefined
        ? [whole(procedure, 'added')]
        : [...changedHead(was, procedure), ...changedIn(was, procedure, keys, speech)];
    }),
    ...before.filter(({ id }) => !now.has(id)).map((procedure) => whole(procedure, 'removed')),
  ];
}

function whole(procedure: Procedure, kind: 'added' | 'removed'): Change {
  const text = `procedure of ${procedure.steps.length} steps`;
  return {
    group: 'step',
    kind,
    what: procedure.title,
    was: kind === 'removed' ? text : '',
    is: kind === 'added' ? text : '',
  };
}

/** What is said before and after the steps. */
function changedHead(was: Procedure, is: Procedure): readonly Change[] {
  const said = (procedure: Procedure): readonly (readonly [string, string])[] => [
    ['title', procedure.title],
    ['purpose', procedure.purpose],
    ['when it has gone well', procedure.good],
    ['what can go wrong', procedure.wrong.join(' ')],
    ['seen', procedure.seen],
    ['told by', procedure.toldBy.map(({ say }) => say).join('; ')],
    ['never', procedure.never.join(' ')],
    ['cautions', procedure.cautions.map(({ short }) => short).join(' ')],
    ['reasons', procedure.changes.map(({ because }) => because).join(' ')],
  ];
  const old = new Map(said(was));
  return said(is).flatMap(([field, text]) => {
    const before = old.get(field) ?? '';
    return before === text ? [] : [changed(`${is.title}, ${field}`, before, text)];
  });
}

function changedIn(was: Procedure, is: Procedure, keys: NewKeys, speech: Speech): readonly Change[] {
  const old = new Map(was.steps.map((step) => [rekeyed(step.id, keys), step]));
  const now = new Map(is.steps.map((step) => [step.id, step]));
  const moved = movedEntries(
    [...old.keys()].filter((id) => now.has(id)),
    [...now.keys()].filter((id) => old.has(id)),
  );
  const present = is.steps.flatMap((step, index): readonly Change[] => {
    const before = old.get(step.id);
    if (before === undefined)
      return [{ group: 'step', kind: 'added', what: is.title, was: '', is: `${index + 1}. ${step.say}` }];
    const reordered = moved.has(step.id) ? [reorderedStep(was, is, before, index)] : [];
    return [...reordered, ...changedStep(`${is.title}, step ${index + 1}`, before, step, speech)];
  });
  const gone = was.steps.flatMap((step, index): readonly Change[] =>
    now.has(rekeyed(step.id, keys))
      ? []
      : [{ group: 'step', kind: 'removed', what: is.title, was: `${index + 1}. ${step.say}`, is: '' }],
  );
  return [...present, ...gone];
}

function reorderedStep(was: Procedure, is: Procedure, step: Step, index: number): Change {
  const place = (procedure: Procedure, at: number) => {
    const previous = procedure.steps[at - 1];
    return previous === undefined ? 'first' : `after “${previous.say}”`;
  };
  return {
    group: 'step',
    kind: 'reordered',
    what: `${is.title}: ${step.say}`,
    was: place(was, was.steps.indexOf(step)),
    is: place(is, index),
  };
}

/** The words of a step: its act and result together, so that a change reads as the step does. */
function changedStep(what: string, was: Step, is: Step, speech: Speech): readonly Change[] {
  const who = { driver: 'driver', helper: 'helper', either: 'driver or helper' };
  const said = (step: Step): readonly (readonly [string, string])[] => [
    ['', [step.say, ...(step.result === '' ? [] : [`(${step.result})`])].join(' ')],
    ['remark', step.remark],
    ['who', who[step.who]],
    ['place', step.place === undefined ? '' : nameOf(step.place, speech)],
    ['cautions', step.cautions.map(({ short }) => short).join(' ')],
    ['on the card', step.onCard ? 'yes' : 'no'],
    ['reason', step.origin.because ?? ''],
  ];
  const old = new Map(said(was));
  return said(is).flatMap(([field, text]) => {
    const before = old.get(field) ?? '';
    const full = field === '' ? what : `${what}, ${field}`;
    return before === text ? [] : [changed(full, before, text)];
  });
}

function changed(what: string, was: string, is: string): Change {
  const kind = was === '' ? 'added' : is === '' ? 'removed' : 'changed';
  const [old, now] = differingWords(was, is);
  return { group: 'step', kind, what, was: old, is: now };
}

/** A step made for one part has the part's key behind a stroke. */
function rekeyed(id: string, keys: NewKeys): string {
  return id
    .split('/')
    .map((part) => keys.get(part) ?? part)
    .join('/');
}
