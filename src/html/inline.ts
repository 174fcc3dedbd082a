/**
 * Words: runs of text, line ends and links.
 *
 * A screen has no page numbers, so a reference to a page becomes a link on the word before it: "(page 12)" is
 * "(page)" with a link to the place itself. Where no word stands before it, what it leads to is named instead.
 */
import type { Inline, PageReference, TextRun } from '../markup/block';
import { type Content, element, type Html, together } from './element';
import type { Writing } from './writing';

/** A stretch of text, or of text that leads to a page. */
type Stretch = TextRun & { readonly toPage?: string };

/** The words of a block. */
export function words(content: readonly Inline[], writing: Writing): Html {
  const pieces = stretches(content, writing).map(
    (piece): Content => (piece.kind === 'break' ? element('br') : stretch(piece, writing)),
  );
  return together(...pieces);
}

/** The address of the thing named `name` on the same page. */
export function addressOf(name: string): string {
  return `#${encodeURIComponent(name)}`;
}

type Piece = Stretch | { readonly kind: 'break' };

function stretches(content: readonly Inline[], writing: Writing): Piece[] {
  const pieces: Piece[] = [];
  for (const inline of content) {
    if (inline.kind !== 'page-of') pieces.push(inline);
    else pieces.push(...pageLink(pieces.pop(), inline, writing));
  }
  return pieces;
}

/** The piece before a page reference, with its last word made into the link. */
function pageLink(before: Piece | undefined, { target }: PageReference, { titles }: Writing): Piece[] {
  const named: Stretch = { ...plain, text: titles.get(target) ?? target, link: target };
  if (before === undefined) return [named];
  if (before.kind === 'break' || before.link !== undefined || before.toPage !== undefined)
    return [before, named];
  const match = /^(.*?)([\p{L}\p{N}]+)(\s*)$/su.exec(before.text);
  if (match === null) return [before, named];
  const [, rest = '', word = ''] = match;
  const linked: Stretch = { ...before, text: word, toPage: target };
  return rest === '' ? [linked] : [{ ...before, text: rest }, linked];
}

const plain = { kind: 'text', strong: false, emphasis: false } as const;

function stretch(run: Stretch, writing: Writing): Html {
  const target = run.link ?? run.toPage;
  const styled = inStyle(run);
  if (target === undefined || !writing.ids.has(target)) return styled;
  const title = run.toPage === undefined ? undefined : writing.titles.get(target);
  const heard = title === undefined ? [] : [element('span', { class: 'heard' }, `: ${title}`)];
  return element('a', { href: addressOf(target) }, styled, ...heard);
}

function inStyle({ text, strong, emphasis }: TextRun): Html {
  const leaning: Content = emphasis ? element('em', {}, text) : text;
  return strong ? element('strong', {}, leaning) : together(leaning);
}
