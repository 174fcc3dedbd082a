/** What the papers print of the proof, as plain records. */
import type { PartId } from '../car/car';
import type { Procedure, Procedures, Step } from '../procedure/procedure';
import type { Chain } from './chain';
import type { Isolation } from './isolation';
import type { Model } from './model';
import type { TriedSlip } from './slip';
import { of } from './state';
import { positions } from './values';

/** How a valve stands at the end of a procedure: `either` if that depends on how the procedure was come to. */
export type TablePosition = (typeof positions)[number] | 'either';

/** One row of the valve-position table. */
export interface ValveRow {
  readonly valve: PartId;
  readonly name: string;
  readonly tag: string;
  readonly place: string;
  readonly parked: 'open' | 'shut';
  /** By procedure, at its end, in the order of the columns. */
  readonly at: readonly TablePosition[];
}

/** The valve-position table. */
export interface ValveTable {
  readonly columns: readonly { readonly id: string; readonly title: string }[];
  readonly rows: readonly ValveRow[];
}

/** Valves against procedures. */
export function valveTable(model: Model, procedures: Procedures, chain: Chain): ValveTable {
  const columns = procedures.filter(
    (procedure) => (chain.of.get(procedure.id) ?? []).length > 0 && procedure.phase !== 'emergency',
  );
  const rows = Object.entries(model.car.spec.valves).map(
    ([valve, each]): ValveRow => ({
      valve,
      name: each.name,
      tag: each.tag,
      place: model.car.places.get(each.place)?.name ?? '',
      parked: each.parked,
      at: columns.map((procedure) => positionAt(model, chain, procedure, valve)),
    }),
  );
  return { columns: columns.map(({ id, title }) => ({ id, title })), rows };
}

function positionAt(model: Model, chain: Chain, procedure: Procedure, valve: PartId): TablePosition {
  const ends = (chain.of.get(procedure.id) ?? [])
    .filter((run) => run.brokenOffAt === undefined)
    .map((run) => of(run.trace.end, model.slots.valve, valve));
  const [first] = ends;
  return ends.every((end) => end === first) ? (positions[first ?? 0] ?? 'shut') : 'either';
}

/** A part that leaks. */
export interface LeakingPart {
  readonly part: PartId;
}

/** A length of pipe that leaks, by what stands at its ends. */
export interface LeakingPipe {
  readonly from: PartId;
  readonly to: PartId;
}

/** One row of the isolation table. */
export interface IsolationRow {
  readonly leak: LeakingPart | LeakingPipe;
  readonly carries: string;
  /** What feeds the leak. */
  readonly fedBy: readonly string[];
  /** What to shut; empty if nothing cuts it off, or nothing feeds it. */
  readonly shut: readonly IsolationValve[];
  /** What to shut from the seat, if that is another choice and enough. */
  readonly fromSeat: readonly IsolationValve[];
  readonly cannotBeCut: boolean;
  /** Where nothing cuts all of it off: what cuts off some of what feeds it. */
  readonly partly: readonly IsolationValve[];
  /** What then still feeds it. */
  readonly left: readonly PartId[];
}

/** A valve to shut, with where it is. */
export interface IsolationValve {
  readonly valve: PartId;
  readonly name: string;
  readonly tag: string;
  readonly place: string;
  /** What has to be opened or lifted first; empty if nothing has. */
  readonly how: string;
  readonly reach: 'seated' | 'standing' | 'opened' | 'kneeling' | 'under';
}

/** What to shut for a leak here. */
export function isolationTable(model: Model, found: readonly Isolation[]): readonly IsolationRow[] {
  return found
    .filter((each) => each.sources.length > 0)
    .map(({ leak, sources, valves, fromSeat, partly, left }) => {
      const seat = fromSeat === undefined || sameSet(fromSeat, valves ?? []) ? [] : fromSeat;
      return {
        leak: 'part' in leak ? leak : { from: leak.pipe.from, to: leak.pipe.to },
        carries: 'pipe' in leak ? leak.pipe.carries : '',
        fedBy: sources.map((id) => model.car.parts.get(id)?.name ?? id),
        shut: (valves ?? []).map((id) => isolationValve(model, id)),
        fromSeat: seat.map((id) => isolationValve(model, id)),
        cannotBeCut: valves === undefined,
        partly: partly.map((id) => isolationValve(model, id)),
        left,
      };
    });
}

