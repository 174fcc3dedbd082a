/** The plant: boiler, superheater, burners, engine, pumps, condenser. */
import * as z from 'zod';
import { choice, count, date, keyed, measure, names, words, yesNo } from './field';
import { feel } from './fittings';

/** How the level in the boiler is known: at least one way, better two that do not share a pipe. */
const levelReading = z.strictObject({
  gauge: names(['gauge', 'valve'], 'The glass, indicator or try cock it is read on.', 'water-glass'),
  when: choice(['cold', 'steaming', 'both'], 'When this way works.', 'both'),
  how: words('How it is read.', 'shut the lower cock, then open it; the water must move').optional(),
  good: words(
    'What it shows when there is water enough; `working-level` is said where this is not.',
    'water, white and heavy',
  ).optional(),
});

const standing = measure(
  'share',
  'Share of the full fire that burns clean with the car standing still, as seen or timed; it wins over what is worked out.',
  '100 %',
).optional();

/** What brings the fire its air while the car stands still. */
const draught = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('jets'), standing }),
    z.strictObject({
      kind: z.literal('flue'),
      height: measure('length', 'From the burner up to the mouth of the flue.', '34 in'),
      'free-area': measure(
        'area',
        'The narrowest way the gases have: all tubes together, or the flue.',
        '80 in2',
      ),
      standing,
    }),
    z.strictObject({
      kind: z.literal('blower'),
      air: measure('volumeFlow', 'Air it moves with the burner at full fire.', '200 ft3/min'),
      standing,
    }),
  ])
  .meta({
    description:
      'What brings the fire its air while the car stands still: `jets` of fuel vapour that draw it in, the hot `flue` alone, or a `blower`.',
  });

const height = (description: string, sample: string) => measure('length', description, sample, 'zero');

/** Where the water can stand in the boiler, and where it is seen: all heights up from one mark. */
const levelHeights = z
  .strictObject({
    from: words(
      'The mark that every height is measured up from, the car on level ground: with a rule along the shell, or with a clear hose of water.',
      'the lower tube plate',
    ),
    top: height('The inside of the boiler’s top.', '14 in'),
    'least-safe': height(
      'The lowest level at which no part that the fire heats stands dry, as the inspector or the drawing of the boiler has it.',
      '5 in',
    ),
    'lowest-level': height('The level that `lowest-level` tells in words.', '7 in'),
    'working-level': height('The level that `working-level` tells in words.', '9 in'),
    'working-level-cold': height('The level that `working-level-cold` tells in words.', '8 in').optional(),
    'highest-level-cold': height(
      'The level that `highest-level-cold` tells in words.',
      '8 3/4 in',
    ).optional(),
    'highest-level': height(
      'The highest level under steam; above it water is carried over to the engine.',
      '11 in',
    ).optional(),
    'feed-from': height('The level at which the driver feeds.', '8 in').optional(),
    'feed-to': height('The level at which the driver leaves off feeding.', '9 1/2 in').optional(),
    glass: z
      .strictObject({
        bottom: height('The lowest water that can be seen in the glass.', '6 in'),
        top: height('The highest water that can be seen in it.', '12 in'),
      })
      .meta({ description: 'What can be seen of the gauge glass.' })
      .optional(),
    cocks: z
      .array(
        z.strictObject({
          valve: names(['valve'], 'The cock.', 'lower-try-cock'),
          at: height('The middle of its hole in the boiler.', '7 in'),
        }),
      )
      .min(1)
      .meta({ description: 'The try cocks, the lowest first.' })
      .optional(),
    'low-water-cut': height(
      'The level at which the low-water cut-off acts, watched while the boiler is let down with the fire out.',
      '7 in',
    ).optional(),
  })
  .meta({
    description:
      'Heights of the levels and of what they are read on, for a drawing to one scale. Left out, there is no drawing.',
  });

