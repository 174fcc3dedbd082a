/** Help: of every command, whole, and in words that a keeper knows. */
import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments';
import { commandNames, helpOf, helpText } from '../../src/cli/help';
import { run } from './run';

/** Options as they stand in a text: `--paper`. */
const optionsIn = (text: string) => new Set(text.match(/--[a-z]+/g) ?? []);

test('every command that is understood has help, and no other', () => {
  for (const command of commandNames) {
    const asked = readArguments([command, 'a.yaml', 'b.yaml']);
    expect(asked.kind === 'wrong-use' ? asked.why : '', command).not.toContain('there is no command');
    expect(helpText).toContain(`kettlebook ${command}`);
  }
  const told = readArguments(['zzzzzzzz']);
  const known = told.kind === 'wrong-use' ? (told.why.match(/`[a-z]+`/g) ?? []).slice(1) : [];
  expect(known.map((name) => name.replaceAll('`', '')).sort()).toEqual([...commandNames].sort());
});

describe.each(commandNames)('help with %s', (command) => {
  const help = helpOf(command) ?? '';

  test('is told for the command with --help, and after help', async () => {
    for (const args of [
      [command, '--help'],
      ['help', command],
    ]) {
      const { code, said } = await run(...args);
      expect(code).toBe(0);
      expect(said.trimEnd()).toBe(help);
    }
  });

  test('has an example that is understood, and names no option the command does not take', () => {
    const [, ...lines] = help.split('\n');
    const examples = lines.flatMap((line) => /^ {2}kettlebook (.+?)(?: {2,}.*)?$/.exec(line)?.[1] ?? []);
    expect(examples.length).toBeGreaterThan(0);
    for (const line of examples) expect(readArguments(line.split(' ')).kind, line).toBe(command);
    for (const option of optionsIn(help)) {
      const args = command === 'papers' ? [command] : [command, 'a.yaml', 'b.yaml'];
      const asked = readArguments([...args, option, 'letter']);
      expect(asked.kind === 'wrong-use' ? asked.why : '', option).not.toContain('does not take');
    }
  });

  test('fits a terminal of 120 letters', () => {
    for (const line of help.split('\n')) expect(line.length, line).toBeLessThanOrEqual(120);
  });
});

test('a command that is nearly right, a file without a command, an option that is nearly right', async () => {
  expect((await run('mkae', 'a.yaml')).complained).toContain('did you mean `make`?');
  expect((await run('my-car.yaml')).complained).toContain('such as `kettlebook make my-car.yaml`');
  expect((await run('make', 'a.yaml', '--papr', 'x')).complained).toContain('did you mean `--paper`?');
  expect((await run('make', 'a.yaml', '--out')).complained).toContain('`--out` needs something after it');
  expect((await run('new')).complained).toContain('kettlebook new my-car.yaml');
});
