/** What changed between two issues of one car's spec, and what that does to its papers. */

/** What a change is a change of, in the order it is told. */
export const changeGroups = ['part', 'valve', 'line', 'value', 'step', 'figure'] as const;

/** One of them. */
export type ChangeGroup = (typeof changeGroups)[number];

/** What happened to it. */
export type ChangeKind = 'added' | 'removed' | 'renamed' | 'moved' | 'changed' | 'reordered';

/** One change, said with this car's own names and in its keeper's units. */
export interface Change {
  readonly group: ChangeGroup;
  readonly kind: ChangeKind;
  /** What it is of: `water tank: reserve`. */
  readonly what: string;
  /** How it was; empty for what was not there. */
  readonly was: string;
  /** How it is now; empty for what is gone. */
  readonly is: string;
}

/** What became of one paper: `issue` says that it reads the same but for issue, date and fingerprint. */
export type PaperFate = 'same' | 'issue' | 'changed' | 'new' | 'gone';

/** One paper in the old issue and in the new. */
export interface PaperChange {
  readonly name: string;
  readonly title: string;
  readonly fate: PaperFate;
  /** A card or sheet that is laminated and lives in the car. */
  readonly laminated: boolean;
  /** Fingerprint of the old one; empty for a new paper. */
  readonly was: string;
  /** Fingerprint of the new one; empty for one that is gone. */
  readonly is: string;
  /** Headings under which it reads otherwise than before. */
  readonly under: readonly string[];
}

/** One of the two issues. */
export interface IssueNamed {
  readonly letter: string;
  /** The date in words, by the language of the papers. */
  readonly date: string;
}

/** Everything there is to say about two issues. */
export interface Comparison {
  readonly before: IssueNamed;
  readonly after: IssueNamed;
  readonly changes: readonly Change[];
  readonly papers: readonly PaperChange[];
}
