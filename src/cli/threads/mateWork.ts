/** What the mate does: reads the car it is handed, and makes papers from the back of the set. */
import { parentPort, workerData } from 'node:worker_threads';
import { good, type Outcome } from '../../diagnostic/diagnostic';
import { oneByOne, openWorkshop, type Prover, readCar } from '../../kettlebook';
import type { Paper, ScreenDraft } from '../../paper/paper';
import { putInOrder } from '../../proof/shown';
import { readSource } from '../../spec/source';
import { choosePapers } from '../choosePapers';
import type { OpenedCar } from '../openCar';
import { type OpenedIssue, openIssue } from '../openIssue';
import { printedOf } from '../printed';
import { Inbox } from './mailbox';
import { allMade, type MateOrders, type MatesDraft, type MatesPaper } from './mate';
import { allTaken, shareOf } from './share';

/** Do it, and give each paper to the first thread. Where a car is not good it is the first thread that says so. */
export async function workAsMate(): Promise<void> {
  const { asked, port, bell, tally } = workerData as MateOrders;
  const inbox = new Inbox(port, new Int32Array(bell));
  let cars = 0;
  const open = async () => {
    cars += 1;
    return openHanded(inbox, cars - 1);
  };
  const opened = await openIssue(asked, open);
  const chosen = opened.ok ? choosePapers(opened.value.ready.papers, asked.papers) : undefined;
  if (opened.ok && chosen !== undefined && 'chosen' in chosen)
    await makeShare(opened.value, chosen.chosen, tally);
  parentPort?.postMessage(allMade);
}

async function makeShare(
  { workshop, ready, earlier }: OpenedIssue,
  chosen: readonly Paper[],
  tally: SharedArrayBuffer,
): Promise<void> {
  // where no paper is left to begin with, the first thread has time for what is beside this one
  const leaveDraft = (draft: ScreenDraft): boolean => {
    if (!allTaken(chosen.length, tally)) return false;
    const left: MatesDraft = { what: 'draft', draft };
    parentPort?.postMessage(left);
    return true;
  };
  const share = shareOf(chosen, 'back', tally);
  for await (const [paper, made] of oneByOne(ready, share, workshop, earlier, leaveDraft)) {
    const result: MatesPaper = {
      what: 'paper',
      place: chosen.indexOf(paper),
      problems: made.ok ? made.remarks : made.problems,
      printed: made.ok ? printedOf(made.value) : undefined,
    };
    parentPort?.postMessage(result);
  }
}

async function openHanded(inbox: Inbox, car: number): Promise<Outcome<OpenedCar>> {
  const { files, shared } = inbox.take('files', car);
  // read now, while the first thread does the same to see whether the spec has a folder of its own
  readSource(files.text, files.file);
  const own = inbox.take('own files', car);
  const workshop = openWorkshop(own.shared ?? shared);
  if (!workshop.ok) return workshop;
  const ready = readCar(files, workshop.value, provenElsewhere(inbox, car));
  if (!ready.ok) return ready;
  return good({ workshop: workshop.value, ready: ready.value, told: (problems) => problems });
}

/** A proof that another thread makes: each half is waited for when something of it is asked, and not before. */
function provenElsewhere(inbox: Inbox, car: number): Prover {
  return (_, given) => {
    const procedures = once(() => putInOrder(given, inbox.take('order', car).order));
    const findings = once(() => inbox.take('findings', car).findings);
    return {
      diagnostics: [],
      get procedures() {
        return procedures();
      },
      get tables() {
        return findings().tables;
      },
      get statistics() {
        return findings().statistics;
      },
      get overruled() {
        return findings().overruled;
      },
    };
  };
}

function once<T>(work: () => T): () => T {
  let known: { readonly answer: T } | undefined;
  return () => {
    known ??= { answer: work() };
    return known.answer;
  };
}
