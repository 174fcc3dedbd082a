/** What the first thread does for the mate when it has no paper left to make: half of a book’s pages, then the page for a screen. */
import type { HalfFound } from '../../layout/flow/together';
import type { WrittenHalf } from '../../paper/inTwo';
import type { ScreenDraft } from '../../paper/paper';
import { begin } from './claim';
import type { Mate, MatesDraft, MatesFound } from './mate';

/** What it can do. */
export interface Skills {
  /** Make the second half of a book, round by round. */
  readonly half: (draft: ScreenDraft) => Generator<HalfFound, WrittenHalf | undefined, HalfFound>;
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
    if (work.what === 'half found') {
      const known = this.begun.get(work.place);
      if (known === undefined) throw new Error('half of a paper was found that nobody has begun');
      this.goOn(work.place, known, known.rounds.next(work.found));
    } else if (work.claim !== undefined && begin(work.claim)) {
      const begun = { draft: work.draft, rounds: this.skills.half(work.draft) };
      this.begun.set(work.place, begun);
      this.goOn(work.place, begun, begun.rounds.next());
    } else this.skills.screen(work.draft);
  }

  /** The mate waits for pages, nobody for the page for a screen. */
  private goOn(of: number, { draft }: Begun, round: Round): void {
    if (round.done !== true) return this.mate.hand({ what: 'half found', of, found: round.value });
    if (round.value !== undefined) this.mate.hand({ what: 'half written', of, half: round.value });
    this.begun.delete(of);
    this.skills.screen(draft);
  }
}

/** A book whose second half is being made. */
interface Begun {
  readonly draft: ScreenDraft;
  readonly rounds: ReturnType<Skills['half']>;
}

type Round = IteratorResult<HalfFound, WrittenHalf | undefined>;
