/** The Handlebars parser alone. Its compiler is not used, so that no program text is made from a template. */
declare module 'handlebars/dist/cjs/handlebars/compiler/base.js' {
  import type { ProgramNode } from './syntax';
  /** Throws an error with `lineNumber` and `column`, or one whose message begins "Parse error on line N". */
  export function parse(text: string): ProgramNode;
}
