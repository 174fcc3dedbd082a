/** The usual day: which procedure follows which when nothing out of the ordinary happens. */
import type { Procedure, Procedures } from '../procedure/procedure';
import type { Day } from './day';

/** Procedures that follow each other, with whether a night passes before each. */
export interface Sequel {
  readonly procedure: Procedure;
  readonly afterNight: boolean;
}

/** The procedures of a usual day in their order: from the evening back, each after the one it usually follows. */
export function usualDay(procedures: Procedures, day: Day): Procedures {
  const daily = procedures.filter((procedure) => procedure.phase !== 'emergency');
  const byId = new Map(daily.map((procedure) => [procedure.id, procedure]));
  const found: Procedure[] = [];
  let at = [...day.nightAfter].map((id) => byId.get(id)).find((procedure) => procedure !== undefined);
  while (at !== undefined && !found.includes(at)) {
    found.unshift(at);
    at = byId.get(at.after[0] ?? '');
  }
  return found;
}

/**
 * What can follow a procedure, one list for each procedure that can come next, each going on through the usual day until
 * that day has come round once.
 */
export function sequels(procedures: Procedures, day: Day, from: Procedure): readonly (readonly Sequel[])[] {
  const usual = usualDay(procedures, day);
  const daily = procedures.filter((procedure) => procedure.phase !== 'emergency');
  const nexts = daily.filter(
    (procedure) => procedure.after.includes(from.id) && !day.leftOutWithSteamUp.has(procedure.id),
  );
  const all = nexts.length > 0 ? nexts : daily.filter((procedure) => procedure.after.includes(from.id));
  return all.map((next) => goOn(usual, daily, day, from, next));
}

function goOn(
  usual: Procedures,
  daily: Procedures,
  day: Day,
  from: Procedure,
  next: Procedure,
): readonly Sequel[] {
  const list: Sequel[] = [{ procedure: next, afterNight: day.nightAfter.has(from.id) }];
  let at: Procedure | undefined = next;
  while (at !== undefined && list.length <= usual.length + 2) {
    const here: Procedure = at;
    const place = usual.indexOf(here);
    at =
      place >= 0
        ? usual[(place + 1) % usual.length]
        : (usual.find((each) => each.after.includes(here.id)) ??
          daily.find((each) => each.after.includes(here.id)));
    if (at !== undefined) list.push({ procedure: at, afterNight: day.nightAfter.has(here.id) });
  }
  return list;
}
