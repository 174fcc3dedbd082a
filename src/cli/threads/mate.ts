/**
 * The driver’s mate: a second thread that reads the same car and makes some of its papers while the first proves it and makes
 * the others.
 *
 * The first thread alone reads files, writes them and speaks. The mate gets every text it works on from it, so that both make
 * papers of the same letters; it proves nothing, but gets what the proof found; it gives back finished papers.
 */
import { MessageChannel, type MessagePort, Worker } from 'node:worker_threads';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { PartFound } from '../../layout/flow/together';
import type { ScreenDraft } from '../../paper/paper';
import type { Asked } from '../arguments';
import type { Printed } from '../printed';
import { type Handed, Outbox } from './mailbox';
import { emptyTally } from './share';

/** What the mate is started with. */
export interface MateOrders {
  readonly asked: Extract<Asked, { kind: 'make' }>;
  readonly port: MessagePort;
  readonly bell: SharedArrayBuffer;
  readonly tally: SharedArrayBuffer;
}

/** What the mate made of the paper at a place of the set. */
export interface MatesPaper {
  readonly what: 'paper';
  readonly place: number;
  readonly problems: readonly Diagnostic[];
  /** Nothing if the paper was refused. */
  readonly printed: Printed | undefined;
}

/** A paper whose page for a screen the mate leaves to the first thread, which has nothing else to do. */
export interface MatesDraft {
  readonly what: 'draft';
  readonly place: number;
  readonly draft: ScreenDraft;
  /** For a book: where the first thread says that it makes the second part of its pages. */
  readonly claim: SharedArrayBuffer | undefined;
}

/** What a round found of the first part of such a book. */
export interface MatesFound {
  readonly what: 'part found';
  readonly place: number;
  readonly found: PartFound;
}

/** The mate has worked out the figures of the car, and this is to be told of them. */
export interface MatesFigures {
  readonly what: 'figures';
  readonly remarks: readonly Diagnostic[];
}

/** What the mate says. */
export type MatesWork = MatesPaper | MatesDraft | MatesFound | MatesFigures;

/** What the mate says when it has made all that falls to it. */
export const allMade = 'all made';

/** The mate, as the first thread sees it. */
export class Mate {
  /** How many papers have been taken by either thread. */
  readonly tally = emptyTally();
  private readonly outbox: Outbox;
  private readonly worker: Worker;
  private readonly early: MatesWork[] = [];
  private take: (work: MatesWork) => void = (work) => this.early.push(work);
  private readonly ended: Promise<void>;

  /** Start it; `script` is the file it begins with. */
  constructor(script: string, asked: MateOrders['asked']) {
    const { port1, port2 } = new MessageChannel();
    const bell = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
    const orders = { asked, port: port2, bell, tally: this.tally };
    this.outbox = new Outbox(port1, new Int32Array(bell));
    // nothing that was said to Node for the first thread, such as a file to load before all else, is meant for this one
    this.worker = new Worker(script, { workerData: orders, transferList: [port2], execArgv: [] });
    port1.unref();
    this.ended = new Promise((done, fail) => {
      this.worker.on('message', (said: MatesWork | typeof allMade) => {
        if (said === allMade) return done();
        try {
          this.take(said);
        } catch (error) {
          fail(error);
        }
      });
      this.worker.on('error', (error) => fail(new Error(`a thread of it ended: ${error.message}`)));
      this.worker.on('exit', () => fail(new Error('a thread of it ended before its papers were made')));
    });
    // told when its papers are asked for; if they are not, because something else was wrong, it does not matter
    this.ended.catch(() => undefined);
  }

  /** Hand it something. */
  hand(handed: Handed): void {
    this.outbox.hand(handed);
  }

  /**
   * `each` is called with everything that it makes and that it leaves to be made, until it has made all that falls to it. Rejects if it
   * comes to an end before.
   */
  work(each: (work: MatesWork) => void): Promise<void> {
    this.take = each;
    for (const work of this.early.splice(0)) each(work);
    return this.ended;
  }

  /** Send it away, whatever it is doing. */
  async dismiss(): Promise<void> {
    await this.worker.terminate();
  }
}
