/** What the model of the car shows, for the papers: how valves stand, what to shut for a leak, which steps are critical. */
import type { PartId } from '../../car/car';
import { partName } from '../../language/language';
import type { Procedure } from '../../procedure/procedure';
import type { CriticalStep, IsolationRow, TablePosition, ValveTable } from '../../proof/tables';
import type { World } from '../paper';

/** How valves stand in the procedures of one chapter, with rows for those alone that do not stand as parked all the while. */
export interface ChapterValves extends ValveTableContext {
  /** The others, by how they are parked. */
  readonly unmoved: readonly {
    readonly parked: string;
    readonly valves: readonly { readonly tag: string; readonly name: string }[];
  }[];
}

/** Part of the valve-position table, narrow enough for a page. */
export interface ValveTableContext {
  readonly title: string;
  readonly columns: readonly string[];
  /** Whether some valve stands, at the end of some part, as the part before left it. */
  readonly leavesSome: boolean;
  readonly rows: readonly {
    readonly tag: string;
    readonly name: string;
    readonly parked: string;
    /** It stands as parked at the end of every one of them. */
    readonly staysParked: boolean;
    readonly at: readonly { readonly word: string; readonly strong: boolean }[];
  }[];
}

/** Valves against the procedures with these keys, in their order in the day. */
export function valveTableContext(
  { proof, words }: World,
  title: string,
  wanted: readonly string[],
): ValveTableContext {
  const { columns, rows }: ValveTable = proof.tables.valves;
  const shown = columns.flatMap((column, index) => (wanted.includes(column.id) ? [{ column, index }] : []));
  return {
    title,
    columns: shown.map(({ column }) => column.title),
    leavesSome: rows.some(({ at }) => shown.some(({ index }) => (at[index] ?? 'either') === 'either')),
    rows: rows.map(({ tag, name, parked, at }) => ({
      tag,
      name,
      parked: words.parked[parked],
      staysParked: shown.every(({ index }) => at[index] === parked),
      at: shown.map(({ index }) => {
        const position: TablePosition = at[index] ?? 'either';
        // what stands as it is parked recedes; what stands otherwise is what the eye must find
        return { word: words.position[position], strong: position !== parked && position !== 'either' };
      }),
    })),
  };
}

/** The whole valve-position table, a part for each chapter of the manual. */
export function valveTablesContext(world: World): readonly ChapterValves[] {
  const inChapter = (phases: readonly Procedure['phase'][]) =>
    world.proof.procedures.filter(({ phase }) => phases.includes(phase)).map(({ id }) => id);
  return world.plans.chapters
    .map(({ title, phases }) => valveTableContext(world, title, inChapter(phases)))
    .filter(({ columns }) => columns.length > 0)
    .map(withoutUnmoved);
}

function withoutUnmoved(table: ValveTableContext): ChapterValves {
  const moved = table.rows.filter(({ staysParked }) => !staysParked);
  if (moved.length === 0) return { ...table, unmoved: [] };
  const others = table.rows.filter(({ staysParked }) => staysParked);
  return {
    ...table,
    rows: moved,
    unmoved: groupedBy(others, ({ parked }) => parked).map((valves) => ({
      parked: valves[0].parked,
      valves,
    })),
  };
}

/** One leak. */
export interface LeakContext {
  readonly leak: string;
  readonly shut: readonly {
    readonly tag: string;
    readonly name: string;
    readonly place: string;
    readonly seated: boolean;
    readonly last: boolean;
  }[];
  /** Whether all of those are reached from the seat. */
  readonly seatIsEnough: boolean;
  readonly fromSeat: readonly { readonly tag: string; readonly name: string; readonly last: boolean }[];
}

/** What to shut for a leak, by what flows; and the places that nothing cuts off. */
export interface LeaksContext {
  readonly byFluid: readonly { readonly fluid: string; readonly leaks: readonly LeakContext[] }[];
  /** Leaks that nothing cuts off, those that go alike together. */
  readonly uncut: readonly {
    readonly leaks: readonly string[];
    /** What cuts off some of what feeds them; empty if nothing does. */
    readonly shut: string;
    /** What feeds them still, and what lets its pressure off. */
    readonly left: string;
  }[];
}

