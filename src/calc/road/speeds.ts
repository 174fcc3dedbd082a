/**
 * Road speed against the turning of wheels, engine and pumps.
 */

/** How the engine is geared to the road. */
export interface Gearing {
  /** Distance gone in one turn of the driven wheels, loaded, m. */
  readonly rollingCircumferenceM: number;
  readonly engineTurnsPerWheelTurn: number;
}

/** Turns of the engine for each metre of road. */
export function engineTurnsPerM({ rollingCircumferenceM, engineTurnsPerWheelTurn }: Gearing): number {
  return engineTurnsPerWheelTurn / rollingCircumferenceM;
}

/** What turns how fast at one road speed. */
export interface Speeds {
  readonly wheelTurnsPerS: number;
  readonly engineTurnsPerS: number;
  /** Mean speed of the piston: two strokes for each turn, m/s. */
  readonly pistonMPerS: number;
}

/** Speeds of wheels, engine and piston at `roadMPerS`. */
export function speedsAt(gearing: Gearing, pistonStrokeM: number, roadMPerS: number): Speeds {
  const engineTurnsPerS = roadMPerS * engineTurnsPerM(gearing);
  return {
    wheelTurnsPerS: roadMPerS / gearing.rollingCircumferenceM,
    engineTurnsPerS,
    pistonMPerS: 2 * pistonStrokeM * engineTurnsPerS,
  };
}

/** Road speed at which the engine makes so many turns a second, m/s. */
export function roadSpeedMPerS(gearing: Gearing, engineTurnsPerS: number): number {
  return engineTurnsPerS / engineTurnsPerM(gearing);
}

/**
 * Rolling circumference of a loaded tyre from its outside diameter: 3.05 diameters, against 3.14 unloaded (ETRTO rule
 * for car tyres, from memory). Rolling the car ten turns along a tape is better.
 */
export function estimatedRollingCircumferenceM(outsideDiameterM: number): number {
  return 3.05 * outsideDiameterM;
}
