/** What is typed, or comes through a pipe, line by line. */
import { createInterface } from 'node:readline';

/** The lines of standard input; they end when the pipe does, or when the keeper ends the input. */
export async function* typedLines(): AsyncGenerator<string, void> {
  const reader = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  try {
    yield* reader;
  } finally {
    reader.close();
  }
}
