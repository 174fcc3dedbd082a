/**
 * The content of one page: text, shapes and their tags as operators.
 *
 * Colour, font and line settings are written only when they change.
 */
import type { Shape, Stroke } from '../drawing/drawing';
import type { Face } from '../font/metrics';
import type { PlacedText, StructureIndex } from '../layout/frame';
import type { Ink } from './fonts';
import { colourNumbers, type InkedShape, outlineOf, paintOperator, strokeOperators } from './shapes';
import { num, nums } from './syntax';

type TextShape = Extract<Shape, { readonly kind: 'text' }>;

/** Writes the items of a page, in order. */
export class PageContent {
  private readonly operators: string[] = [];
  private tag: StructureIndex | undefined;
  private isMarked = false;
  private isInText = false;
  /** Where the line of text before began, in thousandths of a point; `undefined` after a turn or a new text. */
  private pen: { readonly x: number; readonly y: number } | undefined;
  private readonly settings = new Map<string, string>();
  private readonly used = new Map<string, Ink>();

  constructor(
    private readonly inkOf: (face: Face) => Ink,
    private readonly mark: (tag: StructureIndex) => string,
  ) {}

  /** The fonts used so far, by the names they are called by. */
  get fonts(): ReadonlyMap<string, Ink> {
    return this.used;
  }

  /** Puts a run of text. `closing` is text that is read but not seen: the space at the end of a line. */
  text(item: PlacedText, closing: string): void {
    this.begin(item.tag);
    const { array } = this.setText(item).encode(item.text + closing);
    this.move(item.x, item.y);
    this.show(array);
  }

  /** Puts a shape. */
  shape(shape: Shape, tag: StructureIndex | undefined): void {
    this.begin(tag);
    if (shape.kind === 'text') this.anchoredText(shape);
    else this.outline(shape);
  }

  /** The whole content. */
  finish(): string {
    this.end();
    return this.operators.join('\n');
  }

  /** Opens marked content for `tag`, unless it is open already; what has no tag is an artifact. */
  private begin(tag: StructureIndex | undefined): void {
    if (this.isMarked && this.tag === tag) return;
    this.end();
    this.operators.push(tag === undefined ? '/Artifact BMC' : this.mark(tag));
    this.tag = tag;
    this.isMarked = true;
  }

  private end(): void {
    this.endText();
    if (this.isMarked) this.operators.push('EMC');
    this.isMarked = false;
  }

  private endText(): void {
    if (this.isInText) this.operators.push('ET');
    this.isInText = false;
  }

  private setText({ face, sizePt, colour }: Pick<PlacedText, 'face' | 'sizePt' | 'colour'>): Ink {
    const ink = this.inkOf(face);
    this.used.set(ink.id, ink);
    if (!this.isInText) {
      this.operators.push('BT');
      this.isInText = true;
      this.pen = undefined;
    }
    this.set('fill', `${colourNumbers(colour)} rg`);
    this.set('font', `/${ink.id} ${num(sizePt)} Tf`);
    return ink;
  }

  private move(xPt: number, yPt: number): void {
    const pen = { x: Math.round(xPt * 1000), y: Math.round(yPt * 1000) };
    this.operators.push(
      this.pen
        ? `${nums((pen.x - this.pen.x) / 1000, (this.pen.y - pen.y) / 1000)} Td`
        : `1 0 0 -1 ${nums(xPt, yPt)} Tm`,
    );
    this.pen = pen;
  }

  private show(array: string): void {
    this.operators.push(/^<[^<]*>$/.test(array) ? `${array} Tj` : `[${array}] TJ`);
  }

  private anchoredText(shape: TextShape): void {
    const { array, advance } = this.setText(shape).encode(shape.text);
    const back = (advance / 1000) * shape.sizePt * { start: 0, middle: 0.5, end: 1 }[shape.anchor];
    const turn = ((shape.turn ?? 0) * Math.PI) / 180;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const [x, y] = [shape.x - back * cos, shape.y - back * sin];
    if (turn === 0) this.move(x, y);
    else {
      this.operators.push(`${[cos, sin, sin, -cos].map((part) => num(part, 6)).join(' ')} ${nums(x, y)} Tm`);
      this.pen = undefined;
    }
    this.show(array);
  }

  private outline(shape: InkedShape): void {
    this.endText();
    const { fill, stroke } = shape.paint;
    if (fill) this.set('fill', `${colourNumbers(fill)} rg`);
    if (stroke) this.setStroke(stroke);
    this.operators.push(outlineOf(shape), paintOperator(shape.paint));
  }

  private setStroke(stroke: Stroke): void {
    this.set('stroke', `${colourNumbers(stroke.colour)} RG`);
    this.set('line', strokeOperators(stroke));
  }

  private set(name: string, operator: string): void {
    if (this.settings.get(name) === operator) return;
    this.settings.set(name, operator);
    this.operators.push(operator);
  }
}
