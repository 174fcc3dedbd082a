/** A picture of a museum's own, such as its badge: an SVG of plain shapes, read as a drawing that templates can show. */
import { SaxesParser } from 'saxes';
import { bad, type Diagnostic, good, type Outcome } from '../../diagnostic/diagnostic';
import type { Colour, Drawing, Paint, PathPiece, Shape } from '../drawing';
import { type Affine, after, growth, movedPiece, readTransform, unmoved } from './affine';
import { outlineOf, type ShapeName, shapeNames } from './outline';

/** What is handed down from an element to those in it. */
interface Look {
  readonly fill: Colour | 'none';
  readonly stroke: Colour | 'none';
  readonly strokeWidth: number;
  readonly to: Affine;
}

/** Points for each unit a length may be given in; a bare number is a pixel of 1/96 inch (SVG 1.1, 7.10; CSS 2.1, 4.3.2). */
const pointsFor: Readonly<Record<string, number>> = {
  '': 0.75,
  px: 0.75,
  pt: 1,
  pc: 12,
  mm: 72 / 25.4,
  cm: 72 / 2.54,
  in: 72,
};

/** Elements that hold others or say something, and draw nothing themselves. */
const holders = new Set(['svg', 'g', 'title', 'desc', 'metadata', 'defs']);

/** What to do about elements that a picture may not have, by their names. */
const mends: Readonly<Record<string, string>> = {
  text: 'turn the letters into outlines in the program the picture was drawn with',
  image: 'draw it again with shapes; a photograph cannot be put in',
  use: 'write the shape out where it is used',
};

const colourNames: Readonly<Record<string, Colour>> = {
  black: '#000000',
  white: '#ffffff',
  currentcolor: '#111111',
};

/** Read a picture. Its name is `picture-` and that of its file; its words are those of its `title`. Every fault is told at its place. */
export function readPicture(text: string, file: string, name: string): Outcome<Drawing> {
  const reader = new PictureReader(file);
  reader.read(text);
  return reader.done(`picture-${name}`);
}

class PictureReader {
  private readonly problems: Diagnostic[] = [];
  private readonly shapes: Shape[] = [];
  private readonly looks: Look[] = [];
  private readonly open: string[] = [];
  private readonly parser = new SaxesParser();
  private alt = '';
  private size: { readonly widthPt: number; readonly heightPt: number } | undefined;

  constructor(private readonly file: string) {}

  read(text: string): void {
    this.parser.on('error', (error) => {
      if (this.problems.length === 0)
        this.tell(
          'the picture is not well-formed',
          error.message.replace(/^\d+:\d+: /, ''),
          'save it again as plain SVG',
        );
    });
    this.parser.on('opentag', ({ name, attributes }) => this.begin(localName(name), attributes));
    this.parser.on('text', (piece) => {
      if (this.open.at(-1) === 'title' && this.open.length === 2) this.alt += piece;
    });
    this.parser.on('closetag', () => {
      if (this.open.pop() !== undefined) this.looks.pop();
    });
    this.parser.write(text).close();
  }

  done(name: string): Outcome<Drawing> {
    const alt = this.alt.replace(/\s+/g, ' ').trim();
    if (this.problems.length === 0 && this.size === undefined)
      this.tell('the picture has no size', 'no `viewBox`', 'save it as SVG with a `viewBox`');
    if (this.problems.length === 0 && alt === '')
      this.tell(
        'the picture does not say what it shows',
        'no `title`',
        'put `<title>…</title>` right under `<svg …>`, in words for those who cannot see it',
      );
    if (this.problems.length > 0 || this.size === undefined) return bad(this.problems);
    return good({ name, ...this.size, shapes: this.shapes, alt });
  }

  private begin(name: string, attributes: Readonly<Record<string, string>>): void {
    const own = withStyle(attributes);
    const above = this.looks.at(-1) ?? {
      fill: '#000000',
      stroke: 'none',
      strokeWidth: 1,
      to: unmoved,
    };
    const hidden = this.open.includes('defs') || this.open.includes('metadata');
    const look = hidden ? above : this.lookOf(own, name === 'svg' ? this.frame(own) : above);
    this.open.push(name);
    this.looks.push(look);
    if (hidden || holders.has(name) || name.includes(':')) return;
    if (isShape(name)) this.draw(name, own, look);
    else if (!this.open.includes('metadata'))
      this.tell(
        `a picture cannot have \`<${name}>\``,
        `\`<${name}>\``,
        mends[name] ?? 'draw it with plain shapes in one colour each',
      );
  }

