/** What a paper tells of the issue before it. */

/** What changed since the issue before, said with this car’s own names. Plain data for templates. */
export interface Since {
  /** The issue before. */
  readonly before: { readonly letter: string; readonly date: string };
  /** Changes of the car, its values and its procedures, by what they are of. */
  readonly groups: readonly {
    readonly name: string;
    readonly changes: readonly {
      readonly what: string;
      /** How it was; empty for what was not there. */
      readonly was: string;
      /** How it is; empty for what is gone. */
      readonly is: string;
      readonly reordered: boolean;
    }[];
  }[];
  /** The headings under which this paper reads otherwise, in its order. */
  readonly places: readonly { readonly id: string; readonly title: string }[];
}
