/** What the papers of a car are printed on: pages, cards, weather-proof sheets. */
import { bad, type Outcome } from '../diagnostic/diagnostic';
import type { LaidOut } from '../layout/frame';
import { impose } from '../layout/impose';
import { laminatingEdgeMm, makeSheet, readSheetSize } from '../layout/sheet';
import type { Sheet } from '../layout/types';
import type { World } from './paper';

/** A page of the manual, on the paper in the printer. */
export function pageSheet({ car, theme }: Pick<World, 'car' | 'theme'>): Outcome<Sheet> {
  const size = readSheetSize(car.spec.print.paper);
  return size.ok ? makeSheet(size.value, theme.page.marginsMm, false) : size;
}

/** A face of a dash card; the size is the keeper's, or half a sheet of the paper in the printer. */
export function cardSheet({ car, theme }: World, padMm = 0): Outcome<Sheet> {
  const asked = car.spec.print.card ?? (car.spec.print.paper === 'a4' ? 'A5' : 'half letter');
  const size = readSheetSize(asked.replace(/^index[- ]/i, 'card ').replaceAll('-', ' '));
  if (size.ok) return makeSheet(size.value, Math.max(theme.card.marginMm, laminatingEdgeMm) + padMm, true);
  return bad(size.problems.map((problem) => ({ ...problem, at: car.spotOf('print.card') })));
}

/** A face of a card that is dark all over: the words keep off the edge of the dark ground. */
export function darkCardSheet(world: World): Outcome<Sheet> {
  return cardSheet(world, world.theme.dark.padMm);
}

/** A sheet read on the lap and put in a weather-proof sleeve: the paper in the printer, with the edge a pouch needs. */
export function lapSheet({ car, theme }: World, turned: 'upright' | 'landscape' = 'upright'): Outcome<Sheet> {
  const size = readSheetSize(
    turned === 'landscape' ? `${car.spec.print.paper} landscape` : car.spec.print.paper,
  );
  return size.ok ? makeSheet(size.value, theme.card.marginMm, true) : size;
}

/** Clear edge of a sheet that is measured with or cut up: as much of it as home printers reach, in millimetres (common practice, no source). */
const measuredEdgeMm = 8;

/** A sheet that is measured with or cut up: the paper in the printer, printed nearly to its edges. */
export function measuredSheet({ car }: World): Outcome<Sheet> {
  const size = readSheetSize(car.spec.print.paper);
  return size.ok ? makeSheet(size.value, measuredEdgeMm, false) : size;
}

/** The room on such a sheet for a drawing below a heading and above a line of caption and the foot, in points. */
export function measuredRoom(world: World): { readonly widthPt: number; readonly heightPt: number } {
  const sheet = measuredSheet(world);
  if (!sheet.ok) throw new RangeError('the paper in the printer has no size');
  const { widthPt, heightPt, margins } = sheet.value;
  const { page, space, type } = world.theme;
  const heading = type.section.leading + space.below.section;
  const caption = space.caption + type.caption.leading + space.block;
  const foot = type.running.leading + page.footGap;
  return {
    widthPt: widthPt - margins.left - margins.right,
    heightPt: heightPt - margins.top - margins.bottom - heading - caption - foot,
  };
}

/** Cards put together on the paper in the printer; nothing for a paper of which a sheet holds only one page. */
export function onSheets(laidOut: LaidOut, { car, theme }: World): LaidOut | undefined {
  const size = readSheetSize(car.spec.print.paper);
  const { sheetSide: label, front, back } = theme.words;
  if (!size.ok) return undefined;
  return impose(laidOut, { sheet: size.value, ink: theme.colours.ink, words: { label, front, back } });
}
