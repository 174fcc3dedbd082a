/**
 * The manual's placed lines as JSON, for the bare script that is timed beside the program.
 *
 * Built and run by `bin/bench.mjs`: `node lines.cjs SPEC ROOT FILE`.
 */
import { writeFileSync } from 'node:fs';
import { openCar } from '../src/cli/openCar';
import { setOnePaper } from '../src/kettlebook';

const [spec = '', root = '', file = ''] = process.argv.slice(2);

/** Lay out the manual and write, page by page, `[x, y, face, size, text]` for every run of text. */
async function dumpLines(): Promise<void> {
  const opened = await openCar(spec, root);
  if (!opened.ok) throw new Error('the car cannot be read');
  const { ready, workshop } = opened.value;
  const manual = workshop.papers.find(({ name }) => name === 'owners-manual');
  if (manual === undefined) throw new Error('there is no manual');
  const set = setOnePaper(ready, manual, workshop);
  if (!set.ok) throw new Error('the manual cannot be laid out');
  const pages = set.value.laidOut.pages.map(({ widthPt, heightPt, items }) => ({
    size: [widthPt, heightPt],
    lines: items.flatMap((item) =>
      item.kind === 'text' ? [[item.x, item.y, item.face, item.sizePt, item.text]] : [],
    ),
  }));
  writeFileSync(file, JSON.stringify(pages));
}

void dumpLines();
