/**
 * What a step can prove and what it can set: the words in which procedures speak to the model of the car.
 *
 * The lists are closed. A fact, once proven, holds until something undoes it; `lapses` says in words what that is.
 * Where `of` is not `car`, the fact is about the step’s part (`Step.part`), one such fact for each part.
 *
 * Beyond these, the act of a step changes the model by itself:
 * `open`, `shut` and `crack` move the valve; `light` and `put-out` concern a burner or a torch; `fill` and `drain` a tank
 * or the boiler; `pump` works a pump by hand, or fills the part it is done to; `charge` puts air on a tank; `vent` lets the
 * pressure off a tank; `warm` heats a vaporizer; `lock` and `unlock` a lock; `set` and `release` a control, and a motor
 * pump (running, stopped); `wait` lets time pass; `put-out` sees that a burner is out whose fuel is shut, and one that burns on after
 * that is waited for first (`burnt-out`); `blow-down` opens its
 * valve fully and lets the boiler blow through it; `place` and `remove` put equipment where it works and take it away.
 */

/** One thing that a step can prove. */
export interface Fact {
  /** What is known, a sentence. */
  readonly meaning: string;
  /** Whether it is about the whole car or the step’s part, and of which kind. */
  readonly of: 'car' | 'tank' | 'burner' | 'vaporizer' | 'valve' | 'device' | 'gauge' | 'pump' | 'control';
  /** What undoes it, in words; empty if nothing does within a day. */
  readonly lapses: string;
}

const day = 'when the car is put away';

