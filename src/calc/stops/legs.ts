/**
 * A list of legs: a comma-separated table whose head names the columns and their units once:
 * `place, distance (mi), terrain, climb (ft), water, fuel, note`. Each line is the leg that ends at its place. Of terrain
 * and climb one is needed; where both are said the harder counts. Water and fuel are `yes` or `no`; empty is no.
 */
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../../diagnostic/diagnostic';
import { nearest } from '../../diagnostic/nearest';
import { findUnit } from '../../quantity/spelling';
import { terrains } from '../../spec/schema/running';
import { type Cell, readCsv } from '../range/csv';
import type { Terrain } from '../range/trip-log';
import { readMeasure, readTerrain } from '../range/trip-log-cells';
import type { Column } from '../range/trip-log-head';
import { problem, spot } from '../range/trip-log-problem';
import { terrainOf } from '../road/terrain';
import type { Stretch } from '../track/tour-use';
import type { Way, WayPlace } from './way';

const columns: Readonly<Record<string, { readonly unit?: string; readonly needed: boolean }>> = {
  place: { needed: true },
  distance: { unit: 'mi', needed: true },
  terrain: { needed: false },
  climb: { unit: 'ft', needed: false },
  water: { needed: false },
  fuel: { needed: false },
  note: { needed: false },
};

/** Read a list of legs. Every fault is reported at its place. */
export function readLegs(text: string, file: string): Outcome<Way> {
  const top = { file, line: 1, column: 1 };
  const table = readCsv(text);
  if (!table.ok)
    return bad([
      problem(
        'tour-form',
        { ...top, line: table.line, column: table.column },
        'the list of legs is not a well-formed table',
        table.why,
        'cells parted by commas',
        'close the quotes',
      ),
    ]);
  const [head, ...rows] = table.rows;
  if (head === undefined || rows.length === 0)
    return bad([
      problem(
        'tour-form',
        top,
        'the list holds no legs',
        'nothing',
        'a head and a line for each leg',
        'give it a head such as `place, distance (mi), terrain, water, fuel`',
      ),
    ]);
  const only = head.length === 1 ? head[0] : undefined;
  if (only !== undefined && /[;\t]/.test(only.text))
    return bad([
      problem(
        'tour-form',
        spot(only, file),
        'the columns are not parted by commas',
        `\`${only.text}\``,
        'cells parted by commas',
        'save the table again as comma-separated text',
      ),
    ]);
  const { found, problems } = readHead(head, file);
  if (problems.length > 0) return bad(problems);
  const told: Diagnostic[] = [];
  const legs = rows.flatMap((row) => readLeg(row, found, file, told) ?? []);
  return hasErrors(told) ? bad(told) : good(wayOf(legs));
}

interface Leg extends Omit<WayPlace, 'atM'> {
  readonly distanceM: number;
  readonly climbM: number;
  readonly terrain: Terrain;
}

function wayOf(legs: readonly Leg[]): Way {
  let atM = 0;
  const stretches: Stretch[] = [];
  const places = legs.map(({ distanceM, climbM, terrain, ...place }): WayPlace => {
    stretches.push({ fromM: atM, toM: atM + distanceM, terrain, climbM });
    atM += distanceM;
    return { ...place, atM };
  });
  return { lengthM: atM, stretches, places, heights: { kind: 'said' } };
}

