/** The commands that read a car or the shared data. Kept apart from `main`, so that a word of help loads none of it. */
import type { Asked } from './arguments';
import { check } from './check';
import { compare } from './compare';
import { explainFigures } from './explain';
import { make } from './make';
import { type Keeper, newCar } from './new';
import { listPapers } from './papers';
import { listSteps } from './steps';
import type { ExitCode, Terminal } from './terminal';
import type { Mate } from './threads/mate';
import { tour } from './tour';
import { typedLines } from './typedLines';
import { unsaid } from './unsaid';

export { recallTexts, textsToKeep } from './keptTexts';
export { rehearse } from './rehearse';
export { workAsMate } from './threads/mateWork';

/** What such a command was asked. */
export type Work = Exclude<Asked, { readonly kind: 'help' | 'version' | 'wrong-use' }>;

/** Do it, with the mate if one was started for it. */
export async function commands(
  asked: Work,
  root: string,
  terminal: Terminal,
  mate?: Mate,
): Promise<ExitCode> {
  switch (asked.kind) {
    case 'papers':
      return listPapers(asked, root, terminal);
    case 'steps':
      return listSteps(asked, root, terminal);
    case 'check':
      return check(asked, root, terminal);
    case 'explain':
      return explainFigures(asked, root, terminal);
    case 'new':
      return newCar(asked, root, terminal, keeperHere());
    case 'compare':
      return compare(asked, root, terminal);
    case 'make':
      return make(asked, root, terminal, mate);
    case 'tour':
      return tour(asked, root, terminal);
    case 'unsaid':
      return unsaid(asked, root, terminal);
  }
}

/** Whoever sits at the terminal, or the pipe that stands for somebody. */
function keeperHere(): Keeper {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  const today = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return { typed: typedLines(), answersAgain: process.stdin.isTTY === true, today };
}
