/** Every element that makes a block, with its reader. A new one is a file here, a line below, and a row of the subset. */
import type { Checked } from '../check';
import type { ElementReader } from '../reader';
import { readCaution } from './caution';
import { readContents } from './contents';
import { readDefinitions } from './definitions';
import { readTextarea } from './field';
import { readFigure } from './figure';
import { readGroup } from './group';
import { readHeading } from './heading';
import { readList } from './list';
import { readPageBreak } from './pageBreak';
import { readParagraph } from './paragraph';
import { readRule } from './rule';
import { readSigns } from './signs';
import { readSteps } from './steps';
import { readTable } from './table';

/** Readers by form. Forms without one are parts of another. */
export const blockReaders: Readonly<Partial<Record<Checked['form'], ElementReader>>> = {
  h1: readHeading,
  h2: readHeading,
  h3: readHeading,
  h4: readHeading,
  p: readParagraph,
  ul: readList,
  ol: readList,
  'ul.signs': readSigns,
  dl: readDefinitions,
  table: readTable,
  figure: readFigure,
  aside: readCaution,
  'ol.steps': readSteps,
  nav: readContents,
  section: readGroup,
  hr: readRule,
  'hr.page-break': readPageBreak,
  textarea: readTextarea,
};
