/** What is handled and read: valves, devices that act by themselves, gauges, locks, controls; and the lines. */
import * as z from 'zod';
import { choice, keyed, measure, names, words } from './field';

/** What is told of anything worked beside others of its kind. */
export const feel = words(
  'How a hand tells it from what stands beside it, without light: which of them it is, or its shape. It stands on the card for the dark, in the list of places for trouble, and in those of the other cards where it shares its place.',
  'the upper of three, a ball on its end',
).optional();

/** A valve worked by hand or foot. */
export const valve = z.strictObject({
  name: words(
    'What the papers call it. It ends in the word for what it is: valve, cock, tap.',
    'pilot tank valve',
  ),
  tag: words('The short tag hung on it.', 'F1'),
  place: names(['place'], 'Where it is.', 'driver-floor'),
  kind: choice(
    ['needle', 'globe', 'gate', 'plug', 'ball', 'cock', 'slide', 'lever', 'cap'],
    'How it is made.',
    'needle',
  ),
  opens: choice(
    [
      'anticlockwise',
      'clockwise',
      'pull',
      'push',
      'up',
      'down',
      'handle-along-pipe',
      'handle-across-pipe',
      'forward',
      'back',
    ],
    'Which way opens it.',
    'anticlockwise',
  ),
  turns: measure('turns', 'From shut to as far open as it is run.', '2 turns').optional(),
  'first-crack': measure('turns', 'How far it is cracked, where a step says crack.', '1/8 turn').optional(),
  quickly: words(
    'How it is shut in a hurry, where that is not as it is worked otherwise.',
    'one slap with the right foot',
  ).optional(),
  'worked-from': words(
    'Of a valve that lets fuel to a burner: from where it is opened as the burner lights, if its own place is beside door or flue. It stands in the step.',
    'from the seat, feet in',
  ).optional(),
  jet: words(
    'Of a tap that is opened under pressure, as for blowing down, of a try cock, a vent, a drip valve: which way, and where, what comes out goes. It stands in the steps that open it, so that nobody stands there.',
    'to the right, under the running board',
  ).optional(),
  feel,
  parked: choice(['open', 'shut'], 'How it stands when the car is put away.', 'shut'),
  does: words('What it does, in one sentence.', 'Lets pilot fuel out of the pilot tank.'),
  note: words('Anything to know about working it.', 'hand tight only').optional(),
});

/** Something that acts by itself. */
export const device = z.strictObject({
  name: words('What the papers call it.', 'steam automatic'),
  tag: words('The tag on it, if any.', 'A1').optional(),
  place: names(['place'], 'Where it is.', 'burner-front'),
  kind: choice(
    [
      'steam-automatic',
      'low-water-cut-off',
      'check-valve',
      'relief-valve',
      'safety-valve',
      'temperature-cut-off',
      'float-valve',
    ],
    'What it is.',
    'steam-automatic',
  ),
  set: measure('gaugePressure', 'Where it acts.', '550 psi gauge').optional(),
  'set-temperature': measure(
    'temperature',
    'Where it acts, if it acts by temperature.',
    '450 °C',
    'any',
  ).optional(),
  does: words('What it does, in one sentence.', 'Shuts the main fuel when the steam reaches its figure.'),
  test: words(
    'How one sees that it still works, if that can be seen.',
    'the burner goes out at 550 psi',
  ).optional(),
  tripped: words(
    'Of a cut-off that stays out until it is set back: what shows that it has acted.',
    'its button stands out',
  ).optional(),
  'test-without-fire': choice(
    ['yes', 'no'],
    'Of a low-water cut-off with a `test`: `yes` if the test is made with the boiler empty or cold and every fire out. The papers then ask for it when the car comes out of lay-up, before the boiler is filled; otherwise while steam is raised.',
    'yes',
  ).optional(),
});

