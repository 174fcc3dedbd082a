/** The list that leads from what is noticed to the procedure for it. */
import { type Procedures, senses } from '../../procedure/procedure';
import type { Plans } from '../plans';

/** The signs that are noticed in one way, under their head; `title` is empty for those that stand over the others. */
export interface SignsUnderHead {
  readonly title: string;
  readonly signs: readonly LeadingSign[];
}

/** A sign, and the procedure that it leads to. */
export interface LeadingSign {
  readonly say: string;
  readonly id: string;
  readonly trouble: string;
}

/**
 * Every sign of these emergencies under the heads of the plans; under one head in the order of the library, the gravest
 * first. A way of noticing that the plans do not name stands at the end, without a head, so that no sign is lost.
 */
export function signsOfTrouble(emergencies: Procedures, plans: Plans): readonly SignsUnderHead[] {
  const planned = plans['signs-of-trouble'];
  const left = senses.filter((sense) => planned.every(({ by }) => !by.includes(sense)));
  const heads: Plans['signs-of-trouble'] = [...planned, ...left.map((sense) => ({ by: [sense] }))];
  return heads
    .map(({ by, title = '' }) => ({
      title,
      signs: by.flatMap((sense) =>
        emergencies.flatMap(({ id, title: trouble, toldBy }) =>
          toldBy.filter((sign) => sign.by === sense).map(({ say }) => ({ say, id, trouble })),
        ),
      ),
    }))
    .filter(({ signs }) => signs.length > 0);
}
