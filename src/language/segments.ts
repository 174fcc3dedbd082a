/**
 * A template in segments: runs of words that are said as a whole, and everything between them.
 *
 * A run goes on over values in braces and over `strong`, `em`, `a` and `br`; it ends at every other element, at
 * conditions and lists (`{{#if}}`, `{{else}}`, `{{/each}}`) and at pieces (`{{> piece}}`). Tags around the whole of a run
 * do not belong to it. The `title` of an element, such as a field to fill in, is said too.
 */

/** A stretch of a template. Joined, the segments are the template. */
export interface Segment {
  readonly words: string;
  readonly isText: boolean;
}

const token = /\{\{[\s\S]*?\}\}|<\/?[a-zA-Z](?:\{\{[\s\S]*?\}\}|[^<>])*>|[^<{]+|[<{]/g;
const inline = /^<\/?(?:strong|em|a|br)\b/;

/** The segments of a template, in order. */
export function segmentsIn(template: string): readonly Segment[] {
  const segments: Segment[] = [];
  let run: string[] = [];
  const close = () => {
    segments.push(...ofRun(run));
    run = [];
  };
  for (const [piece] of template.matchAll(token)) {
    if (endsRun(piece)) {
      close();
      segments.push(...ofTag(piece));
    } else run.push(piece);
  }
  close();
  return segments.filter(({ words }) => words !== '');
}

/** An element that is between runs; what its `title` says is a text of its own. */
function ofTag(piece: string): readonly Segment[] {
  const [, before = '', title = '', after = ''] = /^(<[\s\S]* title=")([^"]+)("[\s\S]*)$/.exec(piece) ?? [];
  if (title === '') return [{ words: piece, isText: false }];
  return [
    { words: before, isText: false },
    { words: title, isText: true },
    { words: after, isText: false },
  ];
}

function endsRun(piece: string): boolean {
  if (piece.startsWith('{{')) return /^\{\{~?\s*(?:[#/^>!]|else\b)/.test(piece);
  return piece.startsWith('<') && piece !== '<' && !inline.test(piece);
}

/** The run less what stands around its words: white space and tags that have no partner in it or embrace it all. */
function ofRun(run: readonly string[]): readonly Segment[] {
  let [from, to] = [0, run.length];
  for (;;) {
    const [first, last] = [run[from], run[to - 1]];
    if (first === undefined || last === undefined || from >= to) break;
    const inside = run.slice(from, to);
    if (
      isBlank(first) ||
      (isOpening(first) && partnerOf(inside, 0) === undefined) ||
      isLoneClosing(inside, 0)
    )
      from += 1;
    else if (isBlank(last) || isLoneClosing(inside, inside.length - 1) || isLoneOpening(inside)) to -= 1;
    else if (isOpening(first) && partnerOf(inside, 0) === inside.length - 1) [from, to] = [from + 1, to - 1];
    else break;
  }
  const words = run.slice(from, to).join('');
  const [, before = '', core = '', after = ''] = /^(\s*)([\s\S]*?)(\s*)$/.exec(words) ?? [];
  return [
    { words: run.slice(0, from).join('') + before, isText: false },
    { words: core, isText: true },
    { words: after + run.slice(to).join(''), isText: false },
  ];
}

function isBlank(piece: string): boolean {
  return piece.trim() === '';
}

function isOpening(piece: string): boolean {
  return /^<[a-z]/.test(piece) && !/^<br\b/.test(piece);
}

function isClosing(piece: string): boolean {
  return piece.startsWith('</');
}

/** Where the tag that opens at `at` is closed. */
function partnerOf(run: readonly string[], at: number): number | undefined {
  let depth = 0;
  for (let index = at; index < run.length; index += 1) {
    const piece = run[index] ?? '';
    if (isOpening(piece)) depth += 1;
    if (isClosing(piece)) depth -= 1;
    if (depth === 0) return index;
  }
  return undefined;
}

/** Whether the piece closes a tag that opens outside the run. */
function isLoneClosing(run: readonly string[], at: number): boolean {
  if (!isClosing(run[at] ?? '')) return false;
  return run.slice(0, at).every((piece, from) => !isOpening(piece) || partnerOf(run, from) !== at);
}

function isLoneOpening(run: readonly string[]): boolean {
  const last = run.length - 1;
  return isOpening(run[last] ?? '') && partnerOf(run, last) === undefined;
}
