/**
 * The whole way, from text to bytes. Pure: files, clock and terminal are the caller's.
 */
export {
  type EarlierIssue,
  makePapers,
  oneByOne,
  secondPart,
  setOnePaper,
  type UnsaidPaper,
  unsaidOf,
  worldOf,
  writeScreen,
} from './makePapers';
export {
  type CarFiles,
  type ProvenCar,
  type Prover,
  proveCar,
  type ReadyCar,
  readCar,
  workOut,
} from './readCar';
export { openWorkshop, type SharedFiles, type Workshop } from './workshop';
