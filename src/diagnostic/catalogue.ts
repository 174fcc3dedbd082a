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
  'spec-lit-by': 'A burner is lit, or a vaporizer heated, by equipment that cannot be left burning at it.',
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
  'spec-not-for-each': 'Something is said of some of several valves, and has to be said of each or of none.',
  'spec-safety-valve-shut':
    'Something that can be shut stands between the boiler and its safety valve, or behind it.',
  'spec-tank': 'A tank whose figures contradict each other.',
  'spec-shares': 'The shares of a blend do not make a whole.',
  'spec-order':
    'Two values that stand in the wrong order: a least above a most, a date before an earlier one.',
  'spec-cold-level': 'How high the cold boiler may be filled is said where or as it cannot be.',
  'spec-cushion': 'A cushion of air that the fuel does not press into the band of its tank.',
  'spec-test-without-fire': 'A test without fire, of a device that is tested with it or says no test.',
  'spec-burns-on': 'A burner that burns on, or a damper, where the papers cannot have it.',

  'spec-outside-car': 'A place that lies outside the car.',
  'spec-level-heights': 'Heights of the boiler’s levels stand in an order that cannot be.',
  'spec-lacks': 'The car lacks something without which it cannot be run safely.',
  'spec-inspection-due': 'The boiler’s inspection is past its date.',
  'spec-no-log': 'The log of trips that the spec names is not beside it.',
  'spec-oiling':
    'An oiling point that does not say how often, or stands in for a point that the oiling chart has not got.',
  'spec-change': 'A change to a procedure that says too little or too much.',
  // spec: lines
  'spec-off-line': 'A part that belongs on a line is on none.',
  'spec-line-repeats': 'A line passes through the same part twice.',
  'spec-line-ends': 'A line that begins or ends nowhere.',
  'spec-line-jumps': 'A line that jumps past a valve or device which another line passes through.',
  'spec-feeds-nothing': 'A tank of fuel from which nothing comes to a burner.',
  'spec-two-fluids': 'Two fluids in one pipe, valve or tank.',

  // procedures: the step library and its expansion for a car
  'library-form': 'A file of the step library does not have the form it should have.',
  'library-unknown': 'The step library names something that does not exist.',
  'library-twice': 'Two entries of the step library have the same key.',
  'library-words': 'The words of a library entry cannot be written, for the car or at all.',
  'procedure-several': 'A step that is for one part finds several on this car.',
  'procedure-lacks': 'A procedure needs something that the car, or its spec, has not got.',
  'procedure-change': 'A change names a procedure, step or caution that does not exist.',
  'procedure-not-carried':
    'The procedures call for something to carry or to hold the car with, and the spec lists none.',
  'procedure-by-feel':
    'A valve that is shut in a hurry stands beside others, and the spec does not say how it feels.',
  'procedure-airing': 'The spec does not say how long a burner airs before it may be lit again.',
  'procedure-valve': 'The step library does not know what a valve is for, so no step works it.',

  // markup: templates
  'template-syntax': 'The template is not well-formed.',
  'template-unknown': 'A template or a piece that is called for does not exist.',
  'template-helper': 'The template uses a helper that does not exist or that could not do its work.',
  'template-missing': 'The template asks for a value that does not exist.',
  'template-value': 'A value is of a kind that cannot stand at its place in the template.',
  'template-raw': 'The template asks for a value to be put in as markup; values are only ever text.',
  'template-place': 'A value is put where no text can stand, such as inside a tag.',
  'template-drops-step': 'A template prints a procedure without one of its steps.',
  'template-drops-caution': 'A template prints a procedure without one of its cautions.',
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
  'markup-sign': 'The markup names a safety sign that there is not.',
  'markup-drawing': 'A figure names a drawing that does not exist.',

  // papers: what is cut out and hung on the car
  'paper-name-too-long': 'A name does not fit, in legible type, on the thing it is to stand on.',

  // layout: theme and sheet
  'theme-yaml': 'The theme is not well-formed YAML.',
  'theme-shape': 'The theme lacks something, has something unknown, or has a value of the wrong kind.',
  'theme-legibility': 'The theme sets type too small, or its lines too close, to be read.',
  'theme-contrast': 'Two colours of the theme are too close to each other to be read, in colour or in grey.',
  'theme-tabs': 'The marks of the chapters have no room in the margin, or their words no room in them.',
  'theme-card-edge': 'A corner or a hole of the cards leaves no edge of film that holds.',
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
  'layout-no-outer-margin': 'There is no room in the outer margin for the bars that mark what changed.',
  'layout-figure-true-size': 'A figure that is measured with does not fit at its true size.',
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

  // html: the look of papers on a screen
  'screen-outside':
    'The style or script of the screen pages reaches outside the page, or would end it too early.',
  'screen-contrast': 'Two colours of the screen pages are too close to each other to be read.',

  // calc: the keeper's log of trips
  'log-form': 'The log of trips is not a well-formed table.',
  'log-head': 'The head of the log lacks a column, has an unknown one, or does not say its unit.',
  'log-value': 'A value in the log cannot be read.',
  'log-doubtful': 'A line of the log that can be read but is hard to believe.',
  // calc: recorded ways
  'track-form': 'The recorded way is not a well-formed GPX file, or holds no way.',
  'track-value': 'A point of the recorded way cannot be read.',
  // the program's own files, and the edge
  'shared-timeline': 'The parts of a start-up in `shared/timeline.yaml` do not fit together.',
  'words-chain': 'In a list of words, one is replaced by a word that is replaced again.',
  'language-unknown': 'The spec asks for papers in a language whose words are not there.',
  'language-absent': 'The folder of a language lacks one of its files.',
  'language-keys': 'A language has a phrase that nothing asks for.',
  'language-left-out': 'A paper is not yet said in the language that the spec asks for, and is left out.',
  'language-lacks-text': 'A paper would print a text that the language does not say.',
  'language-values': 'A text of a language does not put in the same values as the same text in English.',
  'shared-absent': 'A file that comes with the program is not there.',
  'file-unreadable': 'A file cannot be read.',
  'file-unwritable': 'Papers cannot be written where they should go.',
  'folder-absent': 'The folder of its own that a spec names is not there.',
  'folder-strange': 'A file in the folder of its own takes the place of none of the program’s.',
  'shared-sign': 'A safety sign is named that the program cannot draw, or one that it can has no words.',
  'picture-form': 'A picture of the museum’s own folder is no SVG of plain shapes.',
  'theme-unknown': 'The theme that the spec names is not there.',
  'paper-unknown': 'There is no paper of that name.',

  // comparing two issues of a spec
  'compare-other-car': 'The two specs to be compared are of two different cars.',
  'compare-letter-kept': 'Something changed from one spec to the other, and both bear the same issue letter.',
  'compare-order': 'The spec that was named as the newer is the older of the two.',

  // proof: rules of safety a procedure breaks
  'rule-blow-down-pressure':
    'A procedure breaks the rule that the boiler is blown down at no more than the pressure the spec gives for it.',
  'rule-boiler-opened-under-pressure':
    'A procedure breaks the rule that the boiler is opened or filled by hose only at no pressure.',
  'rule-boiler-taps-shut':
    'A procedure breaks the rule that the taps by which the boiler is filled, emptied or read cold, and the drains of the water tanks, are shut before the main burner is lit, and its vent before it steams at pressure.',
  'rule-feed-before-main':
    'A procedure breaks the rule that there is water and a pump that can feed it, standing, before the main burner is lit.',
  'rule-fire-on-low-water':
    'A procedure breaks the rule that no main burner burns on when the boiler’s water is low.',
  'rule-fires-out-for-blow-down':
    'A procedure breaks the rule that every fire is out, and seen to be out, before the boiler is blown down or drained.',
  'rule-flame-without-level':
    'A procedure breaks the rule that no burner is lit before the boiler’s level is known and enough.',
  'rule-level-known-again':
    'A procedure breaks the rule that the level is read again after water has been put into or let out of the boiler.',
  'rule-level-twice':
    'A procedure breaks the rule that the level has been read in two ways that agree before the main burner is lit on a cold boiler.',
  'rule-tube-off-before-flame':
    'A procedure breaks the rule that the clear tube is off the boiler before a burner is lit.',
  'rule-water-into-dry-boiler':
    'A procedure breaks the rule that no water goes into a boiler that ran dry with the fire on.',
  'rule-bonded-for-filling':
    'A procedure breaks the rule that can and tank touch metal to metal before fuel is poured.',
  'rule-fuel-to-unlit-burner':
    'A procedure breaks the rule that no fuel comes to a burner that neither burns nor is being lit in that step.',
  'rule-igniter-proven':
    'A procedure breaks the rule that main fuel is let on only when what lights it was seen to work, and nothing since could have put it out.',
  'rule-main-outlives-pilot':
    'A procedure breaks the rule that the pilot is never put out while the main burner is on.',
  'rule-no-filling-with-flame':
    'A procedure breaks the rule that no fuel tank is opened, filled or drained with any flame lit.',
  'rule-parked-fuel-cut':
    'A procedure breaks the rule that put away, every fuel tank is cut from every burner, by two valves where the car has two.',
  'rule-pressure-before-flame':
    'A procedure breaks the rule that the pressure over the fuel is read and in its band before a burner is lit.',
  'rule-spilt-fuel':
    'A procedure breaks the rule that nothing is lit before the burner and the ground under it have been seen free of spilt fuel.',
  'rule-torch-out':
    'A procedure breaks the rule that the torch is out when the car moves and when the procedure is done.',
  'rule-two-fuels':
    'A procedure breaks the rule that the starting branch is shut again before the main burner valve is opened past its first crack.',
  'rule-vaporizer-hot':
    'A procedure breaks the rule that fuel is let to a burner only when its vaporizer has had its time of heating and shows that it is hot.',
  'rule-vapour-in-burner':
    'A procedure breaks the rule that a burner in which vapour may hang is aired before anything is lit in it.',
  'rule-vent-before-opening':
    'A procedure breaks the rule that an air-charged tank is vented before its filler is opened.',
  'rule-brakes-tried':
    'A procedure breaks the rule that the brake is seen to hold before the car moves, and is tried at walking pace before it runs.',
  'rule-car-held':
    'A procedure breaks the rule that the car is chocked or its parking brake is set whenever there is steam and the driver’s seat is empty.',
  'rule-chest-drained':
    'A procedure breaks the rule that the drips are open when the car first moves, and the chest is drained before it runs.',
  'rule-gauge-alive':
    'A procedure breaks the rule that the steam gauge is seen to rise before the boiler comes to its working pressure.',
  'rule-oil-before-motion':
    'A procedure breaks the rule that cylinder oil is checked before the car moves, and seen to feed before it runs where that can be seen.',
  'rule-pressure-to-move':
    'A procedure breaks the rule that the car moves off only with its boiler at working pressure.',
  'rule-reverse-at-stand':
    'A procedure breaks the rule that outside of trouble the reverse is set only with the car at a stand and its throttle shut.',
  'rule-safety-valve-setting':
    'A procedure breaks the rule that the safety valve is set above the burner’s cut-out and not above the allowed pressure.',
  'rule-superheater-flow':
    'A procedure breaks the rule that steam is let through a superheater that stands in the fire before the boiler is at its working pressure and before the car moves.',
  'rule-throttle-locked':
    'A procedure breaks the rule that the throttle is locked whenever there is steam and the driver’s seat is empty.',
  'rule-throttle-with-drips-shut':
    'A procedure breaks the rule that steam is let to an undrained engine only with the drips open.',
  'rule-blow-down-clear':
    'A procedure breaks the rule that nobody is by the blow-down outlets when a tap is opened.',
  'rule-burner-front-clear':
    'A procedure breaks the rule that nobody is in front of the burner when main fuel is let on.',
  'rule-driver-in-seat': 'A procedure breaks the rule that the driver is in the seat whenever the car moves.',
  'rule-extinguisher': 'A procedure breaks the rule that an extinguisher is at hand before any flame is lit.',
  'rule-main-outdoors': 'A procedure breaks the rule that the main burner is lit out of doors.',
  'rule-one-place-at-once': 'A procedure breaks the rule that no step needs one person in two places.',
  'rule-ready-for-fire':
    'A procedure breaks the rule that the log, open faults, the inspection, leave to light a fire, people, clothes and water for burns are seen to before the first flame on a cold boiler.',
  'rule-way-clear':
    'A procedure breaks the rule that the way is seen to be clear before steam is let to the engine and before the car moves.',
  'rule-ends-cold':
    'A procedure breaks the rule that when the car is put away no flame burns, there is no pressure, the throttle is locked and every filler cap is on.',
  'rule-ends-parked':
    'A procedure breaks the rule that what was opened is shut: when the car is put away every valve stands as the spec says.',
  'rule-aired-before-relight':
    'A procedure breaks the rule that a main burner that has been on is aired before it is lit again.',
  'rule-burner-pressure':
    'A procedure breaks the rule that the pressure of the fuel at the burner is read before the main burner is lit, where the car has a gauge of it.',
  'rule-glass-true':
    'A procedure breaks the rule that the water in the gauge glass was made to move before the main burner is lit on a cold boiler.',
  'rule-hose-into-hot-boiler':
    'A procedure breaks the rule that a boiler is filled by hose only when it is cool to the touch.',
  'rule-joints-dry':
    'A procedure breaks the rule that the live fuel line has been looked along for wet joints before a burner is lit on it cold.',
  'rule-looked-over-before-motion':
    'A procedure breaks the rule that wheels, steering and drive are looked over and every bearing is oiled before the car moves.',
  'rule-not-left-alone':
    'A procedure breaks the rule that at a stop the car is left only with somebody who knows it, as long as it has steam or a flame.',
  'rule-pressure-holds':
    'A procedure breaks the rule that the pressure over the fuel has been watched and did not fall before the main burner is lit on a cold boiler.',
  'rule-proven-before-road':
    'A procedure breaks the rule that leaks have been looked for, a pump has been seen to feed against the pressure and the automatic to shut the burner before the car moves.',
  'rule-stores-measured':
    'A procedure breaks the rule that water and fuel are measured before the main burner is lit on a cold boiler.',
  'rule-table-gone-through':
    'A procedure breaks the rule that the valve table is gone through valve by valve before the car is left.',
  'rule-burnt-out':
    'A procedure breaks the rule that a burner that burns on after its fuel is shut is taken for out only when somebody has waited and seen it out, and gets no fuel before.',
  'rule-came-in':
    'A procedure breaks the rule that the car comes in with its main burner out, and comes to a stand with its throttle shut.',
  'rule-fuel-valves-shut-down':
    'A procedure breaks the rule that from shutting down on every fuel valve is shut that is shut when the car is put away.',
  'rule-gloves-for-blow-down':
    'A procedure breaks the rule that gloves are on before a blow-down tap is opened under pressure, where the car carries gloves.',
  'rule-laid-up-dry':
    'A procedure breaks the rule that a car that is laid up with its water out has boiler, tanks, pumps and pipes empty and every drain open.',
  'rule-outlets-shut':
    'A procedure breaks the rule that what is opened to drain, vent, fill, charge or read is shut again before the procedure is done.',
  'rule-blower-first':
    'A procedure breaks the rule that the blower runs, and has aired the burner, before main fuel is let on, where the car has one.',
  'rule-monotube-feed':
    'A procedure breaks the rule that the motor feed pump of a monotube runs when its burner is lit.',
  'rule-coil-fed': 'A procedure breaks the rule that a coil is fed for as long as its main burner burns.',
  'rule-coil-not-flooded':
    'A procedure breaks the rule that nothing goes on feeding a coil of a standing car once its fire is out.',
  'rule-bands-agree':
    'A procedure breaks the rule that bands of tanks, gauges, relief valves and the boiler agree with each other.',
  'rule-check-valve-at-boiler':
    'A procedure breaks the rule that a check valve stands between every feed pump and the boiler.',
  'rule-blow-down-taps-shut':
    'A procedure breaks the rule that every blow-down tap is shut when a procedure ends with pressure in the boiler.',

  // proof: steps and procedures
  'proof-cannot-do':
    'A step cannot be done, or does nothing of what it is for, as the car stands when it comes.',
  'proof-cannot-see': 'What a step says is to be seen cannot be seen as the car stands when it comes.',
  'proof-step-part':
    'A step acts on something the car has not got, or proves something of the wrong kind of part.',
  'proof-caution-missing':
    'A step does something dangerous and the caution for it stands neither by it nor at the head of its procedure.',
  'proof-order': 'The order in which procedures follow each other cannot be used.',
  'proof-valve-unknown':
    'How a valve stands at the beginning of a procedure depends on which procedure came before, and no paper says which.',
  'proof-no-way-out': 'From a step of a procedure the emergency sequence does not make the car safe.',
  'proof-first-act-far':
    'From a step of a procedure the first act of the emergency sequence is out of reach of whoever does the step.',
  'proof-emergency-leaves':
    'From a step of a procedure an emergency does not leave the car as it says it does: a flame burns, fuel flows, the car is not held.',
  'proof-no-isolation': 'A leak at some part cannot be cut off from what feeds it.',
  'proof-overrule-unknown': 'A car overrules a rule that does not exist.',
  'proof-overruled': 'A car overrules a rule, for the reason given.',

  // tours
  'tour-form': 'The list of legs is not a well-formed table.',
  'tour-head': 'The head of the list of legs cannot be used.',
  'tour-value': 'A cell of the list of legs cannot be used.',
  'tour-no-heights': 'A track has no heights, so that it is planned as hilly.',
  'tour-off-track': 'A waypoint lies too far from the track to be counted on.',
  'tour-unknown': 'A way cannot be planned while the use of water or fuel is not known.',
  'tour-too-far': 'No choice of stops brings the car to the end with its reserve whole.',

  // figures
  'figure-tank-capacity':
    'The stated capacity of a tank and the volume of its shape differ by more than 5 in 100.',
  'figure-cold-level':
    'The level is read on the same glass cold and under steam, and only one level is given.',
  'figure-levels-unknown': 'Heights are wanting for a drawing of the boiler’s levels.',
  'figure-stick-unknown':
    'A tank is read with a stick, but neither its shape nor any reading of it is given.',
  'figure-stick-short': 'The stick readings of a tank end below what it is filled to.',
  'figure-pilot-band': 'A pilot tank is charged far outside the 15 to 20 psi that pilots run at.',
  'figure-fuel-band': 'Kerosene is kept far outside the 80 to 120 psi that its burners run at.',
  'figure-burns-on':
    'A burner burns on after its valve is shut for an unlikely time, or may do so and nothing says for how long.',
  'figure-soak-short': 'The soak of a kerosene burner is under 15 minutes.',
  'figure-cut-out-high': 'The burner cuts out far above 550 psi.',
  'figure-blend-light': 'There is far more than about 5 % of gasoline in kerosene.',
  'figure-draught-short': 'With the car standing, the draught feeds less than 90 in 100 of the full fire.',
  'figure-steam-slow': 'By fire, water and metal, steam takes over about 10 minutes from cold.',
  'figure-heat-balance':
    'Water and fuel used on the road do not go together: more heat is in the steam than the fuel can give, or far less.',
  'figure-range-unknown':
    'How far the car goes on its water or fuel is not known, so that the range table has nothing to say of it.',
  'figure-marks-unknown':
    'A tank is read on a gauge, and nothing says what is in it at the marks of the gauge.',
  'figure-range-far':
    'The water goes far less or more far than the 25 to 40 miles that 25 US gal take other cars.',
} as const satisfies Record<string, string>;

/** The identifier of a kind of problem. */
export type DiagnosticCode = keyof typeof catalogue;