function isolationValve(model: Model, valve: PartId): IsolationValve {
  const part = model.car.parts.get(valve);
  const place = model.car.places.get(part?.place ?? '');
  return {
    valve,
    name: part?.name ?? valve,
    tag: part?.tag ?? '',
    place: place?.name ?? '',
    how: place?.how ?? '',
    reach: place?.reach ?? 'standing',
  };
}

function sameSet(a: readonly PartId[], b: readonly PartId[]): boolean {
  return a.length === b.length && a.every((id) => b.includes(id));
}

/** A step whose omission nothing catches before harm. */
export interface CriticalStep {
  readonly procedure: string;
  readonly title: string;
  readonly step: string;
  readonly number: number;
  readonly say: string;
  /** What happens if it is forgotten, a clause. */
  readonly forgotten: string;
  /** Why that matters, a clause. */
  readonly reason: string;
  /** Nothing is wrong on the car yet, and somebody acts without knowing. */
  readonly blind: boolean;
  /** Where it comes out, by the title of the procedure. */
  readonly comesOut: string;
}

/** The critical steps, in the order of the day. */
export function criticalSteps(tried: readonly TriedSlip[]): readonly CriticalStep[] {
  return tried.flatMap(({ slip, outcome }): readonly CriticalStep[] => {
    const { procedure, step } = slip;
    if (slip.kind !== 'left out' || step === undefined || outcome.class !== 'critical') return [];
    return [
      {
        procedure: procedure.id,
        title: procedure.title,
        step: step.id,
        number: procedure.steps.indexOf(step) + 1,
        say: step.say,
        forgotten: outcome.what,
        reason: outcome.rule.reason,
        blind: outcome.blind,
        comesOut: outcome.at.procedure.title,
      },
    ];
  });
}

/** One act of the way out, as a seated driver reaches it. */
export interface WayOutAct {
  readonly step: string;
  readonly say: string;
  readonly place: string;
  readonly fromSeat: boolean;
}

/** The emergency that shuts everything, in its order, with what is reached from the seat. */
export function wayOutActs(model: Model, wayOut: Procedure | undefined): readonly WayOutAct[] {
  return (wayOut?.steps ?? []).map((step) => {
    const place = model.car.places.get(step.place ?? '');
    return {
      step: step.id,
      say: step.say,
      place: place?.name ?? '',
      fromSeat: place === undefined || place.reach === 'seated',
    };
  });
}

/** Steps that stand together at one place. */
export interface PlaceGroup {
  /** Empty for steps that are done nowhere in particular. */
  readonly place: string;
  readonly steps: readonly Step[];
}

/** The steps of a procedure with each place named once for the steps done there one after another. */
export function byPlace(model: Model, procedure: Procedure): readonly PlaceGroup[] {
  const groups: { place: string; steps: Step[] }[] = [];
  for (const step of procedure.steps) {
    const place = model.car.places.get(step.place ?? '')?.name ?? '';
    const last = groups.at(-1);
    if (last !== undefined && (last.place === place || place === '')) last.steps.push(step);
    else groups.push({ place, steps: [step] });
  }
  return groups;
}

/** A step that takes a second person, and where the first one is meanwhile. */
export interface TwoPersonTask {
  readonly procedure: string;
  readonly title: string;
  readonly step: string;
  readonly helperDoes: string;
  readonly helperAt: string;
  /** The driver’s step before it; empty at the beginning. */
  readonly driverHasDone: string;
  readonly driverAt: string;
}

/** Who does what where two are needed. */
export function twoPersonTasks(model: Model, procedures: Procedures): readonly TwoPersonTask[] {
  const placeName = (step: Step | undefined) => model.car.places.get(step?.place ?? '')?.name ?? '';
  return procedures.flatMap((procedure) =>
    procedure.steps.flatMap((step, index): readonly TwoPersonTask[] => {
      if (step.who !== 'helper') return [];
      const before = procedure.steps.slice(0, index).filter((each) => each.who !== 'helper');
      return [
        {
          procedure: procedure.id,
          title: procedure.title,
          step: step.id,
          helperDoes: step.say,
          helperAt: placeName(step),
          driverHasDone: before.at(-1)?.say ?? '',
          driverAt: placeName(before.filter((each) => each.place !== undefined).at(-1)),
        },
      ];
    }),
  );
}
