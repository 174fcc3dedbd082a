/** Places on the car; what is carried: tanks, liquids, fuels, equipment. */
import * as z from 'zod';
import { choice, keyed, measure, names, sentences, words } from './field';

/** A place where parts are found. */
export const place = z.strictObject({
  name: words('A name a stranger understands.', 'driver’s floor, left of the brake pedal'),
  at: z
    .strictObject({
      back: measure('length', 'Back from the foremost point of the car.', '5 ft 2 in', 'zero'),
      right: measure(
        'length',
        'To the right of the centre line, looking forward; to the left is negative.',
        '-14 in',
        'any',
      ),
      up: measure('length', 'Above the ground.', '22 in', 'zero').optional(),
    })
    .meta({ description: 'Where it is, for the drawings.' }),
  reach: choice(
    ['seated', 'standing', 'opened', 'kneeling', 'under'],
    'How one gets at it: from the driver’s seat; standing beside the car; after opening something; kneeling; lying under the car.',
    'seated',
  ),
  how: words(
    'What has to be opened or lifted first, if anything.',
    'lift the left front floorboard',
  ).optional(),
});

/** A liquid of the keeper’s own, beside those that come with the program. */
export const liquid = z.strictObject({
  name: words('Its name on the drum.', 'lamp oil'),
  density: measure('density', 'Mass of a volume, at about 15 °C.', '0.80 kg/L'),
  'higher-heating-value': measure(
    'specificEnergy',
    'Heat of burning with the water vapour condensed.',
    '46.2 MJ/kg',
  ),
  'lower-heating-value': measure('specificEnergy', 'Heat of burning without it.', '43.4 MJ/kg'),
  'flash-point': measure(
    'temperature',
    'Closed-cup flash point, the lowest the data sheet allows.',
    '45 °C',
    'any',
  ),
  'starts-boiling': measure('temperature', 'Initial boiling point.', '150 °C', 'any'),
  source: words('Where the figures come from.', 'the seller’s data sheet of May 2025'),
});

/** A fuel as it goes into a tank: one liquid or a blend. */
export const fuel = z.strictObject({
  name: words('What it is called on the papers.', 'kerosene blend'),
  parts: z
    .array(
      z.strictObject({
        liquid: names(['liquid'], 'Which liquid.', 'kerosene'),
        share: measure('share', 'Its share by volume.', '95 %'),
      }),
    )
    .min(1)
    .meta({ description: 'What it is blended from, by volume; the shares make 100 %.' }),
  cautions: sentences(
    'Anything the keeper wants said about this fuel.',
    '[Stir the can before pouring.]',
  ).optional(),
});

const pressureBand = z.strictObject({
  from: measure('gaugePressure', 'The lowest pressure at which it still serves.', '15 psi gauge'),
  to: measure('gaugePressure', 'The highest it may be charged to.', '20 psi gauge'),
});

/** The two ends of a cylinder, alike, bulging outwards. */
const ends = {
  ends: choice(
    ['flat', 'elliptical-2-to-1', 'hemispherical', 'dished', 'conical', 'torispherical'],
    'The ends of the cylinder; `dished` is a cap of a sphere, `torispherical` a dish with a rounded corner.',
    'flat',
  ).optional(),
  'end-depth': measure(
    'length',
    'How far a dished or conical end bulges, inside; those need it.',
    '2 in',
  ).optional(),
  'crown-radius': measure(
    'length',
    'Inside radius of the dish of a torispherical end, which needs it.',
    '14 in',
  ).optional(),
  'corner-radius': measure(
    'length',
    'Inside radius of the corner of a torispherical end, which needs it.',
    '1 in',
  ).optional(),
};

/** The shape of a tank, inside. */
export const tankShape = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('rectangular'),
      length: measure('length', 'Inside length.', '30 in'),
      width: measure('length', 'Inside width.', '18 in'),
      height: measure('length', 'Inside height.', '11 in'),
    }),
    z.strictObject({
      kind: z.literal('lying-cylinder'),
      diameter: measure('length', 'Inside diameter.', '14 in'),
      length: measure('length', 'Inside length of the straight part.', '36 in'),
      ...ends,
    }),
    z.strictObject({
      kind: z.literal('standing-cylinder'),
      diameter: measure('length', 'Inside diameter.', '8 in'),
      height: measure('length', 'Inside height of the straight part.', '16 in'),
      ...ends,
    }),
    z.strictObject({
      kind: z.literal('lying-oval'),
      width: measure('length', 'Inside width of the oval.', '18 in'),
      height: measure('length', 'Inside height of the oval.', '12 in'),
      length: measure('length', 'Inside length.', '34 in'),
    }),
    z.strictObject({
      kind: z.literal('wedge'),
      length: measure('length', 'Inside length across the slope.', '30 in'),
      width: measure('length', 'Inside width.', '12 in'),
      'height-low': measure('length', 'Inside height at the low end; the bottom is flat.', '6 in'),
      'height-high': measure('length', 'Inside height at the high end.', '10 in'),
    }),
  ])
  .meta({ description: 'The inside shape, from which the stick chart is worked out.' });

