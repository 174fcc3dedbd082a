/** Changes a car makes to the standard procedures, each with its reason. */
import * as z from 'zod';
import { choice, key, names, sentences, words } from './field';

/** What a step can be. The list is the trade’s own verbs; the model knows what each does to the car. */
export const actions = [
  'look',
  'listen',
  'check',
  'read',
  'dip',
  'open',
  'shut',
  'crack',
  'fill',
  'pump',
  'charge',
  'vent',
  'warm',
  'light',
  'wait',
  'put-out',
  'lock',
  'unlock',
  'set',
  'release',
  'blow-down',
  'drain',
  'move',
  'stop',
  'place',
  'remove',
  'oil',
  'call',
  'stand',
  'write',
] as const;

/** One of the things a step can be. */
export type Action = (typeof actions)[number];

/** Who does a step. */
export const roles = ['driver', 'helper', 'either'] as const;

/** A step as a keeper writes it. */
export const carStep = z.strictObject({
  id: key.meta({ description: 'A key for the step, of its own in the procedure.', sample: 'wipe-drip-tray' }),
  act: choice(actions, 'What kind of act it is.', 'look'),
  on: names(
    [
      'tank',
      'boiler',
      'superheater',
      'feed-heater',
      'condenser',
      'burner',
      'vaporizer',
      'engine',
      'pump',
      'valve',
      'device',
      'gauge',
      'lock',
      'control',
      'fitting',
      'equipment',
    ],
    'The part it is done to.',
    'drip-tray',
  ).optional(),
  who: choice(roles, 'Who does it.', 'driver').optional(),
  say: words('The step in plain words, one action, in the imperative.', 'Wipe the drip tray dry.'),
  result: words('What is seen when it is done: a state or a value.', 'dry').optional(),
  remark: words('A word more, if it needs one.', 'It fills in an hour if the valve weeps.').optional(),
  cautions: z
    .array(key)
    .meta({ description: 'Cautions from the library that belong to it.', sample: '[burner-flood]' })
    .optional(),
});

/**
 * A step of a procedure: its key, or, for one of several that a step was made into, that key and the part’s:
 * `blow-down/left-tap`.
 */
const stepKey = z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*(\/[a-z][a-z0-9]*(-[a-z0-9]+)*)*$/);

/** One change. */
export const change = z.strictObject({
  in: key.meta({ description: 'The procedure that is changed.', sample: 'inspect' }),
  add: carStep.meta({ description: 'A step to add, before or after another.' }).optional(),
  replace: stepKey
    .meta({ description: 'A step to replace; `with` gives the new one.', sample: 'look-under' })
    .optional(),
  with: carStep.meta({ description: 'The step that takes its place.' }).optional(),
  move: stepKey
    .meta({ description: 'A step to move, before or after another.', sample: 'oil-round' })
    .optional(),
  'leave-out': stepKey.meta({ description: 'A step to leave out.', sample: 'check-hood' }).optional(),
  before: stepKey.meta({ description: 'The step it comes before.', sample: 'light-pilot' }).optional(),
  after: stepKey.meta({ description: 'The step it comes after.', sample: 'look-under' }).optional(),
  because: words('Why. The manual prints it.', 'The tray on this car fills unseen.'),
});

/** A rule of safety that this car does not keep, by its name, and why. */
export const overrule = z.strictObject({
  rule: key.meta({ description: 'The name of the rule, as a finding tells it.', sample: 'main-outdoors' }),
  because: words(
    'Why. The manual prints it.',
    'It is only ever lit under the extraction hood of the workshop.',
  ),
});

/** Sentences added to a paper by the keeper. */
export const keeperNotes = sentences(
  'Things this car does that others do not; the first thing a visiting driver reads.',
  '[The reverse pedal is where others have the brake.]',
);
