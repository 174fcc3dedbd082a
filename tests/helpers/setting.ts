/** A setting for tests of single steps of layout: square letters, an empty tree, no problems yet. */
import { Reuse } from '../../src/layout/blocks/reuse';
import { flowLook } from '../../src/layout/flow/flow-look';
import { RememberedWords } from '../../src/layout/inline/plain';
import { Labels } from '../../src/layout/labels';
import { Problems } from '../../src/layout/problems';
import type { Setting } from '../../src/layout/setting';
import { StructureBuilder } from '../../src/layout/structure';
import { survey } from '../../src/layout/survey';
import { squareFonts } from './squareMetrics';
import { evenTheme } from './squarePage';

/** A fresh setting with a body `roomPt` tall. */
export function squareSetting(roomPt = 600): Setting {
  const problems = new Problems();
  const found = survey([], problems);
  return {
    look: flowLook(evenTheme, squareFonts),
    structure: new StructureBuilder(),
    problems,
    labels: new Labels(new Map(), found.ids, problems),
    survey: found,
    reuse: new Reuse(),
    words: new RememberedWords(),
    roomPt,
    chaptersOnNewPage: false,
  };
}
