/**
 * The look of cards: every size a share of the one that fits, and none below the smallest legible size of its face.
 */
import type { Face } from '../../font/metrics';
import { type HeadingLook, type Look, strongStyle, styleOf, type TextStyle } from '../look';
import type { CardOptions } from '../types';

/** The smallest legible size of each face, in points. */
export type LeastSizes = Readonly<Record<Face, number>>;

/** The smallest size at which a style in `face`, with its strong and emphasised words, stays legible. */
export function leastSizeOf(face: Face, leastPt: LeastSizes): number {
  const { strong, emphasis } = styleOf(face, 1, 1, '#000000');
  return Math.max(leastPt[face], leastPt[strong], leastPt[emphasis]);
}

/** What the look of a card is made from, whatever the size of its type. */
export type CardLookOptions = Pick<CardOptions, 'theme' | 'fonts' | 'leastPt' | 'lookUpPt' | 'signPt'>;

/**
 * The look at type size `sizePt` in the face `base`. What is looked up in the hand is seen there under the angle under which
 * the rest is seen from where the card is read, and stands closer.
 */
export function cardLook(options: CardLookOptions, base: Face, sizePt: number): Look {
  const { leastPt, lookUpPt = leastPt } = options;
  const lookUp = oneLook(
    { ...options, leastPt: lookUpPt },
    base,
    (sizePt * leastSizeOf(base, lookUpPt)) / leastSizeOf(base, leastPt),
  );
  const look = oneLook(options, base, sizePt);
  return { ...look, lookUp: closeLook(lookUp), close: closeLook(look) };
}

/** The same with the lines of lists and tables as close as those of a paragraph, and no more space around them than it has. */
function closeLook(look: Look): Look {
  return { ...look, space: { ...look.space, listItem: 0, block: look.space.paragraph, cellY: 0 } };
}

function oneLook({ theme, fonts, leastPt, signPt }: CardLookOptions, base: Face, sizePt: number): Look {
  const { shares, colours } = theme;
  const style = (share: number, face: Face = base, colour = colours.ink): TextStyle => {
    const size = Math.max(share * sizePt, leastSizeOf(face, leastPt));
    return styleOf(face, size, shares.leading * size, colour);
  };
  const body = style(1);
  const em = body.sizePt;
  const heading = (share: number, abovePt: number): HeadingLook => {
    const plain = strongStyle(style(share));
    return { style: { ...plain, leadingPt: 1.18 * plain.sizePt }, abovePt, belowPt: 0.3 * em };
  };
  const above = shares.headingGap * em;
  const tables =
    base !== 'text' ? [style(shares.table)] : [style(shares.table), style(shares.table, 'narrow')];
  return {
    fonts,
    body,
    lead: body,
    column: body,
    note: style(shares.note),
    caption: strongStyle(style(shares.table)),
    headings: [
      heading(shares.title, above),
      heading(shares.section, above),
      heading(shares.topic, above),
      heading(shares.topic, above),
    ],
    tables: { ruled: tables, plain: tables, large: tables },
    steps: {
      number: strongStyle(body),
      action: body,
      result: strongStyle(body),
      remark: style(shares.note),
      leader: { number: true, tick: true },
      beneath: 'right',
      gapPt: shares.stepGap * em,
    },
    cautions: {
      signal: style(shares.signal),
      text: body,
      runOn: true,
      padXPt: 0.5 * em,
      padYPt: 0.3 * em,
      briefFrom: 'symbol',
      panels: theme.cautions,
    },
    signs: { heightPt: signPt },
    space: {
      paragraph: shares.stepGap * em,
      listItem: 0.5 * shares.stepGap * em,
      block: shares.blockGap * em,
      caption: 0.25 * em,
      indent: 1.1 * em,
      cellX: 0.4 * em,
      cellY: 0.22 * em,
      leastCellY: 0.15,
      boxX: 0.6 * em,
      boxY: 0.4 * em,
      columnGap: 1.2 * em,
      writing: Math.max(theme.space.writing * 0.75, 1.6 * em),
    },
    line: theme.line,
    colours,
    words: theme.words,
    measureEm: Number.POSITIVE_INFINITY,
  };
}
