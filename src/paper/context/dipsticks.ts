/** What the paper of dipsticks says of each tank beside its strip: how to make the stick, how to prove it, what was measured. */
import { stickMarks } from '../../calc/figures/stickMarks';
import { quantity } from '../../quantity/quantity';
import type { World } from '../paper';
import type { Phrases } from '../phrase';
import { fullMark, numberOf, stripSheets, stripUnits, type TankStrip, tankStrips, titleOf } from './strips';
import { workingOf } from './workings';

/** One named mark. */
export interface MarkContext {
  readonly volume: string;
  readonly depth: string;
}

/** One tank that is read by stick. */
export interface StickTankContext {
  readonly id: string;
  readonly title: string;
  readonly name: string;
  /** Whether it holds fuel, so that a flame must be far away. */
  readonly fuel: boolean;
  /** How the air is let out before its filler is opened; empty if it is not charged with air. */
  readonly vent: string;
  readonly filler: string;
  /** Foot to the top of the tank. */
  readonly length: string;
  /** Letters of the lines that its pieces are joined at; empty for a strip in one piece. */
  readonly joins: readonly { readonly letter: string; readonly at: string }[];
  readonly unusable: string;
  readonly reserve: string;
  readonly full: string;
  /** Whether the marks come from readings of the keeper’s, or from the inside shape. */
  readonly measured: boolean;
  readonly readings: readonly MarkContext[];
  readonly shape: string;
  readonly doubt: string;
  /** The first marks to prove it by: what to pour in, what is in it then. */
  readonly proof: readonly (MarkContext & { readonly pour: string })[];
  /** What the figures of the marks count. */
  readonly unit: string;
  /** Every mark that has a figure, a few to a row. */
  readonly marks: readonly (readonly MarkContext[])[];
}

/** Of less than a litre a tenth says too little of what is poured, m³. */
const littlePourM3 = 0.001;

/** How many of the lowest marks a stick is proved at. */
const provedMarks = 3;

/** Everything the paper says. */
export function dipsticksContext(world: World): Readonly<Record<string, unknown>> {
  const known = new Set(world.figures.sticks.map(({ model }) => model.id));
  const flame = world.front.cautions.find(({ id }) => id === 'fuel-vapour');
  return {
    tanks: tankStrips(world).map((strip) => tankContext(strip, world)),
    flame: flame === undefined ? '' : flame.short,
    flameSignal: flame?.signal ?? 'danger',
    // the fingerprint is on the strips and taken over this, so that it cannot be in it
    units: stripUnits(world.phrases),
    sheets: stripSheets(world, '').map(({ name, strips }, index) => ({
      number: index + 1,
      drawing: name,
      strips: strips.map(({ tank, head, ...strip }) => ({ tank, ...strip })),
    })),
    unknown: Object.entries(world.car.spec.tanks)
      .filter(([id, { read }]) => read === 'stick' && !known.has(id))
      .map(([, { name, tag }]) => titleOf({ name }, tag)),
  };
}

function tankContext({ model, pieces, levels, lengthMm }: TankStrip, world: World): StickTankContext {
  const { car, figures, phrases } = world;
  const spec = car.spec.tanks[model.id];
  const [system = 'metric'] = phrases.systems;
  const figure = figures.sticks.find((chart) => chart.model.id === model.id)?.figure;
  const working = figure === undefined ? undefined : workingOf(figure, phrases);
  const poured = (m3: number): string =>
    phrases.both(quantity('volume', m3), { fractions: 16, ...(m3 < littlePourM3 ? { decimals: 2 } : {}) });
  const depth = (metres: number): string => depthWords(metres, phrases);
  const named = stickMarks(model, system).filter((mark) => mark.named);
  const full = fullMark(model, system, phrases);
  const joins = new Map(pieces.flatMap((piece) => piece.joins.map((join) => [join.words, join.depthMm])));
  return {
    id: model.id,
    title: titleOf(model, spec?.tag),
    name: model.name,
    fuel: spec !== undefined && spec.holds in car.spec.fuels,
    vent: spec?.pressure === undefined ? '' : (spec.vent ?? ''),
    filler: car.places.get(spec?.filler?.place ?? '')?.name ?? '',
    length: depth(lengthMm / 1000),
    joins: [...joins].map(([letter, atMm]) => ({ letter, at: depth(atMm / 1000) })),
    unusable: phrases.both(spec?.unusable, { rounding: 'up' }),
    reserve: phrases.both(spec?.reserve, { rounding: 'up' }),
    // rounded as every paper rounds what a tank is filled to
    full: `${phrases.both(quantity('volume', Math.min(model.fillToM3, model.tank.capacityM3)), { rounding: 'down' })}, ${depth(levels.fullM)}`,
    measured: model.basis === 'measured',
    readings: (spec?.stick ?? []).map((reading) => ({
      depth: unbroken(phrases.first(reading.depth)),
      volume: unbroken(phrases.first(reading.volume)),
    })),
    shape: spec?.shape === undefined ? '' : world.words['tank-shape'][spec.shape.kind],
    doubt: working?.doubt ?? '',
    proof: named.slice(0, provedMarks).map(({ volumeM3, depthM }, index) => ({
      pour: poured(volumeM3 - (named[index - 1]?.volumeM3 ?? 0)),
      // the mark is one of the first units; beside what was poured its second would not add up
      volume: phrases.first(quantity('volume', volumeM3), { fractions: 16 }),
      depth: depth(depthM),
    })),
    unit: phrases.unit('volume', system),
    marks: inRows([
      ...named.map(({ volumeM3, depthM }) => ({
        volume: numberOf(volumeM3, system, phrases),
        depth: depth(depthM),
      })),
      ...(full === undefined ? [] : [{ volume: full.words, depth: depth(full.depthM) }]),
    ]),
  };
}

/** Kept whole at the end of a line. */
const unbroken = (words: string): string => words.replaceAll(' ', '\u00a0');

/** Depths to a tenth of a millimetre or a hundredth of an inch: finer than a mark can be scribed. */
function depthWords(metres: number, { plain, systems }: Phrases): string {
  const said = systems.map((system) =>
    plain(quantity('length', metres), { system, decimals: system === 'metric' ? 1 : 2 }),
  );
  const [first = '', second] = [...new Set(said)];
  return second === undefined ? first : `${first} (${second})`;
}

const marksInRow = 4;

/** Across first, so that a table that goes over the page is in order on both; the last row is filled with nothing. */
function inRows(marks: readonly MarkContext[]): readonly (readonly MarkContext[])[] {
  const count = Math.ceil(marks.length / marksInRow);
  return Array.from({ length: count }, (_, row) =>
    Array.from(
      { length: marksInRow },
      (__, column) => marks[row * marksInRow + column] ?? { volume: '', depth: '' },
    ),
  );
}
