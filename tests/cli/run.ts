/** Running the command in a test. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { vi } from 'vitest';
import { main } from '../../src/cli/main';
import { logs, root } from '../whole/made';

/** Run the command; what it said and how it ended. */
export async function run(...args: string[]): Promise<{ code: number; said: string; complained: string }> {
  const said: string[] = [];
  const complained: string[] = [];
  const out = vi.spyOn(process.stdout, 'write').mockImplementation((text) => said.push(String(text)) > 0);
  const error = vi
    .spyOn(process.stderr, 'write')
    .mockImplementation((text) => complained.push(String(text)) > 0);
  try {
    const code = await main(args, root);
    return { code, said: said.join(''), complained: complained.join('') };
  } finally {
    out.mockRestore();
    error.mockRestore();
  }
}

/** Put the logs of the demo cars’ trips beside specs that are copied into `folder`. */
export function putLogs(folder: string): void {
  for (const [name, text] of logs()) writeFileSync(join(folder, name), text);
}
