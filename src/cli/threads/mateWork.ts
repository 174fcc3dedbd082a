/** What the mate does: reads the car it is handed, and makes papers from the back of the set. */
import { parentPort, workerData } from 'node:worker_threads';
import { good, type Outcome } from '../../diagnostic/diagnostic';
import { oneByOne, openWorkshop, type Prover, readCar } from '../../kettlebook';
import type { Partner } from '../../paper/inTwo';
import type { Help, Paper, ScreenDraft } from '../../paper/paper';
import { putInOrder } from '../../proof/shown';
import { readSource } from '../../spec/source';
import { choosePapers } from '../choosePapers';
import { once } from '../once';
import type { OpenedCar } from '../openCar';
import { type OpenedIssue, openIssue } from '../openIssue';
import { printedOf } from '../printed';
import { openClaim, takeBack } from './claim';
import { Inbox } from './mailbox';
import { allMade, type MateOrders, type MatesWork } from './mate';
import { allTaken, shareOf } from './share';

/** Do it, and give each paper to the first thread. Where a car is not good it is the first thread that says so. */
export async function workAsMate(): Promise<void> {
  const { asked, port, bell, tally } = workerData as MateOrders;
  const inbox = new Inbox(port, new Int32Array(bell));
  let cars = 0;
  const open = async (): Promise<Outcome<OpenedCar>> => {
    cars += 1;
    return openHanded(inbox, cars - 1);
  };
  const opened = await openIssue(asked, open);
  if (opened.ok) say({ what: 'figures', remarks: opened.remarks });
  const chosen = opened.ok ? choosePapers(opened.value.ready.papers, asked.papers) : undefined;
  if (opened.ok && chosen !== undefined && 'chosen' in chosen)
    await makeShare(opened.value, chosen.chosen, { tally, inbox });
  parentPort?.postMessage(allMade);
}

async function makeShare(
  { workshop, ready, earlier }: OpenedIssue,
  chosen: readonly Paper[],
  { tally, inbox }: { readonly tally: SharedArrayBuffer; readonly inbox: Inbox },
): Promise<void> {
  // where no paper is left to begin with, the first thread has time for what is beside this one
  const leaveDraft = (draft: ScreenDraft): Help | undefined => {
    if (!allTaken(chosen.length, tally)) return undefined;
    const place = chosen.findIndex(({ name }) => name === draft.name);
    const claim = chosen[place]?.flow === undefined ? undefined : openClaim();
    say({ what: 'draft', place, draft, claim });
    return claim === undefined ? {} : { partner: partnerFor(place, claim, inbox) };
  };
  const share = shareOf(chosen, 'back', tally);
  for await (const [paper, made] of oneByOne(ready, share, workshop, earlier, leaveDraft)) {
    say({
      what: 'paper',
      place: chosen.indexOf(paper),
      problems: made.ok ? made.remarks : made.problems,
      printed: made.ok ? printedOf(made.value) : undefined,
    });
  }
}

function say(work: MatesWork): void {
  parentPort?.postMessage(work);
}

/** The first thread, as the one who may make the second part of the book at this place of the set. */
function partnerFor(place: number, claim: SharedArrayBuffer, inbox: Inbox): Partner {
  return {
    hasBegun: () => !takeBack(claim),
    exchange: (found) => {
      say({ what: 'part found', place, found });
      return inbox.take('part found', place).found;
    },
    part: () => inbox.take('part written', place).part,
  };
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
  // the first thread tells what is wrong; of the figures it need know no more than this
  return good({ workshop: workshop.value, ready: ready.value, told: (problems) => problems }, ready.remarks);
}

/**
 * A proof that another thread makes: each part is waited for when something of it is asked, and not before.
 */
function provenElsewhere(inbox: Inbox, number: number): Prover {
  return (_car, given) => {
    const procedures = once(() => putInOrder(given, inbox.take('order', number).order));
    const findings = once(() => inbox.take('findings', number).findings);
    const leaks = once(() => inbox.take('leaks', number).leaks);
    return {
      diagnostics: undefined,
      get procedures() {
        return procedures();
      },
      get tables() {
        return { ...findings().tables, isolation: leaks().table };
      },
      get statistics() {
        return { ...findings().statistics, ...leaks().count };
      },
      get overruled() {
        return findings().overruled;
      },
    };
  };
}