/** The boiler. */
export const boilerSection = z.strictObject({
  name: words('What the papers call it.', 'boiler'),
  place: names(['place'], 'Where it is.', 'under-bonnet'),
  kind: choice(['fire-tube', 'water-tube', 'monotube'], 'How it is made.', 'fire-tube'),
  'allowed-pressure': measure('gaugePressure', 'The most that the inspector allows.', '600 psi gauge'),
  'working-pressure': measure('gaugePressure', 'What it is run at.', '500 psi gauge'),
  'burner-cuts-out': measure(
    'gaugePressure',
    'Where the automatic shuts the burner; without one, where the driver does.',
    '550 psi gauge',
  ),
  'burner-cuts-in': measure(
    'gaugePressure',
    'Where the automatic opens it again.',
    '480 psi gauge',
  ).optional(),
  'least-to-move': measure(
    'gaugePressure',
    'The least at which the car is moved.',
    '300 psi gauge',
  ).optional(),
  'safety-valve': names(['device'], 'The safety valve.', 'safety-valve'),
  'water-at-working-level': measure('volume', 'Water in the boiler at the working level.', '6.5 US gal'),
  'steel-mass': measure('mass', 'Mass of the metal that is heated with the water.', '380 lb').optional(),
  'heating-surface': measure('area', 'Surface that the fire heats.', '84 ft2').optional(),
  efficiency: measure('share', 'Share of the fuel’s heat that reaches the water.', 'about 70 %').optional(),
  draught: draught.optional(),
  'flue-mouth': words(
    'Where the flue ends, in words for whoever keeps people clear of it.',
    'under the tail, to the left',
  ).optional(),
  level: z.array(levelReading).min(1).meta({ description: 'Every way the level is read, the best first.' }),
  'working-level': words('Where the level should stand, as it is read.', 'half way up the glass'),
  'working-level-cold': words(
    'Where the level stands cold for the working level under steam; water swells as it heats.',
    'a third of the way up the glass',
  ).optional(),
  'highest-level-cold': words(
    'The highest at which it may stand cold before a fire is lit; filled higher, water is carried over as it swells.',
    'half way up the glass',
  ).optional(),
  'lowest-level': words('The lowest at which a fire may burn.', 'one quarter of the glass'),
  heights: levelHeights.optional(),
  'blow-down': z
    .array(names(['valve'], 'A blow-down valve.', 'blow-down-left'))
    .meta({ description: 'The valves that empty its bottom, in the order they are opened.' }),
  'blow-down-pressure': measure(
    'gaugePressure',
    'The pressure at which it is blown down.',
    '150 psi gauge',
  ).optional(),
  'blow-down-amount': measure(
    'volume',
    'Water let go at one blow-down, all its valves together, found by what fills the boiler to its mark again.',
    '2 US gal',
  ).optional(),
  'blown-down-until': z
    .array(
      words(
        'What a helper sees and calls when that valve is to be shut again.',
        'down by a third of the glass',
      ),
    )
    .min(1)
    .meta({
      description: 'Where the blowing stops: for each of the valves of `blow-down`, in the same order.',
    })
    .optional(),
  'most-hardness': measure(
    'hardness',
    'The hardest the water in the boiler may become, as the inspector or whoever treats the water allows.',
    '900 mg/L',
  ).optional(),
  'fill-by': names(['valve', 'fitting'], 'Where a hose is put on to fill it cold.', 'boiler-fill').optional(),
  'lets-air-out-by': names(
    ['valve'],
    'The valve opened to let air in or out when it is filled or emptied cold.',
    'boiler-vent',
  ).optional(),
  'draws-full': choice(
    ['yes', 'no', 'not-known'],
    'Whether it draws itself full from the tank as it cools after a blow-down.',
    'yes',
  ),
  inspection: z
    .strictObject({
      by: words('Who inspects, by office, as the law of the place has it.', 'the state boiler inspector'),
      last: date('The last inspection.'),
      due: date('When the next is due.', '2027-03-01'),
      certificate: words('Where the certificate is kept.', 'in the door pocket').optional(),
      note: words('What the inspector asked for.', 'new fusible plug each second year').optional(),
    })
    .meta({ description: 'The inspection record.' }),
});

