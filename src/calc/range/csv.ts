/**
 * Comma-separated text, as spreadsheets write it (RFC 4180), with the place of every cell.
 */

/** One cell of a table. */
export interface Cell {
  readonly text: string;
  /** Line and column of its first letter, counted from 1. */
  readonly line: number;
  readonly column: number;
}

/** A table as rows of cells; lines with nothing in them are left out. */
export type CsvOutcome =
  | { readonly ok: true; readonly rows: readonly (readonly Cell[])[] }
  | { readonly ok: false; readonly line: number; readonly column: number; readonly why: string };

/** Read comma-separated text. Quoted cells may hold commas, line ends and doubled quotes. */
export function readCsv(text: string): CsvOutcome {
  const rows: Cell[][] = [[]];
  let [at, line, lineStart] = [text.startsWith('\uFEFF') ? 1 : 0, 1, 0];
  while (at <= text.length) {
    const start = { line, column: at - lineStart + 1 };
    const quoted = /^[ \t]*"/.exec(text.slice(at, at + 40));
    const cell = quoted ? quotedCell(text, at + quoted[0].length) : plainCell(text, at);
    if (!cell)
      return {
        ok: false,
        ...start,
        why: 'a cell in quotes is not closed, or goes on after its closing quote',
      };
    const blanks = /^[ \t]*/.exec(text.slice(at, cell.end))?.[0].length ?? 0;
    rows.at(-1)?.push({ text: cell.value.trim(), line, column: start.column + blanks });
    for (let i = at; i < cell.end; i++) if (text[i] === '\n') [line, lineStart] = [line + 1, i + 1];
    at = cell.end + 1;
    if (text[cell.end] === '\n') {
      [line, lineStart] = [line + 1, at];
      rows.push([]);
    }
  }
  return { ok: true, rows: rows.filter((row) => row.some((cell) => cell.text !== '')) };
}

function plainCell(text: string, from: number): { value: string; end: number } {
  let end = from;
  while (end < text.length && text[end] !== ',' && text[end] !== '\n') end += 1;
  return { value: text.slice(from, end), end };
}

function quotedCell(text: string, from: number): { value: string; end: number } | undefined {
  let value = '';
  let at = from;
  while (at < text.length) {
    const next = text.indexOf('"', at);
    if (next < 0) return undefined;
    value += text.slice(at, next);
    if (text[next + 1] !== '"') {
      const after = plainCell(text, next + 1);
      return after.value.trim() === '' ? { value, end: after.end } : undefined;
    }
    value += '"';
    at = next + 2;
  }
  return undefined;
}
