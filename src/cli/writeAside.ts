/** Writing papers so that an earlier good one is never lost and none is ever half-written. */
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';

/** Files written aside, waiting to take their places. */
export class Aside {
  private readonly waiting: { readonly aside: string; readonly place: string }[] = [];

  private constructor(private readonly folder: string) {}

  /** Make the folder, and everything above it. Throws what the file system says. */
  static async in(folder: string): Promise<Aside> {
    await mkdir(folder, { recursive: true });
    return new Aside(folder);
  }

  /** Write a file aside, whole and on the disk. Gives the place it will take. */
  async write(name: string, bytes: Uint8Array): Promise<string> {
    const place = join(this.folder, name);
    const aside = join(this.folder, `.${name}.${process.pid}.new`);
    this.waiting.push({ aside, place });
    const file = await open(aside, 'w');
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    return place;
  }

  /** Put every file in its place. */
  async keep(): Promise<void> {
    for (const { aside, place } of this.waiting.splice(0)) await rename(aside, place);
  }

  /** Take away what was written aside; what stood there before is untouched. */
  async discard(): Promise<void> {
    await Promise.all(this.waiting.splice(0).map(({ aside }) => rm(aside, { force: true })));
  }
}
