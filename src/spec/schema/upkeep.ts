/** What the keeper does beyond what every car asks: oiling points of this car. */
import * as z from 'zod';
import { choice, key, measure, names, words } from './field';

/** How the car is when a point is oiled. */
export const oilingStates = ['cold', 'warm', 'either'] as const;

/** Who oils. */
export const oilers = ['keeper', 'trade'] as const;

/** How often something is done: whichever comes first. */
export const interval = z.strictObject({
  days: z.number().int().positive().meta({ description: 'Days of steam.', sample: '1' }).optional(),
  distance: measure('distance', 'Distance run.', '200 mi').optional(),
  seasons: z.number().int().positive().meta({ description: 'Seasons.', sample: '1' }).optional(),
});

/** A point that is oiled or greased, as a keeper writes it. */
export const oilingPoint = z.strictObject({
  point: words('What is oiled, in the words of this car.', 'cups on the countershaft, one each side'),
  place: names(['place'], 'Where it is, if that is one of the places.', 'seat-box-left').optional(),
  lubricant: words('What oil or grease.', 'bearing oil, ISO grade 100'),
  amount: words('How much.', 'six drops in each cup'),
  every: interval.meta({ description: 'How often, whichever comes first; at least one of the three.' }),
  state: choice(oilingStates, 'How the car is for it.', 'cold'),
  who: choice(oilers, 'Who does it; left out, the keeper.', 'keeper').optional(),
  'instead-of': key
    .meta({
      description:
        'The point of the chart that comes with the program which this one says better for this car, by its key in `shared/upkeep.yaml`.',
      sample: 'drive',
    })
    .optional(),
});

/** A point, as read. */
export type OilingPoint = z.output<typeof oilingPoint>;
