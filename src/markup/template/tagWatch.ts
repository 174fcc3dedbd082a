/**
 * Knows, while a template is filled in, whether a value would land in text, in a quoted attribute or in a tag.
 */

type State = 'text' | 'tag' | 'double' | 'single' | 'comment';

/** Follows the template's own markup. Values are escaped and so never change the state. */
export class TagWatch {
  private state: State = 'text';
  /** What stretches lead to from each state: a template puts in the same ones over and over. */
  private readonly known: Readonly<Record<State, Map<string, State>>> = {
    text: new Map(),
    tag: new Map(),
    double: new Map(),
    single: new Map(),
    comment: new Map(),
  };

  /** True where a value is only ever text. */
  get takesText(): boolean {
    return this.state === 'text' || this.state === 'double' || this.state === 'single';
  }

  /** The present place, for a sentence. */
  get where(): string {
    return this.state === 'comment' ? 'inside a comment' : 'inside a tag, outside quotes';
  }

  /** Reads on through a stretch of the template's own markup. */
  read(markup: string): void {
    const known = this.known[this.state];
    const after = known.get(markup) ?? this.readAnew(markup);
    known.set(markup, after);
    this.state = after;
  }

  private readAnew(markup: string): State {
    for (let at = 0; at < markup.length; at += 1) {
      if (this.state === 'text' && markup.startsWith('<!--', at)) this.state = 'comment';
      else if (this.state === 'comment' && markup.startsWith('-->', at)) this.state = 'text';
      else this.letter(markup[at] ?? '', markup[at + 1] ?? '');
    }
    return this.state;
  }

  private letter(letter: string, next: string): void {
    if (this.state === 'text') {
      // a `<` at the end of a stretch is taken for a tag: `<{{name}}>` must not get through
      if (letter === '<' && (next === '' || /[a-z/!?]/i.test(next))) this.state = 'tag';
    } else if (this.state === 'tag') {
      if (letter === '>') this.state = 'text';
      else if (letter === '"') this.state = 'double';
      else if (letter === "'") this.state = 'single';
    } else if (this.state === 'double' && letter === '"') this.state = 'tag';
    else if (this.state === 'single' && letter === "'") this.state = 'tag';
  }
}
