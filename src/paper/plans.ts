/** Which papers can be made: read from `shared/papers.yaml`, which a keeper may change. */
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import { phases, senses } from '../procedure/procedure';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { key } from '../spec/schema/field';
import { readSource, type SpecSource } from '../spec/source';

/** Papers that are not cards of the plans, by name. */
export const paperNames = [
  'card-valve-positions',
  'card-burner-front',
  'card-for-the-dark',
  'visiting-driver',
  'log-sheet',
  'range-table',
  'trip-card',
  'dipsticks',
  'valve-tags',
  'inspection-sheet',
  'docent-guide',
  'owners-manual',
  'tour-card',
  'reprint-slip',
] as const;

const phaseList = z.array(z.enum(phases)).min(1);

const plansForm = z.strictObject({
  chapters: z.array(z.strictObject({ id: key, title: z.string().min(1), phases: phaseList })),
  cards: z.array(
    z.strictObject({
      name: key,
      title: z.string().min(1),
      what: z.string().min(1),
      read: z.enum(['dash', 'lap']),
      phases: phaseList.optional(),
      procedures: z.array(key).min(1).optional(),
      glass: z.boolean().optional(),
      // the card that is taken up when this one is done
      next: key.optional(),
      // whether that is when its last step is done, or when the run is
      ends: z.enum(['card', 'run']).optional(),
    }),
  ),
  papers: z.record(z.enum(paperNames), z.strictObject({ title: z.string().min(1), what: z.string().min(1) })),
  own: z
    .array(
      z.strictObject({
        name: key,
        title: z.string().min(1),
        what: z.string().min(1),
        read: z.enum(['dash', 'lap', 'wall', 'desk']),
      }),
    )
    .optional(),
  'valve-card': z.array(key).min(1),
  'valve-tags': z.array(z.enum(['round', 'oblong'])).min(1),
  // under which heads the signs of trouble stand, in order; those without a head stand over them
  'signs-of-trouble': z.array(
    z.strictObject({
      by: z.array(z.enum(senses)).min(1),
      title: z.string().min(1).optional(),
    }),
  ),
  'not-laminated': z.array(key),
});

/** The chapters of the manual and the cards. */
export type Plans = z.output<typeof plansForm>;

/** A paper’s title, and what it is for in a few words. */
export type PaperTitle = Plans['papers'][(typeof paperNames)[number]];

/** One card. */
export type CardPlan = Plans['cards'][number];

/** A paper that a museum or a club made up: its template has its name. */
export type OwnPlan = NonNullable<Plans['own']>[number];

/** Read the plans. */
export function readPlans(text: string, file: string): Outcome<Plans> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = inForm(source.value, plansForm, 'papers');
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, plansForm));
  const twice = namesTwice(parsed.data, source.value);
  return twice.length > 0 ? bad(twice) : good(parsed.data);
}

/** Papers of one’s own that are called as another paper is. */
function namesTwice({ cards, own = [] }: Plans, source: SpecSource): readonly Diagnostic[] {
  const taken = new Set<string>([...paperNames, ...cards.map(({ name }) => name)]);
  return own.flatMap(({ name }, index): Diagnostic[] => {
    const found = taken.has(name);
    taken.add(name);
    if (!found) return [];
    return [
      {
        code: 'spec-name-twice',
        severity: 'error',
        at: source.spotOfValue(['own', index, 'name']),
        message: `there is a paper \`${name}\` already`,
        found: `\`${name}\``,
        expected: 'a name that no other paper has',
        mend: 'give it another name; a paper of the program is changed by a template of the same name',
      },
    ];
  });
}
