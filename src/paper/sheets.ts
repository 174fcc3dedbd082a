/** What the papers of a car are printed on: pages, cards, weather-proof sheets. */
import { bad, type Outcome } from '../diagnostic/diagnostic';
import { makeSheet, readSheetSize } from '../layout/sheet';
import type { Sheet } from '../layout/types';
import type { World } from './paper';

/** A page of the manual, on the paper in the printer. */
export function pageSheet({ car, theme }: World): Outcome<Sheet> {
  const size = readSheetSize(car.spec.print.paper);
  return size.ok ? makeSheet(size.value, theme.page.marginsMm, false) : size;
}

/** A face of a dash card; the size is the keeper's, or half a sheet of the paper in the printer. */
export function cardSheet({ car, theme }: World): Outcome<Sheet> {
  const asked = car.spec.print.card ?? (car.spec.print.paper === 'a4' ? 'A5' : 'half letter');
  const size = readSheetSize(asked.replace(/^index[- ]/i, 'card ').replaceAll('-', ' '));
  if (size.ok) return makeSheet(size.value, theme.card.marginMm, true);
  return bad(size.problems.map((problem) => ({ ...problem, at: car.spotOf('print.card') })));
}

/** A sheet read on the lap and put in a weather-proof sleeve: the paper in the printer, with the edge a pouch needs. */
export function lapSheet({ car, theme }: World, turned: 'upright' | 'landscape' = 'upright'): Outcome<Sheet> {
  const size = readSheetSize(
    turned === 'landscape' ? `${car.spec.print.paper} landscape` : car.spec.print.paper,
  );
  return size.ok ? makeSheet(size.value, theme.card.marginMm, true) : size;
}
