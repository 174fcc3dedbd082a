/**
 * From filled-in markup to blocks: tokens → tree → the subset's check → blocks.
 */
import type { Diagnostic, Outcome } from '../diagnostic/diagnostic';
import { bad, good } from '../diagnostic/diagnostic';
import type { Drawing } from '../drawing/drawing';
import { wordsIn } from './attributes';
import type { Block, BlockOrigin, HeadingBlock } from './block';
import { type Checked, SubsetCheck } from './check';
import { blockReaders } from './elements/registry';
import { readInlines } from './inline';
import { type Finder, markupProblem } from './problem';
import { elementsOf, type Reader } from './reader';
import { root } from './subset';
import type { Origins } from './template/origins';
import { readTree } from './tree';

/** What the markup may refer to. */
export interface MarkupSurroundings {
  /** Drawings by the name a `figure` gives. */
  readonly drawings: ReadonlyMap<string, Drawing>;
  /** Safety signs by their numbers. */
  readonly signs?: ReadonlyMap<string, Drawing>;
  /** The way back to the templates, if the markup came from some; without it, places are those of the markup. */
  readonly origins?: Origins;
}

/** Reads markup that the template `template` made. All problems are told at once. */
export function parseMarkup(
  html: string,
  template: string,
  { drawings, signs = new Map(), origins }: MarkupSurroundings,
): Outcome<readonly Block[]> {
  const problems: Diagnostic[] = [];
  const tell = (problem: Diagnostic): void => void problems.push(problem);
  const finder = finderFor(html, template, origins);
  const check = new SubsetCheck(finder, { drawings: [...drawings.keys()], signs: [...signs.keys()] }, tell);
  const nodes = check.nodes(readTree(html, finder, tell), root);
  check.attributes.finish();
  const reader = new BlockReader(drawings, signs, finder, tell);
  const top = nodes.filter((node): node is Checked => node.kind === 'element');
  const blocks = reader.readAll(top);
  problems.push(...headingProblems(blocks));
  return problems.length > 0 ? bad(problems) : good(blocks);
}

class BlockReader implements Reader {
  constructor(
    readonly drawings: ReadonlyMap<string, Drawing>,
    private readonly knownSigns: ReadonlyMap<string, Drawing>,
    private readonly finder: Finder,
    private readonly tell: (problem: Diagnostic) => void,
  ) {}

  readAll(nodes: readonly Checked[]): readonly Block[] {
    return nodes.flatMap((node) => blockReaders[node.form]?.(node, this) ?? []);
  }

  blocks(node: Checked): readonly Block[] {
    return this.readAll(elementsOf(node));
  }

  signs(numbers: string | undefined): readonly Drawing[] {
    return wordsIn(numbers ?? '').flatMap((number) => this.knownSigns.get(number) ?? []);
  }

  words(node: Checked | undefined): ReturnType<Reader['words']> {
    return node ? readInlines(node.children) : [];
  }

  report(...[code, node, words]: Parameters<Reader['report']>): void {
    this.tell(markupProblem(code, this.finder, node.offset, words));
  }
}

/** A heading may go up by any number of levels, but down only one at a time; the first is an `h1`. */
function headingProblems(blocks: readonly Block[]): Diagnostic[] {
  let level = 0;
  return headingsOf(blocks).flatMap((heading) => {
    const before = level;
    level = heading.level;
    return heading.level <= before + 1 ? [] : [skipProblem(heading, before)];
  });
}

function skipProblem({ level, origin }: HeadingBlock, before: number): Diagnostic {
  return {
    code: 'markup-heading',
    severity: 'error',
    at: { file: origin.template, line: origin.line, column: origin.column },
    message:
      before === 0
        ? `the first heading is an \`<h${level}>\``
        : `an \`<h${level}>\` follows an \`<h${before}>\``,
    expected: `\`<h${before + 1}>\``,
    mend: 'let each heading be at most one level below the one before it',
  };
}

function headingsOf(blocks: readonly Block[]): readonly HeadingBlock[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'group') return headingsOf(block.blocks);
    return block.kind === 'heading' ? [block] : [];
  });
}

function finderFor(html: string, template: string, origins: Origins | undefined): Finder {
  if (origins) return (offset) => origins.at(offset) ?? { template, line: 1, column: 1 };
  const made = `what ${template} made`;
  return (offset): BlockOrigin => {
    const before = html.slice(0, offset).split('\n');
    return { template: made, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
  };
}
