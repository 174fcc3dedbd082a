/**
 * Page numbers of things, as text may name them before the pages are made.
 *
 * Layout runs with the numbers of the run before, until a run yields the numbers it was given.
 */
import type { BlockOrigin } from '../markup/block';
import type { Problems } from './problems';

/** Stands for a page number while none is known; about as wide as one. */
const unknownLabel = '00';

/** Page labels by id, and a memory of which were asked for. */
export class Labels {
  private readonly asked = new Set<string>();
  private readonly reported = new Set<string>();
  /** How often a label was asked for. */
  timesAsked = 0;

  /** `known` holds the labels of the run before; `ids` every id of the paper. */
  constructor(
    private readonly known: ReadonlyMap<string, string>,
    private readonly ids: ReadonlySet<string>,
    private readonly problems: Problems,
  ) {}

  /** The label of the page on which `target` stands. */
  of(target: string, origin: BlockOrigin): string {
    this.expect(target, origin);
    this.asked.add(target);
    this.timesAsked += 1;
    return this.known.get(target) ?? unknownLabel;
  }

  /** Reports `target` if the paper has no such id. */
  expect(target: string, origin: BlockOrigin): void {
    if (this.ids.has(target) || this.reported.has(target)) return;
    this.reported.add(target);
    this.problems.add(
      {
        code: 'layout-no-target',
        severity: 'error',
        message: `\`${target}\` is referred to, but nothing in the paper has this id`,
        found: target,
        expected: 'the id of something in the same paper',
        mend: 'give the thing meant this id, or refer to something else',
      },
      origin,
    );
  }

  /** Whether every label that was asked for has come out as it was given. */
  agreesWith(found: ReadonlyMap<string, string>): boolean {
    for (const target of this.asked) {
      if (this.ids.has(target) && found.get(target) !== this.known.get(target)) return false;
    }
    return true;
  }
}
