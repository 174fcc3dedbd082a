/** What is filled in: real fields of the page, named by what belongs in them. The script keeps what is written. */
import type { CellField, Field } from '../../markup/block';
import { element, type Html } from '../element';

/** A field for this many letters or more keeps a wide column on a narrow screen too. */
const manyLetters = 12;

/** What a cell holds: a line, several, or a box to tick. */
export function writeField(field: CellField): Html {
  if (field.kind === 'tick') return element('input', { ...said(field, 'fill'), type: 'checkbox' });
  if (field.kind === 'lines') return writeLines(field, field.lines);
  const name = field.letters < manyLetters ? 'fill' : 'fill roomy';
  return element('input', { ...said(field, name), type: 'text', autocomplete: 'off' });
}

/** Several lines. */
export function writeLines(field: Field, lines: number): Html {
  return element('textarea', { ...said(field, 'fill roomy'), rows: lines, autocomplete: 'off' });
}

const said = ({ name, title }: Field, looks: string) => ({
  class: looks,
  name,
  'aria-label': title,
  'data-field': true,
});
