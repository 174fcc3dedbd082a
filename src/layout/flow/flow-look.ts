/**
 * The look of a paper that flows over pages: every size straight from the theme.
 */
import { leastSignMm } from '../../drawing/signs/signs';
import type { FontSet } from '../../font/metrics';
import { handDistanceM } from '../legibility';
import { type HeadingLook, type Look, strongStyle, styleOf, type TextStyle } from '../look';
import { pointsPerMm } from '../sheet';
import type { Theme, TypeRole } from '../theme';

/** The theme's style for one kind of text. */
export function themeStyle(theme: Theme, role: TypeRole, colour = theme.colours.ink): TextStyle {
  const { face, size, leading } = theme.type[role];
  return styleOf(face, size, leading, colour);
}

/** The look of manuals and other papers that are held in the hand. */
export function flowLook(theme: Theme, fonts: FontSet): Look {
  const { space, colours } = theme;
  const body = themeStyle(theme, 'body');
  const note = themeStyle(theme, 'note');
  const heading = (role: 'title' | 'section' | 'topic' | 'point'): HeadingLook => ({
    style: themeStyle(theme, role),
    abovePt: space.above[role],
    belowPt: space.below[role],
  });
  const table = [themeStyle(theme, 'table'), themeStyle(theme, 'dense')];
  return {
    fonts,
    body,
    lead: themeStyle(theme, 'lead'),
    column: themeStyle(theme, 'table'),
    note,
    caption: themeStyle(theme, 'caption'),
    headings: [heading('title'), heading('section'), heading('topic'), heading('point')],
    tables: { ruled: table, plain: table, large: [themeStyle(theme, 'large'), body, ...table] },
    steps: {
      number: strongStyle(body),
      action: body,
      result: styleOf(body.emphasis, body.sizePt, body.leadingPt, colours.ink),
      remark: themeStyle(theme, 'note'),
      leader: { number: false, tick: true },
      beneath: 'left',
      gapPt: space.step,
    },
    cautions: {
      signal: themeStyle(theme, 'signal'),
      text: body,
      runOn: false,
      padXPt: space.boxX,
      padYPt: space.boxY,
      briefFrom: 'steps',
      panels: theme.cautions,
    },
    signs: {
      heightPt: leastSignMm(handDistanceM) * pointsPerMm,
      label: themeStyle(theme, 'running'),
    },
    space: { ...space, leastCellY: 0.65 },
    line: theme.line,
    colours,
    words: theme.words,
    measureEm: theme.page.measureEm,
  };
}
