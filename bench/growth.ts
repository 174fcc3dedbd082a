/**
 * Growth: time and memory for papers of up to 2,000 pages, and memory over many cars in one process.
 *
 * Built and run by `bin/bench.mjs`: `node growth.cjs pages ROOT N` lays out and writes a manual of about N pages and
 * says how much processor time and memory that took as JSON; `node growth.cjs fleet ROOT N` makes every paper of the first demo car
 * N times over and says the megabytes in use after each time.
 */
import { openCar } from '../src/cli/openCar';
import { makePapers, worldOf } from '../src/kettlebook';
import type { Block } from '../src/markup/block';
import { fillPaper } from '../src/paper/paper';
import { writePdf } from '../src/pdf/write';

const [what = '', root = '', asked = '1'] = process.argv.slice(2);
const many = Number(asked);
const spec = `${root}/cars/marigold.yaml`;

async function open() {
  const opened = await openCar(spec, root);
  if (!opened.ok) throw new Error('the car cannot be read');
  return opened.value;
}

/** The manual's own blocks, over and over, to about as many pages as are asked for; laid out and written. */
async function pages(): Promise<object> {
  const { ready, workshop } = await open();
  const manual = workshop.papers.find(({ name }) => name === 'owners-manual');
  if (manual === undefined) throw new Error('there is no manual');
  const world = worldOf(ready, workshop);
  const filled = fillPaper(manual, world);
  if (!filled.ok) throw new Error('the manual cannot be filled in');
  const { blocks, fingerprint } = filled.value;
  const once = manual.layOut(blocks, world, fingerprint);
  if (!once.ok) throw new Error('the manual cannot be laid out');
  const times = Math.max(1, Math.round(many / once.value.pages.length));
  const long = Array.from({ length: times }, (_, copy) => copyOf(blocks, copy)).flat();
  const started = process.cpuUsage();
  const laidOut = manual.layOut(long, world, fingerprint);
  if (!laidOut.ok) throw new Error(JSON.stringify(laidOut.problems[0]));
  const bytes = await writePdf(laidOut.value, {
    title: 'Growth',
    language: 'en',
    creationDate: new Date(0),
    fontFiles: workshop.fontFiles,
  });
  const { user, system } = process.cpuUsage(started);
  return {
    pages: laidOut.value.pages.length,
    milliseconds: (user + system) / 1000,
    fileBytes: bytes.length,
    megabytes: process.resourceUsage().maxRSS / 1024,
  };
}

/** Blocks with names of their own for this copy; the list of contents stands in the first copy only. */
function copyOf(blocks: readonly Block[], copy: number): readonly Block[] {
  if (copy === 0) return blocks;
  const named = new Set(['id', 'link', 'target']);
  const kept = blocks.filter((block) => !JSON.stringify(block).includes('"kind":"contents"'));
  const renamed = JSON.stringify(kept, (key, value: unknown) =>
    named.has(key) && typeof value === 'string' ? `${value}-copy${copy}` : value,
  );
  return JSON.parse(renamed) as readonly Block[];
}

/** Every paper of one car, again and again in one process; megabytes in use after each time. */
async function fleet(): Promise<object> {
  const used: number[] = [];
  for (let car = 0; car < many; car += 1) {
    const { ready, workshop } = await open();
    await makePapers(ready, workshop.papers, workshop, () => undefined);
    globalThis.gc?.();
    used.push(Math.round(process.memoryUsage().heapUsed / 1024 / 1024));
  }
  return {
    cars: many,
    heapMegabytes: used,
    peakMegabytes: Math.round(process.resourceUsage().maxRSS / 1024),
  };
}

const result = what === 'fleet' ? fleet() : pages();
void result.then((found) => console.log(JSON.stringify(found)));
