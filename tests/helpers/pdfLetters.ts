/**
 * Letters that tie a step to a caution said above it, read back from a file: what a reader sees beside the number of a step
 * and beside the signal word of a caution, and what is read aloud.
 */
import type { StructTreeContent, StructTreeNode } from 'pdfjs-dist/types/src/display/api';
import type { Block, CautionBlock, Inline } from '../../src/markup/block';
import { openPdf } from './pdfText';

/** What a file shows, and everything wrong with it, in words. */
export interface FoundLetters {
  /** Steps that have a triangle and a letter. */
  readonly marks: number;
  readonly faults: readonly string[];
}

/** A stretch of text, with the marked content it stands in; `y` grows upwards. */
interface Piece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly content: string | undefined;
}

/** Reads the letters of a file. `saidAbove` is what is read aloud at a triangle, `blocks` what the file was made from. */
export async function lettersIn(
  bytes: Uint8Array,
  blocks: readonly Block[],
  saidAbove: string,
): Promise<FoundLetters> {
  const [before = '', after = ''] = saidAbove.split('{caution}');
  const namesOf = namesByWords(blocks);
  const pdf = await openPdf(bytes);
  const faults: string[] = [];
  let marks = 0;
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const pieces = piecesOf((await page.getTextContent({ includeMarkedContent: true })).items);
    const tree = await page.getStructTree();
    const elements = tree === null ? [] : elementsIn(tree);
    const cautions = elements.flatMap(({ role, contents }) => {
      const own = pieces.filter(({ content }) => content !== undefined && contents.has(content));
      const [first] = own;
      const words = pressed(own.map(({ text }) => text).join(''));
      return role === 'P' && first !== undefined && namesOf.has(words) ? [{ words, first }] : [];
    });
    const lettered = pieces
      .filter(({ text, content }) => content === undefined && /^[A-Z]$/.test(text.trim()))
      .flatMap(({ text, x, y }) => {
        const [caution] = cautions
          .filter(({ first }) => Math.abs(first.y - y) < 0.25 * first.height && first.x > x)
          .sort((a, b) => a.first.x - b.first.x);
        return caution === undefined ? [] : [{ letter: text.trim(), ...caution }];
      });
    const letters = lettered.map(({ letter }) => letter);
    if (new Set(letters).size < letters.length)
      faults.push(`page ${number}: a letter stands at two cautions`);
    const used = new Set<string>();
    for (const { role, alt, contents } of elements) {
      if (role !== 'Figure' || !alt.startsWith(before) || !alt.endsWith(after)) continue;
      const said = pressed(alt.slice(before.length, alt.length - after.length));
      const names = namesOf.get(said);
      if (names === undefined) continue;
      marks += 1;
      const [shown] = pieces.filter(({ content }) => content !== undefined && contents.has(content));
      const letter = shown?.text.trim() ?? '';
      used.add(letter);
      const caution = lettered.find((each) => each.letter === letter);
      const place = `page ${number}, “${alt}”`;
      if (!/^[A-Z]$/.test(letter)) faults.push(`${place}: no letter beside the triangle`);
      else if (caution === undefined) faults.push(`${place}: no caution has the letter ${letter}`);
      else if (shown === undefined || caution.first.y <= shown.y)
        faults.push(`${place}: its caution stands below it`);
      else if (![...(namesOf.get(caution.words) ?? [])].some((name) => names.has(name)))
        faults.push(`${place}: ${letter} is another caution, “${caution.words}”`);
    }
    for (const letter of letters)
      if (!used.has(letter)) faults.push(`page ${number}: no step is marked with ${letter}`);
  }
  await pdf.destroy();
  return { marks, faults };
}

/** What each brief caution of the steps says, by its signal word and words: its name, or else its words. */
function namesByWords(blocks: readonly Block[]): ReadonlyMap<string, ReadonlySet<string>> {
  const names = new Map<string, Set<string>>();
  for (const caution of blocks.flatMap(cautionsIn)) {
    const words = pressed(wordsOf(caution.hazard));
    for (const text of signalWords.map((signal) => pressed(signal) + words))
      names.set(text, (names.get(text) ?? new Set<string>()).add(caution.says ?? words));
  }
  return names;
}

/** As English and German papers print them. */
const signalWords = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'GEFAHR', 'WARNUNG', 'VORSICHT', 'HINWEIS'];

function cautionsIn(block: Block): readonly CautionBlock[] {
  if (block.kind === 'group') return block.blocks.flatMap(cautionsIn);
  if (block.kind === 'list') return block.items.flat().flatMap(cautionsIn);
  if (block.kind !== 'steps') return [];
  return block.items.flatMap(({ cautions }) => cautions.filter(({ brief }) => brief === true));
}

function wordsOf(content: readonly Inline[]): string {
  return content.map((inline) => (inline.kind === 'text' ? inline.text : ' ')).join('');
}

/** Without white space: where lines end makes no difference. */
function pressed(text: string): string {
  return text.replace(/[\s\u00a0]+/g, '');
}

interface ReadElement {
  readonly role: string;
  readonly alt: string;
  /** The marked content that is its own or that of elements in it. */
  readonly contents: ReadonlySet<string>;
}

function elementsIn(node: StructTreeNode): readonly ReadElement[] {
  const below = node.children.flatMap((child) => ('children' in child ? elementsIn(child) : []));
  const own = { role: node.role, alt: (node as { alt?: string }).alt ?? '', contents: contentsOf(node) };
  return [own, ...below];
}

function contentsOf(node: StructTreeNode | StructTreeContent): ReadonlySet<string> {
  if (!('children' in node)) return new Set(node.type === 'content' ? [node.id] : []);
  return new Set(node.children.flatMap((child) => [...contentsOf(child)]));
}

/** Text pieces with the innermost marked content of the structure tree they stand in. */
function piecesOf(items: readonly object[]): readonly Piece[] {
  const open: (string | undefined)[] = [];
  return items.flatMap((item): Piece[] => {
    if ('str' in item && 'transform' in item) {
      const { str, transform, height } = item as { str: string; transform: number[]; height: number };
      const [x = 0, y = 0] = transform.slice(4);
      return str.trim() === ''
        ? []
        : [{ text: str, x, y, height, content: open.findLast((id) => id !== undefined) }];
    }
    const { type, id } = item as { type: string; id?: string | null };
    if (type.startsWith('beginMarkedContent')) open.push(id ?? undefined);
    else if (type === 'endMarkedContent') open.pop();
    return [];
  });
}
