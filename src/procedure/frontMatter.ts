/** What stands at the front of a manual: the cautions that always hold, and the notices to whom the papers defer. */
import type { Car } from '../car/car';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { Writer } from '../language/wording';
import { carValues } from './carValues';
import { CautionWriter } from './cautionWriter';
import type { Library, Notice } from './library';
import type { Caution } from './procedure';
import type { PrintStyle } from './valuePrinter';

/** Cautions and notices, worded for one car. */
export interface FrontMatter {
  readonly cautions: readonly Caution[];
  readonly notices: readonly Notice[];
}

/** The front cautions that apply to the car, and every standing notice, in the order of the library. */
export function frontMatter(car: Car, library: Library, print: PrintStyle): Outcome<FrontMatter> {
  const cautions = new CautionWriter(car, library, print);
  const writer = new Writer(library.language.phrases);
  const values = carValues(car, print, library.language);
  const problems: Diagnostic[] = [];
  const front = [...library.cautions].flatMap(([id, { form }]) => (form.front === true ? [id] : []));
  const written = cautions.write(front);
  const notices = library.notices.map(({ form, spot }) => ({
    ...form,
    says: form.says.map((text, at) => {
      const worded = writer.write(text, values);
      if (worded.ok) return worded.text;
      problems.push({
        code: 'library-words',
        severity: 'error',
        at: spot(['says', at]),
        message: `the notice \`${form.id}\` cannot be worded for this car: ${worded.why}`,
        mend: 'give the value in the spec, or let the text do without it',
      });
      return '';
    }),
  }));
  const all = [...cautions.problems, ...problems];
  return hasErrors(all) ? bad(all) : good({ cautions: written, notices });
}
