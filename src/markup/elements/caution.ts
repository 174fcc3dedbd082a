/** `aside`: a caution. */
import type { CautionBlock, SignalWord } from '../block';
import type { Checked } from '../check';
import { baseOf, type Reader, takeParts } from '../reader';

const signals: readonly SignalWord[] = ['danger', 'warning', 'caution', 'notice'];

/**
 * A caution. Only a notice, which is not about injury, and a brief one, which says it all in one line, may leave out
 * what happens and how to avoid it.
 */
export function readCaution(node: Checked, reader: Reader): CautionBlock | undefined {
  const signal = signals.find((word) => word === node.attributes.get('data-signal'));
  if (!signal) return undefined;
  const brief = node.attributes.has('data-brief');
  const least = signal === 'notice' || brief ? 0 : 1;
  const parts = takeParts(node, reader, [
    { form: 'p.hazard', least: 1, most: 1 },
    { form: 'p.consequence', least, most: 1 },
    { form: 'p.avoidance', least, most: 1 },
  ]);
  const signs = reader.signs(node.attributes.get('data-signs'));
  const says = node.attributes.get('data-says');
  const [left] = brief ? [...parts['p.consequence'], ...parts['p.avoidance']] : [];
  if (left) {
    reader.report('markup-part', left, {
      message: 'a brief caution has only its hazard',
      mend: 'take out `data-brief`, or say it all in the hazard',
    });
  }
  return {
    kind: 'caution',
    ...baseOf(node),
    signal,
    ...(brief ? { brief } : {}),
    ...(says === undefined ? {} : { says }),
    ...(signs.length > 0 ? { signs } : {}),
    hazard: reader.words(parts['p.hazard'][0]),
    consequence: reader.words(parts['p.consequence'][0]),
    avoidance: reader.words(parts['p.avoidance'][0]),
  };
}
