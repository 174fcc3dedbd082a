/** Runs of pipe that pass through other parts than before. */
import type { CarSpec } from '../spec/schema/carSpec';
import type { Change } from './comparison';
import { nameOf, type Speech } from './said';
import { differingStretch, leftOut } from './stretch';

type Line = CarSpec['lines'][number];

/** Every line that came, went, or goes another way. A line is known again by its name, or else by what it carries and where it ends. */
export function changedLines(speech: Speech): readonly Change[] {
  const wanting = [...speech.before.spec.lines];
  const take = (fits: (line: Line) => boolean): Line | undefined => {
    const index = wanting.findIndex(fits);
    return index === -1 ? undefined : wanting.splice(index, 1)[0];
  };
  const fresh = speech.after.spec.lines.filter(
    (line) => take((old) => old.carries === line.carries && sameWay(old, line)) === undefined,
  );
  const changes = fresh.map((line): Change => {
    const old =
      take((each) => each.name !== undefined && each.name === line.name) ??
      take((each) => each.carries === line.carries && ends(each) === ends(line));
    const what = sayLine(line, speech);
    if (old === undefined)
      return { group: 'line', kind: 'added', what, was: '', is: way(line.through, speech) };
    const [was, is] = differingStretch(old.through, line.through, 1);
    return { group: 'line', kind: 'changed', what, ...bothWays(old, line, was, is, speech) };
  });
  const gone = wanting.map((line): Change => {
    return {
      group: 'line',
      kind: 'removed',
      what: sayLine(line, speech),
      was: way(line.through, speech),
      is: '',
    };
  });
  return [...changes, ...gone];
}

function bothWays(
  old: Line,
  line: Line,
  was: readonly string[],
  is: readonly string[],
  speech: Speech,
): Pick<Change, 'was' | 'is'> {
  if (sameWay(old, line)) return { was: `carries ${old.carries}`, is: `carries ${line.carries}` };
  return { was: way(was, speech), is: way(is, speech) };
}

function sameWay(a: Line, b: Line): boolean {
  return a.through.join(' ') === b.through.join(' ');
}

function ends({ through }: Line): string {
  return `${through[0]} ${through.at(-1)}`;
}

function sayLine(line: Line, speech: Speech): string {
  if (line.name !== undefined) return line.name;
  const [first = '', last = ''] = [line.through[0], line.through.at(-1)];
  return `${line.carries}, ${nameOf(first, speech)} to ${nameOf(last, speech)}`;
}

function way(through: readonly string[], speech: Speech): string {
  return through.map((id) => (id === leftOut ? leftOut : nameOf(id, speech))).join(' → ');
}
