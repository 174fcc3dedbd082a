/** The dipstick strips of a car: which marks stand on them, and how long ones are shared out over pieces and sheets. */
import { type StickLevels, stickLevels, stickMarks } from '../../calc/figures/stickMarks';
import type { TankModel } from '../../calc/figures/tankModel';
import {
  type DipstickInput,
  type DipstickMark,
  type DipstickScale,
  headLines,
  stripEndsPt,
} from '../../drawing/dipstick';
import { ptPerMm } from '../../drawing/printedSize';
import { type StripSheetInput, stripsAcross } from '../../drawing/stripSheet';
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
const apartMm = 7;

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
  const across = Math.max(1, stripsAcross(measuredRoom(world).widthPt));
  return Array.from({ length: Math.ceil(strips.length / across) }, (_, sheet) => ({
    name: `strips-${sheet + 1}`,
    strips: strips.slice(sheet * across, (sheet + 1) * across),
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
    depths: depthScale(lengthMm / 1000, first, phrases),
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

function withoutUnit(printed: string, system: UnitSystem, phrases: Phrases): string {
  return printed.slice(0, -(phrases.unit('volume', system).length + 1));
}

/** The number of a volume without its unit, in fractions where the unit is divided so. */
export function numberOf(volumeM3: number, system: UnitSystem, phrases: Phrases): string {
  return withoutUnit(phrases.plain(quantity('volume', volumeM3), { system, fractions: 16 }), system, phrases);
}

/** Fine marks of depth, and which of them have a figure: quarters of an inch and inches, or five and ten millimetres. */
const depthSteps: Readonly<Record<UnitSystem, { readonly stepM: number; readonly namedEvery: number }>> = {
  us: { stepM: 0.0254 / 4, namedEvery: 4 },
  imperial: { stepM: 0.0254 / 4, namedEvery: 4 },
  metric: { stepM: 0.005, namedEvery: 2 },
};

function depthScale(lengthM: number, system: UnitSystem, phrases: Phrases): DipstickScale {
  const { stepM, namedEvery } = depthSteps[system];
  const count = Math.floor(lengthM / stepM + 1e-9);
  return {
    unit: phrases.unit('length', system),
    marks: Array.from({ length: count }, (_, index) => {
      const depthM = (index + 1) * stepM;
      const named = (index + 1) % namedEvery === 0;
      return {
        depthMm: depthM * 1000,
        words: named ? String(Math.round(inPrintedUnit(quantity('length', depthM), { system }))) : '',
      };
    }),
  };
}
