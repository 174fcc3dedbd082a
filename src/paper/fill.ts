/** The first half of the way of a paper: its template filled in, before anything of it is read. */
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import type { Drawing } from '../drawing/drawing';
import { lackingIn } from '../language/lacking';
import type { Origins } from '../markup/template/origins';
import { fingerprint } from './fingerprint';
import type { Paper, World } from './paper';

/** A template filled in, and what is printed beside its text. */
export interface FilledTemplate {
  readonly context: Readonly<Record<string, unknown>>;
  readonly fingerprint: string;
  readonly html: string;
  readonly origins: Origins;
  readonly drawn: readonly Drawing[];
}

/** Fill in the template of a paper. `printed` stands in place of the fingerprint, for comparing content. */
export function fillTemplate(paper: Paper, world: World, printed?: string): Outcome<FilledTemplate> {
  const problems = paper.problems?.(world) ?? [];
  if (problems.length > 0) return bad(problems);
  // drawings and templates need nothing of the proof, and a thread that is still to be handed it need not wait with them
  const drawings = paper.drawings(world);
  world.templates.open(paper.template);
  const context = paper.context(world);
  const mark = fingerprint([
    paper.name,
    JSON.stringify(context),
    world.templateText,
    JSON.stringify(world.theme),
    JSON.stringify(world.car.spec.print),
    JSON.stringify([...world.signs.values()].map(({ alt }) => alt)),
    ...(world.pictures.length > 0 ? [JSON.stringify(world.pictures)] : []),
  ]);
  const rendered = world.templates.render(paper.template, { ...context, fingerprint: printed ?? mark });
  if (!rendered.ok) return rendered;
  const { html, origins } = rendered.value;
  const drawn = [...drawings, ...(paper.cutOut?.(world, printed ?? mark) ?? []), ...world.pictures];
  return good({ context, fingerprint: mark, html, origins, drawn }, rendered.remarks);
}

/** What every sheet has around its text, beside the furniture. */
const around = ['page-of-pages', 'issue-line', 'subject'] as const;

/** The texts of the library that a paper would print and its language does not say; signs that it does not show left out. */
export function unsaidIn(
  paper: Paper,
  { language, signs }: World,
  { html, drawn }: FilledTemplate,
): readonly string[] {
  if (language.papers === 'all') return [];
  const shown = [...signs].filter(([number]) => html.includes(number)).map(([, { alt }]) => alt);
  const round = around
    .flatMap((key) => language.messages.pieces(key))
    .filter((each) => typeof each === 'string');
  const printed = [
    paper.title,
    html,
    ...shown,
    ...round,
    JSON.stringify(drawn),
    JSON.stringify(language.furniture),
  ];
  return lackingIn(printed.join('\n'));
}