/** Every fact by key. */
export const facts = {
  'log-read': { meaning: 'The log of the last run is read.', of: 'car', lapses: day },
  'faults-closed': { meaning: 'No fault stands open that forbids a fire.', of: 'car', lapses: day },
  'inspection-in-date': { meaning: 'The boiler’s inspection is in date.', of: 'car', lapses: '' },
  'fire-allowed': { meaning: 'Whoever is in charge of the place allows a fire.', of: 'car', lapses: day },
  'people-briefed': { meaning: 'Everybody knows their part and where to stand.', of: 'car', lapses: day },
  'extinguisher-at-hand': {
    meaning: 'An extinguisher for liquid fuel stands within reach of the burner.',
    of: 'car',
    lapses: 'when the extinguisher is stowed or used',
  },
  'water-for-burns': {
    meaning: 'Clean running or standing water for burns is at hand.',
    of: 'car',
    lapses: 'when the car drives off',
  },
  'dressed-right': { meaning: 'Clothes and gloves are right for fire and steam.', of: 'car', lapses: day },
  'no-loose-fuel': {
    meaning: 'No spilt or leaked fuel lies in a burner or under the car.',
    of: 'car',
    lapses:
      'when fuel was live to a burner that did not light, when a flame went out by itself, when a tank is filled',
  },
  'valve-as-parked': {
    meaning: 'The valve was found as it stands when the car is put away.',
    of: 'valve',
    lapses: 'when the valve is moved',
  },
  'running-gear-sound': {
    meaning: 'Wheels, tyres, steering and drive were looked over.',
    of: 'car',
    lapses: day,
  },
  'brakes-hold': { meaning: 'The brake holds with the car standing.', of: 'control', lapses: day },
  'gauge-at-zero': {
    meaning: 'The steam gauge rests at zero with the boiler cold.',
    of: 'gauge',
    lapses: 'when steam is raised',
  },
  'boiler-at-zero': {
    meaning: 'There is no pressure in the boiler.',
    of: 'car',
    lapses: 'when a burner is lit',
  },
  'boiler-cool': {
    meaning: 'The boiler is cool enough to touch.',
    of: 'car',
    lapses: 'when a burner is lit',
  },
  'bearings-oiled': { meaning: 'Every oiling point has had its oil.', of: 'car', lapses: day },
  'oil-enough': { meaning: 'There is cylinder oil for the run.', of: 'car', lapses: day },
  'oil-feeding': {
    meaning: 'Cylinder oil is seen going to the engine.',
    of: 'car',
    lapses: 'when the engine stands for long',
  },
  'water-enough': {
    meaning: 'The water tank is as full as it should be.',
    of: 'tank',
    lapses: 'as water is used',
  },
  'level-known': {
    meaning: 'The boiler’s level has been read and is at or above the working level.',
    of: 'car',
    lapses: 'when the boiler is filled, emptied or blown down, when it has cooled, when a glass breaks',
  },
  'level-twice': {
    meaning: 'Two independent ways of reading the level agree.',
    of: 'car',
    lapses: 'with `level-known`',
  },
  'glass-true': {
    meaning: 'The gauge follows the water: it moved when its cocks or the pump were worked.',
    of: 'gauge',
    lapses: 'when a cock of it is shut',
  },
  'feed-ready': {
    meaning: 'A feed pump that works while the car stands has been seen to move water.',
    of: 'pump',
    lapses: 'when the water tank is empty; on a coil also when its motor is switched off',
  },
  'feeds-against-pressure': {
    meaning: 'A feed pump has been seen to feed the boiler against its pressure.',
    of: 'pump',
    lapses: 'when the water tank is empty',
  },
  'fuel-enough': {
    meaning: 'The fuel in the tank has been measured and serves for the run.',
    of: 'tank',
    lapses: 'as fuel is used',
  },
  'tank-vented': {
    meaning: 'The pressure in the tank has been let off.',
    of: 'tank',
    lapses: 'when the tank is charged',
  },
  'tank-bonded': {
    meaning: 'Can and tank touch metal to metal, so that no spark can jump.',
    of: 'tank',
    lapses: 'when the can is taken away',
  },
  'pressure-in-band': {
    meaning: 'The pressure over the fuel has been read and lies in its band.',
    of: 'tank',
    lapses: 'when the tank is vented or filled, and as fuel is used',
  },
  'pressure-holds': {
    meaning: 'The pressure over the fuel did not fall while it was watched.',
    of: 'tank',
    lapses: 'when the tank is opened',
  },
  'burner-pressure-good': {
    meaning: 'The pressure of the fuel at the burner has been read and lies in its band.',
    of: 'gauge',
    lapses: 'when the fuel pump stops',
  },
  'joints-dry': {
    meaning: 'No joint of the live fuel line weeps.',
    of: 'car',
    lapses: 'when another length of the line is made live',
  },
  'vaporizer-hot': {
    meaning: 'The vaporizer is hot enough for the main fuel: its time is up and its sign was seen.',
    of: 'vaporizer',
    lapses: 'when what heats it goes out',
  },
  'igniter-proven': {
    meaning:
      'What lights the main burner has been seen to work now: the pilot burns as it should, or the spark or glow was seen.',
    of: 'car',
    lapses:
      'when the pilot goes out or is lit anew, when a fuel tank is charged, vented or filled, when the car has moved',
  },
  'flame-good': {
    meaning: 'The flame of this burner was seen and is as it should be.',
    of: 'burner',
    lapses: 'when its fuel is shut',
  },
  'burner-aired': {
    meaning: 'The burner has been aired through, so that no vapour is left in it.',
    of: 'car',
    lapses: 'when the fuel of a main burner is cut',
  },
  'fires-out': {
    meaning: 'No flame burns on the car: seen and listened for.',
    of: 'car',
    lapses: 'when anything is lit',
  },
  'no-flame-near': {
    meaning: 'No flame or spark is near the fuel that is handled.',
    of: 'car',
    lapses: 'when anything is lit',
  },
  'burner-front-clear': {
    meaning: 'Nobody stands in front of the burner: called out and answered.',
    of: 'car',
    lapses: 'when somebody walks up to it, when the step after the lighting is done',
  },
  'blow-down-clear': {
    meaning: 'Nobody is near the blow-down outlets: seen on both sides and called out.',
    of: 'car',
    lapses: 'when the blow-down is over',
  },
  'way-clear': {
    meaning: 'The way the car will move is clear: seen and called out.',
    of: 'car',
    lapses: 'when the car has moved',
  },
  'air-driven-out': {
    meaning: 'Steam follows the air out of the boiler.',
    of: 'car',
    lapses: 'when the boiler is opened',
  },
  'steam-gauge-alive': {
    meaning: 'The steam gauge has risen with the pressure.',
    of: 'gauge',
    lapses: 'when the boiler has cooled',
  },
  'no-steam-leaks': {
    meaning: 'No joint leaks at low pressure.',
    of: 'car',
    lapses: 'when the boiler has cooled',
  },
  'cut-out-proven': {
    meaning: 'The device was seen to shut the fuel at its figure.',
    of: 'device',
    lapses: 'when the boiler has cooled',
  },
  'safety-valve-proven': {
    meaning: 'The safety valve was proven in the way the inspector asks.',
    of: 'device',
    lapses: day,
  },
  'superheater-flowed': {
    meaning: 'Steam has been let through the superheater.',
    of: 'car',
    lapses: 'when the throttle is shut',
  },
  'chest-drained': {
    meaning: 'Only dry steam comes from the drips: no water is left in the steam chest and cylinders.',
    of: 'car',
    lapses: 'when the engine has stood',
  },
  'brakes-tried': {
    meaning: 'The brake was tried at walking pace and holds.',
    of: 'control',
    lapses: 'when the car has stood',
  },
  'somebody-with-car': {
    meaning: 'Somebody who knows the car stays with it.',
    of: 'car',
    lapses: 'when the driver is back',
  },
  'valves-parked': {
    meaning: 'Every valve stands as the spec says it stands when the car is put away.',
    of: 'car',
    lapses: 'when a valve is moved',
  },
  'water-out': {
    meaning: 'No water is left where frost can reach it.',
    of: 'car',
    lapses: 'when the car is filled',
  },
  'pump-empty': {
    meaning: 'No water is left in the pump.',
    of: 'pump',
    lapses: 'when the car is filled',
  },
  'water-pipes-empty': {
    meaning: 'No water is left in the water pipes.',
    of: 'car',
    lapses: 'when the car is filled',
  },
  'log-written': {
    meaning: 'The log says how the car was left.',
    of: 'car',
    lapses: 'when the car is next used',
  },
} as const satisfies Readonly<Record<string, Fact>>;

