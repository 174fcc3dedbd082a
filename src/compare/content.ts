/** What a paper says, without what every issue changes: its letter, its date, its record, its fingerprint. */
import { good, type Outcome } from '../diagnostic/diagnostic';
import type { Block, Inline } from '../markup/block';
import { fingerprint } from '../paper/fingerprint';
import { fillPaper, type Paper, type World } from '../paper/paper';
import { withoutIssue } from './withoutIssue';

/** A paper as it would read with no issue on it. */
export interface Content {
  /** The same mark, the same words in the same look. */
  readonly mark: string;
  readonly blocks: readonly Block[];
}

/** The content of a paper. */
export function contentOf(paper: Paper, world: World): Outcome<Content> {
  const filled = fillPaper(paper, withoutIssue(world), '');
  if (!filled.ok) return filled;
  const { blocks } = filled.value;
  const { paper: sheet, card, distances, language } = world.car.spec.print;
  const look = [JSON.stringify(world.theme), JSON.stringify({ sheet, card, language }), sizes(distances)];
  return good({ mark: fingerprint([markOf(blocks), ...look]), blocks }, filled.remarks);
}

/** Blocks with the same mark say the same, wherever in a template they were written. */
export function markOf(blocks: unknown): string {
  return JSON.stringify(blocks, (key, value: unknown) => (key === 'origin' ? undefined : value));
}

function sizes(distances: World['car']['spec']['print']['distances']): string {
  return Object.values(distances)
    .map(({ si }) => si.toPrecision(6))
    .join(' ');
}

/** The headings under which `after` reads otherwise than `before`; what stands before the first heading is under none. */
export function headingsOfChange(before: readonly Block[], after: readonly Block[]): readonly string[] {
  const [old, now] = [underHeadings(before), underHeadings(after)];
  const titles = [...new Set([...now.keys(), ...old.keys()])];
  return titles.filter((title) => title !== '' && old.get(title) !== now.get(title));
}

/** The mark of what stands under each heading; under headings that read the same, together. */
function underHeadings(blocks: readonly Block[]): ReadonlyMap<string, string> {
  const marks = new Map<string, string>();
  let title = '';
  for (const block of blocks) {
    if (block.kind === 'heading') title = wordsOf(block.content);
    marks.set(title, `${marks.get(title) ?? ''}${markOf(block)}`);
  }
  return marks;
}

function wordsOf(content: readonly Inline[]): string {
  return content
    .map((each) => (each.kind === 'text' ? each.text : ' '))
    .join('')
    .trim();
}
