/** Figures that come out otherwise than before, as they are printed. */
import type { CarFigures } from '../calc/figures/carFigures';
import { workingOf } from '../paper/context/workings';
import type { Phrases } from '../paper/phrase';
import type { Change } from './comparison';
import type { NewKeys } from './keys';

/** Every figure whose printed value is another. Both are said in the newer issue's units. */
export function changedFigures(
  before: CarFigures,
  after: CarFigures,
  keys: NewKeys,
  phrases: Phrases,
): readonly Change[] {
  const told = (figures: CarFigures) => figures.all.map((figure) => workingOf(figure, phrases));
  const old = new Map(told(before).map((figure) => [rekeyed(figure.id, keys), figure]));
  const now = told(after);
  const ids = new Set(now.map(({ id }) => id));
  return [
    ...now.flatMap((figure): readonly Change[] => {
      const was = old.get(figure.id);
      if (was === undefined)
        return [{ group: 'figure', kind: 'added', what: figure.name, was: '', is: figure.value }];
      const values =
        figure.rows.length > 0 && was.rows.length > 0 ? tables(was.rows, figure.rows) : undefined;
      const [printed, is] = values ?? [was.value, figure.value];
      return printed === is
        ? []
        : [{ group: 'figure', kind: 'changed', what: figure.name, was: printed, is }];
    }),
    ...[...old]
      .filter(([id]) => !ids.has(id))
      .map(
        ([, figure]): Change => ({
          group: 'figure',
          kind: 'removed',
          what: figure.name,
          was: figure.value,
          is: '',
        }),
      ),
  ];
}

type Rows = readonly (readonly string[])[];

/** Two tables: how many of their rows differ, and the first that do. */
function tables(was: Rows, is: Rows): readonly [string, string] {
  const line = (row: readonly string[] | undefined) => row?.join(', ') ?? 'no row';
  const most = Math.max(was.length, is.length);
  const differing = Array.from({ length: most }, (_, index) => index).filter(
    (index) => line(was[index]) !== line(is[index]),
  );
  const [first] = differing;
  if (first === undefined) return ['', ''];
  const others = differing.length - 1;
  const more = others === 0 ? '' : `; ${others} more ${others === 1 ? 'row differs' : 'rows differ'}`;
  const [old, now] = [was[first], is[first]];
  if (old === undefined || now === undefined || old[0] !== now[0]) return [line(old), `${line(now)}${more}`];
  const [head = '', ...columns] = is[0] ?? [];
  const differ = columns.map((_, index) => index + 1).filter((index) => old[index] !== now[index]);
  const cells = (row: readonly string[]) =>
    `at ${head} ${row[0]}: ${differ.map((index) => `${is[0]?.[index] ?? ''} ${row[index] ?? ''}`).join(', ')}`;
  return [cells(old), `${cells(now)}${more}`];
}

/** A figure of one part has the part's key in its own. */
function rekeyed(id: string, keys: NewKeys): string {
  for (const [from, to] of keys) {
    if (id === from) return to;
    if (id.endsWith(`-${from}`)) return `${id.slice(0, -from.length)}${to}`;
    if (id.startsWith(`${from}-`)) return `${to}${id.slice(from.length)}`;
  }
  return id;
}