/** The superheater. */
export const superheaterSection = z.strictObject({
  name: words('What the papers call it.', 'superheater'),
  place: names(['place'], 'Where it is.', 'burner'),
  'in-the-fire': yesNo(
    'It stands in the fire, so that steam must flow through it whenever the main burner is on for long.',
  ),
});

/** A feed heater or a condenser. */
export const exchangerSection = z.strictObject({
  name: words('What the papers call it.', 'condenser'),
  place: names(['place'], 'Where it is.', 'front'),
  note: words('What to know about it.', 'back pressure above 5 psi means it is boiling over').optional(),
});

/** A burner: main or pilot. */
export const burner = z.strictObject({
  name: words('What the papers call it.', 'main burner'),
  job: choice(
    ['main', 'pilot'],
    'Makes steam, or keeps the vaporizer hot and lights the main burner.',
    'main',
  ),
  place: names(['place'], 'Where it is lit and watched.', 'burner-front'),
  fuel: names(['fuel'], 'What it burns.', 'kerosene-blend'),
  'full-rate': measure('volumeFlow', 'Fuel burnt at full fire.', '6 US gal/h').optional(),
  'low-rate': measure('volumeFlow', 'Fuel burnt at the lowest steady fire.', '1.5 US gal/h').optional(),
  'lit-by': names(
    ['burner', 'control', 'equipment'],
    'What lights it: a pilot burner, a switch for the spark, or a torch, which is whatever stands by itself and burns on.',
    'pilot',
  ),
  vaporizer: names(
    ['vaporizer'],
    'The vaporizer its fuel passes through, if any.',
    'main-vaporizer',
  ).optional(),
  soak: z
    .strictObject({
      least: measure('time', 'The least time the vaporizer is heated before main fuel.', '15 min'),
      good: measure('time', 'The better time.', '30 min'),
    })
    .meta({ description: 'For a pilot: how long it heats the vaporizer before main fuel is admitted.' })
    .optional(),
  'good-flame': words('What a good flame looks and sounds like.', 'blue, steady, a soft hiss').optional(),
  'burns-on': measure(
    'time',
    'How long it burns on, at the most, after the valve nearest to it is shut: of a pot, a pan or a wick, in which fuel lies. To measure it, light it on a cool day, let it burn at full fire for a quarter of an hour, shut that valve, and time until neither flame nor glow is seen; the longest of three counts. `0 min`, or left out, it goes out at once.',
    '6 min',
    'zero',
  ).optional(),
  'airs-in': measure(
    'time',
    'How long it is left to air, at the least, after fuel went in and nothing lit, before any new flame; with its blower on if it has one. The nose decides after that, not before. Five minutes is what lighting instructions on gas appliances ask, from memory; a burner deep in a hood wants more.',
    '5 min',
  ).optional(),
  damper: names(
    ['control'],
    'Of a burner that burns on: what shuts off its air by hand, if anything does, such as the control of a damper or an air slide.',
    'ash-pan-damper',
  ).optional(),
});

/** A vaporizer: where liquid fuel turns to vapour. */
export const vaporizer = z.strictObject({
  name: words('What the papers call it.', 'vaporizer'),
  place: names(['place'], 'Where it is.', 'burner-front'),
  'heated-by': z
    .array(names(['burner', 'equipment', 'control'], 'What heats it.', 'pilot'))
    .min(1)
    .meta({
      description:
        'What heats it before and while the main burner runs: a burner, a torch, an electric heater.',
    }),
  'hot-when': words('How one knows it is hot enough.', 'a wet rag on a stick hisses on it and dries at once'),
  'warm-first': measure(
    'time',
    'How long it is warmed with a torch before its fuel is turned on.',
    '3 min',
  ).optional(),
});

