/** The words found on finished pages, read back as a reader of the tagged file would read them. */
import type { LaidOut, PlacedText, StructureIndex } from '../frame';
import { splitAtSpaces } from './expected';

/** A word and the page it begins on. */
export interface FoundWord {
  readonly word: string;
  readonly page: number;
}

/** Words of all tagged text, element by element. Links belong to the text they stand in. */
export function foundWords(laidOut: LaidOut): FoundWord[] {
  const words: FoundWord[] = [];
  let open: StructureIndex | undefined;
  let text: { part: string; page: number }[] = [];
  const close = () => {
    words.push(...wordsIn(text));
    text = [];
  };
  laidOut.pages.forEach((page, index) => {
    for (const item of page.items) {
      if (item.kind !== 'text' || item.tag === undefined) continue;
      const element = textElement(laidOut, item.tag);
      if (element !== open) close();
      open = element;
      text.push({ part: item.text, page: index });
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
function wordsIn(parts: readonly { part: string; page: number }[]): FoundWord[] {
  const ends: number[] = [];
  for (const { part } of parts) ends.push((ends[ends.length - 1] ?? 0) + part.length);
  const whole = parts.map(({ part }) => part).join('');
  let at = 0;
  return splitAtSpaces(whole).map((word) => {
    const from = whole.indexOf(word, at);
    at = from + word.length;
    const index = ends.findIndex((end) => from < end);
    return { word, page: parts[index]?.page ?? 0 };
  });
}
