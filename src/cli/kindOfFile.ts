/** Telling a file that is no spec by how it begins: a paper, a document of a word processor, text of another encoding. */

/** Why a file cannot be a spec, and what to do. */
export interface OtherKind {
  readonly why: string;
  readonly mend: string;
}

const ofPaper = 'name the spec, a text file that mostly ends in `.yaml`';

const kinds: readonly (OtherKind & { readonly begins: readonly number[] })[] = [
  { begins: [0x25, 0x50, 0x44, 0x46], why: 'it is a PDF, a paper to print', mend: ofPaper },
  {
    begins: [0x50, 0x4b, 0x03, 0x04],
    why: 'it is a document of a word processor, a spreadsheet or an archive',
    mend: 'name the spec; text that was written in a word processor is saved as plain text, in UTF-8',
  },
  {
    begins: [0x7b, 0x5c, 0x72, 0x74, 0x66],
    why: 'it is rich text',
    mend: 'save it as plain text, in UTF-8',
  },
  { begins: [0x89, 0x50, 0x4e, 0x47], why: 'it is a picture', mend: ofPaper },
  { begins: [0xff, 0xd8, 0xff], why: 'it is a picture', mend: ofPaper },
  {
    begins: [0xff, 0xfe],
    why: 'it is text in UTF-16, which some editors call Unicode',
    mend: 'save it again with the encoding UTF-8',
  },
  {
    begins: [0xfe, 0xff],
    why: 'it is text in UTF-16, which some editors call Unicode',
    mend: 'save it again with the encoding UTF-8',
  },
];

/** How far into a file a page for a screen says that it is one. */
const headOfPage = 512;

/** What the bytes of a file are instead of a spec; nothing if they may be one. */
export function kindOfFile(bytes: Uint8Array): OtherKind | undefined {
  const known = kinds.find(({ begins }) => begins.every((byte, index) => bytes[index] === byte));
  if (known !== undefined) return { why: known.why, mend: known.mend };
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, headOfPage)).trimStart();
  if (/^(?:<!doctype html|<html)/i.test(head)) return { why: 'it is a page for a screen', mend: ofPaper };
  return undefined;
}
