/**
 * Fields to fill in (ISO 32000-1, 12.7): each a field and its widget in one, named, told what it is for, held by a `Form`
 * element, and with an appearance of its own, so that it prints empty and is not drawn anew by whoever opens the file.
 */
import type { Shaper } from '../font/shaper';
import type { PlacedField } from '../layout/frame';
import { embedFieldFont } from './fieldFont';
import type { ObjectStore } from './objects';
import type { PageHandle, StructureTree } from './structure';
import { latin, num, nums, ref, textString } from './syntax';

/** What the font of the fields is called in the form's resources. */
const fontName = 'Fill';

/** The state of a box that is ticked. */
const ticked = 'Yes';

/** A field of several lines (12.7.4.3, Table 228). */
const multilineFlag = 2 ** 12;

/** Collects the fields of a file. */
export class FormFields {
  private readonly fields: string[] = [];
  private readonly names = new Set<string>();
  private readonly appearances = new Map<string, number>();
  private font: number | undefined;

  constructor(
    private readonly store: ObjectStore,
    private readonly shaper: () => Shaper,
  ) {}

  /** Writes a field; gives the reference for its page. Throws on a name that is already there. */
  add(
    { x, y, widthPt, heightPt, field, sizePt, tag }: PlacedField,
    page: PageHandle,
    tree: StructureTree,
  ): string {
    if (tag === undefined) throw new RangeError(`the field "${field.name}" has no tag`);
    if (this.names.has(field.name)) throw new RangeError(`two fields are called "${field.name}"`);
    this.names.add(field.name);
    const id = this.store.reserve();
    const key = tree.annotate(tag, page, id);
    const corners = nums(x, page.heightPt - y - heightPt, x + widthPt, page.heightPt - y);
    const size = { widthPt, heightPt };
    const own =
      field.kind === 'tick'
        ? this.tickBox(size)
        : this.line(size, sizePt, field.kind === 'lines' ? multilineFlag : 0);
    this.store.put(
      id,
      `<</Type /Annot /Subtype /Widget /Rect [${corners}] /F 4 /P ${ref(page.id)} /StructParent ${key}` +
        ` /T ${textString(field.name)} /TU ${textString(field.title)} ${own}>>`,
    );
    this.fields.push(ref(id));
    return ref(id);
  }

  /** The form for the catalog; nothing if there are no fields. */
  catalogEntry(): string | undefined {
    if (this.fields.length === 0) return undefined;
    return `<</Fields [${this.fields.join(' ')}] /DR ${this.resources()} /DA (${this.defaultAppearance(0)})>>`;
  }

  private line(size: Size, sizePt: number, flags: number): string {
    const appearance = this.appearance('/Tx BMC\nEMC', size, this.resources());
    const flag = flags === 0 ? '' : ` /Ff ${flags}`;
    return `/FT /Tx${flag} /DA (${this.defaultAppearance(sizePt)}) /AP <</N ${ref(appearance)}>>`;
  }

  private tickBox(size: Size): string {
    const off = this.appearance('', size, '<<>>');
    const on = this.appearance(tickIn(size), size, '<<>>');
    return `/FT /Btn /V /Off /AS /Off /AP <</N <</${ticked} ${ref(on)} /Off ${ref(off)}>>>>`;
  }

  /** Size 0 lets the reader program choose. Ink is that of text: black. */
  private defaultAppearance(sizePt: number): string {
    return `/${fontName} ${num(sizePt)} Tf 0 0 0 rg`;
  }

  private resources(): string {
    this.font ??= embedFieldFont(this.shaper(), this.store);
    return `<</Font <</${fontName} ${ref(this.font)}>>>>`;
  }

  /** The same look of the same size is written once. */
  private appearance(content: string, { widthPt, heightPt }: Size, resources: string): number {
    const box = nums(0, 0, widthPt, heightPt);
    const key = `${box} ${content}`;
    const known = this.appearances.get(key);
    if (known !== undefined) return known;
    const id = this.store.addStream(
      `/Type /XObject /Subtype /Form /BBox [${box}] /Resources ${resources}`,
      latin(content),
    );
    this.appearances.set(key, id);
    return id;
  }
}

interface Size {
  readonly widthPt: number;
  readonly heightPt: number;
}

/** A tick from edge to edge of its box: down to a third of the width, then up. */
function tickIn({ widthPt: w, heightPt: h }: Size): string {
  const points = [nums(0.16 * w, 0.52 * h), nums(0.4 * w, 0.22 * h), nums(0.86 * w, 0.82 * h)];
  return `q 0 0 0 RG ${num(0.13 * h)} w 1 J 1 j ${points[0]} m ${points[1]} l ${points[2]} l S Q`;
}