/** A gauge, glass or indicator. */
export const gauge = z.strictObject({
  name: words('What the papers call it.', 'steam gauge'),
  tag: words('The tag on it, if any.', 'G1').optional(),
  place: names(['place'], 'Where it is read.', 'dash'),
  kind: choice(['dial', 'glass', 'indicator', 'stick'], 'What it is.', 'dial'),
  reads: choice(['pressure', 'level', 'temperature', 'flow'], 'What it reads.', 'pressure'),
  of: names(
    ['boiler', 'tank', 'burner', 'vaporizer', 'engine', 'superheater', 'condenser'],
    'What it reads it of.',
    'boiler',
  ),
  from: measure('gaugePressure', 'Bottom of the working band.', '450 psi gauge').optional(),
  to: measure('gaugePressure', 'Top of the working band.', '550 psi gauge').optional(),
  'red-line': measure('gaugePressure', 'Never past this.', '600 psi gauge').optional(),
  temperatures: z
    .strictObject({
      from: measure('temperature', 'Bottom of the working band.', '380 °C').optional(),
      to: measure('temperature', 'Top of the working band.', '420 °C').optional(),
      'red-line': measure('temperature', 'Never past this.', '450 °C').optional(),
    })
    .meta({
      description:
        'Of a dial that reads temperature: its band and its red line, as it is drawn in the manual.',
    })
    .optional(),
  'should-read': words('What it should show, where a figure will not do.', 'half a glass').optional(),
  'cold-reads': words(
    'What it shows on a cold car, if not what such a gauge usually does.',
    'two pounds above its pin',
  ).optional(),
  'ready-reads': words(
    'What it shows when the car is ready to move off, if not what such a gauge usually does.',
    'climbing, above 200 °C',
  ).optional(),
  'stop-at': words(
    'The reading at which the car is stopped, where the red line or the levels of the boiler do not say it.',
    'one eighth of the dial',
  ).optional(),
  cocks: z
    .array(names(['valve'], 'A cock between it and what it reads.', 'glass-top-cock'))
    .meta({ description: 'The cocks that shut it off.' })
    .optional(),
  note: words('Anything to know about it.', 'reads 10 psi high when cold').optional(),
});

/** A lock. */
export const lock = z.strictObject({
  name: words('What the papers call it.', 'throttle lock'),
  place: names(['place'], 'Where it is.', 'steering-column'),
  locks: names(['valve', 'control'], 'What it holds.', 'throttle'),
  how: words('How it is put on.', 'push the lever shut and turn the knurled ring'),
  feel,
});

/** Kinds of controls. */
export const controlKinds = [
  'brake',
  'parking-brake',
  'feed',
  'reverse',
  'switch',
  'main-switch',
  'steering',
  'horn',
  'lamps',
  'other',
] as const;

/** A control that is not a valve: brake, steering, reverse, switch. */
export const control = z.strictObject({
  name: words('What the papers call it.', 'hand brake'),
  place: names(['place'], 'Where it is.', 'driver-right-hand'),
  kind: choice(controlKinds, 'What it is.', 'parking-brake'),
  does: words('What it does, in one sentence.', 'Holds the rear wheels.'),
  how: words('How it is worked.', 'pull back to set').optional(),
  stands: z
    .strictObject({
      forward: words('How it stands set forward.', 'pushed forward').optional(),
      middle: words('How it stands where the engine pulls neither way.', 'upright').optional(),
      back: words('How it stands set back.', 'pulled back').optional(),
    })
    .meta({
      description:
        'Of what sets the engine forward and back: how it stands in each, for a step that sets it in a hurry. Without it the step gives the whole of `how`.',
    })
    .optional(),
  feel,
  'keeps-on': names(
    ['control'],
    'Of a parking brake that brakes nothing itself, such as a latch of a pedal: the brake it keeps on.',
    'brake-pedal',
  ).optional(),
});

/** A plain part that a line passes through and nobody works. */
export const fitting = z.strictObject({
  name: words('What the papers call it.', 'fuel strainer'),
  place: names(['place'], 'Where it is.', 'frame-left'),
  kind: choice(
    ['strainer', 'coil', 'cross', 'tee', 'muffler', 'outlet', 'hose-joint', 'other'],
    'What it is.',
    'strainer',
  ),
  note: words('Anything to know about it.', 'cleaned each spring').optional(),
});

/** What a pipe may carry. */
export const fluids = ['main fuel', 'pilot fuel', 'water', 'steam', 'exhaust', 'oil', 'air'] as const;

/** One run of pipe. */
export const line = z.strictObject({
  carries: choice(fluids, 'What flows in it.', 'pilot fuel'),
  name: words('A name for the run, if it needs one.', 'starting branch').optional(),
  through: z
    .array(
      names(
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
          'fitting',
          'outside',
        ],
        'A part, by its key, in the order of flow.',
        'pilot-tank',
      ),
    )
    .min(2)
    .meta({
      description:
        'What it passes through, in the order of flow, from a source to where it ends or joins another line. `open-air` and `ground` are ends that every car has.',
      sample: '[pilot-tank, pilot-valve, pilot]',
    }),
});

/** Collections of this file. */
export const fittingCollections = {
  valves: keyed(valve, 'Every valve, cock and tap that is worked by hand or foot.'),
  devices: keyed(
    device,
    'Everything that acts by itself: automatics, check valves, relief and safety valves.',
  ),
  gauges: keyed(gauge, 'Every gauge, glass and indicator.'),
  locks: keyed(lock, 'Every lock.'),
  controls: keyed(control, 'Controls that are not valves.'),
  fittings: keyed(fitting, 'Plain parts that lines pass through.').optional(),
  lines: z
    .array(line)
    .min(1)
    .meta({ description: 'Every run of pipe. From these the program knows the car as a plant.' }),
};
