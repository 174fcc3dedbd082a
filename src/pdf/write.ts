/**
 * Finished pages to a PDF file. No decisions here: each item goes where the frame says, in the order it says. First the pages, each by
 * itself; then they are bound, with all that leads through the file and says what stands in it.
 *
 * PDF 1.7, tagged (PDF/UA-1) and fit for keeping (PDF/A-2a). The same input gives the same bytes.
 */
import PDFDocument from 'pdfkit';
import type { Face } from '../font/metrics';
import { shaperOf } from '../font/shaper';
import type { LaidOut, PlacedLink } from '../layout/frame';
import { embedFont } from './embed';
import { fontName } from './fonts';
import { FormFields } from './forms';
import { type DocumentFacts, metadataPacket, producer } from './metadata';
import { destinationTree, pageLabels, writeOutline } from './navigation';
import { ObjectStore, Raw } from './objects';
import { type WrittenPage, type WrittenPages, writePages } from './pages';
import { srgbProfile } from './srgb';
import { type PageHandle, StructureTree } from './structure';
import { nums, ref, textString } from './syntax';

/** What the file is called, what it is printed with, and how it asks to be printed. */
export interface PdfOptions extends DocumentFacts {
  /** Font files by face (TrueType or WOFF); only the letters used are embedded. */
  readonly fontFiles: Readonly<Record<Face, Uint8Array>>;
  /** Which edge two-sided printing should turn on; `none` for one-sided. Left out: the reader's choice. */
  readonly duplex?: 'none' | 'long-edge' | 'short-edge';
}

/** Writes a laid-out paper. Throws if it contradicts itself (a tag, a page or a destination that does not exist). */
export async function writePdf(laidOut: LaidOut, options: PdfOptions): Promise<Uint8Array> {
  return bindPdf(writePages(laidOut, options.fontFiles), laidOut, options);
}

/** What leads through a file and says what stands in it. */
export type Binding = Pick<LaidOut, 'structure' | 'destinations' | 'outline'>;

/** Binds pages that have been written. Throws as `writePdf` does. */
export function bindPdf(written: WrittenPages, binding: Binding, options: PdfOptions): Uint8Array {
  return new PdfBinder(written, binding, options).bind();
}

const duplexNames = {
  none: 'Simplex',
  'long-edge': 'DuplexFlipLongEdge',
  'short-edge': 'DuplexFlipShortEdge',
} as const;

/** What is typed into fields: narrow, since the columns of a log are. */
const fieldFace: Face = 'narrow';

class PdfBinder {
  private readonly doc: PDFKit.PDFDocument;
  private readonly store: ObjectStore;
  /** Numbers of the font objects. A face that is never used is not embedded. */
  private readonly fonts = new Map<Face, number>();
  private readonly tree: StructureTree;
  private readonly forms: FormFields;
  private readonly pages: PageHandle[] = [];
  private readonly destinations: ReadonlySet<string>;

  constructor(
    private readonly written: WrittenPages,
    private readonly binding: Binding,
    private readonly options: PdfOptions,
  ) {
    this.doc = new PDFDocument({
      pdfVersion: '1.7',
      autoFirstPage: false,
      lang: options.language,
      info: infoOf(options),
      // no font until one is asked for: the library would look for a file of its own
      font: '',
    });
    this.store = new ObjectStore(this.doc);
    this.tree = new StructureTree(binding.structure, written.pages.length, this.store);
    this.forms = new FormFields(this.store, () => shaperOf(options.fontFiles[fieldFace]));
    this.destinations = new Set(binding.destinations.map(({ name }) => name));
  }

  bind(): Uint8Array {
    for (const [index, page] of this.written.pages.entries()) this.page(index, page);
    for (const [face, object] of this.fonts) {
      const letters = this.written.letters.get(face) ?? new Map();
      embedFont(shaperOf(this.options.fontFiles[face]), letters, object, this.store);
    }
    this.catalog();
    // the form is written here, and the library would end one of its own
    this.doc.endAcroForm = () => undefined;
    this.doc.endMetadata = () => this.metadata();
    this.doc.end();
    return this.store.file();
  }

