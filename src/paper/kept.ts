/**
 * What no template may leave out: a step of a procedure that it prints, or a caution that belongs to one.
 *
 * A museum may write templates of its own. It may leave a whole procedure out and say everything else in another order
 * or not at all; but a procedure that is printed is printed whole, with its cautions.
 */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { withApostrophes } from '../markup/apostrophes';
import type { Block, CautionBlock, Inline, StepItem } from '../markup/block';
import { withUnitOnce } from '../markup/spans';
import type { Piece } from './pieces';

/** What is looked for, wherever it stands in what a template was filled in with. */
interface KnownProcedure {
  readonly title: string;
  readonly cautions: readonly KnownCaution[];
  readonly steps: readonly { readonly say: readonly Piece[]; readonly cautions: readonly KnownCaution[] }[];
}

interface KnownCaution {
  readonly hazard: string;
  readonly consequence: string;
  readonly avoidance: string;
  readonly short: string;
  readonly again: string;
  readonly brief: boolean;
  /** Whether what to do alone is enough, because the rest was said before. */
  readonly repeated?: boolean;
}

/** Every step and caution that `blocks` lacks of the procedures they print. `context` is what the template was given. */
export function leftOut(context: unknown, blocks: readonly Block[], template: string): readonly Diagnostic[] {
  const printed = printedIn(blocks);
  return proceduresIn(context).flatMap((procedure) => {
    const isThere = ({ say }: KnownProcedure['steps'][number]) => printed.actions.has(pressed(wordsOf(say)));
    if (!procedure.steps.some(isThere)) return [];
    const steps = procedure.steps
      .filter((step) => !isThere(step))
      .map((step) => stepGone(template, procedure.title, wordsOf(step.say)));
    const cautions = [
      ...procedure.cautions.filter(({ brief }) => !brief),
      ...procedure.steps.flatMap((step) => step.cautions),
    ];
    const gone = cautions.filter((caution) => !isSaid(caution, printed.cautions));
    return [
      ...steps,
      ...[...new Set(gone.map(({ hazard }) => hazard))].map((hazard) =>
        cautionGone(template, procedure.title, hazard),
      ),
    ];
  });
}

interface Printed {
  readonly actions: ReadonlySet<string>;
  readonly cautions: readonly string[];
}

function printedIn(blocks: readonly Block[]): Printed {
  const all = blocks.flatMap(withInner);
  const items = all.flatMap((block) => (block.kind === 'steps' ? block.items : []));
  return {
    actions: new Set(items.flatMap(actionsOf)),
    cautions: [
      ...all.flatMap((block) => (block.kind === 'caution' ? [cautionText(block)] : [])),
      ...items.flatMap((item) => item.cautions.map(cautionText)),
    ],
  };
}

function withInner(block: Block): readonly Block[] {
  if (block.kind === 'group') return [block, ...block.blocks.flatMap(withInner)];
  if (block.kind === 'list') return [block, ...block.items.flat().flatMap(withInner)];
  return [block];
}

/** The action of a step, also without words such as “Helper:” before it; the face of what it sends to, in brackets, is none of its words. */
function actionsOf({ action }: StepItem): readonly string[] {
  const text = action
    .map((each) => (each.kind === 'text' ? each.text : pageMark))
    .join('')
    .replace(/\s\([^()]*\ue000\)/g, '');
  return [text, text.slice(text.indexOf(':') + 1)].map(pressed);
}

/** In one line, whether in brief or whole; where it is to be said whole, all three parts. */
function isSaid(
  { hazard, consequence, avoidance, short, again, brief, repeated }: KnownCaution,
  said: readonly string[],
): boolean {
  const whole = [hazard, consequence, avoidance].map(pressed);
  const inBrief = brief ? [short, hazard, ...(repeated === true ? [again] : [])].map(pressed) : [];
  return said.some(
    (text) => whole.every((part) => text.includes(part)) || inBrief.some((part) => text.includes(part)),
  );
}

function cautionText({ hazard, consequence, avoidance }: CautionBlock): string {
  return [hazard, consequence, avoidance].map((part) => pressed(inlineText(part))).join('|');
}

/** Stands for a page or a face in a text; no font of the program has it. */
const pageMark = '\ue000';

function inlineText(content: readonly Inline[]): string {
  return content.map((each) => (each.kind === 'text' ? each.text : ' ')).join('');
}

function wordsOf(pieces: readonly Piece[]): string {
  return pieces.map(({ text }) => text).join('');
}

/** Without white space, as lines and no-break spaces make no difference, and with apostrophes and spans as they are printed. */
function pressed(text: string): string {
  return withUnitOnce(withApostrophes(text)).replace(/[\s\u00a0]+/g, '');
}

function proceduresIn(value: unknown): readonly KnownProcedure[] {
  if (typeof value !== 'object' || value === null) return [];
  if (isProcedure(value)) return [value];
  return Object.values(value).flatMap(proceduresIn);
}

function isProcedure(value: object): value is KnownProcedure {
  return (
    'title' in value &&
    'cautions' in value &&
    Array.isArray(value.cautions) &&
    'steps' in value &&
    Array.isArray(value.steps) &&
    value.steps.every(
      (step: unknown) =>
        typeof step === 'object' &&
        step !== null &&
        'say' in step &&
        Array.isArray(step.say) &&
        'cautions' in step &&
        Array.isArray(step.cautions),
    )
  );
}

function stepGone(template: string, procedure: string, step: string): Diagnostic {
  return {
    code: 'template-drops-step',
    severity: 'error',
    message: `the template \`${template}\` prints the procedure “${procedure}” without one of its steps`,
    found: `no step “${step}”`,
    expected: 'every step of a procedure that is printed',
    mend: 'print all of `steps`, or none of them; to leave a step out for good, say so with its reason under `changes` in the spec',
  };
}

function cautionGone(template: string, procedure: string, hazard: string): Diagnostic {
  return {
    code: 'template-drops-caution',
    severity: 'error',
    message: `the template \`${template}\` prints the procedure “${procedure}” without one of its cautions`,
    found: `no caution “${hazard}”`,
    expected: 'every caution of the procedure and of its steps',
    mend: 'print `cautions` of the procedure and of each step, as the program’s own `pieces/procedure` does',
  };
}
