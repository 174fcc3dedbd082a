/**
 * Every identifier a problem can carry, with its meaning in plain words.
 *
 * `docs/diagnostics.md` lists the same, and a test holds the two together. An identifier is never
 * reused for another meaning. Each group belongs to one stage.
 */
export const catalogue = {
  // spec: reading the file
  'spec-yaml': 'The file is not well-formed YAML.',
  'spec-duplicate-key': 'The same key stands twice in one place, so that one of the two would be lost.',
  'spec-endless': 'An anchor refers to itself or expands without end.',
  'spec-empty': 'The file is empty, or holds something other than keys and values.',
  'spec-version': 'The file was written for another version of the spec format.',
  // spec: fields
  'spec-missing': 'Something the papers cannot do without is missing.',
  'spec-unknown-key': 'A key the spec does not know; often a misspelling.',
  'spec-wrong-type': 'A value of the wrong kind: text where a number belongs, a list where one value belongs.',
  'spec-not-a-choice': 'A word that is not one of those the field allows.',
  'spec-quantity': 'A quantity that cannot be read: no unit, an unclear unit, or the wrong kind of unit.',
  'spec-below-zero': 'A quantity that cannot be nothing or less than nothing.',
  'spec-value': 'A value outside what the field allows.',
  'spec-key': 'A key that is not lower-case words joined by hyphens.',
  // spec: references
  'spec-unknown-name': 'A name that nothing in the spec has.',
  'spec-wrong-part': 'A name of something of another kind than the field wants.',
  'spec-name-twice': 'Two parts share a key, a name or a tag, so that the papers could mean either.',
  // spec: what cannot be so
  'spec-pressures': 'Pressures that contradict each other or the boiler’s allowed pressure.',
  'spec-no-set-pressure': 'A device whose pressure the papers must print has none.',
  'spec-tank': 'A tank whose figures contradict each other.',
  'spec-shares': 'The shares of a blend do not make a whole.',
  'spec-order': 'Two values that stand in the wrong order: a least above a most, a date before an earlier one.',
  'spec-outside-car': 'A place that lies outside the car.',
  'spec-lacks': 'The car lacks something without which it cannot be run safely.',
  'spec-inspection-due': 'The boiler’s inspection is past its date.',
  'spec-change': 'A change to a procedure that says too little or too much.',
  // spec: lines
  'spec-off-line': 'A part that belongs on a line is on none.',
  'spec-line-repeats': 'A line passes through the same part twice.',
  'spec-line-ends': 'A line that begins or ends nowhere.',
  'spec-line-jumps': 'A line that jumps past a valve which another line passes through.',
  'spec-two-fluids': 'Two fluids in one pipe, valve or tank.',

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
