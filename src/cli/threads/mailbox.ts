/** What one thread hands to another that can wait for it in the middle of its work. */
import { type MessagePort, receiveMessageOnPort } from 'node:worker_threads';
import type { CarFiles, SharedFiles } from '../../kettlebook';
import type { PartFound } from '../../layout/flow/together';
import type { WrittenPart } from '../../paper/inTwo';
import type { ShownLeaks } from '../../proof/leaks';
import type { ShownFindings, StepOrder } from '../../proof/shown';

/**
 * What is handed over, and of what. Cars are counted: the car itself is the first, the issue before it the second. A paper is known by
 * its place in the set.
 */
export type Handed =
  | {
      readonly what: 'files';
      readonly of: number;
      readonly files: CarFiles;
      readonly shared: SharedFiles;
    }
  /** The same with the files of the spec’s own folder in their places, if it has one. */
  | { readonly what: 'own files'; readonly of: number; readonly shared: SharedFiles | undefined }
  | { readonly what: 'order'; readonly of: number; readonly order: StepOrder }
  | { readonly what: 'findings'; readonly of: number; readonly findings: ShownFindings }
  | { readonly what: 'leaks'; readonly of: number; readonly leaks: ShownLeaks }
  /** What a round found of the second part of a paper. */
  | { readonly what: 'part found'; readonly of: number; readonly found: PartFound }
  | { readonly what: 'part written'; readonly of: number; readonly part: WrittenPart };

/** The end that things are handed in at. */
export class Outbox {
  constructor(
    private readonly port: MessagePort,
    private readonly bell: Int32Array,
  ) {}

  /** Hand something over. It is copied. */
  hand(handed: Handed): void {
    this.port.postMessage(handed);
    Atomics.add(this.bell, 0, 1);
    Atomics.notify(this.bell, 0);
  }
}

/** The end where they are taken out. */
export class Inbox {
  private readonly arrived: Handed[] = [];

  constructor(
    private readonly port: MessagePort,
    private readonly bell: Int32Array,
  ) {}

  /** Take something out; if it is not there yet, this thread sleeps until it is. */
  take<What extends Handed['what']>(what: What, of: number): Extract<Handed, { what: What }> {
    for (;;) {
      const rung = Atomics.load(this.bell, 0);
      this.empty();
      const found = this.arrived.findIndex((each) => each.what === what && each.of === of);
      const [taken] = found < 0 ? [] : this.arrived.splice(found, 1);
      if (taken !== undefined && isOf(what, taken)) return taken;
      Atomics.wait(this.bell, 0, rung);
    }
  }

  private empty(): void {
    for (
      let next = receiveMessageOnPort(this.port);
      next !== undefined;
      next = receiveMessageOnPort(this.port)
    )
      this.arrived.push(next.message as Handed);
  }
}

function isOf<What extends Handed['what']>(
  what: What,
  handed: Handed,
): handed is Extract<Handed, { what: What }> {
  return handed.what === what;
}
