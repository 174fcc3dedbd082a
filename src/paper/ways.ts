/** The ways papers are laid out: on the pages of a book, on the faces of a card, on weather-proof sheets for the lap. */

import { good, type Outcome } from '../diagnostic/diagnostic';
import { leastSignMm } from '../drawing/signs/signs';
import { layoutBoldCard, layoutCard, layoutSheet } from '../layout/card/layout-card';
import { layoutPages } from '../layout/flow/layout-pages';
import type { LaidOut } from '../layout/frame';
import { handDistanceM } from '../layout/legibility';
import { pointsPerMm } from '../layout/sheet';
import { darkened } from '../layout/theme';
import type { CardOptions, FlowOptions, Sheet } from '../layout/types';
import { withApostrophes } from '../markup/apostrophes';
import { footOf, headOf, identityLine, wholeFootOf } from './heads';
import { darkSizes, leastBookSizes, leastSizes, mostUsefulPt } from './legible';
import type { Paper, ProvenWorld, World } from './paper';
import { cardSheet, darkCardSheet, lapSheet, measuredSheet, pageSheet } from './sheets';

/** What a paper says of how it is laid out. */
type Way = Pick<Paper, 'leastPt' | 'lookUpPt' | 'flow' | 'layOut' | 'turning'>;

/** How the chapters of a book stand. */
interface BookWay {
  readonly chaptersOnNewPage: boolean;
  /** Whether each chapter has a mark at the edge of its pages. */
  readonly chapterTabs: boolean;
}

/** Pages of a book in the hand. */
export function asBook(title: string, { chaptersOnNewPage, chapterTabs }: BookWay): Way {
  const flow = (world: ProvenWorld, mark: string): Outcome<FlowOptions> => {
    const sheet = pageSheet(world);
    if (!sheet.ok) return sheet;
    return good({
      fonts: world.fonts,
      theme: world.theme,
      sheet: sheet.value,
      head: headOf(world, title),
      foot: footOf(world, mark),
      firstPage: { head: false, foot: true },
      chaptersOnNewPage,
      chapterTabs,
      bothSides: onBothSides(world),
    });
  };
  return {
    leastPt: ({ fonts }) => leastBookSizes(fonts),
    turning: (world) => (onBothSides(world) ? 'long-edge' : undefined),
    flow,
    layOut: (blocks, world, mark) => {
      const options = flow(world, mark);
      return options.ok ? layoutPages(blocks, options.value) : options;
    },
  };
}

function onBothSides({ car }: Pick<World, 'car'>): boolean {
  return car.spec.print.sides === 'both';
}

/** Sheets that are measured with or cut up, printed on one side. They have no head; the foot says which car and which paper. */
export function asMeasuredSheets(title: string): Way {
  return {
    leastPt: ({ fonts }) => leastBookSizes(fonts),
    turning: () => 'none',
    layOut: (blocks, world, mark) =>
      onSheet(measuredSheet(world), (sheet) =>
        layoutPages(blocks, {
          fonts: world.fonts,
          theme: world.theme,
          sheet,
          head: { left: [], centre: [], right: [] },
          foot: wholeFootOf(world, title, mark),
          firstPage: { head: false, foot: true },
          chaptersOnNewPage: true,
          chapterTabs: false,
          bothSides: false,
        }),
      ),
  };
}

/** Two sides of as many leaves as hang on a ring and still turn; a card of the day or of a keeper’s own that needs more is refused. */
export const mostCardFaces = 72;

