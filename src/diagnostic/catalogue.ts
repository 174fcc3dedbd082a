/**
 * Every identifier a problem can carry, with its meaning in plain words.
 *
 * `docs/diagnostics.md` lists the same, and a test holds the two together. An identifier is never
 * reused for another meaning. Each group belongs to one stage.
 */
export const catalogue = {
  // spec: reading the file
  'spec-yaml': 'The file is not well-formed YAML.',
} as const satisfies Record<string, string>;

/** The identifier of a kind of problem. */
export type DiagnosticCode = keyof typeof catalogue;
