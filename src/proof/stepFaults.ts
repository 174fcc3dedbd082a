/** Steps that speak of what the car has not got, or say they prove what they cannot be about. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { type FactKey, facts, settings } from '../procedure/facts';
import type { Procedure, Procedures, Step } from '../procedure/procedure';
import { stepWords } from './findings';
import type { Model } from './model';

/** Every fault of the steps themselves. */
export function stepFaults(model: Model, procedures: Procedures): readonly Diagnostic[] {
  return procedures.flatMap((procedure) =>
    procedure.steps.flatMap((step) => [
      ...partFaults(model, procedure, step),
      ...factFaults(model, procedure, step),
      ...settingFaults(procedure, step),
    ]),
  );
}

/** Settings that name a burner, what the step does to it, and what mends another name. */
const aboutBurners = [
  ['lighting', 'lights', 'name the burner that is lit'],
  ['burnt-out', 'waits for', 'name the burner that is waited for'],
] as const;

function fault(procedure: Procedure, step: Step, what: string, mend: string): Diagnostic {
  return {
    code: 'proof-step-part',
    severity: 'error',
    at: step.origin.at,
    message: `${stepWords(procedure, step)}: ${what}`,
    mend,
  };
}

function partFaults(model: Model, procedure: Procedure, step: Step): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  if (step.part !== undefined && !model.car.parts.has(step.part))
    found.push(
      fault(
        procedure,
        step,
        `the car has no \`${step.part}\``,
        'name a part of the car, or leave the step out',
      ),
    );
  if (step.place !== undefined && !model.car.places.has(step.place))
    found.push(fault(procedure, step, `the car has no place \`${step.place}\``, 'name a place of the car'));
  for (const [key, does, mend] of aboutBurners) {
    const named = step.sets[key];
    if (named !== undefined && !model.burners.includes(String(named)))
      found.push(
        fault(procedure, step, `it ${does} \`${String(named)}\`, which is no burner of the car`, mend),
      );
  }
  return found;
}

function factFaults(model: Model, procedure: Procedure, step: Step): readonly Diagnostic[] {
  return step.proves.flatMap((key): readonly Diagnostic[] => {
    if (!(key in facts))
      return [
        fault(
          procedure,
          step,
          `it proves \`${key}\`, which is not a fact that can be proven`,
          suggest(key, Object.keys(facts)),
        ),
      ];
    const { of } = facts[key as FactKey];
    const kind = step.part === undefined ? undefined : model.car.parts.get(step.part)?.kind;
    return of === 'car' || of === kind
      ? []
      : [
          fault(
            procedure,
            step,
            `it proves \`${key}\`, which is said of a ${of}, and is done to ${kind === undefined ? 'no part' : `a ${kind}`}`,
            `give the step the ${of} it is about`,
          ),
        ];
  });
}

function settingFaults(procedure: Procedure, step: Step): readonly Diagnostic[] {
  return Object.keys(step.sets).flatMap((key) =>
    key in settings
      ? []
      : [
          fault(
            procedure,
            step,
            `it sets \`${key}\`, which the model has not got`,
            suggest(key, Object.keys(settings)),
          ),
        ],
  );
}

function suggest(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near === undefined ? 'take it out, or use one that is listed' : `write \`${near}\``;
}