/** The key of a fact. */
export type FactKey = keyof typeof facts;

/** One thing of the model that a step can set. */
export interface Setting {
  /** What it is, a sentence. */
  readonly meaning: string;
  /** The values it can have; `number` and `part` for a number and the key of a part. */
  readonly values: readonly string[] | 'number' | 'part' | 'yes-no';
}

/** Every setting by key. */
export const settings = {
  seat: { meaning: 'Who is in the driver’s seat.', values: ['driver', 'empty'] },
  outdoors: { meaning: 'The car stands out of doors.', values: 'yes-no' },
  chocked: { meaning: 'The wheels are chocked.', values: 'yes-no' },
  motion: { meaning: 'How the car moves.', values: ['standing', 'creeping', 'running'] },
  'burner-front': { meaning: 'Whether somebody is in front of the burner.', values: ['clear', 'somebody'] },
  'blow-down-outlets': {
    meaning: 'Whether somebody is near the blow-down outlets.',
    values: ['clear', 'somebody'],
  },
  lighting: {
    meaning: 'The burner that is being lit in this very step; fuel may become live to it.',
    values: 'part',
  },
  'burnt-out': {
    meaning:
      'The burner that the step waits for until it is seen to be out: its fuel is shut, and what lay in it is used up.',
    values: 'part',
  },
  steam: {
    meaning: 'The boiler’s pressure at the end of the step.',
    values: ['none', 'low', 'working', 'blow-down'],
  },
  level: {
    meaning: 'The boiler’s level at the end of the step.',
    values: ['not-known', 'enough', 'low', 'empty'],
  },
  cap: { meaning: 'The filler cap of the step’s tank.', values: ['off', 'on'] },
  minutes: { meaning: 'How long the step takes, in minutes, for a wait of fixed length.', values: 'number' },
  'vapour-in-burner': { meaning: 'Whether unburnt vapour may hang in a burner.', values: 'yes-no' },
  'loose-fuel': { meaning: 'Whether fuel lies where it should not.', values: 'yes-no' },
  water: { meaning: 'The water in the step’s tank at the end of the step.', values: ['full', 'empty'] },
  fuel: { meaning: 'The fuel in the step’s tank at the end of the step.', values: ['full', 'empty'] },
  people: { meaning: 'Where the people are in an emergency.', values: ['aboard', 'away'] },
} as const satisfies Readonly<Record<string, Setting>>;

/** The key of a setting. */
export type SettingKey = keyof typeof settings;
