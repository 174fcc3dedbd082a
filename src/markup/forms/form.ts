/** One form of an element: where it may stand, what it may carry. */

/** What an attribute may hold. */
export type AttributeRule =
  | { readonly kind: 'one-of'; readonly values: readonly string[] }
  /** Any of these words, each at most once, with spaces between; words in one `group` exclude each other. */
  | { readonly kind: 'words'; readonly groups: readonly (readonly string[])[] }
  | { readonly kind: 'count'; readonly least: number; readonly most: number }
  | { readonly kind: 'flag' }
  | { readonly kind: 'id' }
  | { readonly kind: 'link' }
  | { readonly kind: 'drawing' }
  /** The name of a field, unique in a paper. */
  | { readonly kind: 'field-name' }
  /** Any words at all. */
  | { readonly kind: 'text' }
  /** Numbers of safety signs, at most so many, with spaces between. */
  | { readonly kind: 'signs'; readonly most: number };

/** One form of an element. */
export interface Form {
  readonly element: string;
  /** The class words that choose this form, if the element has others at the same place. */
  readonly marker?: string;
  /** The forms this one may stand in. */
  readonly within: readonly FormName[];
  /** What may stand in it besides the forms that name it in `within`. */
  readonly text: 'words' | 'none';
  /** Must hold words or other content. */
  readonly filled: boolean;
  readonly attributes: Readonly<Record<string, AttributeRule>>;
  readonly required?: readonly string[];
  readonly meaning: string;
}

/** The name of a form. */
export type FormName =
  | 'paper'
  | 'h1'
  | 'h2'
  | 'h3'
  | 'h4'
  | 'p'
  | 'ul'
  | 'ol'
  | 'li'
  | 'ul.signs'
  | 'li in ul.signs'
  | 'dl'
  | 'dt'
  | 'dd'
  | 'table'
  | 'caption'
  | 'colgroup'
  | 'col'
  | 'thead'
  | 'tbody'
  | 'tr in thead'
  | 'tr in tbody'
  | 'th'
  | 'td'
  | 'figure'
  | 'figcaption'
  | 'aside'
  | 'p.hazard'
  | 'p.consequence'
  | 'p.avoidance'
  | 'ol.steps'
  | 'li in ol.steps'
  | 'p.action'
  | 'p.result'
  | 'p.remark'
  | 'nav'
  | 'section'
  | 'hr'
  | 'hr.page-break'
  | 'input'
  | 'textarea'
  | 'strong'
  | 'em'
  | 'br'
  | 'a'
  | 'a.page';

/** Some of the forms. */
export type Forms = Readonly<Partial<Record<Exclude<FormName, 'paper'>, Form>>>;
