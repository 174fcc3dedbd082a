/** Prose said of one car: entries that do not apply fall away, entries for several parts are said of each, texts are worded. */
import type { Car, PartId } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Language } from '../../language/language';
import type { Values, Writer } from '../../language/wording';
import type { Placed } from '../../procedure/library';
import type { ConditionForm, SelectorForm } from '../../procedure/libraryForm';
import { PartValues } from '../../procedure/partValues';
import { holds, select } from '../../procedure/select';
import type { PrintStyle } from '../../procedure/valuePrinter';
import type { SpecPath } from '../../spec/source';

/** A part that an entry is about. */
export interface Named {
  readonly id: PartId;
  readonly name: string;
  readonly tag: string;
  /** The name of its place; empty if it has none. */
  readonly place: string;
}

/** A form as it is said of one car: `when` and `for` are used up, `of` is the parts that were found. */
export type Spoken<T> = T extends string
  ? T
  : T extends readonly (infer E)[]
    ? readonly Spoken<E>[]
    : T extends object
      ? {
          readonly [K in keyof T as K extends 'when' | 'for' ? never : K]: K extends 'of'
            ? readonly Named[]
            : Spoken<T[K]>;
        }
      : T;

interface Entry {
  readonly when?: ConditionForm;
  readonly for?: SelectorForm;
  readonly of?: SelectorForm;
}

/** What prose is worded with, beside the values of the car. */
interface SpeakerStyle {
  readonly print: PrintStyle;
  readonly language: Language;
  /** How full tanks should be, by the part they are read on or are. */
  readonly readings: ReadonlyMap<PartId, Values>;
}

/** Says prose of one car; what cannot be worded is gathered in `problems`. */
export class Speaker {
  readonly problems: Diagnostic[] = [];
  private readonly parts: PartValues;
  private readonly readings: ReadonlyMap<PartId, Values>;

  constructor(
    private readonly car: Car,
    private readonly writer: Writer,
    private readonly values: Values,
    { print, language, readings }: SpeakerStyle,
  ) {
    this.parts = new PartValues(car, print, language);
    this.readings = readings;
  }

  /** The whole of a file. */
  say<T>(placed: Placed<T>): Spoken<T> {
    return this.value(placed.form, [], placed.spot) as Spoken<T>;
  }

  private value(value: unknown, path: SpecPath, spot: Placed<unknown>['spot'], it?: PartId): unknown {
    if (typeof value === 'string') return this.text(value, path, spot, it);
    if (Array.isArray(value))
      return value.flatMap((each, at) =>
        this.applying(each, it).map((part) => this.value(each, [...path, at], spot, part)),
      );
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .filter(([key]) => key !== 'when' && key !== 'for')
        .map(([key, each]) => [
          key,
          key === 'of' ? this.named(each as SelectorForm, it) : this.value(each, [...path, key], spot, it),
        ]),
    );
  }

  /** The parts an entry is said of: none if it does not apply, the part at hand if it is said once. */
  private applying(entry: unknown, it: PartId | undefined): readonly (PartId | undefined)[] {
    if (typeof entry !== 'object' || entry === null) return [it];
    const { when, for: each, of } = entry as Entry;
    const parts = each === undefined ? [it] : select(this.car, each, it);
    return parts.filter(
      (part) => holds(this.car, when, part) && (of === undefined || select(this.car, of, part).length > 0),
    );
  }

  private named(selector: SelectorForm, it: PartId | undefined): readonly Named[] {
    return select(this.car, selector, it).flatMap((id) => {
      const part = this.car.parts.get(id);
      if (part === undefined) return [];
      return [
        {
          id,
          name: part.name,
          tag: part.tag ?? '',
          place: this.car.places.get(part.place ?? '')?.name ?? '',
        },
      ];
    });
  }

  private text(text: string, path: SpecPath, spot: Placed<unknown>['spot'], it: PartId | undefined): string {
    const values =
      it === undefined
        ? this.values
        : { ...this.values, it: { ...this.parts.of(it), ...this.readings.get(it) } };
    const worded = this.writer.write(text, values);
    if (worded.ok) return worded.text;
    this.problems.push({
      code: 'library-words',
      severity: 'error',
      at: spot(path),
      message: `this cannot be worded for the car: ${worded.why}`,
      found: `\`${text}\``,
      mend: 'give the value in the spec, or let the text do without it',
    });
    return '';
  }
}
