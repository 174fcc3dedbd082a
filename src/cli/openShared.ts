/** What all cars share, opened: checked again unless it is what the build found good. */
import type { Outcome } from '../diagnostic/diagnostic';
import { openWorkshop, type SharedFiles, type Workshop } from '../kettlebook';
import { foundGood } from './keptTexts';

/** Open these files, which may be the program's own or have a keeper's in their places. */
export function openShared(shared: SharedFiles): Outcome<Workshop> {
  return openWorkshop(withFoundGood(shared));
}

/** The same files, with what the build knows of them. */
export function withFoundGood(shared: SharedFiles): SharedFiles {
  return { ...shared, foundGood: foundGood(shared) };
}
