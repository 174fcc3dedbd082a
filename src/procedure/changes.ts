/** A car’s own changes to the standard procedures: steps added, replaced, moved and left out, each with its reason. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import type { CarSpec } from '../spec/schema/carSpec';
import type { Library } from './library';
import type { EntryForm } from './libraryForm';
import type { Caution, Procedure, Procedures, Step } from './procedure';

type Change = NonNullable<CarSpec['changes']>[number];
type CarStep = NonNullable<Change['add']>;

/** Procedures after the changes, and what was wrong with them. */
export interface Changed {
  readonly procedures: Procedures;
  readonly problems: readonly Diagnostic[];
}

/** Apply the car’s changes in the order of the spec. A change that cannot be carried out is reported and passed over. */
export function applyChanges(
  car: Car,
  library: Library,
  procedures: Procedures,
  word: (cautions: readonly string[]) => readonly Caution[],
): Changed {
  const problems: Diagnostic[] = [];
  let current = procedures;
  (car.spec.changes ?? []).forEach((change, index) => {
    const made = new OneChange(car, library, change, index, word).apply(current);
    if (made.problem === undefined) current = made.procedures;
    else problems.push(made.problem);
  });
  return { procedures: current, problems };
}

type Made =
  | { readonly procedures: Procedures; readonly problem?: undefined }
  | { readonly problem: Diagnostic };

/** What a change does to one procedure: the new steps and the words for the record; or what is wrong. */
type Edit = { readonly steps: readonly Step[]; readonly words: string } | { readonly problem: Diagnostic };

class OneChange {
  constructor(
    private readonly car: Car,
    private readonly library: Library,
    private readonly change: Change,
    private readonly index: number,
    private readonly word: (cautions: readonly string[]) => readonly Caution[],
  ) {}

  private get words() {
    return this.library.language.messages;
  }

  apply(procedures: Procedures): Made {
    const procedure = procedures.find((each) => each.id === this.change.in);
    if (procedure === undefined) return { problem: this.noProcedure(procedures) };
    const edit = this.edit(procedure);
    if ('problem' in edit) return edit;
    const changed: Procedure = {
      ...procedure,
      steps: edit.steps,
      changes: [...procedure.changes, { words: edit.words, because: this.change.because }],
    };
    return { procedures: procedures.map((each) => (each === procedure ? changed : each)) };
  }

  private edit(procedure: Procedure): Edit {
    const { add, replace, move, before, after, with: instead, 'leave-out': leaveOut } = this.change;
    const target = before ?? after;
    if (add !== undefined) return this.put(procedure.steps, add, target, procedure);
    if (replace !== undefined && instead !== undefined) return this.replace(procedure, replace, instead);
    if (move !== undefined) return this.move(procedure, move, target);
    if (leaveOut !== undefined) return this.leaveOut(procedure, leaveOut);
    return {
      problem: this.problem(
        [],
        'this change says nothing',
        'one of `add`, `replace`, `move`, `leave-out`',
        'say what is changed',
      ),
    };
  }

  private put(steps: readonly Step[], add: CarStep, target: string | undefined, procedure: Procedure): Edit {
    const made = this.carStep(add, procedure, 'add');
    if ('problem' in made) return made;
    const at = this.position(procedure, steps, target);
    if (typeof at !== 'number') return at;
    return {
      steps: [...steps.slice(0, at), made.step, ...steps.slice(at)],
      words: this.words.say('change-added', { step: add.say }),
    };
  }

  private replace(procedure: Procedure, key: string, instead: CarStep): Edit {
    const found = stepsNamed(procedure.steps, key);
    if (found.length === 0) return { problem: this.noStep(procedure, key, 'replace') };
    const rest = procedure.steps.filter((step) => !found.includes(step));
    const made = this.carStep(instead, { ...procedure, steps: rest }, 'with');
    if ('problem' in made) return made;
    const steps = procedure.steps.flatMap((step) =>
      step === found[0] ? [made.step] : found.includes(step) ? [] : [step],
    );
    return { steps, words: this.words.say('change-replaced', { steps: said(found), step: instead.say }) };
  }

  private move(procedure: Procedure, key: string, target: string | undefined): Edit {
    const found = stepsNamed(procedure.steps, key);
    if (found.length === 0) return { problem: this.noStep(procedure, key, 'move') };
    const rest = procedure.steps.filter((step) => !found.includes(step));
    const at = this.position(procedure, rest, target);
    if (typeof at !== 'number') return at;
    return {
      steps: [...rest.slice(0, at), ...found, ...rest.slice(at)],
      words: this.words.say('change-moved', { steps: said(found) }),
    };
  }

  private leaveOut(procedure: Procedure, key: string): Edit {
    const found = stepsNamed(procedure.steps, key);
    if (found.length === 0) return { problem: this.noStep(procedure, key, 'leave-out') };
    return {
      steps: procedure.steps.filter((step) => !found.includes(step)),
      words: this.words.say('change-left-out', { steps: said(found) }),
    };
  }

