/** `<ul class="signs">`: safety signs with their words. */
import type { SignsBlock } from '../block';
import { baseOf, type ElementReader, elementsOf } from '../reader';

/** Signs; each entry has one and what it means here. */
export const readSigns: ElementReader = (node, reader): SignsBlock => ({
  kind: 'signs',
  ...baseOf(node),
  items: elementsOf(node).flatMap((item) =>
    reader.signs(item.attributes.get('data-sign')).map((sign) => ({ sign, content: reader.words(item) })),
  ),
});
