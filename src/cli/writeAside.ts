/** Writing papers so that an earlier good one is never lost and none is ever half-written. */
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** A file written aside. */
interface Waiting {
  readonly aside: string;
  readonly place: string;
  /** Fulfilled once it is whole and on the disk. */
  readonly written: Promise<void>;
}

/** Files written aside, waiting to take their places. */
export class Aside {
  private readonly waiting: Waiting[] = [];

  private constructor(private readonly folder: string) {}

  /** Make the folder, and everything above it. Throws what the file system says. */
  static async in(folder: string): Promise<Aside> {
    await makeFolder(folder);
    return new Aside(folder);
  }

  /**
   * Begin to write a file aside, and give the place it will take. The disk is not waited for here, so that the next paper is
   * made while this one is written; what goes wrong is told by `keep`.
   */
  write(name: string, bytes: Uint8Array): string {
    const place = join(this.folder, name);
    const aside = join(this.folder, `.${name}.${process.pid}.new`);
    const written = writeToDisk(aside, bytes);
    written.catch(() => undefined);
    this.waiting.push({ aside, place, written });
    return place;
  }

  /** Once every file is whole and on the disk, put each in its place. Throws what the file system says. */
  async keep(): Promise<void> {
    await Promise.all(this.waiting.map(({ written }) => written));
    for (const { aside, place } of this.waiting) await rename(aside, place);
    this.waiting.length = 0;
  }

  /** Take away what was written aside; what stood there before is untouched. */
  async discard(): Promise<void> {
    const gone = this.waiting.splice(0);
    await Promise.allSettled(gone.map(({ written }) => written));
    await Promise.all(gone.map(({ aside }) => rm(aside, { force: true })));
  }
}

/**
 * Make a folder and those above it that are missing. One at a time: asked for all at once, the engine tries for ever where the file
 * system takes no folders.
 */
async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    const above = dirname(folder);
    if (code === 'ENOENT' && above !== folder && !(await isFolder(above))) {
      await makeFolder(above);
      await mkdir(folder);
    } else if (code !== 'EEXIST' || !(await isFolder(folder))) throw error;
  }
}

async function isFolder(path: string): Promise<boolean> {
  const found = await stat(path).catch(() => undefined);
  return found?.isDirectory() === true;
}

async function writeToDisk(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'w');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}
