/** The words found on finished pages, read back as a reader of the tagged file would read them. */
import type { Face } from '../../font/metrics';
import type { LaidOut, PlacedText, StructureIndex } from '../frame';
import { splitAtSpaces } from './expected';

/** A word, the page it begins on, and the type its first letter is set in. */
export interface FoundWord {
  readonly word: string;
  readonly page: number;
  readonly face: Face;
  readonly sizePt: number;
}

/** A stretch of text on a page. */
interface Part extends Omit<FoundWord, 'word'> {
  readonly part: string;
}

/** Words of all tagged text, element by element. Links belong to the text they stand in. */
export function foundWords(laidOut: LaidOut): FoundWord[] {
  const words: FoundWord[] = [];
  let open: StructureIndex | undefined;
  let text: Part[] = [];
  const close = () => {
    words.push(...wordsIn(text));
    text = [];
  };
  laidOut.pages.forEach((page, index) => {
    for (const item of page.items) {
      if (item.kind !== 'text' || item.tag === undefined) continue;
      const element = textElement(laidOut, item.tag);
      // letters in a figure are part of what it shows; what it says is its alternative text
      if (laidOut.structure[element]?.type === 'Figure') continue;
      if (element !== open) close();
      open = element;
      text.push({ part: item.text, page: index, face: item.face, sizePt: item.sizePt });
    }
  });
  close();
  return words;
}

/** Text of a page that belongs to no element: running heads, repeated table heads, marks. Without spaces. */
export function artifactText(laidOut: LaidOut, page: number): string {
  const items = laidOut.pages[page]?.items ?? [];
  const texts = items.filter((item): item is PlacedText => item.kind === 'text' && item.tag === undefined);
  return withoutSpaces(texts.map(({ text }) => text).join(''));
}

/** The text without spaces of any kind. */
export function withoutSpaces(text: string): string {
  return text.replace(/\s+/g, '');
}

function textElement(laidOut: LaidOut, tag: StructureIndex): StructureIndex {
  let index = tag;
  for (let element = laidOut.structure[index]; element !== undefined; element = laidOut.structure[index]) {
    if ((element.type !== 'Link' && element.type !== 'Span') || element.parent === undefined) return index;
    index = element.parent;
  }
  return index;
}

/** Splits joined parts into words; each stands on the page its first letter stands on. */
function wordsIn(parts: readonly Part[]): FoundWord[] {
  const ends: number[] = [];
  for (const { part } of parts) ends.push((ends[ends.length - 1] ?? 0) + part.length);
  const whole = parts.map(({ part }) => part).join('');
  let at = 0;
  return splitAtSpaces(whole).flatMap((word) => {
    const from = whole.indexOf(word, at);
    at = from + word.length;
    const part = parts[ends.findIndex((end) => from < end)];
    return part === undefined ? [] : [{ word, page: part.page, face: part.face, sizePt: part.sizePt }];
  });
}
