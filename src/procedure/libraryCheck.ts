/** What the form of a library file cannot say: that every name it uses exists, and that its texts can be filled in. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { faultOfText } from '../language/wording';
import type { SpecPath } from '../spec/source';
import { facts, type Setting, settings } from './facts';
import type { Library, Placed } from './library';
import type { EntryForm, ProcedureForm } from './libraryForm';
import { NameCheck } from './nameCheck';

/** Check a library whose files have the right form. */
export function checkLibrary(library: Library): Diagnostic[] {
  return new LibraryCheck(library).run();
}

const settingsByName: Readonly<Record<string, Setting>> = settings;

class LibraryCheck {
  private readonly names = new NameCheck();

  constructor(private readonly library: Library) {}

  run(): Diagnostic[] {
    const ids = this.library.procedures.map(({ form }) => form.id);
    this.library.procedures.forEach((procedure, index) => {
      if (ids.indexOf(procedure.form.id) !== index) this.names.twice(procedure, ['id'], procedure.form.id);
      for (const [at, id] of procedure.form.after.entries())
        this.names.known(procedure, ['after', at], id, ids, 'procedure');
      this.procedure(procedure);
    });
    for (const caution of this.library.cautions.values())
      this.names.condition(caution, ['applies-when'], caution.form['applies-when']);
    return this.names.problems;
  }

  private procedure(procedure: Placed<ProcedureForm>): void {
    const { form } = procedure;
    this.names.condition(procedure, ['when'], form.when);
    this.cautions(procedure, ['cautions'], form.cautions);
    for (const field of ['purpose', 'good', 'seen', 'title'] as const)
      this.text(procedure, [field], form[field]);
    for (const field of ['wrong', 'never'] as const) {
      for (const [at, each] of form[field]?.entries() ?? []) {
        if (typeof each === 'string') this.text(procedure, [field, at], each);
        else {
          this.text(procedure, [field, at, 'say'], each.say);
          this.names.condition(procedure, [field, at, 'when'], each.when);
        }
      }
    }
    for (const [at, sign] of form['told-by']?.entries() ?? []) {
      this.text(procedure, ['told-by', at, 'say'], sign.say);
      this.names.selector(procedure, ['told-by', at, 'for'], sign.for);
      this.names.condition(procedure, ['told-by', at, 'when'], sign.when);
    }
    if (
      form.phase === 'emergency' &&
      [form.seen, form.never, form['told-by']].some((each) => each === undefined)
    ) {
      this.names.fault(
        procedure,
        ['id'],
        'library-form',
        `the emergency \`${form.id}\` does not say what is seen, by what signs it is looked up and what must never be done`,
        'add `seen`, `told-by` and `never`',
      );
    }
    if (form.phase !== 'emergency' && (form['begins-while'] ?? form.leaves) !== undefined) {
      this.names.fault(
        procedure,
        ['id'],
        'library-form',
        `\`${form.id}\` is no emergency, and says what is so when one begins or has ended`,
        'take `begins-while` and `leaves` out; what it begins after stands under `after`',
      );
    }
    form.needs?.forEach((need, at) => {
      this.names.condition(procedure, ['needs', at, 'car'], need.car);
      this.names.condition(procedure, ['needs', at, 'when'], need.when);
      this.names.selector(procedure, ['needs', at, 'for'], need.for);
      this.text(procedure, ['needs', at, 'lacking'], need.lacking);
      this.text(procedure, ['needs', at, 'mend'], need.mend);
    });
    this.entries(procedure, ['steps'], form.steps, new Set());
  }

  private entries(
    procedure: Placed<ProcedureForm>,
    path: SpecPath,
    entries: readonly EntryForm[],
    seen: Set<string>,
  ): void {
    entries.forEach((entry, at) => {
      const here = [...path, at];
      this.names.condition(procedure, [...here, 'when'], entry.when);
      if (entry.for !== undefined || entry.steps !== undefined) this.group(procedure, here, entry, seen);
      else this.step(procedure, here, entry, seen);
    });
  }

