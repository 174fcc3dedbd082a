/** `<ol class="steps">`: a procedure. */
import type { StepItem } from '../block';
import type { Checked } from '../check';
import { baseOf, type ElementReader, elementsOf, type Reader, takeParts } from '../reader';
import { readCaution } from './caution';

/** A procedure; each entry is one step. */
export const readSteps: ElementReader = (node, reader) => ({
  kind: 'steps',
  ...baseOf(node),
  mark: node.attributes.get('data-mark') === 'tick' ? 'tick' : 'number',
  ...(node.attributes.has('data-led') ? { led: true } : {}),
  start: Number(node.attributes.get('start') ?? 1),
  items: elementsOf(node).map((item) => readStep(item, reader)),
});

function readStep(item: Checked, reader: Reader): StepItem {
  const parts = takeParts(item, reader, [
    { form: 'aside', least: 0, most: 99 },
    { form: 'p.action', least: 1, most: 1 },
    { form: 'p.result', least: 0, most: 1 },
    { form: 'p.remark', least: 0, most: 1 },
  ]);
  const id = item.attributes.get('id');
  return {
    origin: item.origin,
    ...(id === undefined ? {} : { id }),
    cautions: parts.aside.flatMap((aside) => readCaution(aside, reader) ?? []),
    action: reader.words(parts['p.action'][0]),
    result: reader.words(parts['p.result'][0]),
    remark: reader.words(parts['p.remark'][0]),
    critical: item.attributes.has('data-critical'),
  };
}
