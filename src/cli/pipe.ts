/** Output into another program that stops reading, as `head` does. */
import type { Writable } from 'node:stream';
import { exitCodes } from './terminal';

/** End the program without a word once nobody reads what it says any more; any other fault of the stream is thrown. */
export function endWhenNobodyReads(stream: Writable): void {
  if (stream.listeners('error').includes(ended)) return;
  stream.on('error', ended);
}

function ended(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
  process.exit(exitCodes.done);
}