/** The engine. */
export const engineSection = z.strictObject({
  name: words('What the papers call it.', 'engine'),
  place: names(['place'], 'Where it is.', 'rear-axle'),
  cylinders: count(1, 'How many cylinders.', '2'),
  bore: measure('length', 'Diameter of a cylinder.', '4 in'),
  stroke: measure('length', 'Stroke of the piston.', '5 in'),
  action: choice(['single', 'double'], 'Steam on one side of the piston or on both.', 'double'),
  'turns-per-wheel-turn': z
    .number()
    .positive()
    .meta({ description: 'Engine turns for one turn of the driven wheels.', sample: '1.5' }),
  throttle: names(['valve'], 'The throttle.', 'throttle'),
  'throttle-lock': names(
    ['lock'],
    'What locks the throttle shut when the seat is empty: a lock, a pin, a chain, or the handle taken off and carried.',
    'throttle-lock',
  ),
  drips: z
    .array(names(['valve'], 'A drip valve.', 'drips'))
    .min(1)
    .meta({ description: 'The valves that drain the steam chest and cylinders.' }),
  reverse: names(['control'], 'The control that sets forward and reverse.', 'reverse-pedal').optional(),
  oil: z
    .strictObject({
      tank: names(['tank'], 'The tank of cylinder oil.', 'oil-tank').optional(),
      pump: names(['pump'], 'The pump that feeds it.', 'oil-pump').optional(),
      kind: words('What oil to use.', 'steam cylinder oil, ISO grade 460, compounded'),
      use: measure('volumePerDistance', 'How much it uses.', '1 US qt/100 mi').optional(),
      proof: words('How one sees that oil is going in.', 'the sight glass drips 4 times a minute').optional(),
      bearings: words(
        'What bearings, pins and joints outside the cylinders are oiled with, its grade with it. Without it the oiling chart sends to the keeper’s record.',
        'bearing oil, ISO grade 150',
      ).optional(),
    })
    .meta({ description: 'Cylinder oil, and what the rest is oiled with.' }),
  exhaust: choice(['open-air', 'feed-heater', 'condenser'], 'Where the used steam goes.', 'open-air'),
});

/** A pump. */
export const pump = z.strictObject({
  name: words('What the papers call it.', 'left feed pump'),
  tag: words('The tag on it, if any.', 'P1').optional(),
  place: names(['place'], 'Where it is; for a hand pump, where it is worked.', 'rear-axle'),
  feel,
  moves: choice(['water', 'fuel', 'air', 'oil'], 'What it moves.', 'water'),
  drive: choice(['engine', 'hand', 'electric', 'steam'], 'What drives it.', 'engine'),
  'stroke-volume': measure(
    'volume',
    'What one stroke moves, measured or from bore and stroke.',
    '1.8 in3',
  ).optional(),
  'strokes-per-engine-turn': z
    .number()
    .positive()
    .meta({ description: 'For a pump driven by the engine.', sample: '1' })
    .optional(),
  delivers: measure('share', 'Share of the stroke that is really delivered.', 'about 85 %').optional(),
  bypass: names(['valve'], 'The valve that sends its water back to the tank.', 'feed-bypass').optional(),
  charges: names(['tank'], 'For an air pump: the tank it charges.', 'pilot-tank').optional(),
  'spare-for': names(['pump'], 'The pump it stands by for.', 'feed-pump').optional(),
  'switched-by': names(
    ['control'],
    'For an electric pump: the switch that runs it.',
    'feed-pump-switch',
  ).optional(),
});

/** Keyed collections of this file. */
export const plantCollections = {
  burners: keyed(burner, 'Every burner, main and pilot.'),
  vaporizers: keyed(vaporizer, 'Every vaporizer.').optional(),
  pumps: keyed(pump, 'Every pump.'),
};
