/** The dipstick strips of a car: which marks stand on them, and how long ones are shared out over pieces and sheets. */
import { type StickLevels, stickLevels, stickMarks } from '../../calc/figures/stickMarks';
import type { TankModel } from '../../calc/figures/tankModel';
import { headLines } from '../../drawing/dipstick';
import {
  type DipstickInput,
  type DipstickMark,
  type DipstickScale,
  type ScaleMark,
  stripEndsPt,
} from '../../drawing/dipstickInput';
import { ptPerMm } from '../../drawing/printedSize';
import { type StripSheetInput, stripsOnSheets } from '../../drawing/stripSheet';
import type { UnitSystem } from '../../quantity/dimension';
import { inPrintedUnit } from '../../quantity/print';
import { quantity } from '../../quantity/quantity';
import { anyMark } from '../fingerprint';
import type { World } from '../paper';
import type { Phrases } from '../phrase';
import { measuredRoom } from '../sheets';

/** A stretch of a stick on one piece of paper, and the joins on it, in millimetres above the foot. */
export interface StripPiece {
  readonly fromMm: number;
  readonly toMm: number;
  readonly joins: readonly DipstickMark[];
}

/** The strip of one tank. */
export interface TankStrip {
  readonly model: TankModel;
  readonly levels: StickLevels;
  /** From the foot to a little above the line to fill to. */
  readonly lengthMm: number;
  readonly pieces: readonly StripPiece[];
}

/** How far a strip goes on above the line to fill to. */
const headroomM = 0.012;

/** Every tank that is read by stick and whose depths are known. */
export function tankStrips(world: World): readonly TankStrip[] {
  const roomMm = (measuredRoom(world).heightPt - stripEndsPt.head - stripEndsPt.foot) / ptPerMm;
  return world.figures.sticks.map(({ model }) => {
    const levels = stickLevels(model);
    const lengthMm = (levels.fullM + headroomM) * 1000;
    return { model, levels, lengthMm, pieces: piecesOf(lengthMm, levels, roomMm) };
  });
}

/** Pieces share this much of the stick, half above the line where they are joined and half below. */
const lapMm = 20;
/** Names of levels and joins are kept this far from each other. */
const apartMm = 10;

/** A stick as the fewest pieces of nearly one length that a sheet has room for. */
export function piecesOf(lengthMm: number, levels: StickLevels, roomMm: number): readonly StripPiece[] {
  if (!(roomMm > 2 * lapMm)) throw new RangeError(`a strip has only ${roomMm.toFixed(0)} mm of a sheet`);
  for (let count = 1; ; count += 1) {
    const pieces = inPieces(lengthMm, levels, count);
    if (pieces.every(({ fromMm, toMm }) => toMm - fromMm <= roomMm + 1e-6)) return pieces;
  }
}

function inPieces(lengthMm: number, levels: StickLevels, count: number): readonly StripPiece[] {
  const joins = Array.from({ length: count - 1 }, (_, index) => ({
    depthMm: clearOfLevels(((index + 1) * lengthMm) / count, levels),
    words: String.fromCharCode(65 + index),
  }));
  return Array.from({ length: count }, (_, index): StripPiece => {
    const [below, above] = [joins[index - 1], joins[index]];
    return {
      fromMm: below === undefined ? 0 : below.depthMm - lapMm / 2,
      toMm: above === undefined ? lengthMm : above.depthMm + lapMm / 2,
      joins: [below, above].flatMap((join) => (join === undefined ? [] : [join])),
    };
  });
}

/** The depth nearest to the one asked for that no level is close to. */
function clearOfLevels(depthMm: number, { cannotBeDrawnM, reserveM, fullM }: StickLevels): number {
  const levels = [cannotBeDrawnM, reserveM, fullM].map((metres) => metres * 1000);
  const shifts = [0, 1, -1, 2, -2].map((steps) => (steps * apartMm) / 2);
  const clear = (depth: number) => levels.every((level) => Math.abs(level - depth) >= apartMm);
  const shift = shifts.find((each) => clear(depthMm + each)) ?? 0;
  return depthMm + shift;
}

