/** Checking that the duties, relations, traits and other names a library file uses exist. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import type { SpecPath } from '../spec/source';
import { duties } from './duties';
import type { Placed } from './library';
import type { ConditionForm, SelectorForm } from './libraryForm';
import { relations } from './relations';
import { carTraits, partTraits } from './traits';

/** Gathers what is wrong with the names in a file. */
export class NameCheck {
  readonly problems: Diagnostic[] = [];

  /** A selector: one beginning, and names that exist. */
  selector(at: Placed<unknown>, path: SpecPath, selector: SelectorForm | undefined): void {
    if (selector === undefined) return;
    const starts = [selector.duty, selector.its, selector.it].filter((each) => each !== undefined);
    if (starts.length !== 1)
      this.fault(
        at,
        path,
        'library-form',
        'a selector begins with one of `duty`, `its`, `it`',
        'write one of them',
      );
    if (selector.duty !== undefined)
      this.known(at, [...path, 'duty'], selector.duty, Object.keys(duties), 'duty');
    if (selector.except !== undefined)
      this.known(at, [...path, 'except'], selector.except, Object.keys(duties), 'duty');
    if (selector.its !== undefined)
      this.known(at, [...path, 'its'], selector.its, Object.keys(relations), 'relation');
    for (const trait of [...(selector.where ?? []), ...(selector['where-not'] ?? [])])
      this.known(at, path, trait, Object.keys(partTraits), 'trait of a part');
  }

  /** A condition: one key, and names that exist. */
  condition(at: Placed<unknown>, path: SpecPath, condition: ConditionForm | undefined): void {
    if (condition === undefined) return;
    if (Object.keys(condition).length !== 1)
      this.fault(
        at,
        path,
        'library-form',
        'a condition has exactly one key',
        'join several with `all` or `any`',
      );
    this.selector(at, [...path, 'has'], condition.has);
    if (condition.trait !== undefined)
      this.known(at, path, condition.trait, Object.keys(carTraits), 'trait of the car');
    if (condition['it-is'] !== undefined)
      this.known(at, path, condition['it-is'], Object.keys(partTraits), 'trait of a part');
    for (const each of [...(condition.all ?? []), ...(condition.any ?? [])]) this.condition(at, path, each);
    this.condition(at, path, condition.not);
  }

  /** A name that must be one of `names`. */
  known(at: Placed<unknown>, path: SpecPath, name: string, names: readonly string[], what: string): void {
    if (names.includes(name)) return;
    const near = nearest(name, names);
    this.problems.push({
      code: 'library-unknown',
      severity: 'error',
      at: at.spot(path),
      message: `there is no ${what} \`${name}\``,
      found: `\`${name}\``,
      ...(near === undefined ? {} : { expected: `\`${near}\`` }),
      mend:
        near === undefined ? `use a ${what} that is listed in \`docs/procedures.md\`` : `write \`${near}\``,
    });
  }

  /** A key that stands twice. */
  twice(at: Placed<unknown>, path: SpecPath, id: string): void {
    this.fault(at, path, 'library-twice', `\`${id}\` stands twice`, 'give one of the two another key');
  }

  /** Anything else that is wrong. */
  fault(
    at: Placed<unknown>,
    path: SpecPath,
    code: 'library-form' | 'library-twice' | 'library-unknown' | 'library-words',
    message: string,
    mend: string,
  ): void {
    this.problems.push({ code, severity: 'error', at: at.spot(path), message, mend });
  }
}
