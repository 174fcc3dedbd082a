/** The way of a paper from its content to bytes. */
import { good, type Outcome } from '../diagnostic/diagnostic';
import { writeScreenPage } from '../html/page';
import type { LaidOut } from '../layout/frame';
import { bookwise, type Turning } from '../layout/impose';
import { withApostrophes } from '../markup/apostrophes';
import { writePages } from '../pdf/pages';
import { bindPdf, writePdf } from '../pdf/write';
import { type WrittenBook, writeFirstPart } from './inTwo';
import {
  type Fill,
  type FilledPaper,
  factsOf,
  fillPaper,
  type Help,
  inPaper,
  type MadePaper,
  type Paper,
  type PrintedSheets,
  type ScreenDraft,
  type TakeDraft,
  type World,
} from './paper';
import { onSheets } from './sheets';

const utf8 = new TextEncoder();

/**
 * Make a paper: pages, their PDF, and the page for a screen unless `take` has it written elsewhere. Who takes that may help with the
 * pages too.
 */
export async function makePaper(
  paper: Paper,
  world: World,
  fill: Fill = fillPaper,
  take: TakeDraft = () => undefined,
): Promise<Outcome<MadePaper>> {
  const filled = fill(paper, world);
  if (!filled.ok) return filled;
  const { name, title, lightOnDark = false } = paper;
  const draft: ScreenDraft = { ...filled.value, name, title, lightOnDark };
  // offered before the pages are laid out, so that both go on at once
  const help = take(draft);
  const set = writtenBook(paper, world, filled.value, help);
  if (!set.ok) return inPaper(paper, set.problems);
  const { written, binding, laidOut } = set.value;
  const together = laidOut === undefined ? undefined : onSheets(laidOut, world);
  const faces = together === undefined && laidOut !== undefined ? facesTurn(laidOut) : undefined;
  const edge = paper.turning === undefined ? faces : paper.turning(world);
  const facts = pdfFacts(paper, world, filled.value);
  const bytes = bindPdf(written, binding, edge === undefined ? facts : { ...facts, duplex: edge });
  const remarks = [...filled.remarks, ...set.remarks];
  const made: MadePaper = {
    ...factsOf(paper, filled.value),
    bytes,
    pages: written.pages.map(({ widthPt, heightPt }) => ({ widthPt, heightPt })),
    laidOut,
    remarks,
    ...(edge === undefined ? {} : { turning: edge }),
    ...(help === undefined ? { screen: screenFile(draft, world) } : {}),
  };
  if (together === undefined) return good(made, remarks);
  const [side] = together.pages;
  if (side === undefined) return good(made, remarks);
  const turning = bookwise(side);
  const sheets: PrintedSheets = {
    fileName: `${paper.name}-sheets.pdf`,
    bytes: await writePdf(together, { ...facts, duplex: turning }),
    laidOut: together,
    turning,
  };
  return good({ ...made, sheets }, remarks);
}

/** Lay a paper out and write its pages, a book together with a partner if there is one. */
function writtenBook(
  paper: Paper,
  world: World,
  { blocks, fingerprint: mark }: FilledPaper,
  help: Help | undefined,
): Outcome<WrittenBook> {
  const { fontFiles } = world;
  const flow = help?.partner === undefined ? undefined : paper.flow?.(world, mark);
  if (flow?.ok === true && help?.partner !== undefined)
    return writeFirstPart(blocks, flow.value, fontFiles, help.partner);
  const laidOut = paper.layOut(blocks, world, mark);
  if (!laidOut.ok) return laidOut;
  const { value, remarks } = laidOut;
  return good({ written: writePages(value, fontFiles), binding: value, laidOut: value }, remarks);
}

function pdfFacts(
  { title }: Paper,
  { car: { spec }, language, fontFiles }: World,
  { fingerprint: mark }: FilledPaper,
) {
  return {
    title: withApostrophes(`${spec.car.name}: ${title}`),
    language: spec.print.language,
    author: withApostrophes(spec.keeper.name),
    subject: language.messages.say('subject', {
      title,
      letter: spec.issue.letter,
      date: spec.issue.date,
      mark,
    }),
    creationDate: new Date(`${spec.issue.date}T00:00:00Z`),
    fontFiles,
  };
}

/** The edge on which a sheet is turned that has a face on each side; nothing for a single face. */
function facesTurn({ pages: [front, back] }: LaidOut): Turning | undefined {
  return front === undefined || back === undefined ? undefined : bookwise(front);
}

/** The same blocks as a page for a screen. */
export function screenFile(
  { name, title, fingerprint: mark, blocks, lightOnDark }: ScreenDraft,
  { car, screen, fonts }: Pick<World, 'car' | 'screen' | 'fonts'>,
): { readonly fileName: string; readonly bytes: Uint8Array } {
  const page = writeScreenPage(blocks, {
    title,
    language: car.spec.print.language,
    car: withApostrophes(car.spec.car.name),
    issue: car.spec.issue.letter,
    date: car.spec.issue.date,
    fingerprint: mark,
    invented: car.spec.car.invented ?? false,
    look: screen,
    fonts,
    dark: lightOnDark,
  });
  return { fileName: `${name}.html`, bytes: utf8.encode(page) };
}
