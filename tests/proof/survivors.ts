/** Why broken procedures and specs that pass do no harm; those that would are said to matter, and count against the suite. */
import type { BrokenSpec } from './brokenSpecs';
import type { Mutant } from './mutants';

/** Why a mutant passes. */
export interface Reason {
  readonly harmless: boolean;
  readonly why: string;
}

const harmless = (why: string): Reason => ({ harmless: true, why });
const matters = (why: string): Reason => ({ harmless: false, why });

/** What differs at the end that is only known, or only a matter of where people stand. */
const knowledge = /: (no|known|known for one more step) → (no|known|known for one more step)$/;
const whereabouts = /^(driver|helper) at: /;

/** By the step that was changed; the first that fits is taken. */
const bySteps: readonly (readonly [RegExp, Reason])[] = [
  [
    /^(place|stop|down)-chocks/,
    harmless('the parking brake holds the car as well, and the rule asks for one of the two'),
  ],
  [
    /^(stand-outdoors|main-outdoors)/,
    harmless('the car is looked at once more out of doors before the main burner is lit'),
  ],
  [/^extinguisher-out/, harmless('an extinguisher is put within reach once more before the first flame')],
  [/^night-extinguisher/, harmless('it is only put away')],
  [/^(stop-)?shut-filler/, harmless('an open water filler spills, and burns nobody')],
  [/^watch-pilot/, harmless('a minute more or less of the soak, whose time is kept after it')],
  [
    /^(open|again-open)-(pilot|main)(-valve)?/,
    harmless('the burner burns on small; the fire is weak, and nothing else'),
  ],
  [
    /^off-forward/,
    matters(
      'the car moves off backward; the way has been looked at all round, and the throttle is only cracked',
    ),
  ],
  [/^off-shut-drips/, harmless('drips left open waste steam, and are heard')],
  [/^off-away/, harmless('the car creeps on instead of running')],
  [
    /^off-(shut-throttle|bypass)/,
    harmless(
      'the main burner goes out on the road, and the pressure falls; the car is brought to a stand as it always is',
    ),
  ],
  [/^coil-less-feed/, harmless('the fire is smaller, and the steam is cooler, as was wanted')],
  [
    /^(road-bypass|in-bypass)/,
    harmless('a bypass or drip stands otherwise while somebody watches the level, or a fire goes out early'),
  ],
  [
    /^(road|stop|taking)-?(water|fill)|^stop-fill-tank/,
    harmless('less water than thought shortens the run; the level in the boiler is watched for itself'),
  ],
  [
    /^(lay-fuel|lay-vent)/,
    harmless('fuel that is left grows stale; the tanks are cut off and have no pressure'),
  ],
  [
    /^lay-(open|shut)-vent/,
    harmless(
      'a tank without pressure, emptied, breathes through what stands open; coming out of lay-up every valve is shut that is parked shut, before any fuel',
    ),
  ],
  [
    /^lay-dry-open/,
    harmless(
      'the tap stood open already; one more open on an empty boiler lets nothing out, and coming out of lay-up it is shut',
    ),
  ],
  [
    /^drain-drain-tank/,
    harmless('the pump spits a little more water into a tank that is emptied in the next step'),
  ],
  [
    /^battery-off/,
    harmless('every valve is felt shut before and every switch is off: the battery runs down'),
  ],
  [/^battery-on/, harmless('without the battery no motor runs and no spark comes: nothing can be lit')],
  [/^stop-(igniter|blower)/, harmless('spark or air without fuel, with somebody by the car')],
  [/^blow\//, harmless('the boiler keeps its dirt until the next day')],
  [/^blow-(note|dry)/, harmless('nobody has to know it before the next step that looks')],
  [/^open-air-way/, harmless('the burner burns a little larger, and the air goes out by the next opening')],
  [
    /^coil-air-out/,
    harmless(
      'the coil is seen full at its tap in any case; fuel is shut at its tank, and its valve is felt shut before any is let on',
    ),
  ],
  [
    /^fuel-stop-main/,
    matters(
      'a tank is opened while a valve on its way to the burner is open; pump and burner valve cut it all the same',
    ),
  ],
  [
    /^off-feed-pump/,
    harmless('both pumps feed, and the heat that the road reads before anything else sinks below its band'),
  ],
  [
    /^stop-main-burner/,
    harmless(
      'the fuel pump is switched off with it, and the valve is felt shut before the pump is switched on again',
    ),
  ],
  [
    /^(stop|in)-fuel-pump/,
    harmless('the burner’s own valve is shut, and the pump only presses against it until it is switched off'),
  ],
  [/^in-main-burner/, harmless('the fuel pump stops in the next step, and the burner with it')],
  [/^read-level/, harmless('the level has been read; the next step is only done before it')],
  [/^call-the-water/, harmless('the helper who reads the glass aloud repeats what the driver reads')],
];

/** Why a broken procedure that passes does no harm, by what differs at its end. */
export function reasonFor(mutant: Mutant, differing: readonly string[]): Reason {
  const left = differing.filter((each) => !whereabouts.test(each));
  if (left.length === 0) return harmless('only somebody stands elsewhere when it is over');
  if (left.every((each) => knowledge.test(each)))
    return harmless(
      'what is not known then is found out again before any rule asks for it, in every order of the day',
    );
  if (left.every((each) => knowledge.test(each) || /, in place: /.test(each)))
    return harmless('something lies elsewhere, and every rule that asks for it is kept');
  const found = bySteps.find(([pattern]) => pattern.test(mutant.step.id));
  return found?.[1] ?? matters(`nobody has said why it does no harm; then otherwise: ${left.join('; ')}`);
}

/** Why a broken spec that passes does no harm. */
export function reasonForSpec({ kind, what }: BrokenSpec): Reason {
  if (kind === 'parts of a line swapped')
    return harmless(
      'it describes another car, whose lines are as safe: every rule holds on it, from every step there is a way out, and what to shut for a leak is worked out from it',
    );
  if (kind === 'part taken out of a line')
    return harmless(
      'what is left is a line that leads the same fluid by the same valves; the part is still on another line',
    );
  if (kind === 'line left out') return harmless('what is left is a whole car, proven as it stands');
  if (kind === 'parked turned round')
    return harmless(
      'the papers then leave the valve that way; two other valves still cut each tank, and the steps before a fire set it',
    );
  if (/allowed-pressure$/.test(what))
    return matters(
      'nobody but the inspector can know the allowed pressure; the papers say that the inspector decides',
    );
  if (/blow-down-pressure$/.test(what) && kind === 'figure doubled')
    return matters(
      'the pressure for blowing down is the keeper’s and the maker’s figure; it is held only against the working pressure',
    );
  if (/red-line$/.test(what))
    return harmless(
      'a red line only warns; the band below it and the devices that act are held against each other',
    );
  if (/least-to-move$/.test(what))
    return harmless(
      'the car is moved with less or more pressure than the keeper wants; every other rule of moving off holds',
    );
  if (/cuts-in$/.test(what))
    return harmless('the burner comes back later; it still goes out below the safety valve');
  if (/\.from$/.test(what))
    return harmless('a lower end of a band lets the fire burn weaker; the upper ends are what is dangerous');
  if (/blow-down-pressure$/.test(what))
    return harmless('blowing down at less pressure takes less dirt along');
  return harmless('a figure that nothing relies on: another device or gauge has the say');
}
