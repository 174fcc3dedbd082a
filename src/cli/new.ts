/** `kettlebook new`: a spec begun by asking, which can be left at any question and gone on with. */
import { readFile, writeFile } from 'node:fs/promises';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import { type Kept, readKept, writeKept } from '../newcar/kept';
import { type NewCar, type Question, readNewCar } from '../newcar/questions';
import { fillIn, questionsFor } from '../newcar/skeleton';
import type { Asked } from './arguments';
import { askAll, leaving, type Typed } from './askQuestions';
import { openCar } from './openCar';
import { readSharedFiles } from './sharedFiles';
import { tellProblems } from './tell';
import { type ExitCode, exitCodes, type Terminal } from './terminal';
import { unwritable } from './unwritable';

/** Who answers. */
export interface Keeper {
  readonly typed: Typed;
  /** Somebody is there who can answer again; a pipe cannot. */
  readonly answersAgain: boolean;
  /** The day, year-month-day. */
  readonly today: string;
}

/** No more open questions than this are told by name. */
const mostTold = 12;

/** Ask, write, and say how far the spec has come. */
export async function newCar(
  { file }: Extract<Asked, { kind: 'new' }>,
  root: string,
  terminal: Terminal,
  { typed, answersAgain, today }: Keeper,
): Promise<ExitCode> {
  const { texts } = readSharedFiles(root);
  const asking = readNewCar(texts.get('new-car.yaml') ?? '', 'shared/new-car.yaml');
  if (!asking.ok) return fail(asking.problems, terminal);
  const begun = await begin(file, asking.value, texts, terminal, { typed, answersAgain, today });
  if (!begun.ok) return fail(begun.problems, terminal);
  if (begun.value === undefined) {
    terminal.complain('Nothing was written.');
    return exitCodes.atFault;
  }
  const skeleton = texts.get(`skeletons/${begun.value.kind}.yaml`) ?? '';
  const questions = questionsFor(skeleton, asking.value.questions);
  const save = (kept: Kept) =>
    Promise.all([
      writeFile(file, fillIn(skeleton, questions, kept.answers)),
      writeFile(besides(file), writeKept(kept)),
    ]);
  try {
    await save(begun.value);
    const answers = await askAll(questions, begun.value, save, { terminal, typed, answersAgain, today });
    const open = questions.filter(({ key }) => !answers.has(key));
    return await report(file, root, open, terminal);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error)) throw error;
    return fail([unwritable(file, error)], terminal);
  }
}

/** The file beside the spec in which the answers are kept. */
function besides(file: string): string {
  return `${file.replace(/\.ya?ml$/, '')}.answers.yaml`;
}

/** Where to begin: the answers of the last time, or a kind of plant. Nothing if the keeper does not want the file written over. */
async function begin(
  file: string,
  { kinds, questions }: NewCar,
  texts: ReadonlyMap<string, string>,
  terminal: Terminal,
  { typed, answersAgain }: Keeper,
): Promise<Outcome<Kept | undefined>> {
  const [spec, answers] = await Promise.all([textOf(file), textOf(besides(file))]);
  const kept = answers === undefined ? undefined : readKept(answers, besides(file));
  if (kept !== undefined && !kept.ok) return kept;
  const known = kept?.value;
  if (known !== undefined && !kinds.some(({ key }) => key === known.kind))
    return bad([
      unknownKind(
        besides(file),
        known.kind,
        kinds.map(({ key }) => key),
      ),
    ]);
  if (spec !== undefined) {
    const skeleton = known === undefined ? undefined : texts.get(`skeletons/${known.kind}.yaml`);
    const ours =
      skeleton !== undefined &&
      known !== undefined &&
      spec === fillIn(skeleton, questionsFor(skeleton, questions), known.answers);
    if (!ours && !(await mayWriteOver(file, known !== undefined, terminal, typed))) return good(undefined);
  }
  if (known !== undefined) {
    terminal.say(`Going on where it was left: ${known.answers.size} questions are answered.\n`);
    return good(known);
  }
  const kind = await chooseKind(kinds, terminal, typed, answersAgain);
  return good(kind === undefined ? undefined : { kind, answers: new Map() });
}

