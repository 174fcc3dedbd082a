/**
 * Every identifier a problem can carry, with its meaning in plain words.
 *
 * `docs/diagnostics.md` lists the same, and a test holds the two together. An identifier is never
 * reused for another meaning. Each group belongs to one stage.
 */
export const catalogue = {
  // spec: reading the file
  'spec-yaml': 'The file is not well-formed YAML.',

  // markup: templates
  'template-syntax': 'The template is not well-formed.',
  'template-unknown': 'A template or a piece that is called for does not exist.',
  'template-helper': 'The template uses a helper that does not exist or that could not do its work.',
  'template-missing': 'The template asks for a value that does not exist.',
  'template-value': 'A value is of a kind that cannot stand at its place in the template.',
  'template-raw': 'The template asks for a value to be put in as markup; values are only ever text.',
  'template-place': 'A value is put where no text can stand, such as inside a tag.',
  'template-depth': 'Pieces of templates call each other without end.',

  // markup: the HTML subset
  'markup-syntax': 'The markup is not well-formed HTML.',
  'markup-element': 'An element is not part of the subset.',
  'markup-place': 'An element or text stands where it may not.',
  'markup-unclosed': 'An element is not closed, or is closed without having been opened.',
  'markup-attribute': 'An attribute is not part of the subset, or a required one is missing.',
  'markup-value': 'The value of an attribute is not one of those allowed.',
  'markup-part': 'An element lacks a part it needs, or has one too many.',
  'markup-empty': 'An element that must hold words holds none.',
  'markup-table': 'The rows of a table do not have the same number of columns.',
  'markup-heading': 'A heading skips a level.',
  'markup-id': 'Two elements have the same id.',
  'markup-link': 'A link leads to an id that does not exist.',
  'markup-drawing': 'A figure names a drawing that does not exist.',
} as const satisfies Record<string, string>;

/** The identifier of a kind of problem. */
export type DiagnosticCode = keyof typeof catalogue;
