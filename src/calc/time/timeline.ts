/** What a start-up is made of: read from `shared/timeline.yaml`, which a keeper or museum may change. */
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome } from '../../diagnostic/diagnostic';
import type { Quantity } from '../../quantity/quantity';
import { inForm } from '../../spec/inForm';
import { problemsOf } from '../../spec/problems';
import { key, measure, words } from '../../spec/schema/field';
import { readSource } from '../../spec/source';

const takes = ['said', 'warm-first', 'soak', 'raising-steam'] as const;

const partForm = z.strictObject({
  id: key,
  name: words('What the papers call it.', 'soak of the main vaporizer'),
  takes: z.enum(takes),
  least: measure('time', 'The least time it takes.', '10 min').optional(),
  good: measure('time', 'A good time for it.', '20 min').optional(),
  mark: words('Where the times come from.', 'common practice, no source').optional(),
  after: z.array(key).optional(),
  flame: z.boolean().optional(),
});

const timelineForm = z.strictObject({
  clock: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/),
  parts: z.array(partForm).min(1),
});

/** One part of a start-up. */
export interface TimelinePart {
  readonly id: string;
  readonly name: string;
  readonly takes: (typeof takes)[number];
  /** Where `takes` is `said`. */
  readonly least?: Quantity<'time'>;
  readonly good?: Quantity<'time'>;
  readonly mark?: string;
  readonly after?: readonly string[];
  /** Whether there is a flame or steam, so that the car is never left. */
  readonly flame: boolean;
}

/** The whole of it. */
export interface Timeline {
  /** The time of moving off that the tables show, seconds of the day. */
  readonly clockS: number;
  readonly parts: readonly TimelinePart[];
}

/** Read the file. Every problem is reported at its line. */
export function readTimeline(text: string, file: string): Outcome<Timeline> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = inForm(source.value, timelineForm, 'timeline');
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, timelineForm));
  const { clock, parts } = parsed.data;
  const problems = parts.flatMap((part, index): readonly Diagnostic[] => {
    const at = source.value.spotOfValue(['parts', index]);
    const earlier = parts.slice(0, index).map(({ id }) => id);
    const told = (message: string, mend: string): Diagnostic => ({
      code: 'shared-timeline',
      severity: 'error',
      at,
      message,
      mend,
    });
    const strange = (part.after ?? []).find((id) => !earlier.includes(id));
    return [
      ...(earlier.includes(part.id) ? [told(`the part \`${part.id}\` stands twice`, 'rename one')] : []),
      ...(strange === undefined
        ? []
        : [
            told(
              `\`${part.id}\` waits for \`${strange}\`, which does not stand before it`,
              'name an earlier part',
            ),
          ]),
      ...(part.takes === 'said' && (part.least === undefined || part.good === undefined)
        ? [told(`\`${part.id}\` says no times`, 'give it `least` and `good`')]
        : []),
      ...(part.least !== undefined && part.good !== undefined && part.least.si > part.good.si
        ? [told(`the least time of \`${part.id}\` is above its good time`, 'correct one of the two')]
        : []),
    ];
  });
  if (problems.length > 0) return bad(problems);
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return good({ clockS: hours * 3600 + minutes * 60, parts: parts.map(partOf) });
}

function partOf({
  least,
  good: goodTime,
  mark,
  after,
  flame,
  ...part
}: z.output<typeof partForm>): TimelinePart {
  return {
    ...part,
    flame: flame === true,
    ...(least === undefined ? {} : { least }),
    ...(goodTime === undefined ? {} : { good: goodTime }),
    ...(mark === undefined ? {} : { mark }),
    ...(after === undefined ? {} : { after }),
  };
}
