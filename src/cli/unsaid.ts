/** `kettlebook unsaid`: what the language of a spec does not yet say of its papers, as a file to fill in. */
import { stringify } from 'yaml';
import { unsaidOf } from '../kettlebook';
import type { Asked } from './arguments';
import { choosePapers } from './choosePapers';
import { openCarOrTell } from './openCar';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** Print it: every text once, under the first paper that lacks it. */
export async function unsaid(
  asked: Extract<Asked, { kind: 'unsaid' }>,
  root: string,
  terminal: Terminal,
): Promise<ExitCode> {
  const opened = await openCarOrTell(asked.spec, root, terminal);
  if (opened === undefined) return exitCodes.atFault;
  const { ready, workshop, told } = opened;
  const papers = choosePapers([...ready.papers, ...ready.leftOut], asked.papers);
  if (!('chosen' in papers)) {
    terminal.complain(`kettlebook: ${papers.why}`);
    return exitCodes.wrongUse;
  }
  const found = unsaidOf(ready, papers.chosen, workshop);
  if (!found.ok) {
    tellProblems(told(found.problems), terminal);
    return exitCodes.atFault;
  }
  const known = new Set<string>();
  const lines: string[] = [];
  for (const { paper, texts } of found.value) {
    const fresh = texts.filter((text) => !known.has(text));
    if (texts.length > 0)
      lines.push(`\n  # ${paper.name}: ${texts.length}, ${fresh.length} of them new here\n`);
    for (const text of fresh) {
      known.add(text);
      lines.push(`  - english: ${quoted(text)}    say: ''\n`);
    }
  }
  const { name } = ready.language;
  terminal.say(
    known.size === 0
      ? `# ${name} says every text of these papers for this car.`
      : `# What ${name} does not say: ${known.size} texts, as this car’s papers call for them.\n\ntexts:${lines.join('')}`,
  );
  return exitCodes.done;
}

/** A text as YAML on one line, with its end of line. */
function quoted(text: string): string {
  return stringify(text, { defaultStringType: 'QUOTE_SINGLE', lineWidth: 0 });
}
