/** `figure` and `figcaption`. */
import { baseOf, type ElementReader, takeParts } from '../reader';

/** A drawing given by name. An unknown name has been told by then. */
export const readFigure: ElementReader = (node, reader) => {
  const drawing = reader.drawings.get(node.attributes.get('data-drawing') ?? '');
  const parts = takeParts(node, reader, [{ form: 'figcaption', least: 0, most: 1 }]);
  const trueSize = node.attributes.has('data-true-size') ? { trueSize: true } : {};
  return (
    drawing && {
      kind: 'figure',
      ...baseOf(node),
      ...trueSize,
      drawing,
      caption: reader.words(parts.figcaption[0]),
    }
  );
};
