/**
 * Finished pages to a PDF file. No decisions here: each item goes where the frame says, in the order it says.
 *
 * PDF 1.7, tagged (PDF/UA-1) and fit for keeping (PDF/A-2a). The same input gives the same bytes.
 */
import PDFDocument from 'pdfkit';
import type { Face } from '../font/metrics';
import { shaperOf } from '../font/shaper';
import type { LaidOut, Page, PlacedLink } from '../layout/frame';
import { PageContent } from './content';
import { Inks } from './fonts';
import { FormFields } from './forms';
import { LineEnds } from './lineEnds';
import { type DocumentFacts, metadataPacket, producer } from './metadata';
import { destinationTree, pageLabels, writeOutline } from './navigation';
import { ObjectStore, Raw } from './objects';
import { srgbProfile } from './srgb';
import { type PageHandle, StructureTree } from './structure';
import { latin, nums, ref, textString } from './syntax';

/** What the file is called, what it is printed with, and how it asks to be printed. */
export interface PdfOptions extends DocumentFacts {
  /** Font files by face (TrueType or WOFF); only the letters used are embedded. */
  readonly fontFiles: Readonly<Record<Face, Uint8Array>>;
  /** Which edge two-sided printing should turn on; `none` for one-sided. Left out: the reader's choice. */
  readonly duplex?: 'none' | 'long-edge' | 'short-edge';
}

/** Writes a laid-out paper. Throws if it contradicts itself (a tag, a page or a destination that does not exist). */
export async function writePdf(laidOut: LaidOut, options: PdfOptions): Promise<Uint8Array> {
  return new PdfWriter(laidOut, options).write();
}

const duplexNames = {
  none: 'Simplex',
  'long-edge': 'DuplexFlipLongEdge',
  'short-edge': 'DuplexFlipShortEdge',
} as const;

/** What is typed into fields: narrow, since the columns of a log are. */
const fieldFace: Face = 'narrow';

class PdfWriter {
  private readonly doc: PDFKit.PDFDocument;
  private readonly store: ObjectStore;
  private readonly inks: Inks;
  private readonly tree: StructureTree;
  private readonly forms: FormFields;
  private readonly lineEnds: LineEnds;
  private readonly pages: PageHandle[] = [];
  private readonly destinations: ReadonlySet<string>;

  constructor(
    private readonly laidOut: LaidOut,
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
    this.inks = new Inks(this.store, options.fontFiles);
    this.tree = new StructureTree(laidOut.structure, laidOut.pages.length, this.store);
    this.forms = new FormFields(this.store, () => shaperOf(options.fontFiles[fieldFace]));
    this.lineEnds = new LineEnds(laidOut);
    this.destinations = new Set(laidOut.destinations.map(({ name }) => name));
  }

  write(): Uint8Array {
    for (const [index, page] of this.laidOut.pages.entries()) this.page(index, page);
    this.inks.finish();
    this.catalog();
    // the form is written here, and the library would end one of its own
    this.doc.endAcroForm = () => undefined;
    this.doc.endMetadata = () => this.metadata();
    this.doc.end();
    return this.store.file();
  }

  private page(index: number, page: Page): void {
    this.doc.addPage({ size: [page.widthPt, page.heightPt], margin: 0 });
    const { dictionary } = this.doc.page;
    const handle: PageHandle = { index, id: dictionary.id, heightPt: page.heightPt };
    this.pages.push(handle);
    const content = new PageContent(
      (face) => this.inks.of(face),
      (tag) => `/${this.tree.typeOf(tag)} <</MCID ${this.tree.mark(tag, handle)}>> BDC`,
    );
    const annotations: string[] = [];
    page.items.forEach((item, at) => {
      this.tree.readAt(page.readingRanks?.[at] ?? 0);
      if (item.kind === 'text') content.text(item, this.lineEnds.needsSpace(item) ? ' ' : '');
      else if (item.kind === 'shape') content.shape(item.shape, item.tag);
      else if (item.kind === 'link') annotations.push(this.link(item, handle));
      else annotations.push(this.forms.add(item, handle, this.tree));
    });
    this.doc.addContent(latin(content.finish()));
    const fonts: Record<string, unknown> = this.doc.page.fonts;
    for (const [name, { object }] of content.fonts) fonts[name] = new Raw(ref(object));
    const annots = annotations.length === 0 ? {} : { Annots: new Raw(`[${annotations.join(' ')}]`) };
    Object.assign(dictionary.data, { Tabs: 'S', StructParents: index, ...annots });
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
    const { outline, pages, destinations } = this.laidOut;
    const duplex = this.options.duplex ? ` /Duplex /${duplexNames[this.options.duplex]}` : '';
    const form = this.forms.catalogEntry();
    if (form !== undefined) data.AcroForm = new Raw(form);
    data.MarkInfo = new Raw('<</Marked true>>');
    data.StructTreeRoot = new Raw(ref(this.tree.write()));
    data.PageLabels = new Raw(pageLabels(pages));
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