  private group(procedure: Placed<ProcedureForm>, path: SpecPath, entry: EntryForm, seen: Set<string>): void {
    this.names.selector(procedure, [...path, 'for'], entry.for);
    const extra = Object.keys(entry).filter((name) => !['for', 'steps', 'when'].includes(name));
    if (entry.for === undefined || entry.steps === undefined || extra.length > 0) {
      this.names.fault(
        procedure,
        path,
        'library-form',
        'this group of steps is not as it should be',
        'give a group `for` and `steps`, and `when` if need be, and nothing else',
      );
    }
    this.entries(procedure, [...path, 'steps'], entry.steps ?? [], seen);
  }

  private step(procedure: Placed<ProcedureForm>, path: SpecPath, entry: EntryForm, seen: Set<string>): void {
    for (const field of ['id', 'act', 'say', 'result'] as const) {
      if (entry[field] === undefined)
        this.names.fault(
          procedure,
          path,
          'library-form',
          `this step has no \`${field}\``,
          `add \`${field}\``,
        );
    }
    if (entry.on !== undefined && entry.each !== undefined)
      this.names.fault(
        procedure,
        path,
        'library-form',
        'this step has both `on` and `each`',
        'take one of them out',
      );
    if (entry.id !== undefined) {
      if (seen.has(entry.id)) this.names.twice(procedure, [...path, 'id'], entry.id);
      seen.add(entry.id);
    }
    this.names.selector(procedure, [...path, 'on'], entry.on);
    this.names.selector(procedure, [...path, 'each'], entry.each);
    this.names.selector(procedure, [...path, 'beside'], entry.beside);
    for (const [name, selector] of Object.entries(entry.with ?? {}))
      this.names.selector(procedure, [...path, 'with', name], selector);
    for (const field of ['say', 'result', 'remark', 'row'] as const)
      this.text(procedure, [...path, field], entry[field]);
    this.cautions(procedure, [...path, 'cautions'], entry.cautions);
    for (const [at, fact] of entry.proves?.entries() ?? []) {
      this.names.known(procedure, [...path, 'proves', at], fact, Object.keys(facts), 'fact');
    }
    for (const [name, value] of Object.entries(entry.sets ?? {}))
      this.setting(procedure, [...path, 'sets', name], name, value);
  }

  private setting(at: Placed<unknown>, path: SpecPath, name: string, value: unknown): void {
    const setting = settingsByName[name];
    if (setting === undefined) {
      this.names.known(at, path, name, Object.keys(settings), 'setting');
      return;
    }
    const { values } = setting;
    const fits =
      values === 'number'
        ? typeof value === 'number'
        : values === 'yes-no'
          ? typeof value === 'boolean'
          : values === 'part'
            ? value === 'it' || value === 'part'
            : values.includes(String(value));
    const expected =
      typeof values === 'string'
        ? { number: 'a number', 'yes-no': '`true` or `false`', part: '`it` or `part`' }[values]
        : values.map((each) => `\`${each}\``).join(', ');
    if (!fits)
      this.names.fault(
        at,
        path,
        'library-unknown',
        `\`${name}\` cannot be set to \`${String(value)}\``,
        `write ${expected}`,
      );
  }

  private cautions(at: Placed<unknown>, path: SpecPath, ids: readonly string[] | undefined): void {
    for (const [index, id] of ids?.entries() ?? [])
      this.names.known(at, [...path, index], id, [...this.library.cautions.keys()], 'caution');
  }

  private text(at: Placed<unknown>, path: SpecPath, text: string | undefined): void {
    const fault = text === undefined ? undefined : faultOfText(text);
    if (fault !== undefined)
      this.names.fault(
        at,
        path,
        'library-words',
        `this text is not well formed: ${fault}`,
        'look at the braces',
      );
    for (const [, name = ''] of text?.matchAll(/\{\{>\s*([a-z-]+)/g) ?? [])
      this.names.known(at, path, name, Object.keys(this.library.language.phrases), 'phrase');
  }
}
