/** Reading a spec and the files that stand beside it. */
import { readdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import type { CarFiles } from '../kettlebook';
import { kindOfFile } from './kindOfFile';
import { saidOf } from './saidOf';

/** A spec is text of this size at most; a larger file is something else. */
const mostBytes = 4 * 1024 * 1024;

/** Read a spec, and the logs beside it. */
export async function readCarFiles(path: string): Promise<Outcome<CarFiles>> {
  try {
    const bytes = await readFile(path);
    if (bytes.length > mostBytes)
      return bad([unreadable(path, 'it is larger than any spec', 'name the spec file, not another')]);
    const other = kindOfFile(bytes);
    if (other !== undefined) return bad([unreadable(path, other.why, other.mend)]);
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return good({ file: path, text, beside: await logsBeside(path) });
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT')
      return bad([unreadable(path, 'there is no such file', 'look at the name and the folder')]);
    if (code === 'EISDIR') return bad([unreadable(path, 'it is a folder', 'name the spec file in it')]);
    if (error instanceof TypeError)
      return bad([
        unreadable(
          path,
          'some of its letters are not written in UTF-8',
          'open it in the editor it was written with and save it with the encoding UTF-8',
        ),
      ]);
    return bad([unreadable(path, saidOf(error), 'see that it may be read')]);
  }
}

/** Every CSV file beside the spec, by name. One that cannot be read is as if it were not there: a spec that names it is told so. */
async function logsBeside(path: string): Promise<ReadonlyMap<string, string>> {
  const folder = dirname(path);
  const names = (await readdir(folder)).filter((name) => /\.csv$/i.test(name));
  const read = await Promise.all(names.map((name) => readFile(join(folder, name)).catch(() => undefined)));
  return new Map(
    read.flatMap((bytes, index): [string, string][] => {
      const name = names[index];
      return bytes === undefined || name === undefined ? [] : [[name, textOfLog(bytes)]];
    }),
  );
}

/** Spreadsheets write “Unicode text” in UTF-16, little end first. */
function textOfLog(bytes: Uint8Array): string {
  const wide = bytes[0] === 0xff && bytes[1] === 0xfe;
  return new TextDecoder(wide ? 'utf-16le' : 'utf-8').decode(bytes);
}

function unreadable(path: string, why: string, mend: string) {
  return {
    code: 'file-unreadable',
    severity: 'error',
    message: `\`${path}\` cannot be read: ${why}`,
    mend,
  } as const;
}
