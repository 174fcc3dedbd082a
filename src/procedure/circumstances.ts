/**
 * What can be so on the car when an emergency begins, and what must be so when its acts are done: the words in which
 * emergencies speak to the model of the car. The lists are closed.
 */

/** What is so when an emergency can begin. */
export const beginnings = [
  'flame-or-steam',
  'steam-up',
  'steam-at-work',
  'burning',
  'main-burning',
  'fuel-on',
  'main-fuel-on',
  'no-unlit-fuel',
  'pulling',
  'moving',
] as const;

/** What must be so when an emergency has ended. */
export const endings = [
  'no-flame',
  'no-fuel',
  'no-main-fuel',
  'no-spark',
  'no-feed',
  'throttle-shut',
  'throttle-locked',
  'standing',
  'held',
] as const;

/** The key of something that is so when an emergency begins. */
export type Beginning = (typeof beginnings)[number];

/** The key of something that must be so when an emergency has ended. */
export type Ending = (typeof endings)[number];

/** Each in a sentence. */
export const meaningOf: Readonly<Record<Beginning | Ending, string>> = {
  'flame-or-steam': 'There is a flame, of a burner or a torch, or there is steam.',
  'steam-up': 'There is steam in the boiler.',
  'steam-at-work': 'The boiler is at its working pressure.',
  burning: 'A burner burns.',
  'main-burning': 'The main burner burns.',
  'fuel-on': 'Fuel comes to a burner.',
  'main-fuel-on': 'Fuel comes to the main burner, lit or not.',
  'no-unlit-fuel': 'Fuel comes to no burner that does not burn.',
  pulling: 'Steam comes to the engine.',
  moving: 'The car moves.',
  'no-flame': 'No burner burns, and no torch.',
  'no-fuel': 'No fuel comes to any burner.',
  'no-main-fuel': 'No fuel comes to the main burner.',
  'no-spark': 'No switch is on that makes a spark or a glow at a burner.',
  'no-feed': 'No pump that runs by itself puts water into the boiler.',
  'throttle-shut': 'The throttle is shut.',
  'throttle-locked': 'The lock of the throttle is on.',
  standing: 'The car stands.',
  held: 'The parking brake is set, or the wheels are chocked.',
};