  /** Where in `steps` the change puts its step: before the first, or after the last, of those that `target` names. */
  private position(
    procedure: Procedure,
    steps: readonly Step[],
    target: string | undefined,
  ): number | { readonly problem: Diagnostic } {
    const field = this.change.before === undefined ? 'after' : 'before';
    const found = target === undefined ? [] : stepsNamed(steps, target);
    const [first] = found;
    const last = found.at(-1);
    if (first === undefined || last === undefined)
      return { problem: this.noStep(procedure, target ?? '', field) };
    return field === 'before' ? steps.indexOf(first) : steps.indexOf(last) + 1;
  }

  private carStep(
    form: CarStep,
    procedure: Procedure,
    field: 'add' | 'with',
  ): { readonly step: Step } | { readonly problem: Diagnostic } {
    if (procedure.steps.some((step) => step.id === form.id)) {
      return {
        problem: this.problem(
          [field, 'id'],
          `\`${procedure.id}\` already has a step \`${form.id}\``,
          'a key that no other step there has',
          'give the step another key',
        ),
      };
    }
    const unknown = (form.cautions ?? []).findIndex((key) => !this.library.cautions.has(key));
    const wrong = form.cautions?.[unknown];
    if (wrong !== undefined) {
      const near = nearest(wrong, this.library.cautions.keys());
      return {
        problem: this.problem(
          [field, 'cautions', String(unknown + 1)],
          `the library has no caution \`${wrong}\``,
          near === undefined ? 'the key of a caution' : `\`${near}\``,
          near === undefined ? 'take it out' : `write \`${near}\``,
        ),
      };
    }
    const place = this.car.parts.get(form.on ?? '')?.place;
    return {
      step: {
        id: form.id,
        action: form.act,
        ...(form.on === undefined ? {} : { part: form.on }),
        ...(place === undefined ? {} : { place }),
        who: form.who ?? 'driver',
        say: form.say,
        result: form.result ?? '',
        remark: form.remark ?? '',
        row: '',
        cautions: this.word(form.cautions ?? []),
        proves: [],
        sets: {},
        onCard: true,
        ifSafe: false,
        origin: { kind: 'car', at: this.car.spotOf(this.path([field])), because: this.change.because },
      },
    };
  }

  private noProcedure(procedures: Procedures): Diagnostic {
    const wanted = this.change.in;
    const inLibrary = this.library.procedures.some(({ form }) => form.id === wanted);
    const near = nearest(
      wanted,
      procedures.map((each) => each.id),
    );
    if (inLibrary)
      return this.problem(
        ['in'],
        `the procedure \`${wanted}\` is not made for this car`,
        'a procedure that the car has',
        'take the change out',
      );
    return this.problem(
      ['in'],
      `there is no procedure \`${wanted}\``,
      near === undefined ? `one of ${procedures.map((each) => `\`${each.id}\``).join(', ')}` : `\`${near}\``,
      near === undefined ? 'name the procedure that is changed' : `write \`${near}\``,
    );
  }

  private noStep(procedure: Procedure, key: string, field: string): Diagnostic {
    const names = [
      ...new Set(procedure.steps.flatMap((step) => [step.id, step.id.split('/')[0] ?? step.id])),
    ];
    const form = this.library.procedures.find((each) => each.form.id === procedure.id)?.form;
    if (form !== undefined && idsIn(form.steps).includes(key)) {
      return this.problem(
        [field],
        `the step \`${key}\` of \`${procedure.id}\` is not made for this car, which has no part for it`,
        'a step that the car has',
        'take the change out, or name another step',
      );
    }
    const near = nearest(key, names);
    return this.problem(
      [field],
      `\`${procedure.id}\` has no step \`${key}\``,
      near === undefined
        ? `one of ${names
            .filter((name) => !name.includes('/'))
            .map((name) => `\`${name}\``)
            .join(', ')}`
        : `\`${near}\``,
      near === undefined ? 'name a step of the procedure' : `write \`${near}\``,
    );
  }

  private path(below: readonly string[]): string {
    return ['changes', String(this.index + 1), ...below].join('.');
  }

  private problem(below: readonly string[], message: string, expected: string, mend: string): Diagnostic {
    return {
      code: 'procedure-change',
      severity: 'error',
      at: this.car.spotOf(this.path(below)),
      message,
      expected,
      mend,
    };
  }
}

function said(steps: readonly Step[]): string {
  return steps.map((step) => step.say).join(' ');
}

/** The steps a key names: the one with that id, or all that a library step with that id was expanded to. */
function stepsNamed(steps: readonly Step[], key: string): readonly Step[] {
  return steps.filter((step) => step.id === key || step.id.startsWith(`${key}/`));
}

function idsIn(entries: readonly EntryForm[]): readonly string[] {
  return entries.flatMap((entry) => [
    ...(entry.id === undefined ? [] : [entry.id]),
    ...idsIn(entry.steps ?? []),
  ]);
}