async function mayWriteOver(
  file: string,
  edited: boolean,
  terminal: Terminal,
  typed: Typed,
): Promise<boolean> {
  const how = edited
    ? `is not what was written from the answers: it was changed by hand since the last question, or ${besides(file)} was`
    : 'is there already';
  terminal.say(`${file} ${how}. Write over it? Type yes or no.`);
  const { value } = await typed.next();
  return typeof value === 'string' && value.trim().toLowerCase() === 'yes';
}

async function chooseKind(
  kinds: NewCar['kinds'],
  terminal: Terminal,
  typed: Typed,
  answersAgain: boolean,
): Promise<string | undefined> {
  for (;;) {
    terminal.say(
      'Which comes nearest to the car? If none does, take the one with the same burner: parts and pipes are changed\nin the file afterwards, and the cars in `cars/` show how other plants are written. Type ? for more of each.',
    );
    terminal.say(kinds.map(({ say }, index) => `  ${index + 1}  ${say}`).join('\n'));
    const { value } = await typed.next();
    if (typeof value !== 'string' || value.trim() === leaving) return undefined;
    const text = value.trim();
    if (text === '?') {
      terminal.say(kinds.map(({ more }, index) => `  ${index + 1}  ${more}`).join('\n'));
      continue;
    }
    const chosen = kinds[Number(text) - 1] ?? kinds.find(({ key }) => key === text);
    if (chosen !== undefined) return chosen.key;
    terminal.say(`Type a number from 1 to ${kinds.length}.\n`);
    if (!answersAgain) return undefined;
  }
}

/** What `check` says of it so far. */
async function report(
  file: string,
  root: string,
  open: readonly Question[],
  terminal: Terminal,
): Promise<ExitCode> {
  terminal.say(`\nWritten into ${file}. ${openWords(open, file)}`);
  const opened = await openCar(file, root);
  if (opened.ok) {
    terminal.say(
      `It passes \`kettlebook check\`. Now go through it at the car: every part under LOOK AT THE CAR is the usual one, and nobody has looked yet. Then \`kettlebook make ${file}\` makes the papers.`,
    );
    return exitCodes.done;
  }
  if (open.length > 0 && opened.problems.every(({ code }) => ofAbsence.has(code))) {
    terminal.say('`kettlebook check` tells at which lines they are missing.');
    return exitCodes.done;
  }
  tellProblems(opened.problems, terminal);
  terminal.say('What is to be mended stands above; the same is told by `kettlebook check`.');
  return exitCodes.done;
}

/** Problems that come of questions passed over: every answer that was given has been judged. */
const ofAbsence: ReadonlySet<string> = new Set(['spec-missing', 'spec-wrong-type']);

function openWords(open: readonly Question[], file: string): string {
  if (open.length === 0) return 'Every question is answered.';
  const told = open.slice(0, mostTold).map(({ ask }) => `  ${ask}`);
  const more = open.length > mostTold ? [`  and ${open.length - mostTold} more`] : [];
  const count = open.length === 1 ? 'One question is' : `${open.length} questions are`;
  return [`${count} open; \`kettlebook new ${file}\` goes on:`, ...told, ...more].join('\n');
}

async function textOf(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

function fail(problems: readonly Diagnostic[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  return exitCodes.atFault;
}

function unknownKind(file: string, kind: string, kinds: readonly string[]): Diagnostic {
  return {
    code: 'spec-not-a-choice',
    severity: 'error',
    at: { file, line: 1, column: 1, path: 'kind' },
    message: `there is no kind of plant \`${kind}\` to go on with`,
    found: `\`${kind}\``,
    expected: kinds.map((each) => `\`${each}\``).join(', '),
    mend: 'put one of these there, or delete the file and begin anew',
  };
}
