/** What is filled in. */
import { empty } from './contents';
import type { Forms } from './form';
import { open } from './places';

/** Their forms. */
export const fieldForms = {
  input: {
    element: 'input',
    within: ['td'],
    ...empty,
    attributes: {
      name: { kind: 'field-name' },
      title: { kind: 'text' },
      type: { kind: 'one-of', values: ['text', 'checkbox'] },
      size: { kind: 'count', least: 1, most: 60 },
    },
    required: ['name', 'title'],
    meaning:
      'a field to fill in, on a screen or by pencil, alone in its cell: a line, or with `checkbox` a box to tick; `title` says what belongs in it; `size`, how many letters it has room for at least (else 5)',
  },
  textarea: {
    element: 'textarea',
    within: [...open, 'td'],
    ...empty,
    attributes: {
      name: { kind: 'field-name' },
      title: { kind: 'text' },
      rows: { kind: 'count', least: 1, most: 30 },
      size: { kind: 'count', least: 1, most: 60 },
    },
    required: ['name', 'title', 'rows'],
    meaning:
      'a field of several lines, to fill in on a screen or by pencil, ruled unless it stands, alone, in a cell; `title` and `size` as for `input`',
  },
} as const satisfies Forms;
