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
  'spec-wrong-type':
    'A value of the wrong kind: text where a number belongs, a list where one value belongs.',
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
  'spec-safety-valve-shut':
    'Something that can be shut stands between the boiler and its safety valve, or behind it.',
  'spec-tank': 'A tank whose figures contradict each other.',
  'spec-shares': 'The shares of a blend do not make a whole.',
  'spec-order':
    'Two values that stand in the wrong order: a least above a most, a date before an earlier one.',
  'spec-outside-car': 'A place that lies outside the car.',
  'spec-lacks': 'The car lacks something without which it cannot be run safely.',
  'spec-inspection-due': 'The boiler’s inspection is past its date.',
  'spec-no-log': 'The log of trips that the spec names is not beside it.',
  'spec-change': 'A change to a procedure that says too little or too much.',
  // spec: lines
  'spec-off-line': 'A part that belongs on a line is on none.',
  'spec-line-repeats': 'A line passes through the same part twice.',
  'spec-line-ends': 'A line that begins or ends nowhere.',
  'spec-line-jumps': 'A line that jumps past a valve or device which another line passes through.',
  'spec-two-fluids': 'Two fluids in one pipe, valve or tank.',

  // procedures: the step library and its expansion for a car
  'library-form': 'A file of the step library does not have the form it should have.',
  'library-unknown': 'The step library names something that does not exist.',
  'library-twice': 'Two entries of the step library have the same key.',
  'library-words': 'The words of a library entry cannot be written, for the car or at all.',
  'procedure-several': 'A step that is for one part finds several on this car.',
  'procedure-lacks': 'A procedure needs something that the car, or its spec, has not got.',
  'procedure-change': 'A change names a procedure, step or caution that does not exist.',
  'procedure-valve': 'The step library does not know what a valve is for, so no step works it.',

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

  // layout: theme and sheet
  'theme-yaml': 'The theme is not well-formed YAML.',
  'theme-shape': 'The theme lacks something, has something unknown, or has a value of the wrong kind.',
  'theme-legibility': 'The theme sets type too small, or its lines too close, to be read.',
  'theme-contrast': 'Two colours of the theme are too close to each other to be read, in colour or in grey.',
  'sheet-unknown': 'A sheet size that is neither a known name nor a pair of measures.',
  'sheet-too-small': 'A sheet that cannot be printed on, or whose clear edges leave no room.',

  // layout: pages
  'layout-missing-letters': 'The fonts have no shape for some letters of the text.',
  'layout-too-tall': 'Something that must stay whole is taller than a page.',
  'layout-kept-too-tall': 'Things that must stay together do not fit on one page.',
  'layout-head-too-tall': 'A table’s head leaves no room for a row below it.',
  'layout-table-too-wide': 'A table has too many columns for its width.',
  'layout-too-narrow': 'There is no room for even one letter in a line.',
  'layout-word-broken': 'A word longer than its line was broken between letters.',
  'layout-figure-small': 'A figure would have to be shown too small to be read.',
  'layout-no-target': 'A link or page reference leads to nothing.',
  'layout-duplicate-id': 'Two things in one paper have the same id.',
  'layout-unsettled': 'The page numbers did not settle, because they change the pages they number.',
  'layout-too-many-faces': 'The content does not fit on the faces allowed at the smallest legible size.',

  // layout: checks of finished pages
  'check-words-lost': 'The words on the pages are not the words of the content, each once and in order.',
  'check-outside': 'Something stands outside the printable part of the sheet.',
  'check-overlap': 'Two runs of text cover each other.',
  'check-heading-last': 'A heading stands last on its page.',
  'check-caution-parted': 'A caution stands on another page than the step it belongs to.',
  'check-head-not-repeated': 'A table goes on without its head.',
  'check-type-too-small': 'Type is smaller than the smallest legible size.',
  'check-no-destination': 'A link leads to a place that does not exist.',

  // calc: the keeper's log of trips
  'log-form': 'The log of trips is not a well-formed table.',
  'log-head': 'The head of the log lacks a column, has an unknown one, or does not say its unit.',
  'log-value': 'A value in the log cannot be read.',
  'log-doubtful': 'A line of the log that can be read but is hard to believe.',
  // the program's own files, and the edge
  'shared-absent': 'A file that comes with the program is not there.',
  'file-unreadable': 'A file cannot be read.',
  'file-unwritable': 'Papers cannot be written where they should go.',
  'paper-unknown': 'There is no paper of that name.',
} as const satisfies Record<string, string>;

/** The identifier of a kind of problem. */
export type DiagnosticCode = keyof typeof catalogue;
