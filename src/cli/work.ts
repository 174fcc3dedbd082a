/** The commands that read a car or the shared data. Kept apart from `main`, so that a word of help loads none of it. */
import type { Asked } from './arguments';
import { check } from './check';
import { compare } from './compare';
import { explainFigures } from './explain';
import { make } from './make';
import { newCar } from './new';
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
      return newCar(asked, root, terminal, typedLines());
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