/** A tank. */
export const tank = z.strictObject({
  name: words('What the papers call it.', 'main fuel tank'),
  tag: words('The tag on it, if any.', 'T2').optional(),
  place: names(['place'], 'Where it is.', 'rear-frame'),
  holds: names(['fuel', 'content'], '`water`, `cylinder-oil`, or the key of a fuel.', 'kerosene-blend'),
  capacity: measure('volume', 'What it holds, brim full.', '17 US gal'),
  'fill-to': measure(
    'volume',
    'The most to put in, if less than the capacity (an air-charged tank needs air).',
    '0.8 US gal',
  ).optional(),
  shape: tankShape.optional(),
  stick: z
    .array(
      z.strictObject({
        depth: measure('length', 'Wet length of the stick.', '2 in'),
        volume: measure('volume', 'What was in the tank then.', '3 US gal'),
      }),
    )
    .min(2)
    .meta({ description: 'Readings made by filling with a measure; they win over the shape.' })
    .optional(),
  unusable: measure('volume', 'What the outlet cannot draw.', '0.5 US gal', 'zero').optional(),
  reserve: measure(
    'volume',
    'What is kept back when planning, over and above the unusable part.',
    '2 US gal',
    'zero',
  ).optional(),
  'least-to-start': measure(
    'volume',
    'The least it may hold when a day begins; left out, a day begins with it full.',
    '5 US gal',
  ).optional(),
  pressure: pressureBand
    .meta({ description: 'The working band, if the tank is charged with air.' })
    .optional(),
  cushion: measure(
    'gaugePressure',
    'Of a tank that a pump fills with fuel after air was pumped into it empty: the pressure of that air.',
    '60 psi gauge',
  ).optional(),
  vent: words(
    'How air gets in or out; for a charged tank, how its pressure is let off.',
    'hole in the filler cap',
  ),
  'vent-valve': names(
    ['valve'],
    'The valve that lets the pressure off, if there is one.',
    'pilot-vent',
  ).optional(),
  filler: z
    .strictObject({
      place: names(['place'], 'Where the filler is.', 'rear-frame'),
      cap: words('What opens it.', 'brass screw cap').optional(),
    })
    .meta({ description: 'Where it is filled.' }),
  read: choice(['stick', 'gauge', 'glass', 'not-read'], 'How the amount in it is known.', 'stick'),
  gauge: names(['gauge'], 'The gauge or glass it is read on.', 'water-glass').optional(),
  marks: z
    .array(
      z.strictObject({
        mark: words('What its gauge or glass showed, as it is marked.', '1/4'),
        volume: measure('volume', 'What was in the tank then.', '5 US gal'),
      }),
    )
    .min(2)
    .meta({
      description:
        'Marks of its gauge or glass, from the lowest up, found by filling with a measure; the range table has a row for each.',
    })
    .optional(),
});

/** Kinds of what is carried. */
export const equipmentKinds = [
  'extinguisher',
  'torch',
  'stick',
  'chocks',
  'gloves',
  'can',
  'funnel',
  'hose',
  'tube',
  'spanner',
  'spare',
  'other',
] as const;

/** Something carried that is not part of the machine. */
export const equipment = z.strictObject({
  name: words('What it is.', 'dry-powder extinguisher, 2 kg'),
  kind: choice(equipmentKinds, 'What it is for.', 'extinguisher'),
  place: names(['place'], 'Where it is kept.', 'running-board-left'),
  note: words('Anything to know about it.', 'for liquid fuels; checked each April').optional(),
});

/** Keyed collections of this file. */
export const storeCollections = {
  places: keyed(place, 'Places on the car. Every part names one.'),
  liquids: keyed(liquid, 'Liquids that do not come with the program.').optional(),
  fuels: keyed(fuel, 'Fuels as they go into the tanks.'),
  tanks: keyed(tank, 'Every tank on the car.'),
  equipment: keyed(equipment, 'What is carried; at least an extinguisher.'),
};
