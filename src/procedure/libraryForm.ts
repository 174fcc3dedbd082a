/** The form of the library’s files: procedures, cautions, phrases. */
import * as z from 'zod';
import { signalWords } from '../language/signal';
import { actions, roles } from '../spec/schema/change';
import { choice, key, sentences, words, yesNo } from '../spec/schema/field';
import { beginnings, endings } from './circumstances';
import { phases, senses } from './procedure';

const traitList = z.array(z.string());

/** Which parts something is done to. Exactly one of `duty`, `its`, `it`. */
export const selectorForm = z.strictObject({
  duty: z
    .string()
    .meta({ description: 'Parts of the whole car by their duty.', sample: 'throttle' })
    .optional(),
  its: z
    .string()
    .meta({ description: 'Parts that belong to the part at hand.', sample: 'vent-valve' })
    .optional(),
  it: z.literal(true).meta({ description: 'The part at hand itself.', sample: 'true' }).optional(),
  where: traitList
    .meta({ description: 'Only those for which all of these hold.', sample: '[seated]' })
    .optional(),
  'where-not': traitList
    .meta({ description: 'Only those for which none of these holds.', sample: '[parked-open]' })
    .optional(),
  except: z
    .string()
    .meta({ description: 'Leave out those with this duty.', sample: 'supply-valve' })
    .optional(),
  order: choice(
    ['from-source', 'from-burner', 'by-reach'],
    'In the order of flow from the tank forward, from the burner back, or as a seated driver reaches them.',
    'from-burner',
  ).optional(),
  take: choice(['first', 'rest'], 'Only the first, or all but the first.', 'first').optional(),
});

/** A condition of the car. Exactly one key. */
export const conditionForm = z.strictObject({
  has: selectorForm.meta({ description: 'The car has at least one such part.' }).optional(),
  trait: z.string().meta({ description: 'This holds for the car.', sample: 'condensing' }).optional(),
  'it-is': z
    .string()
    .meta({ description: 'This holds for the part at hand.', sample: 'read-by-stick' })
    .optional(),
  get all() {
    return z.array(conditionForm).meta({ description: 'All of these hold.' }).optional();
  },
  get any() {
    return z.array(conditionForm).meta({ description: 'At least one of these holds.' }).optional();
  },
  get not() {
    return conditionForm.meta({ description: 'This does not hold.' }).optional();
  },
});

/** A step, or a group of steps repeated for each of several parts (`for` and `steps`). */
export const entryForm = z.strictObject({
  id: key.meta({ description: 'A key of its own in the procedure.', sample: 'open-pilot-valve' }).optional(),
  act: choice(actions, 'What kind of act it is.', 'open').optional(),
  on: selectorForm
    .meta({ description: 'The one part it is done to. The step is left out if the car has none.' })
    .optional(),
  each: selectorForm.meta({ description: 'Parts it is done to, one step each.' }).optional(),
  at: choice(
    ['filler', 'seat'],
    'Where it is done, if not at the part: at the tank’s filler, or in the driver’s seat.',
    'filler',
  ).optional(),
  beside: selectorForm
    .meta({
      description:
        'Where it is done, if not at the part: at the first of these, if there is one. Outside a group, the step’s own part is the part at hand.',
    })
    .optional(),
  with: z
    .record(key, selectorForm)
    .meta({
      description:
        'Other parts its words speak of, by a name of your own. Outside a group, the step’s own part is the part at hand.',
    })
    .optional(),
  who: choice(
    [...roles, 'rider'],
    'Who does it; a rider is a helper where the car seats more than one, and else the driver.',
    'driver',
  ).optional(),
  say: words('The act, one plain imperative sentence.', 'Open {{part}}.').optional(),
  result: words('The state or value that is seen when it is done.', 'open').optional(),
  remark: words('A word more.', '{{> how-to-open}}').optional(),
  row: words(
    'For an act that most troubles share: how a card says it in one row with its neighbours, once it has been said in full.',
    '{{part}} shut',
  ).optional(),
  cautions: z
    .array(key)
    .meta({ description: 'Cautions that belong to it.', sample: '[burner-flood]' })
    .optional(),
  proves: z
    .array(z.string())
    .meta({ description: 'What is known once it is done.', sample: '[level-known]' })
    .optional(),
  sets: z
    .record(z.string(), z.unknown())
    .meta({
      description: 'What it changes beyond its act and part; `it` stands for the key of the group’s part.',
    })
    .optional(),
  card: yesNo('It stands on the dash cards.').optional(),
  'if-safe': yesNo('It is left undone where it cannot be reached without danger.').optional(),
  when: conditionForm.meta({ description: 'Only if this holds.' }).optional(),
  for: selectorForm.meta({ description: 'For a group: the parts it is repeated for.' }).optional(),
  get steps() {
    return z.array(entryForm).meta({ description: 'For a group: its steps.' }).optional();
  },
});

/** Something without which a procedure cannot be carried out. */
export const needForm = z.strictObject({
  car: conditionForm.meta({ description: 'What must hold.' }),
  for: selectorForm.meta({ description: 'Parts for each of which it must hold.' }).optional(),
  when: conditionForm.meta({ description: 'Only asked if this holds.' }).optional(),
  lacking: words('What is lacking, in plain words.', 'a hand valve on the way to {{it}}'),
  mend: words('What the keeper can do.', 'add the valve to the line'),
  path: words('Where in the spec it would stand.', 'lines'),
  severity: choice(['error', 'remark'], 'Whether papers can be printed without it.', 'error').optional(),
});

