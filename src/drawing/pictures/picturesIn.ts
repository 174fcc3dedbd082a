/** The pictures among the texts that a workshop has: `pictures/badge.svg`. */
import { bad, good, type Outcome } from '../../diagnostic/diagnostic';
import type { Drawing } from '../drawing';
import { readPicture } from './picture';

/** Every picture; or every fault of all of them, if there is any. */
export function picturesIn(texts: ReadonlyMap<string, string>): Outcome<readonly Drawing[]> {
  const read = [...texts].flatMap(([name, text]) => {
    const own = /^pictures\/(.+)\.svg$/.exec(name)?.[1];
    return own === undefined ? [] : [readPicture(text, `shared/${name}`, own)];
  });
  const problems = read.flatMap((each) => (each.ok ? [] : each.problems));
  return problems.length > 0 ? bad(problems) : good(read.flatMap((each) => (each.ok ? [each.value] : [])));
}