/** The strips of all tanks on sheets, one beside the other; `mark` is the fingerprint they carry. */
export function stripSheets(world: World, mark: string): readonly StripSheetInput[] {
  const strips = tankStrips(world).flatMap((strip) =>
    strip.pieces.map((_, index) => stripInput(strip, index, world, mark)),
  );
  return stripsOnSheets(strips, measuredRoom(world).widthPt, world.fonts).map((own, sheet) => ({
    name: `strips-${sheet + 1}`,
    strips: own,
  }));
}

/** Tanks whose names are too long for the head of a strip. */
export function unnameable(world: World): readonly TankModel[] {
  return tankStrips(world)
    .filter((strip) => headLines(stripInput(strip, 0, world, anyMark), world.fonts) === undefined)
    .map(({ model }) => model);
}

function stripInput(
  { model, levels, lengthMm, pieces }: TankStrip,
  index: number,
  { car, language, phrases, words }: World,
  mark: string,
): DipstickInput {
  const piece = pieces[index];
  if (piece === undefined) throw new RangeError(`the strip of ${model.name} has no piece ${index + 1}`);
  const [first = 'metric', second] = phrases.systems;
  const said = words.strip;
  const hasSecondDepths = stripUnits(phrases).secondDepth !== '';
  const level = (metres: number, name: string): readonly DipstickMark[] =>
    metres > 0 ? [{ depthMm: metres * 1000, words: name }] : [];
  return {
    name: `strip-${model.id}-${index + 1}`,
    tank: titleOf(model, car.spec.tanks[model.id]?.tag),
    head: [
      car.spec.car.name,
      language.messages.say('strip-issue', { letter: car.spec.issue.letter, mark }),
      ...(pieces.length === 1
        ? []
        : [language.messages.say('strip-piece', { piece: index + 1, pieces: pieces.length })]),
    ],
    left: volumeScale(model, first, phrases),
    ...(second === undefined ? {} : { right: volumeScale(model, second, phrases) }),
    depths: depthScale(lengthMm, first, phrases),
    ...(second !== undefined && hasSecondDepths
      ? { secondDepths: depthScale(lengthMm, second, phrases) }
      : {}),
    levels: [
      ...level(levels.cannotBeDrawnM, said['cannot-be-drawn']),
      ...(levels.reserveM > levels.cannotBeDrawnM ? level(levels.reserveM, said.reserve) : []),
      ...level(levels.fullM, said.full),
    ],
    cannotBeDrawnMm: levels.cannotBeDrawnM * 1000,
    reserveMm: levels.reserveM * 1000,
    ...piece,
    say: language.messages.say,
    foot: piece.fromMm === 0 ? said.end : language.messages.say('strip-goes-on', { piece: index }),
  };
}

/** What each scale of a strip counts; no second depths where both systems measure them alike. */
export interface StripUnits {
  readonly left: string;
  /** Empty if the car prints in one system. */
  readonly right: string;
  readonly depth: string;
  /** Empty if there are none. */
  readonly secondDepth: string;
}

/** The units that all strips of a car are in. */
export function stripUnits({ systems: [first = 'metric', second], unit }: Phrases): StripUnits {
  const [left, depth] = [unit('volume', first), unit('length', first)];
  if (second === undefined) return { left, right: '', depth, secondDepth: '' };
  const secondDepth = unit('length', second);
  return {
    left,
    right: unit('volume', second),
    depth,
    secondDepth: secondDepth === depth ? '' : secondDepth,
  };
}

/** Name and tag of a tank, as they stand on its strip. */
export function titleOf({ name }: Pick<TankModel, 'name'>, tag = ''): string {
  return tag === '' ? name : `${name} ${tag}`;
}

