/** The library’s procedures, expanded for one car: its own parts, places and figures in every step. */
import type { Car, PartId } from '../car/car';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { type Values, Writer } from '../language/wording';
import type { SpecPath } from '../spec/source';
import { carValues } from './carValues';
import { CautionWriter } from './cautionWriter';
import { applyChanges } from './changes';
import { dutiesOf } from './duties';
import type { Library, Placed } from './library';
import type { EntryForm, NeedForm, ProcedureForm, SignForm } from './libraryForm';
import { PartValues } from './partValues';
import type { Caution, Procedure, Procedures, Sign, Step } from './procedure';
import { holds, select } from './select';
import type { PrintStyle } from './valuePrinter';

/**
 * Expand every procedure for a car and apply the car’s changes.
 *
 * A step is made for each part its selector finds, and none if the car has no such part. What a procedure needs and
 * the car lacks, words that cannot be written, and changes that name nothing are all reported together.
 */
export function expandProcedures(car: Car, library: Library, print: PrintStyle): Outcome<Procedures> {
  const expansion = new Expansion(car, library, print);
  const expanded = expansion.procedures();
  const changed = applyChanges(car, library, expanded, (keys) => expansion.cautions(keys));
  const problems = withoutWhatFollows([
    ...expansion.problems,
    ...changed.problems,
    ...valvesWithoutDuty(car),
  ]);
  return hasErrors(problems) ? bad(problems) : good(changed.procedures, problems);
}

/** Where something is lacking, steps that speak of it cannot be written either; the keeper is told of what is lacking. */
function withoutWhatFollows(problems: readonly Diagnostic[]): readonly Diagnostic[] {
  const lacks = problems.some(({ code, severity }) => code === 'procedure-lacks' && severity === 'error');
  return lacks ? problems.filter(({ code }) => code !== 'library-words') : problems;
}

/** Valves that no duty covers: no step of the library works them, so the keeper is told. */
function valvesWithoutDuty(car: Car): Diagnostic[] {
  return Object.entries(car.spec.valves).flatMap(([id, valve]) =>
    dutiesOf(car, id).length > 0
      ? []
      : [
          {
            code: 'procedure-valve' as const,
            severity: 'remark' as const,
            at: car.spotOf(`valves.${id}`),
            message: `no step of the library works the ${valve.name}, since its lines do not show what it is for`,
            mend: 'look whether its line is complete; if it is, add steps for it under `changes`',
          },
        ],
  );
}

/** The parts at hand inside groups, outermost first. */
type Hands = readonly PartId[];

class Expansion {
  private readonly own: Diagnostic[] = [];
  private readonly writer: Writer;
  private readonly values: Values;
  private readonly parts: PartValues;
  private readonly cautionWriter: CautionWriter;

  constructor(
    private readonly car: Car,
    private readonly library: Library,
    print: PrintStyle,
  ) {
    this.writer = new Writer(library.language.phrases);
    this.values = carValues(car, print, library.language);
    this.parts = new PartValues(car, print, library.language);
    this.cautionWriter = new CautionWriter(car, library, print);
  }

  get problems(): readonly Diagnostic[] {
    return [...this.own, ...this.cautionWriter.problems];
  }

  cautions(keys: readonly string[]): readonly Caution[] {
    return this.cautionWriter.write(keys);
  }

  procedures(): Procedures {
    return this.library.procedures
      .filter(({ form }) => holds(this.car, form.when))
      .flatMap((procedure) => this.procedure(procedure));
  }

