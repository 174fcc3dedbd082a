/** The whole spec of one car. */
import * as z from 'zod';
import { change, keeperNotes, overrule } from './change';
import { fittingCollections } from './fittings';
import { carSection, issueSection, keeperSection, printSection } from './identity';
import {
  boilerSection,
  engineSection,
  exchangerSection,
  plantCollections,
  superheaterSection,
} from './plant';
import { runningSection } from './running';
import { storeCollections } from './stores';
import { oilingPoint } from './upkeep';

/** The schema of a spec file. Section and field names are the keys of the file. */
export const carSpecSchema = z.strictObject({
  kettlebook: z.literal(1).meta({ description: 'The version of this file format.', sample: '1' }),
  car: carSection.meta({ description: 'What the car is.' }),
  keeper: keeperSection.meta({ description: 'Whom to ask.' }),
  issue: issueSection.meta({ description: 'Which issue of the spec this is.' }),
  print: printSection.meta({ description: 'How the papers are printed.' }),
  different: keeperNotes.optional(),
  places: storeCollections.places,
  liquids: storeCollections.liquids,
  fuels: storeCollections.fuels,
  tanks: storeCollections.tanks,
  equipment: storeCollections.equipment,
  boiler: boilerSection.meta({ description: 'The boiler.' }),
  superheater: superheaterSection.meta({ description: 'The superheater, if there is one.' }).optional(),
  'feed-heater': exchangerSection.meta({ description: 'The feed-water heater, if there is one.' }).optional(),
  condenser: exchangerSection.meta({ description: 'The condenser, if there is one.' }).optional(),
  burners: plantCollections.burners,
  vaporizers: plantCollections.vaporizers,
  engine: engineSection.meta({ description: 'The engine.' }),
  pumps: plantCollections.pumps,
  valves: fittingCollections.valves,
  devices: fittingCollections.devices,
  gauges: fittingCollections.gauges,
  locks: fittingCollections.locks,
  controls: fittingCollections.controls,
  fittings: fittingCollections.fittings,
  lines: fittingCollections.lines,
  running: runningSection.meta({ description: 'What the car does on the road.' }),
  oiling: z
    .array(oilingPoint)
    .meta({
      description:
        'Oiling points of this car, beside those that every car has; they stand in the oiling chart of the manual.',
    })
    .optional(),
  changes: z.array(change).meta({ description: 'Changes to the standard procedures.' }).optional(),
  overrules: z
    .array(overrule)
    .meta({ description: 'Rules of safety that this car does not keep, each with its reason.' })
    .optional(),
});

/** A spec that has passed the schema: every quantity read, no reference yet followed. */
export type CarSpec = z.output<typeof carSpecSchema>;
