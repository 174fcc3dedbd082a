/** `input` and `textarea`: what is filled in. */
import { withApostrophes } from '../apostrophes';
import type { CellField, Field } from '../block';
import type { Checked } from '../check';
import { baseOf, type ElementReader, elementsOf, type Reader } from '../reader';

/** Room in a field that does not say how much it needs: a figure with its unit. */
const usualLetters = 5;

/** The field that a cell holds, if any. Told: words beside it, or two of them. */
export function fieldIn(cell: Checked, reader: Reader): CellField | undefined {
  const [input, another] = elementsOf(cell).filter(({ form }) => form === 'input' || form === 'textarea');
  if (input === undefined) return undefined;
  if (another !== undefined || reader.words(cell).length > 0) {
    reader.report('markup-part', another ?? input, {
      message: 'a field stands alone in its cell',
      mend: 'give it a cell of its own',
    });
  }
  const { attributes } = input;
  const letters = Number(attributes.get('size') ?? usualLetters);
  return { kind: kindOf(input), letters, lines: linesOf(input), ...namesOf(input) };
}

/** Lines that are filled in as one field. */
export const readTextarea: ElementReader = (node) => ({
  kind: 'rule',
  ...baseOf(node),
  lines: linesOf(node),
  field: { kind: 'lines', ...namesOf(node) },
});

function kindOf({ form, attributes }: Checked): Field['kind'] {
  if (form === 'textarea') return 'lines';
  return attributes.get('type') === 'checkbox' ? 'tick' : 'line';
}

const linesOf = ({ attributes }: Checked): number => Number(attributes.get('rows') ?? 1);

function namesOf({ attributes }: Checked): Pick<Field, 'name' | 'title'> {
  return { name: attributes.get('name') ?? '', title: withApostrophes(attributes.get('title') ?? '') };
}