  /** The outermost look: from the picture's own units to points. */
  private frame(own: Readonly<Record<string, string>>): Look {
    const look = { fill: '#000000', stroke: 'none', strokeWidth: 1, to: unmoved } as const;
    const [x = 0, y = 0, width, height] = (own.viewBox ?? `0 0 ${own.width} ${own.height}`)
      .split(/[\s,]+/)
      .map(Number.parseFloat);
    if (width === undefined || height === undefined || !(width > 0 && height > 0)) return look;
    const widthPt = lengthPt(own.width) ?? width * 0.75;
    const scale = widthPt / width;
    this.size = { widthPt, heightPt: height * scale };
    return { ...look, to: [scale, 0, 0, scale, -x * scale, -y * scale] };
  }

  private lookOf(own: Readonly<Record<string, string>>, above: Look): Look {
    const moved = own.transform === undefined ? unmoved : readTransform(own.transform);
    if (moved === undefined)
      this.tell('a `transform` cannot be read', own.transform ?? '', 'save it as plain SVG');
    if (own['fill-rule'] === 'evenodd' && above.fill !== 'none')
      this.tell(
        'a shape is filled by the rule `evenodd`',
        '`fill-rule: evenodd`',
        'have the program the picture was drawn with make one shape of it, with its holes turned the other way',
      );
    for (const key of ['opacity', 'fill-opacity', 'stroke-opacity'])
      if (own[key] !== undefined && Number(own[key]) !== 1)
        this.tell('a shape lets others shine through', `\`${key}: ${own[key]}\``, 'give it a full colour');
    return {
      fill: this.colour(own.fill, above.fill),
      stroke: this.colour(own.stroke, above.stroke),
      strokeWidth:
        own['stroke-width'] === undefined ? above.strokeWidth : Number.parseFloat(own['stroke-width']),
      to: after(above.to, moved ?? unmoved),
    };
  }

  private colour(written: string | undefined, above: Colour | 'none'): Colour | 'none' {
    const text = written?.trim().toLowerCase();
    if (text === undefined || text === 'inherit') return above;
    if (text === 'none' || text === 'transparent') return 'none';
    const long = /^#([0-9a-f]{6})$/.exec(text)?.[1];
    if (long !== undefined) return `#${long}`;
    const [, r, g, b] = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/.exec(text) ?? [];
    if (r !== undefined) return `#${r}${r}${g}${g}${b}${b}`;
    const named = colourNames[text];
    if (named !== undefined) return named;
    this.tell(
      'a colour cannot be used',
      `\`${text}\``,
      'write it as `#` and six figures, such as `#1f4e79`; no shading from one to another',
    );
    return above;
  }

  private draw(
    name: ShapeName,
    own: Readonly<Record<string, string>>,
    { fill, stroke, strokeWidth, to }: Look,
  ): void {
    const pieces: readonly PathPiece[] | undefined = outlineOf(name, own);
    if (pieces === undefined) {
      this.tell(`a \`<${name}>\` cannot be read`, name, 'save the picture as plain SVG');
      return;
    }
    const widthPt = strokeWidth * growth(to);
    const paint: Paint = {
      ...(fill === 'none' ? {} : { fill }),
      ...(stroke === 'none' || !(widthPt > 0) ? {} : { stroke: { colour: stroke, widthPt } }),
    };
    if (pieces.length > 0 && (paint.fill ?? paint.stroke) !== undefined)
      this.shapes.push({ kind: 'path', pieces: pieces.map((piece) => movedPiece(piece, to)), paint });
  }

  private tell(message: string, found: string, mend: string): void {
    this.problems.push({
      code: 'picture-form',
      severity: 'error',
      at: { file: this.file, line: this.parser.line, column: this.parser.column + 1 },
      message,
      found,
      expected: 'an SVG of plain shapes, each filled with one colour or drawn with one line',
      mend,
    });
  }
}

function isShape(name: string): name is ShapeName {
  return shapeNames.some((each) => each === name);
}

function localName(name: string): string {
  return name.replace(/^svg:/, '');
}

/** Attributes with what `style` says in the place of those of the same name. */
function withStyle(attributes: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const pairs = (attributes.style ?? '').split(';').flatMap((each): [string, string][] => {
    const [key, value] = each.split(':');
    return key === undefined || value === undefined ? [] : [[key.trim(), value.trim()]];
  });
  return { ...attributes, ...Object.fromEntries(pairs) };
}

function lengthPt(text: string | undefined): number | undefined {
  const [, number, unit = ''] = /^\s*([\d.]+)\s*([a-z]*)\s*$/i.exec(text ?? '') ?? [];
  const factor = pointsFor[unit.toLowerCase()];
  return number === undefined || factor === undefined ? undefined : Number(number) * factor;
}