/** Faces of a card read at one of the car's distances; what is looked up on it, with the card in the hand. */
export function asCard(title: string, read: 'dash' | 'lap', mostFaces: number): Way {
  const distanceM = ({ car }: World) => car.spec.print.distances[read].si;
  const lookUpM = (world: World) => Math.min(distanceM(world), handDistanceM);
  return {
    leastPt: (world) => leastSizes(world.fonts, distanceM(world)),
    lookUpPt: (world) => leastSizes(world.fonts, lookUpM(world)),
    layOut: (blocks, world, mark) =>
      onSheet(cardSheet(world), (sheet) =>
        layoutCard(blocks, {
          ...onFaces(world, title, mark, sheet, mostFaces),
          leastPt: leastSizes(world.fonts, distanceM(world)),
          lookUpPt: leastSizes(world.fonts, lookUpM(world)),
          signPt: leastSignMm(distanceM(world)) * pointsPerMm,
          mostPt: mostUsefulPt(world.fonts, distanceM(world)),
        }),
      ),
  };
}

/** Faces of a card at the dash that is read in the dark: light on dark, bold, larger than by day. */
export function asDarkCard(title: string, mostFaces: number): Way {
  const distanceM = ({ car }: World) => car.spec.print.distances.dash.si;
  return {
    leastPt: (world) => darkSizes(world.fonts, distanceM(world)).leastPt,
    layOut: (blocks, world, mark) =>
      onSheet(darkCardSheet(world), (sheet) => {
        const theme = darkened(world.theme);
        return layoutBoldCard(blocks, {
          ...onFaces({ ...world, theme }, title, mark, sheet, mostFaces),
          ...darkSizes(world.fonts, distanceM(world)),
          signPt: leastSignMm(distanceM(world)) * pointsPerMm,
          ground: { colour: theme.colours.paper, outsetPt: theme.dark.padMm * pointsPerMm },
        });
      }),
  };
}

/** How far type on a lap sheet may grow, and how the sheet lies. */
export interface LapSheetWay {
  readonly mostFaces: number;
  /** Times the largest useful size; a table that is read wet may grow further. */
  readonly growTo: number;
  readonly lies: 'upright' | 'landscape';
}

/** A weather-proof sheet read on the lap, or hung on a wall and read from there. */
export function asLapSheet(
  title: string,
  { mostFaces, growTo, lies }: LapSheetWay,
  read: 'lap' | 'wall' = 'lap',
): Way {
  const distanceM = ({ car }: World) => car.spec.print.distances[read].si;
  return {
    leastPt: (world) => leastSizes(world.fonts, distanceM(world)),
    layOut: (blocks, world, mark) =>
      onSheet(lapSheet(world, lies), (sheet) =>
        layoutSheet(blocks, {
          ...onFaces(world, title, mark, sheet, mostFaces),
          leastPt: leastSizes(world.fonts, distanceM(world)),
          signPt: leastSignMm(distanceM(world)) * pointsPerMm,
          mostPt: mostUsefulPt(world.fonts, distanceM(world)) * growTo,
        }),
      ),
  };
}

/** A page in the hand that must hold all it says on few sides, up to the given size of type. */
export function asFilledSheet(
  title: string,
  mostFaces: number,
  sheetOf: (world: World) => Outcome<Sheet>,
  mostPt: (world: World) => number,
): Way {
  return {
    leastPt: ({ fonts }) => leastBookSizes(fonts),
    layOut: (blocks, world, mark) =>
      onSheet(sheetOf(world), (sheet) =>
        layoutSheet(blocks, {
          ...onFaces(world, title, mark, sheet, mostFaces),
          leastPt: leastBookSizes(world.fonts),
          signPt: leastSignMm(handDistanceM) * pointsPerMm,
          mostPt: mostPt(world),
        }),
      ),
  };
}

function onSheet(sheet: Outcome<Sheet>, layOut: (sheet: Sheet) => Outcome<LaidOut>): Outcome<LaidOut> {
  return sheet.ok ? layOut(sheet.value) : sheet;
}

function onFaces(
  { fonts, theme, car, ...world }: World,
  title: string,
  mark: string,
  sheet: Sheet,
  mostFaces: number,
): Omit<CardOptions, 'leastPt' | 'mostPt' | 'signPt'> {
  const foot = [
    withApostrophes(car.spec.car.name),
    title,
    identityLine({ ...world, fonts, theme, car }, mark),
  ];
  return { fonts, theme, sheet, title, foot, mostFaces };
}
