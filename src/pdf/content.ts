/**
 * The content of one page: text, shapes and their tags as operators.
 *
 * Colour, font and line settings are written only when they change.
 */
import { thousandths } from '../drawing/decimal';
import type { Colour, Shape, Stroke } from '../drawing/drawing';
import type { Face } from '../font/metrics';
import type { PlacedText, StructureIndex } from '../layout/frame';
import type { Ink } from './fonts';
import { colourNumbers, type InkedShape, outlineOf, paintOperator, strokeOperators } from './shapes';
import { num, nums, share } from './syntax';

type TextShape = Extract<Shape, { readonly kind: 'text' }>;

/** Writes the items of a page, in order. */
export class PageContent {
  private readonly operators: string[] = [];
  private tag: StructureIndex | undefined;
  private isMarked = false;
  /** Whether the mark was opened inside a text, and so must be closed before it. */
  private isMarkedInText = false;
  private isInText = false;
  /** Where the line of text before began, in thousandths of a point; not known after a turn or at a new text. */
  private penX = 0;
  private penY = 0;
  private penIsKnown = false;
  private fillColour: Colour | undefined;
  private strokeColour: Colour | undefined;
  private line: string | undefined;
  private face: Face | undefined;
  private sizePt: number | undefined;
  private readonly used = new Set<Face>();

  constructor(
    private readonly inkOf: (face: Face) => Ink,
    private readonly mark: (tag: StructureIndex) => string,
  ) {}

  /** The faces used so far, in the order in which they first were. */
  get faces(): readonly Face[] {
    return [...this.used];
  }

  /** Puts a run of text. `closing` is text that is read but not seen: the space at the end of a line. */
  text(item: PlacedText, closing: string): void {
    this.beginInText(item.tag);
    const { shown } = this.setText(item).encode(closing === '' ? item.text : item.text + closing);
    this.move(item.x, item.y);
    this.operators.push(shown);
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
    if (this.isMarked && this.tag === tag && !this.isMarkedInText) return;
    this.end();
    this.open(tag);
    this.isMarkedInText = false;
  }

  /** The same for a line of text, inside the text that is open already: marks and texts must not overlap (14.6.1). */
  private beginInText(tag: StructureIndex | undefined): void {
    if (this.isMarked && this.tag === tag) return;
    if (this.isMarked && !this.isMarkedInText) this.end();
    this.beginText();
    if (this.isMarked) this.operators.push('EMC');
    this.open(tag);
    this.isMarkedInText = true;
  }

  private open(tag: StructureIndex | undefined): void {
    this.operators.push(tag === undefined ? '/Artifact BMC' : this.mark(tag));
    this.tag = tag;
    this.isMarked = true;
  }

  private end(): void {
    if (this.isMarkedInText) this.endMark();
    this.endText();
    this.endMark();
  }

  private endMark(): void {
    if (this.isMarked) this.operators.push('EMC');
    this.isMarked = false;
  }

  private beginText(): void {
    if (this.isInText) return;
    this.operators.push('BT');
    this.isInText = true;
    this.penIsKnown = false;
  }

  private endText(): void {
    if (this.isInText) this.operators.push('ET');
    this.isInText = false;
  }

  private setText({ face, sizePt, colour }: Pick<PlacedText, 'face' | 'sizePt' | 'colour'>): Ink {
    const ink = this.inkOf(face);
    this.beginText();
    this.fill(colour);
    if (this.face !== face || this.sizePt !== sizePt) {
      this.used.add(face);
      this.operators.push(`/${ink.id} ${num(sizePt)} Tf`);
      this.face = face;
      this.sizePt = sizePt;
    }
    return ink;
  }

  private move(xPt: number, yPt: number): void {
    const x = Math.round(xPt * 1000);
    const y = Math.round(yPt * 1000);
    this.operators.push(
      this.penIsKnown
        ? `${thousandths(x - this.penX)} ${thousandths(this.penY - y)} Td`
        : `1 0 0 -1 ${nums(xPt, yPt)} Tm`,
    );
    this.penX = x;
    this.penY = y;
    this.penIsKnown = true;
  }

  private anchoredText(shape: TextShape): void {
    const { shown, advance } = this.setText(shape).encode(shape.text);
    const back = (advance / 1000) * shape.sizePt * { start: 0, middle: 0.5, end: 1 }[shape.anchor];
    const turn = ((shape.turn ?? 0) * Math.PI) / 180;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const [x, y] = [shape.x - back * cos, shape.y - back * sin];
    if (turn === 0) this.move(x, y);
    else {
      this.operators.push(`${[cos, sin, sin, -cos].map(share).join(' ')} ${nums(x, y)} Tm`);
      this.penIsKnown = false;
    }
    this.operators.push(shown);
  }

  private outline(shape: InkedShape): void {
    this.endText();
    const { fill, stroke } = shape.paint;
    if (fill) this.fill(fill);
    if (stroke) this.setStroke(stroke);
    this.operators.push(outlineOf(shape), paintOperator(shape.paint));
  }

  private setStroke(stroke: Stroke): void {
    if (this.strokeColour !== stroke.colour) {
      this.strokeColour = stroke.colour;
      this.operators.push(`${colourNumbers(stroke.colour)} RG`);
    }
    const line = strokeOperators(stroke);
    if (this.line === line) return;
    this.line = line;
    this.operators.push(line);
  }

  private fill(colour: Colour): void {
    if (this.fillColour === colour) return;
    this.fillColour = colour;
    this.operators.push(`${colourNumbers(colour)} rg`);
  }
}
