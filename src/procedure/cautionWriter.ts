/** The library’s cautions, worded for one car. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { type Values, Writer } from '../language/wording';
import { carValues } from './carValues';
import type { Library } from './library';
import type { Caution } from './procedure';
import { holds } from './select';
import type { PrintStyle } from './valuePrinter';

/** Words cautions for a car; what cannot be worded is gathered in `problems`. */
export class CautionWriter {
  readonly problems: Diagnostic[] = [];
  private readonly writer: Writer;
  private readonly values: Values;

  constructor(
    private readonly car: Car,
    private readonly library: Library,
    print: PrintStyle,
  ) {
    this.writer = new Writer(library.language.phrases);
    this.values = carValues(car, print, library.language);
  }

  /** The cautions with these keys that apply to the car. */
  write(keys: readonly string[]): readonly Caution[] {
    return keys.flatMap((id) => {
      const caution = this.library.cautions.get(id);
      if (caution === undefined || !holds(this.car, caution.form['applies-when'])) return [];
      const field = (name: 'hazard' | 'consequence' | 'avoidance' | 'short' | 'again') => {
        const worded = this.writer.write(caution.form[name], this.values);
        if (worded.ok) return worded.text;
        this.problems.push({
          code: 'library-words',
          severity: 'error',
          at: caution.spot([name]),
          message: `the caution \`${id}\` cannot be worded for this car: ${worded.why}`,
          mend: 'give the value in the spec, or let the text do without it',
        });
        return '';
      };
      return [
        {
          id,
          signal: caution.form.signal,
          hazard: field('hazard'),
          consequence: field('consequence'),
          avoidance: field('avoidance'),
          short: field('short'),
          again: field('again'),
          signs: caution.form.signs ?? [],
        },
      ];
    });
  }
}
