/** The sample papers as pages, for looking at in a browser. */
import { writeScreenPage } from '../../src/html/page';
import { plexFonts } from '../helpers/fonts';
import { plainLook } from './look';
import { samples } from './samples';

/** A page, by the name its files get. */
export interface WrittenPage {
  readonly name: string;
  readonly html: string;
}

/** Writes a page for each sample. */
export function samplePages(): readonly WrittenPage[] {
  const look = plainLook();
  return samples.map(({ name, blocks, options }) => ({
    name: `sample-${name}`,
    html: writeScreenPage(blocks, { ...options, look, fonts: plexFonts }),
  }));
}
