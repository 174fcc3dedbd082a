/** A finished paper as files, and what is told of it at the end. */
import type { MadePaper, PrintedSheets } from '../paper/paper';
import { sheetWords } from './sheetWords';

/** One line of what is told at the end. */
export interface Row {
  readonly paper: string;
  readonly pages: string;
  readonly size: string;
  /** Name of its file. */
  readonly file: string;
}

/** A paper as it is put into its folder. Plain data, so that one thread can hand it to another. */
export interface Printed {
  readonly rows: readonly Row[];
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[];
}

/** The paper, its page for a screen if it has been written with it, and the same on sheets. */
export function printedOf(paper: MadePaper): Printed {
  const { screen, sheets } = paper;
  return {
    rows: [rowOf(paper), ...(sheets === undefined ? [] : [rowOfSheets(sheets)])],
    files: [paper, screen, sheets].flatMap((each) =>
      each === undefined ? [] : [{ name: each.fileName, bytes: each.bytes }],
    ),
  };
}

function rowOf(paper: MadePaper): Row {
  return {
    paper: paper.title,
    pages: String(paper.pages.length),
    size: `${sheetWords(paper)}${turnedOn(paper.turning)}${paper.lightOnDark ? ', light on dark: takes much ink' : ''}`,
    file: paper.fileName,
  };
}

/** Cards together on sheets: below the card itself, with how they are to be printed. */
function rowOfSheets({ laidOut, turning, fileName }: PrintedSheets): Row {
  return {
    paper: '  the same on sheets, to print on both sides and cut',
    pages: String(laidOut.pages.length),
    size: `${sheetWords(laidOut)}${turnedOn(turning)}`,
    file: fileName,
  };
}

function turnedOn(turning: MadePaper['turning']): string {
  if (turning === undefined) return '';
  return turning === 'none' ? ', on one side' : `, turned on the ${turning.replace('-', ' ')}`;
}

/** All lines as a table. */
export function tableOf(rows: readonly Row[]): string {
  const head: Row = { paper: 'Paper', pages: 'Pages', size: 'Size on paper', file: 'File' };
  const width = (pick: (row: Row) => string) => Math.max(...[head, ...rows].map((row) => pick(row).length));
  const [paper, pages, size] = [
    width((row) => row.paper),
    width((row) => row.pages),
    width((row) => row.size),
  ];
  return [head, ...rows]
    .map(
      (row) =>
        `${row.paper.padEnd(paper)}  ${row.pages.padStart(pages)}  ${row.size.padEnd(size)}  ${row.file}`,
    )
    .join('\n');
}
