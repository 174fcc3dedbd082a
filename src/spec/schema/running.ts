/** What the car does on the road, as measured, and what it weighs. */
import * as z from 'zod';
import { choice, measure, words } from './field';

/** The kinds of road a figure can be for, from the easiest. */
export const terrains = ['level', 'rolling', 'hilly'] as const;

const useReading = z.strictObject({
  terrain: choice(terrains, 'The kind of road.', 'level'),
  use: measure('volumePerDistance', 'How much was used for the distance.', '0.9 US gal/mi'),
  where: words('Where and when it was measured.', 'three runs of 20 miles in June 2025'),
});

/** Running figures. */
export const runningSection = z.strictObject({
  'water-use': z.array(useReading).meta({ description: 'Measured use of water, by terrain.' }).optional(),
  'fuel-use': z.array(useReading).meta({ description: 'Measured use of main fuel, by terrain.' }).optional(),
  log: words(
    'A file of trips beside the spec, from which use is worked out.',
    'marigold-trips.csv',
  ).optional(),
  'water-hardness': measure(
    'hardness',
    'Hardness of the water it is filled with, from a test strip or the waterworks.',
    '7 grains/US gal',
  ).optional(),
  'usual-speed': measure('speed', 'The speed it is usually driven at.', '25 mph'),
  'most-speed': measure('speed', 'The most the keeper wants it driven at.', '40 mph'),
  'mass-empty': measure('mass', 'Mass of the car with no water, fuel or people.', 'about 3600 lb'),
  tyres: z.strictObject({
    size: words('What is written on them.', '36 × 4 1/2'),
    'rolling-circumference': measure(
      'length',
      'Distance gone in one turn of the wheel, loaded.',
      '9 ft 2 in',
    ),
    pressure: measure('gaugePressure', 'What they are blown to.', '60 psi gauge').optional(),
  }),
  front: z
    .strictObject({
      area: measure('area', 'Area the wind sees.', 'about 26 ft2'),
      'drag-coefficient': z
        .number()
        .positive()
        .meta({ description: 'Drag coefficient for that area.', sample: '0.9' })
        .optional(),
    })
    .meta({ description: 'For estimating the wind’s part of the road load.' })
    .optional(),
});