/** A sentence, or one that is said only of some cars. */
const sayingForm = z.union([
  words('A sentence.', 'It pops out in a draught.'),
  z.strictObject({
    say: words('A sentence.', 'It lights back with a howl.'),
    when: conditionForm.meta({ description: 'Only of cars of which this holds.' }),
  }),
]);

const sayings = (description: string, sample: string) => z.array(sayingForm).meta({ description, sample });

/** A sign by which an emergency is looked up. */
const signForm = z.strictObject({
  by: choice(senses, 'By what it is noticed.', 'sound'),
  say: words('The sign, in half a dozen words.', 'A howl from the burner'),
  for: selectorForm
    .meta({ description: 'Parts of which it is said, once for each; `it` is the part.' })
    .optional(),
  when: conditionForm.meta({ description: 'Only of cars of which this holds.' }).optional(),
});

/** One procedure. */
export const procedureForm = z.strictObject({
  id: key.meta({ description: 'Its key.', sample: 'pilot' }),
  phase: choice(phases, 'The part of the day it belongs to.', 'pilot'),
  title: words('Its title.', 'Light the pilot'),
  after: z.array(key).meta({
    description: 'The procedures whose end it begins at; the first is the usual one.',
    sample: '[air]',
  }),
  when: conditionForm.meta({ description: 'Only for cars of which this holds.' }).optional(),
  purpose: words('What it is for.', 'A flame that keeps the vaporizer hot.'),
  good: words('What is seen when it has gone well.', 'A steady blue flame.'),
  wrong: sayings('What can go wrong.', '[It pops out in a draught.]'),
  seen: words('For an emergency: what calls for it.', 'Flames outside the burner.').optional(),
  'told-by': z
    .array(signForm)
    .min(1)
    .meta({
      description: 'For an emergency: the signs by which somebody who does not know its name looks it up.',
    })
    .optional(),
  never: sayings('For an emergency: what must not be done.', '[Do not throw the hood open.]').optional(),
  'begins-while': z
    .array(choice(beginnings, 'What is so.', 'steam-up'))
    .min(1)
    .meta({
      description:
        'For an emergency: what is so when it can begin, all of it. It is tried from every step where that is so.',
    })
    .optional(),
  leaves: z
    .array(choice(endings, 'What must be so.', 'standing'))
    .min(1)
    .meta({ description: 'For an emergency: what must be so when its steps are done, wherever it began.' })
    .optional(),
  cautions: z
    .array(key)
    .meta({ description: 'Cautions for the whole of it.', sample: '[steam-burns]' })
    .optional(),
  needs: z.array(needForm).meta({ description: 'What the car must have for it.' }).optional(),
  steps: z.array(entryForm).min(1).meta({ description: 'Its steps, in order.' }),
});

/** A file of procedures. */
export const procedureFileForm = z.strictObject({
  procedures: z.array(procedureForm).min(1).meta({ description: 'Procedures, in the order of the day.' }),
});

/** `cautions.yaml`. */
export const cautionFileForm = z.strictObject({
  cautions: z
    .record(
      key,
      z.strictObject({
        signal: choice(signalWords, 'How grave it is.', 'warning'),
        hazard: words('What the danger is.', 'Steam and hot metal'),
        consequence: words('What it does to people or the car.', 'Skin is scalded in an instant.'),
        avoidance: words('How to keep out of it.', 'Wear gloves and stand aside.'),
        short: words(
          'All three in a dozen words, for cards and where the whole has been said just before.',
          'Steam scalds: gloves, and stand aside.',
        ),
        again: words(
          'What to do, in half a dozen words, where the same card has said it before.',
          'Gloves on, stand aside.',
        ),
        'applies-when': conditionForm
          .meta({ description: 'Cars it applies to; left out, every car.' })
          .optional(),
        signs: z
          .array(z.string().regex(/^[A-Z]\d{3}$/))
          .min(1)
          .max(3)
          .meta({
            description: 'Safety signs of ISO 7010 beside it, by number, where it is said whole.',
            sample: '[W021, P003]',
          })
          .optional(),
        front: yesNo('It stands at the front of the manual.').optional(),
      }),
    )
    .meta({ description: 'Every caution by key.' }),
  notices: z
    .array(
      z.strictObject({
        id: key,
        title: words('A short title.', 'The inspector'),
        says: sentences('What it says.', '[Ask the inspector.]'),
      }),
    )
    .meta({ description: 'Standing notices: to whom these papers defer.' }),
});

export type SelectorForm = z.output<typeof selectorForm>;
export type ConditionForm = z.output<typeof conditionForm>;
export type EntryForm = z.output<typeof entryForm>;
export type NeedForm = z.output<typeof needForm>;
export type ProcedureForm = z.output<typeof procedureForm>;
export type SignForm = z.output<typeof signForm>;
export type CautionForm = z.output<typeof cautionFileForm>['cautions'][string];

/** The keys of all steps of a list and of the groups in it, in their order. */
export function stepKeys(entries: readonly EntryForm[]): readonly string[] {
  return entries.flatMap(({ id, steps }) => [...(id === undefined ? [] : [id]), ...stepKeys(steps ?? [])]);
}
