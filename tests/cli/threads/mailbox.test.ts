import { MessageChannel, Worker } from 'node:worker_threads';
import { expect, test } from 'vitest';
import { type Handed, Inbox, Outbox } from '../../../src/cli/threads/mailbox';

const order = (car: number): Handed => ({ what: 'order', of: car, order: [[car]] });

test('what was handed over is taken by name and car, in whatever order it came', () => {
  const { port1, port2 } = new MessageChannel();
  const bell = new Int32Array(new SharedArrayBuffer(4));
  const [outbox, inbox] = [new Outbox(port1, bell), new Inbox(port2, bell)];
  outbox.hand(order(0));
  outbox.hand({ what: 'own files', of: 0, shared: undefined });
  outbox.hand(order(1));
  expect(inbox.take('order', 1).order).toEqual([[1]]);
  expect(inbox.take('own files', 0).shared).toBeUndefined();
  expect(inbox.take('order', 0).order).toEqual([[0]]);
  port1.close();
});

test('whoever asks before it is there sleeps until it is', async () => {
  const { port1, port2 } = new MessageChannel();
  const bell = new Int32Array(new SharedArrayBuffer(4));
  const late = new Worker(
    `const { workerData: { port, bell, handed } } = require('node:worker_threads');
    setTimeout(() => {
      port.postMessage(handed);
      Atomics.add(bell, 0, 1);
      Atomics.notify(bell, 0);
    }, 50);`,
    { eval: true, workerData: { port: port1, bell, handed: order(0) }, transferList: [port1] },
  );
  expect(new Inbox(port2, bell).take('order', 0).order).toEqual([[0]]);
  await late.terminate();
});
