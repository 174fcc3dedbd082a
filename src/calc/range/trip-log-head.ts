/**
 * The head of a log of trips: which columns it has, and in which units.
 */
import type { Diagnostic, Spot } from '../../diagnostic/diagnostic';
import { nearest } from '../../diagnostic/nearest';
import type { Dimension } from '../../quantity/dimension';
import { findUnit } from '../../quantity/spelling';
import type { Unit } from '../../quantity/unit';
import { dimensionWords } from '../../quantity/wording';
import type { Cell } from './csv';
import { problem, spot } from './trip-log-problem';

/** What each column may be; those with a dimension say their unit in the head. */
const columns: Readonly<Record<string, { readonly dimension?: Dimension; readonly needed: boolean }>> = {
  date: { needed: true },
  distance: { dimension: 'distance', needed: true },
  'water used': { dimension: 'volume', needed: false },
  'fuel used': { dimension: 'volume', needed: false },
  terrain: { needed: true },
  stops: { needed: false },
  note: { needed: false },
};

/** A column as its head names it. */
export interface Column {
  readonly name: string;
  readonly unit?: Unit;
}

/** Read the head; what is wrong with it comes beside. */
export function readHead(
  head: readonly Cell[],
  file: string,
): { found: readonly Column[]; problems: readonly Diagnostic[] } {
  const problems: Diagnostic[] = [];
  const only = head.length === 1 ? head[0] : undefined;
  if (only && /[;\t]/.test(only.text)) {
    const parted = problem(
      'log-form',
      spot(only, file),
      'the columns are not parted by commas',
      `\`${only.text}\``,
      'cells parted by commas',
      'save the table again as comma-separated text',
    );
    return { found: [], problems: [parted] };
  }
  const found = head.map((cell) => readColumn(cell, file, problems));
  const names = found.map((column) => column.name);
  const first: Spot = { file, line: head[0]?.line ?? 1, column: 1 };
  for (const [name, { needed }] of Object.entries(columns)) {
    const times = names.filter((each) => each === name).length;
    if (times > 1)
      problems.push(
        problem(
          'log-head',
          first,
          `the column \`${name}\` stands twice`,
          `${times} columns`,
          'one',
          'take one out',
        ),
      );
    if (needed && times === 0)
      problems.push(
        problem(
          'log-head',
          first,
          `the log has no column \`${name}\``,
          names.join(', '),
          `a column \`${name}\``,
          `add the column${columns[name]?.dimension ? ', with its unit in brackets' : ''}`,
        ),
      );
  }
  if (!names.includes('water used') && !names.includes('fuel used')) {
    problems.push(
      problem(
        'log-head',
        first,
        'the log says nothing of what was used',
        names.join(', '),
        '`water used` or `fuel used`',
        'add `water used (US gal)` or `fuel used (US gal)`, in the unit you measured with',
      ),
    );
  }
  return { found, problems };
}

function readColumn(cell: Cell, file: string, problems: Diagnostic[]): Column {
  const [, written = '', unitText] = /^(.*?)(?:\s*\((.*)\))?$/.exec(cell.text.toLowerCase()) ?? [];
  const name = written.trim().replace(/\s+/g, ' ');
  const known = Object.hasOwn(columns, name) ? columns[name] : undefined;
  const at = spot(cell, file);
  if (!known) {
    const near = nearest(name, Object.keys(columns));
    problems.push(
      problem(
        'log-head',
        at,
        `\`${cell.text}\` is not a column of a log`,
        `\`${cell.text}\``,
        Object.keys(columns)
          .map((each) => `\`${each}\``)
          .join(', '),
        near ? `write \`${near}\`` : 'rename it, or call it `note`',
      ),
    );
    return { name };
  }
  if (!known.dimension) return { name };
  const unit = unitText === undefined ? undefined : findUnit(known.dimension, unitText);
  if (unit) return { name, unit };
  const { name: kind, examples } = dimensionWords[known.dimension];
  const sample = examples[0].replace(/^[\d.\s]+/, '');
  problems.push(
    problem(
      'log-head',
      at,
      `the column \`${name}\` does not say its unit`,
      `\`${cell.text}\``,
      `the unit of ${kind} in brackets`,
      `write \`${name} (${sample})\`, or the unit you used`,
    ),
  );
  return { name };
}