  private procedure(procedure: Placed<ProcedureForm>): readonly Procedure[] {
    const { form } = procedure;
    const lacks = (form.needs ?? []).flatMap((need, at) => this.lacking(need, procedure, at));
    this.own.push(...lacks);
    if (hasErrors(lacks)) return [];
    const steps = this.entries(procedure, ['steps'], form.steps, []);
    if (steps.length === 0) return [];
    const text = (field: 'title' | 'purpose' | 'good' | 'seen') =>
      this.text(procedure, [field], form[field], this.values);
    const texts = (field: 'wrong' | 'never') =>
      (form[field] ?? []).flatMap((each, at) => {
        if (typeof each === 'string') return [this.text(procedure, [field, at], each, this.values)];
        if (!holds(this.car, each.when)) return [];
        return [this.text(procedure, [field, at, 'say'], each.say, this.values)];
      });
    return [
      {
        id: form.id,
        title: text('title'),
        phase: form.phase,
        after: this.after(form.after).filter((id) => id !== form.id),
        purpose: text('purpose'),
        good: text('good'),
        wrong: texts('wrong'),
        cautions: this.cautions(form.cautions ?? []),
        steps,
        seen: text('seen'),
        toldBy: (form['told-by'] ?? []).flatMap((sign, at) => this.signs(procedure, at, sign)),
        never: texts('never'),
        beginsWhile: form['begins-while'] ?? [],
        leaves: form.leaves ?? [],
        changes: [],
      },
    ];
  }

  /** A sign as this car shows it: once, once for each of its parts, or not at all. */
  private signs(procedure: Placed<ProcedureForm>, at: number, sign: SignForm): readonly Sign[] {
    const parts = sign.for === undefined ? [undefined] : select(this.car, sign.for);
    return parts
      .filter((it) => holds(this.car, sign.when, it))
      .map((it) => ({
        by: sign.by,
        say: this.text(procedure, ['told-by', at, 'say'], sign.say, this.withParts({ it })),
      }));
  }

  /** Those of `after` that this car has; in place of one it has not, those that one comes after. */
  private after(ids: readonly string[]): readonly string[] {
    const found = ids.flatMap((id): readonly string[] => {
      const form = this.library.procedures.find((each) => each.form.id === id)?.form;
      if (form === undefined) return [];
      return holds(this.car, form.when) ? [id] : this.after(form.after);
    });
    return [...new Set(found)];
  }

  private lacking(need: NeedForm, procedure: Placed<ProcedureForm>, at: number): Diagnostic[] {
    const parts = need.for === undefined ? [undefined] : select(this.car, need.for);
    return parts
      .filter((it) => holds(this.car, need.when, it) && !holds(this.car, need.car, it))
      .map((it) => {
        const values = this.withParts({ it });
        const { file, line } = procedure.spot(['needs', at]);
        return {
          code: 'procedure-lacks' as const,
          severity: need.severity ?? 'error',
          at: this.car.spotOf(it === undefined ? need.path : `${need.path}.${it}`),
          message: `\`${procedure.form.id}\` needs what this car has not got: ${this.text(procedure, ['needs', at, 'lacking'], need.lacking, values)}`,
          mend: this.text(procedure, ['needs', at, 'mend'], need.mend, values),
          notes: [`The step library asks for it in ${file}, line ${line}.`],
        };
      });
  }

  private entries(
    procedure: Placed<ProcedureForm>,
    path: SpecPath,
    entries: readonly EntryForm[],
    hands: Hands,
  ): readonly Step[] {
    return entries.flatMap((entry, index): readonly Step[] => {
      const here = [...path, index];
      const group = entry.for;
      if (group === undefined) return this.step(procedure, here, entry, hands);
      if (!holds(this.car, entry.when, hands.at(-1))) return [];
      return select(this.car, group, hands.at(-1)).flatMap((it) =>
        this.entries(procedure, [...here, 'steps'], entry.steps ?? [], [...hands, it]),
      );
    });
  }

  private step(
    procedure: Placed<ProcedureForm>,
    path: SpecPath,
    entry: EntryForm,
    hands: Hands,
  ): readonly Step[] {
    const it = hands.at(-1);
    if (!holds(this.car, entry.when, it)) return [];
    if (entry.each !== undefined) {
      return select(this.car, entry.each, it).map((part) =>
        this.oneStep(procedure, path, entry, [...hands, part].join('/'), part, hands),
      );
    }
    const suffix = hands.join('/');
    if (entry.on === undefined) return [this.oneStep(procedure, path, entry, suffix, undefined, hands)];
    const [part, second] = select(this.car, entry.on, it);
    if (part === undefined) return [];
    if (second !== undefined) {
      this.own.push({
        code: 'procedure-several',
        severity: 'error',
        at: procedure.spot([...path, 'on']),
        message: `the step \`${entry.id ?? ''}\` is for one part, but this car has several: \`${part}\`, \`${second}\``,
        mend: 'write `each` instead of `on`, or add `take: first`',
      });
      return [];
    }
    return [this.oneStep(procedure, path, entry, suffix, part, hands)];
  }