function readHead(head: readonly Cell[], file: string) {
  const problems: Diagnostic[] = [];
  const found = head.map((cell): Column => {
    const [, written = '', unitText] = /^(.*?)(?:\s*\((.*)\))?$/.exec(cell.text.toLowerCase()) ?? [];
    const name = written.trim();
    const known = Object.hasOwn(columns, name) ? columns[name] : undefined;
    const at = spot(cell, file);
    if (known === undefined) {
      const near = nearest(name, Object.keys(columns));
      const all = Object.keys(columns).map((each) => `\`${each}\``);
      problems.push(
        problem(
          'tour-head',
          at,
          `\`${cell.text}\` is not a column of a list of legs`,
          `\`${cell.text}\``,
          all.join(', '),
          near ? `write \`${near}\`` : 'rename it, or call it `note`',
        ),
      );
      return { name };
    }
    if (known.unit === undefined) return { name };
    const unit = unitText === undefined ? undefined : findUnit('distance', unitText);
    if (unit !== undefined) return { name, unit };
    problems.push(
      problem(
        'tour-head',
        at,
        `the column \`${name}\` does not say its unit`,
        `\`${cell.text}\``,
        'a unit of length in brackets',
        `write \`${name} (${known.unit})\`, or the unit you mean`,
      ),
    );
    return { name };
  });
  const names = found.map(({ name }) => name);
  const at = { file, line: head[0]?.line ?? 1, column: 1 };
  const lacks = (name: string, expected: string): void => {
    problems.push(
      problem(
        'tour-head',
        at,
        `the list has no column ${name}`,
        names.join(', '),
        expected,
        'add the column',
      ),
    );
  };
  for (const [name, { needed, unit }] of Object.entries(columns)) {
    if (needed && !names.includes(name))
      lacks(`\`${name}\``, unit === undefined ? `\`${name}\`` : `\`${name} (${unit})\``);
    if (names.filter((each) => each === name).length > 1)
      problems.push(
        problem('tour-head', at, `the column \`${name}\` stands twice`, 'two', 'one', 'take one out'),
      );
  }
  if (!names.includes('terrain') && !names.includes('climb'))
    lacks('`terrain` or `climb`', 'how hilly each leg is');
  return { found, problems };
}

function readLeg(
  row: readonly Cell[],
  head: readonly Column[],
  file: string,
  told: Diagnostic[],
): Leg | undefined {
  const before = told.length;
  const [first] = row;
  const at = first === undefined ? { file, line: 1, column: 1 } : spot(first, file);
  const cell = (name: string): Cell | undefined => {
    const there = row[head.findIndex((column) => column.name === name)];
    return there === undefined || there.text === '' ? undefined : there;
  };
  const measured = (name: string): number | undefined => {
    const there = cell(name);
    const column = head.find((each) => each.name === name);
    return there === undefined ? undefined : readMeasure(there, column, file, told);
  };
  const tell = (message: string, found: string, expected: string, mend: string): void => {
    told.push(problem('tour-value', at, message, found, expected, mend));
  };
  const name = cell('place')?.text;
  const distanceM = measured('distance');
  const climbM = measured('climb');
  const said = readTerrain(cell('terrain'), file, told);
  if (row.slice(head.length).some(({ text }) => text !== ''))
    tell(
      'the line has more cells than the head',
      `${row.length} cells`,
      `${head.length} cells`,
      'put quotes around a cell that has a comma in it',
    );
  if (name === undefined) tell('the leg says no place', 'nothing', 'the place where it ends', 'name it');
  if (distanceM === undefined && cell('distance') === undefined)
    tell('the leg says no distance', 'nothing', 'a distance', 'measure it on the map');
  if (distanceM === 0)
    tell('the leg has no length', '`0`', 'more than nothing', 'correct it, or take the line out');
  if (
    said === undefined &&
    climbM === undefined &&
    cell('terrain') === undefined &&
    cell('climb') === undefined
  )
    tell(
      'the leg says neither terrain nor climb',
      'nothing',
      'one of the two',
      'write `hilly` if you do not know',
    );
  const [water, fuel] = (['water', 'fuel'] as const).map((what) => yesOrNo(cell(what), what, file, told));
  if (told.length > before || name === undefined || distanceM === undefined) return undefined;
  const climbed = climbM === undefined ? 'level' : terrainOf(climbM / distanceM);
  return {
    name,
    distanceM,
    climbM: climbM ?? 0,
    terrain: terrains.indexOf(said ?? 'level') > terrains.indexOf(climbed) ? (said ?? 'level') : climbed,
    water: water === true,
    fuel: fuel === true,
    note: cell('note')?.text ?? '',
  };
}

function yesOrNo(cell: Cell | undefined, what: string, file: string, told: Diagnostic[]): boolean {
  const text = cell?.text.toLowerCase();
  if (cell !== undefined && text !== 'yes' && text !== 'no')
    told.push(
      problem(
        'tour-value',
        spot(cell, file),
        `\`${cell.text}\` does not say whether there is ${what}`,
        `\`${cell.text}\``,
        '`yes` or `no`',
        'write `yes` only if it is sure',
      ),
    );
  return text === 'yes';
}
