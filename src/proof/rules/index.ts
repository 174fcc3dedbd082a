/** Every rule of the catalogue, by what it is about. */
import { blowDownClear } from './blowDownClear';
import { blowDownPressure } from './blowDownPressure';
import { boilerOpenedUnderPressure } from './boilerOpenedUnderPressure';
import { boilerTapsShut } from './boilerTapsShut';
import { bondedForFilling } from './bondedForFilling';
import { brakesTried } from './brakesTried';
import { burnerFrontClear } from './burnerFrontClear';
import { carHeld } from './carHeld';
import { chestDrained } from './chestDrained';
import { driverStaysWithMovingCar } from './driverStaysWithMovingCar';
import { endsCold } from './endsCold';
import { endsParked } from './endsParked';
import { extinguisher } from './extinguisher';
import { feedBeforeMain } from './feedBeforeMain';
import { fireOnLowWater } from './fireOnLowWater';
import { firesOutForBlowDown } from './firesOutForBlowDown';
import { flameWithoutLevel } from './flameWithoutLevel';
import { fuelToUnlitBurner } from './fuelToUnlitBurner';
import { gaugeAlive } from './gaugeAlive';
import { igniterProven } from './igniterProven';
import { levelKnownAgain } from './levelKnownAgain';
import { levelTwice } from './levelTwice';
import { mainOutdoors } from './mainOutdoors';
import { mainOutlivesIgniter } from './mainOutlivesIgniter';
import { noFillingWithFlame } from './noFillingWithFlame';
import { oilBeforeMotion } from './oilBeforeMotion';
import { onePlaceAtOnce } from './onePlaceAtOnce';
import { parkedFuelCut } from './parkedFuelCut';
import { pressureBeforeFlame } from './pressureBeforeFlame';
import { pressureToMove } from './pressureToMove';
import { readyForFire } from './readyForFire';
import { safetyValveSetting } from './safetyValveSetting';
import { spiltFuel } from './spiltFuel';
import { superheaterFlow } from './superheaterFlow';
import { throttleLocked } from './throttleLocked';
import { throttleWithDripsShut } from './throttleWithDripsShut';
import { torchOut } from './torchOut';
import { tubeOffBeforeFlame } from './tubeOffBeforeFlame';
import { twoFuels } from './twoFuels';
import { vaporizerHot } from './vaporizerHot';
import { vapourInBurner } from './vapourInBurner';
import { ventBeforeOpening } from './ventBeforeOpening';
import { waterIntoDryBoiler } from './waterIntoDryBoiler';
import { wayClear } from './wayClear';
import type { Rule } from './rule';

/** The catalogue. */
export const rules: readonly Rule[] = [
  // water
  blowDownPressure, boilerOpenedUnderPressure, boilerTapsShut, feedBeforeMain, fireOnLowWater, firesOutForBlowDown, flameWithoutLevel, levelKnownAgain, levelTwice, tubeOffBeforeFlame, waterIntoDryBoiler,
  // fuel
  bondedForFilling, fuelToUnlitBurner, igniterProven, mainOutlivesIgniter, noFillingWithFlame, parkedFuelCut, pressureBeforeFlame, spiltFuel, torchOut, twoFuels, vaporizerHot, vapourInBurner, ventBeforeOpening,
  // steam
  brakesTried, carHeld, chestDrained, gaugeAlive, oilBeforeMotion, pressureToMove, safetyValveSetting, superheaterFlow, throttleLocked, throttleWithDripsShut,
  // people
  blowDownClear, burnerFrontClear, driverStaysWithMovingCar, extinguisher, mainOutdoors, onePlaceAtOnce, readyForFire, wayClear,
  // completeness
  endsCold, endsParked,
];