  private oneStep(
    procedure: Placed<ProcedureForm>,
    path: SpecPath,
    entry: EntryForm,
    suffix: string,
    part: PartId | undefined,
    hands: Hands,
  ): Step {
    const it = hands.at(-1);
    const named = Object.fromEntries(
      Object.entries(entry.with ?? {}).map(([name, selector]) => [
        name,
        select(this.car, selector, it ?? part)[0],
      ]),
    );
    const values = this.withParts({ ...named, part, it, outer: hands.at(-2) });
    const text = (field: 'say' | 'result' | 'remark' | 'row') =>
      this.text(procedure, [...path, field], entry[field], values);
    const place = this.place(entry, part, it);
    return {
      id: suffix === '' ? (entry.id ?? '') : `${entry.id ?? ''}/${suffix}`,
      action: entry.act ?? 'look',
      ...(part === undefined ? {} : { part }),
      ...(place === undefined ? {} : { place }),
      who: this.role(entry.who ?? 'driver'),
      say: text('say'),
      result: text('result'),
      remark: text('remark'),
      row: text('row'),
      cautions: this.cautions(entry.cautions ?? []),
      proves: entry.proves ?? [],
      sets: this.settings(entry, part, it),
      onCard: entry.card ?? true,
      ifSafe: entry['if-safe'] ?? false,
      origin: {
        kind: 'library',
        // places in a file are worked out when a problem asks for them
        get at() {
          return procedure.spot(path);
        },
      },
    };
  }

  private place(entry: EntryForm, part: PartId | undefined, it: PartId | undefined): string | undefined {
    if (entry.at === 'seat') return this.car.parts.get(this.car.spec.engine.throttle)?.place;
    if (entry.at === 'filler') return this.car.spec.tanks[part ?? it ?? '']?.filler.place;
    const beside = entry.beside === undefined ? undefined : select(this.car, entry.beside, it ?? part)[0];
    return this.car.parts.get(beside ?? part ?? '')?.place;
  }

  private role(who: NonNullable<EntryForm['who']>): Step['who'] {
    if (who !== 'rider') return who;
    return this.car.spec.car.seats > 1 ? 'helper' : 'driver';
  }

  private settings(entry: EntryForm, part: PartId | undefined, it: PartId | undefined): Step['sets'] {
    const sets: Record<string, string | number | boolean> = {};
    for (const [name, value] of Object.entries(entry.sets ?? {})) {
      if (value === 'it' && it !== undefined) sets[name] = it;
      else if (value === 'part' && part !== undefined) sets[name] = part;
      else if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
        sets[name] = value;
    }
    return sets;
  }

  private withParts(parts: Readonly<Record<string, PartId | undefined>>): Values {
    const worded = Object.entries(parts).map(
      ([name, id]) => [name, id === undefined ? undefined : this.parts.of(id)] as const,
    );
    return { ...this.values, ...Object.fromEntries(worded) };
  }

  private text(
    procedure: Placed<ProcedureForm>,
    path: SpecPath,
    text: string | undefined,
    values: Values,
  ): string {
    if (text === undefined) return '';
    const worded = this.writer.write(text, values);
    if (worded.ok) return worded.text;
    this.own.push({
      code: 'library-words',
      severity: 'error',
      at: procedure.spot(path),
      message: `these words of \`${procedure.form.id}\` cannot be written for this car: ${worded.why}`,
      found: `\`${text}\``,
      mend: 'give the value in the spec, or let the text do without it with `{{#if …}}`',
    });
    return '';
  }
}
