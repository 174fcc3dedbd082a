/** Every rule of the catalogue, by what it is about. */
import type { FactKey } from '../../procedure/facts';
import { airedBeforeRelight } from './airedBeforeRelight';
import { bandsAgree } from './bandsAgree';
import { blowDownClear } from './blowDownClear';
import { blowDownPressure } from './blowDownPressure';
import { blowDownTapsShut } from './blowDownTapsShut';
import { blowerFirst } from './blowerFirst';
import { boilerOpenedUnderPressure } from './boilerOpenedUnderPressure';
import { boilerTapsShut } from './boilerTapsShut';
import { bondedForFilling } from './bondedForFilling';
import { brakesTried } from './brakesTried';
import { burnerFrontClear } from './burnerFrontClear';
import { burnerPressure } from './burnerPressure';
import { burntOut } from './burntOut';
import { cameIn } from './cameIn';
import { carHeld } from './carHeld';
import { checkValveAtBoiler } from './checkValveAtBoiler';
import { chestDrained } from './chestDrained';
import { coilFed } from './coilFed';
import { coilNotFlooded } from './coilNotFlooded';
import { driverStaysWithMovingCar } from './driverStaysWithMovingCar';
import { endsCold } from './endsCold';
import { endsParked } from './endsParked';
import { extinguisher } from './extinguisher';
import { feedBeforeMain } from './feedBeforeMain';
import { fireOnLowWater } from './fireOnLowWater';
import { firesOutForBlowDown } from './firesOutForBlowDown';
import { flameWithoutLevel } from './flameWithoutLevel';
import { fuelToUnlitBurner } from './fuelToUnlitBurner';
import { fuelValvesShutDown } from './fuelValvesShutDown';
import { gaugeAlive } from './gaugeAlive';
import { glassTrue } from './glassTrue';
import { glovesForBlowDown } from './glovesForBlowDown';
import { hoseIntoHotBoiler } from './hoseIntoHotBoiler';
import { igniterProven } from './igniterProven';
import { jointsDry } from './jointsDry';
import { laidUpDry } from './laidUpDry';
import { levelKnownAgain } from './levelKnownAgain';
import { levelTwice } from './levelTwice';
import { lookedOverBeforeMotion } from './lookedOverBeforeMotion';
import { mainOutdoors } from './mainOutdoors';
import { mainOutlivesIgniter } from './mainOutlivesIgniter';
import { monotubeFeed } from './monotubeFeed';
import { noFillingWithFlame } from './noFillingWithFlame';
import { notLeftAlone } from './notLeftAlone';
import { oilBeforeMotion } from './oilBeforeMotion';
import { onePlaceAtOnce } from './onePlaceAtOnce';
import { outletsShut } from './outletsShut';
import { parkedFuelCut } from './parkedFuelCut';
import { pressureBeforeFlame } from './pressureBeforeFlame';
import { pressureHolds } from './pressureHolds';
import { pressureToMove } from './pressureToMove';
import { provenBeforeRoad } from './provenBeforeRoad';
import { readyForFire } from './readyForFire';
import { reverseAtStand } from './reverseAtStand';
import type { Rule } from './rule';
import { safetyValveSetting } from './safetyValveSetting';
import { spiltFuel } from './spiltFuel';
import { storesMeasured } from './storesMeasured';
import { superheaterFlow } from './superheaterFlow';
import { tableGoneThrough } from './tableGoneThrough';
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

/** The catalogue. */
export const rules: readonly Rule[] = [
  // water
  blowDownPressure,
  blowDownTapsShut,
  boilerOpenedUnderPressure,
  boilerTapsShut,
  checkValveAtBoiler,
  feedBeforeMain,
  fireOnLowWater,
  firesOutForBlowDown,
  flameWithoutLevel,
  glassTrue,
  hoseIntoHotBoiler,
  laidUpDry,
  levelKnownAgain,
  levelTwice,
  monotubeFeed,
  coilFed,
  coilNotFlooded,
  storesMeasured,
  tubeOffBeforeFlame,
  waterIntoDryBoiler,
  // fuel
  airedBeforeRelight,
  bandsAgree,
  blowerFirst,
  bondedForFilling,
  burnerPressure,
  burntOut,
  fuelToUnlitBurner,
  fuelValvesShutDown,
  igniterProven,
  jointsDry,
  mainOutlivesIgniter,
  noFillingWithFlame,
  parkedFuelCut,
  pressureBeforeFlame,
  pressureHolds,
  spiltFuel,
  torchOut,
  twoFuels,
  vaporizerHot,
  vapourInBurner,
  ventBeforeOpening,
  // steam
  brakesTried,
  cameIn,
  carHeld,
  chestDrained,
  gaugeAlive,
  lookedOverBeforeMotion,
  oilBeforeMotion,
  pressureToMove,
  provenBeforeRoad,
  reverseAtStand,
  safetyValveSetting,
  superheaterFlow,
  throttleLocked,
  throttleWithDripsShut,
  // people
  blowDownClear,
  burnerFrontClear,
  driverStaysWithMovingCar,
  extinguisher,
  glovesForBlowDown,
  mainOutdoors,
  notLeftAlone,
  onePlaceAtOnce,
  readyForFire,
  wayClear,
  // completeness
  endsCold,
  endsParked,
  outletsShut,
  tableGoneThrough,
];

/** Everything some rule asks whether somebody knows. */
export const askedFacts: ReadonlySet<FactKey> = new Set(rules.flatMap((rule) => rule.asks));
