/** What the first thread does for the mate when it has no paper left to make: part of a book’s pages, then the page for a screen. */
import type { PartFound } from '../../layout/flow/together';
import type { WrittenPart } from '../../paper/inTwo';
import type { ScreenDraft } from '../../paper/paper';
import { begin } from './claim';
import type { Mate, MatesDraft, MatesFound } from './mate';

/** What it can do. */
export interface Skills {
  /** Make the second part of a book, round by round. */
  readonly part: (draft: ScreenDraft) => Generator<PartFound, WrittenPart | undefined, PartFound>;
  /** Write the page for a screen and put it aside. */
  readonly screen: (draft: ScreenDraft) => void;
}

/** Hears what the mate says of one paper after another, and does it. */
export class HelpForMate {
  private readonly begun = new Map<number, Begun>();

  constructor(
    private readonly mate: Pick<Mate, 'hand'>,
    private readonly skills: Skills,
  ) {}

  /** Do what falls to the first thread now. */
  hear(work: MatesDraft | MatesFound): void {
    if (work.what === 'part found') {
      const known = this.begun.get(work.place);
      if (known === undefined) throw new Error('part of a paper was found that nobody has begun');
      this.goOn(work.place, known, known.rounds.next(work.found));
    } else if (work.claim !== undefined && begin(work.claim)) {
      const begun = { draft: work.draft, rounds: this.skills.part(work.draft) };
      this.begun.set(work.place, begun);
      this.goOn(work.place, begun, begun.rounds.next());
    } else this.skills.screen(work.draft);
  }

  /** The mate waits for pages, nobody for the page for a screen. */
  private goOn(of: number, { draft }: Begun, round: Round): void {
    if (round.done !== true) {
      this.mate.hand({ what: 'part found', of, found: round.value });
      return;
    }
    if (round.value !== undefined) this.mate.hand({ what: 'part written', of, part: round.value });
    this.begun.delete(of);
    this.skills.screen(draft);
  }
}

/** A book whose second part is being made. */
interface Begun {
  readonly draft: ScreenDraft;
  readonly rounds: ReturnType<Skills['part']>;
}

type Round = IteratorResult<PartFound, WrittenPart | undefined>;
