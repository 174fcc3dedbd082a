/** `h1` to `h4`. */
import { baseOf, type ElementReader } from '../reader';

/** A heading; its level is the figure in its name. */
export const readHeading: ElementReader = (node, reader) => ({
  kind: 'heading',
  ...baseOf(node),
  level: levels[node.form] ?? 4,
  content: reader.words(node),
});

const levels: Readonly<Record<string, 1 | 2 | 3 | 4>> = { h1: 1, h2: 2, h3: 3, h4: 4 };
