/**
 * A tag to hang on a valve, front and back, at its true size: round or oblong, with its hole.
 */
import type { FontSet } from '../font/metrics';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { ptPerMm } from './printedSize';
import { circle, stroke, text } from './shapes';
import { wrapLine } from './wrapLine';

/** What a tag is drawn from. */
export interface ValveTagInput {
  readonly name: string;
  readonly form: 'round' | 'oblong';
  readonly side: 'front' | 'back';
  /** What stands on it in large letters, such as `F1`. */
  readonly tag: string;
  readonly valve: string;
  /** What it does, on the back. */
  readonly does: string;
  /** How it stands when the car is put away, such as `parked: shut`. */
  readonly parked: string;
}

/** Size of a tag: a round one is as wide as it is high. */
export const tagSizesMm = { round: { width: 50, height: 50 }, oblong: { width: 75, height: 38 } } as const;

const holeMm = 2.5;
const smallestPt = 8;

/** Draws one side at its true size. Throws a RangeError if the words do not fit at the smallest size. */
export function drawValveTag(input: ValveTagInput, fonts: FontSet): Drawing {
  const { width, height } = tagSizesMm[input.form];
  const [widthPt, heightPt] = [width * ptPerMm, height * ptPerMm];
  const hole =
    input.form === 'round' ? { x: widthPt / 2, y: 5.5 * ptPerMm } : { x: 5.5 * ptPerMm, y: heightPt / 2 };
  const edge = stroke(0.5, inks.soft);
  const rim: Shape =
    input.form === 'round'
      ? circle({ x: widthPt / 2, y: heightPt / 2 }, widthPt / 2 - 0.25, { stroke: edge })
      : {
          kind: 'rect',
          x: 0.25,
          y: 0.25,
          width: widthPt - 0.5,
          height: heightPt - 0.5,
          radius: 3 * ptPerMm,
          paint: { stroke: edge },
        };
  return {
    name: input.name,
    widthPt,
    heightPt,
    alt: altWords(input),
    shapes: [
      rim,
      circle(hole, holeMm * ptPerMm, { stroke: edge }),
      ...wordsOf(input, fonts, widthPt, heightPt),
    ],
  };
}

interface TagLine {
  readonly words: string;
  readonly bold: boolean;
  readonly sizePt: number;
}

/** The largest setting of the words that fits: front, the tag over the name; back, what it does and how it is parked. */
function wordsOf(input: ValveTagInput, fonts: FontSet, widthPt: number, heightPt: number): readonly Shape[] {
  const round = input.form === 'round';
  const area = {
    middle: round ? widthPt / 2 : (widthPt + 10 * ptPerMm) / 2 - ptPerMm,
    top: round ? 9.5 * ptPerMm : 2.5 * ptPerMm,
    bottom: heightPt - 2.5 * ptPerMm,
  };
  const roomAt = (from: number, to: number): number => {
    if (!round) return widthPt - 14 * ptPerMm;
    const [radius, centre] = [widthPt / 2 - 2 * ptPerMm, heightPt / 2];
    const far = Math.max(Math.abs(from - centre), Math.abs(to - centre));
    return far >= radius ? 0 : 2 * Math.sqrt(radius ** 2 - far ** 2);
  };
  for (let sizePt = input.side === 'front' ? 13 : 11; sizePt >= smallestPt; sizePt -= 0.5) {
    const lines = linesOf(input, fonts, sizePt, round ? widthPt * 0.78 : roomAt(0, 0));
    const height = lines.reduce((sum, line) => sum + line.sizePt * 1.18, 0);
    let y = (area.top + area.bottom - height) / 2;
    if (y < area.top - 0.01) continue;
    const shapes = lines.map((line): Shape | undefined => {
      const [from, face] = [y, line.bold ? 'narrow-bold' : 'narrow'] as const;
      y += line.sizePt * 1.18;
      if (fonts[face].widthOf(line.words, line.sizePt) > roomAt(from, y)) return undefined;
      const at = { x: area.middle, y: from + line.sizePt * 0.92 };
      return text(at, line.words, { face, sizePt: line.sizePt, colour: inks.line, anchor: 'middle' });
    });
    const fitting = shapes.filter((shape) => shape !== undefined);
    if (fitting.length === lines.length) return fitting;
  }
  throw new RangeError(`the words of the tag ${input.tag} do not fit on its ${input.side}`);
}

function linesOf(input: ValveTagInput, fonts: FontSet, sizePt: number, widthPt: number): readonly TagLine[] {
  const wrapped = (words: string, bold: boolean): readonly TagLine[] =>
    wrapLine(words, fonts[bold ? 'narrow-bold' : 'narrow'], sizePt, widthPt).map((line) => ({
      words: line,
      bold,
      sizePt,
    }));
  if (input.side === 'front')
    return [{ words: input.tag, bold: true, sizePt: 30 }, ...wrapped(input.valve, true)];
  return [...wrapped(input.does, false), ...wrapped(input.parked, true)];
}

function altWords({ tag, valve, does, parked, side }: ValveTagInput): string {
  return side === 'front' ? `Valve tag ${tag}: ${valve}.` : `Back of valve tag ${tag}: ${does} ${parked}.`;
}
