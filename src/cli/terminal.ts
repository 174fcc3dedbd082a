/** What the commands may do with the terminal, and how they end. */

/** Exit codes: done; the spec or the car is at fault; wrong use. */
export const exitCodes = { done: 0, atFault: 1, wrongUse: 2 } as const;

/** One of the exit codes. */
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** Where words go. */
export interface Terminal {
  /** To standard output, with a line end. */
  say(text: string): void;
  /** To standard error, with a line end. */
  complain(text: string): void;
  /** How wide a line may be. */
  readonly columns: number;
}
