/** Rules that a car overrules, by name and with a reason. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { rules } from './rules';
import type { Rule } from './rules/rule';

/** A rule that does not hold for a car. */
export interface Overruled {
  readonly rule: Rule;
  readonly because: string;
}

/** What a car overrules, and what is wrong with how it says so. That it overrules anything is itself remarked. */
export function overrulesOf(car: Car): {
  readonly overruled: readonly Overruled[];
  readonly problems: readonly Diagnostic[];
} {
  const problems: Diagnostic[] = [];
  const overruled = (car.spec.overrules ?? []).flatMap(
    ({ rule: id, because }, index): readonly Overruled[] => {
      const at = car.spotOf(`overrules.${index + 1}.rule`);
      const rule = rules.find((each) => each.id === id);
      if (rule === undefined) {
        const near = nearest(
          id,
          rules.map((each) => each.id),
        );
        problems.push({
          code: 'proof-overrule-unknown',
          severity: 'error',
          at,
          message: `there is no rule \`${id}\``,
          found: `\`${id}\``,
          expected: near === undefined ? 'the name of a rule, as a finding tells it' : `\`${near}\``,
          mend:
            near === undefined ? 'take the entry out, or name the rule that is meant' : `write \`${near}\``,
        });
        return [];
      }
      problems.push({
        code: 'proof-overruled',
        severity: 'remark',
        at,
        message: `this car overrules the rule that ${rule.title}`,
        found: because,
        mend: 'take the entry out as soon as the car can keep the rule',
        notes: [`The rule is there because ${rule.reason}.`, 'The manual prints the rule and the reason.'],
      });
      return [{ rule, because }];
    },
  );
  return { overruled, problems };
}