function volumeScale(model: TankModel, system: UnitSystem, phrases: Phrases): DipstickScale {
  const marks = stickMarks(model, system).map(({ depthM, volumeM3, named }) => ({
    depthMm: depthM * 1000,
    words: named ? numberOf(volumeM3, system, phrases) : '',
  }));
  const full = fullMark(model, system, phrases);
  return {
    unit: phrases.unit('volume', system),
    marks: full === undefined ? marks : [...marks, { depthMm: full.depthM * 1000, words: full.words }],
  };
}

/** A figure this near below the line to fill to says how much that is. */
const nearFullM = 0.003;

/** Decimals of that figure: so fine that its mark lies within the line. */
const fullDecimals: Readonly<Record<UnitSystem, number>> = { us: 2, imperial: 2, metric: 1 };

/** The figure at the line to fill to, rounded down, and its mark, where no other mark with a figure stands at that line. */
export function fullMark(
  model: TankModel,
  system: UnitSystem,
  phrases: Phrases,
): { readonly depthM: number; readonly words: string } | undefined {
  const fullM = stickLevels(model).fullM;
  const isNear = stickMarks(model, system).some((mark) => mark.named && fullM - mark.depthM < nearFullM);
  if (isNear) return undefined;
  const fullM3 = Math.min(model.fillToM3, model.tank.capacityM3);
  const inUnit = inPrintedUnit(quantity('volume', fullM3), { system });
  const parts = 10 ** fullDecimals[system];
  const figure = Math.floor(inUnit * parts + 1e-6) / parts;
  const depthM = model.tank.depthAtVolumeM(Math.min(fullM3, (fullM3 * figure) / inUnit));
  return { depthM, words: phrases.number(figure) };
}

/** The number of a mark without its unit: in fractions where the unit is divided so, else with all of its decimals. */
export function numberOf(volumeM3: number, system: UnitSystem, phrases: Phrases): string {
  const volume = quantity('volume', volumeM3);
  if (system === 'metric') return phrases.number(Number(inPrintedUnit(volume, { system }).toFixed(3)));
  const printed = phrases.plain(volume, { system, fractions: 16 });
  return printed.slice(0, -(phrases.unit('volume', system).length + 1));
}

/** One kind of mark of a scale of depth: how far from one to the next, in what the scale counts, and how long its line is. */
interface DepthStep {
  readonly every: number;
  readonly reach: number;
}

/** From coarse to fine; a mark is of the first kind whose steps it is on. The first kind has figures. */
const inches: readonly DepthStep[] = [
  { every: 1, reach: 1 },
  { every: 1 / 2, reach: 0.75 },
  { every: 1 / 4, reach: 0.55 },
  { every: 1 / 8, reach: 0.35 },
];
const millimetres: readonly DepthStep[] = [
  { every: 10, reach: 1 },
  { every: 2, reach: 0.45 },
];
const depthSteps: Readonly<
  Record<UnitSystem, { readonly unitMm: number; readonly steps: readonly DepthStep[] }>
> = {
  us: { unitMm: 25.4, steps: inches },
  imperial: { unitMm: 25.4, steps: inches },
  metric: { unitMm: 1, steps: millimetres },
};

function depthScale(lengthMm: number, system: UnitSystem, phrases: Phrases): DipstickScale {
  const { unitMm, steps } = depthSteps[system];
  const finest = Math.min(...steps.map(({ every }) => every));
  const count = Math.floor(lengthMm / unitMm / finest + 1e-9);
  return {
    unit: phrases.unit('length', system),
    marks: Array.from({ length: count }, (_, index): ScaleMark => {
      const depth = (index + 1) * finest;
      const kind = steps.findIndex(({ every }) => Number.isInteger(depth / every));
      return {
        depthMm: depth * unitMm,
        words: kind === 0 ? String(depth) : '',
        reach: steps[kind]?.reach ?? 0,
      };
    }),
  };
}
