/** What the bytes of a state stand for. */

/** Of a valve. */
export const shut = 0;
export const cracked = 1;
export const open = 2;

/** Of anything that is or is not. */
export const no = 0;
export const yes = 1;

/**
 * Of a burner: its fuel is shut, and what lies in it burns on. When it goes out nobody knows before somebody has waited and seen it
 * out, so that it counts as a flame wherever a flame does harm, and as none wherever one is needed.
 */
export const burningOut = 2;

/** Of a tank: what is in it. `doubtful` is some amount that nobody has read. */
export const contents = ['empty', 'doubtful', 'enough'] as const;

/** Of a tank: the pressure over what is in it. */
export const pressures = ['none', 'not known', 'charged'] as const;

/** Of the boiler’s pressure. The order is that of the pressures. */
export const steams = ['none', 'low', 'blow-down', 'working'] as const;

/** Of the boiler’s level. `doubtful` is a level that nobody has read. */
export const levels = ['empty', 'low', 'doubtful', 'enough'] as const;

/** Of the car’s motion. */
export const motions = ['standing', 'creeping', 'running'] as const;

export const positions = ['shut', 'cracked', 'open'] as const;

/** How a valve stands. */
export type Position = (typeof positions)[number];

/** The byte of a band or amount by its name. */
export const content = { empty: 0, doubtful: 1, enough: 2 } as const;
export const pressure = { none: 0, unknown: 1, charged: 2 } as const;
export const steam = { none: 0, low: 1, blowDown: 2, working: 3 } as const;
export const level = { empty: 0, low: 1, doubtful: 2, enough: 3 } as const;
export const motion = { standing: 0, creeping: 1, running: 2 } as const;