  private page(index: number, { widthPt, heightPt, content, faces, notes }: WrittenPage): void {
    this.doc.addPage({ size: [widthPt, heightPt], margin: 0 });
    const { dictionary, content: stream } = this.doc.page;
    const handle: PageHandle = { index, id: dictionary.id, heightPt };
    this.pages.push(handle);
    const annotations: string[] = [];
    this.tree.readAt(0);
    for (const note of notes) {
      if (note.kind === 'mark') this.tree.mark(note.tag, handle);
      else if (note.kind === 'rank') this.tree.readAt(note.rank);
      else if (note.kind === 'link') annotations.push(this.link(note, handle));
      else annotations.push(this.forms.add(note, handle, this.tree));
    }
    // packed already, and begins with what the library has begun it with
    Object.assign(stream, { buffer: [content], compress: false });
    Object.assign(stream.data, { Length: content.length, Filter: 'FlateDecode' });
    const fonts: Record<string, unknown> = this.doc.page.fonts;
    for (const face of faces) fonts[fontName(face)] = new Raw(ref(this.fontObject(face)));
    const annots = annotations.length === 0 ? {} : { Annots: new Raw(`[${annotations.join(' ')}]`) };
    Object.assign(dictionary.data, { Tabs: 'S', StructParents: index, ...annots });
  }

  private fontObject(face: Face): number {
    const known = this.fonts.get(face);
    if (known !== undefined) return known;
    const reserved = this.store.reserve();
    this.fonts.set(face, reserved);
    return reserved;
  }

  private link({ x, y, widthPt, heightPt, target, words, tag }: PlacedLink, page: PageHandle): string {
    this.checkDestination(target);
    if (tag === undefined) throw new RangeError(`the link to "${target}" has no tag`);
    const id = this.store.reserve();
    const key = this.tree.annotate(tag, page, id);
    const corners = nums(x, page.heightPt - y - heightPt, x + widthPt, page.heightPt - y);
    this.store.put(
      id,
      `<</Type /Annot /Subtype /Link /Rect [${corners}] /Border [0 0 0] /F 4 /StructParent ${key}` +
        ` /Contents ${textString(words)} /Dest ${textString(target)}>>`,
    );
    return ref(id);
  }

  /** Everything the catalog leads to, but for the pages. */
  private catalog(): void {
    const { data } = this.doc._root;
    const { outline, destinations } = this.binding;
    const duplex = this.options.duplex ? ` /Duplex /${duplexNames[this.options.duplex]}` : '';
    const form = this.forms.catalogEntry();
    if (form !== undefined) data.AcroForm = new Raw(form);
    data.MarkInfo = new Raw('<</Marked true>>');
    data.StructTreeRoot = new Raw(ref(this.tree.write()));
    data.PageLabels = new Raw(pageLabels(this.written.pages));
    data.OutputIntents = new Raw(`[${this.outputIntent()}]`);
    data.ViewerPreferences = new Raw(
      `<</DisplayDocTitle true /PrintScaling /None /PickTrayByPDFSize true${duplex}>>`,
    );
    Object.assign((data.Names as PDFKit.Dictionary).data, {
      Dests: new Raw(destinationTree(destinations, this.pages)),
    });
    if (outline.length === 0) return;
    const root = writeOutline(outline, this.store, (name) => this.checkDestination(name));
    data.Outlines = new Raw(ref(root));
    data.PageMode = 'UseOutlines';
  }

  private outputIntent(): string {
    const profile = this.doc.ref({ N: 3 });
    profile.end(srgbProfile());
    const name = '(sRGB IEC61966-2.1)';
    return `<</Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier ${name} /Info ${name} /DestOutputProfile ${ref(profile.id)}>>`;
  }

  private metadata(): void {
    const packet = this.doc.ref({ Type: 'Metadata', Subtype: 'XML' });
    // whoever looks for it must find it without unpacking anything
    packet.compress = false;
    packet.end(new TextEncoder().encode(metadataPacket(this.options)));
    this.doc._root.data.Metadata = new Raw(ref(packet.id));
  }

  private checkDestination(name: string): void {
    if (!this.destinations.has(name))
      throw new RangeError(`something leads to "${name}", which does not exist`);
  }
}

function infoOf({ title, author, subject, keywords, creationDate }: PdfOptions): PDFKit.DocumentInfo {
  return {
    Title: title,
    ...(author === undefined ? {} : { Author: author }),
    ...(subject === undefined ? {} : { Subject: subject }),
    ...(keywords === undefined ? {} : { Keywords: keywords }),
    Creator: producer,
    Producer: producer,
    CreationDate: creationDate,
  };
}
