/** `hr`: a line across, or lines to write on. */
import { baseOf, type ElementReader } from '../reader';

/** A rule; `lines` is 0 for a plain line across. */
export const readRule: ElementReader = (node) => ({
  kind: 'rule',
  ...baseOf(node),
  lines: Number(node.attributes.get('data-lines') ?? 0),
  ...(node.attributes.has('data-fill') ? { fill: true } : {}),
});
