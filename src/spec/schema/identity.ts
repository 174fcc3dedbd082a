/** Whose car it is, which issue of the spec this is, and how its papers are to be printed. */
import * as z from 'zod';
import { choice, count, date, measure, names, partKinds, sentences, words, yesNo } from './field';

/** What the drawings may show of a body; the first if nothing is said. */
export const outlines = ['open', 'bare', 'top-up', 'closed', 'van'] as const;

/** One of them. */
export type Outline = (typeof outlines)[number];

/** Whether it has a roof, which is drawn at the car's height. */
export function isRoofed(outline: Outline): boolean {
  return outline === 'top-up' || outline === 'closed' || outline === 'van';
}

/** What the car is. */
export const carSection = z.strictObject({
  name: words('What the car is called by those who run it.', 'Marigold'),
  make: words('Who built it.', 'Larkrise Motor Carriage Works'),
  model: words('The maker’s name for the type.', 'Twelve-horse touring car'),
  year: count(1770, 'The year it was built.', '1912'),
  invented: yesNo('The car and its maker are made up, for trying things out; papers then say so.').optional(),
  'number-on-car': words(
    'The number that tells this very car from others like it.',
    'chassis 214',
  ).optional(),
  body: words('The kind of body, as a stranger would say it.', 'five-seat open touring car'),
  seats: count(1, 'How many may ride.', '5'),
  'driver-side': choice(['left', 'right', 'centre'], 'Where the driver sits, looking forward.', 'left'),
  steering: choice(['wheel', 'tiller'], 'What the driver steers with.', 'wheel'),
  length: measure('length', 'From the foremost to the rearmost point.', '14 ft 6 in'),
  width: measure('length', 'Over the widest part.', '5 ft 8 in'),
  outline: choice(
    outlines,
    'What the drawings show of the body: `open`, with mudguards and no roof (so if left out); `bare`, without mudguards; `top-up`, its folding top put up; `closed`, a roof and windows over all seats; `van`, a roof, and a closed load space behind the driver.',
    'van',
  ).optional(),
  'single-wheel': choice(
    ['front', 'rear'],
    'Of a car on three wheels, the one that stands alone, in the middle. Left out, the car has four.',
    'front',
  ).optional(),
  height: measure(
    'length',
    'To the top of the windscreen, folding top or roof. An `outline` with a roof needs it.',
    '7 ft',
  ).optional(),
  wheelbase: measure('length', 'Front axle to rear axle.', '10 ft'),
  'front-axle-back': measure(
    'length',
    'From the foremost point of the car back to the front axle.',
    '2 ft',
    'zero',
  ),
  story: sentences(
    'What a museum tells of the car, a paragraph each.',
    '[Built for a country doctor.]',
  ).optional(),
});

/** Whom to ask. */
export const keeperSection = z.strictObject({
  name: words('The person or workshop that runs the car.', 'Wren & Daughter, carriage engineers'),
  telephone: words('A number that is answered on a running day.', '+1 000 555 0114').optional(),
  'emergency-number': words('Fire and ambulance where the car is run.', "'112'").optional(),
  ask: words(
    'Whom to ask, and when, in the keeper’s words.',
    'Ring before changing anything on the burner',
  ).optional(),
});

const issueEntry = {
  letter: z
    .string()
    .regex(/^[A-Z]{1,2}$/)
    .meta({ description: 'The issue letter, counted up with every change that is printed.', sample: 'C' }),
  date: date('The day of the issue.'),
  changed: sentences('What changed with this issue, a sentence each.', '[New pilot needle valve.]'),
  concerns: z
    .array(
      names(
        partKinds.filter((kind) => !['place', 'liquid', 'fuel', 'outside', 'content'].includes(kind)),
        'A part that it concerns.',
        'pilot-needle-valve',
      ),
    )
    .meta({
      description:
        'The parts that this issue concerns. The record of issues in the owner’s manual then says on which pages each stands.',
    })
    .optional(),
};

/** Which issue of the spec this is. */
export const issueSection = z.strictObject({
  ...issueEntry,
  earlier: z
    .array(
      z.strictObject({
        ...issueEntry,
        spec: words(
          'The file of that issue’s spec, kept beside this one. The owner’s manual then marks what reads otherwise than in it.',
          'marigold-B.yaml',
        ).optional(),
      }),
    )
    .meta({ description: 'The issues before, newest first.' })
    .optional(),
});

/** How the papers are printed. */
export const printSection = z.strictObject({
  units: z
    .strictObject({
      first: choice(['us', 'imperial', 'metric'], 'The units that come first.', 'us'),
      second: choice(['us', 'imperial', 'metric'], 'The units given beside them.', 'metric').optional(),
    })
    .meta({ description: 'Which units to print.' }),
  paper: choice(['letter', 'a4'], 'The paper in the printer.', 'letter'),
  language: z
    .string()
    .regex(/^[a-z]{2,3}(-[A-Z]{2})?$/)
    .meta({ description: 'Language tag of the papers (BCP 47).', sample: 'en-US' }),
  distances: z
    .strictObject({
      dash: measure('length', 'From the driver’s eye to a card on the dash.', '28 in'),
      lap: measure('length', 'From the eye to a sheet on the lap.', '18 in'),
      wall: measure('length', 'From the eye to a sheet on the shed wall.', '5 ft'),
    })
    .meta({ description: 'How far away each kind of paper is read; the size of the type comes from it.' }),
  sides: choice(
    ['one', 'both'],
    'Whether books are printed on one side of the paper or on both; `both` mirrors the margins and side tabs of even pages.',
    'one',
  ).optional(),
  card: words(
    'The size of the dash cards: `half-letter`, `a5`, `a6`, `index-5x8`, or width × height with units.',
    'half-letter',
  ).optional(),
  theme: words('The look of the papers: the name of a theme.', 'plain').optional(),
  folder: words(
    'A folder beside the spec with templates, words, themes or plans of your own; each takes the place of the program’s of the same name.',
    'museum',
  ).optional(),
});