/** The isolation table. Leaks that the same valves cut off stand together in one row. */
export function leaksContext({ proof, words, car, language }: World): LeaksContext {
  const { messages } = language;
  const named = (id: PartId) => partName(language, car.parts.get(id) ?? { name: id });
  const fluidWords = (carries: string) => words.fluids[carries as keyof typeof words.fluids] ?? '';
  const leakWords = ({ leak }: IsolationRow) =>
    'part' in leak
      ? named(leak.part)
      : messages.say('leak-pipe', { from: named(leak.from), to: named(leak.to) });
  const leakWhole = (row: IsolationRow) =>
    row.carries === ''
      ? leakWords(row)
      : messages.say('leak-of', { leak: leakWords(row), fluid: fluidWords(row.carries) });
  // what lets a tank's pressure off is opened first; only then, if it helps against another tank, is it shut
  const leftWords = (id: PartId, partly: readonly PartId[]) => {
    const valve = car.spec.tanks[id]?.['vent-valve'];
    if (valve === undefined) return named(id);
    return messages.say(partly.includes(valve) ? 'leak-let-down-and-shut' : 'leak-let-down', {
      tank: named(id),
      valve: named(valve),
    });
  };
  const cut = proof.tables.isolation.filter((row) => !row.cannotBeCut);
  // leaks of a part itself, which carry no one fluid, stand last
  const fluids = [...new Set(cut.map((row) => row.carries))].sort(
    (a, b) => Number(a === '') - Number(b === ''),
  );
  return {
    byFluid: fluids.map((fluid) => ({
      fluid: fluidWords(fluid),
      leaks: grouped(
        cut.filter((row) => row.carries === fluid),
        leakWords,
      ),
    })),
    uncut: groupedBy(
      proof.tables.isolation.filter((row) => row.cannotBeCut),
      ({ partly, left }) => [...partly.map(({ valve }) => valve), '', ...left].join(' '),
    ).map(([first, ...more]) => {
      const partly = first.partly.map(({ valve }) => valve);
      const lettingDown = first.left.flatMap((id) => car.spec.tanks[id]?.['vent-valve'] ?? []);
      return {
        leaks: [first, ...more].map(leakWhole),
        shut: partly
          .filter((valve) => !lettingDown.includes(valve))
          .map(named)
          .join(', '),
        left: first.left.map((id) => leftWords(id, partly)).join('; '),
      };
    }),
  };
}

/** Rows that go alike stand together, in the order of the first of each. */
function groupedBy<T>(rows: readonly T[], key: (row: T) => string): readonly (readonly [T, ...T[]])[] {
  const found = new Map<string, [T, ...T[]]>();
  for (const row of rows) {
    const same = found.get(key(row));
    if (same === undefined) found.set(key(row), [row]);
    else same.push(row);
  }
  return [...found.values()];
}

function grouped(
  rows: readonly IsolationRow[],
  leakWords: (row: IsolationRow) => string,
): readonly LeakContext[] {
  const alike = groupedBy(rows, ({ shut }) => shut.map(({ valve }) => valve).join(' '));
  return alike.map((same) => {
    const [first] = same;
    return {
      leak: same.map(leakWords).join('; '),
      shut: first.shut.map(({ tag, name, place, reach }, index) => ({
        tag,
        name,
        place,
        seated: reach === 'seated',
        last: index === first.shut.length - 1,
      })),
      seatIsEnough: first.shut.length > 0 && first.shut.every(({ reach }) => reach === 'seated'),
      fromSeat: first.fromSeat.map(({ tag, name }, index) => ({
        tag,
        name,
        last: index === first.fromSeat.length - 1,
      })),
    };
  });
}

/** Critical steps by procedure, in the order of the day. */
export interface CriticalContext {
  readonly title: string;
  readonly steps: readonly {
    readonly number: number;
    readonly say: string;
    readonly forgotten: string;
    readonly reason: string;
    /** The harm is that of the step before, and was said there. */
    readonly reasonAsBefore: boolean;
  }[];
}

/** Steps whose omission nothing catches before harm. */
export function criticalContext({ proof, phrases }: World): readonly CriticalContext[] {
  const titles = [...new Set(proof.tables.critical.map(({ title }) => title))];
  const inTitle = (title: string) => proof.tables.critical.filter((step) => step.title === title);
  return titles.map((title) => ({
    title,
    steps: inTitle(title).map(({ number, say, forgotten, reason }: CriticalStep, index, steps) => ({
      number,
      say,
      forgotten: phrases.told(forgotten),
      reason: phrases.told(reason),
      reasonAsBefore: steps[index - 1]?.reason === reason,
    })),
  }));
}

/** Keys of the critical steps, `procedure step`, for marking them. */
export function criticalKeys({ proof }: Pick<World, 'proof'>): ReadonlySet<string> {
  return new Set(proof.tables.critical.map(({ procedure, step }) => `${procedure} ${step}`));
}

/** How much was tried on the model, and what came of it. */
export function triedContext({ proof, phrases }: World) {
  const { slips, shareCaught, rules, steps, states, situations, longestWayOut, firstActFar } =
    proof.statistics;
  return {
    rules,
    steps,
    states,
    situations,
    longestWayOut,
    firstActFar,
    caught: `${Math.floor(shareCaught * 100)}\u00a0%`,
    tried: slips.reduce((sum, each) => sum + each.tried, 0),
    harmless: slips.reduce((sum, each) => sum + each.harmless, 0),
    critical: slips.reduce((sum, each) => sum + each.critical, 0),
    overruled: proof.overruled.map(({ rule, because }) => ({ rule: phrases.told(rule.title), because })),
  };
}
