/**
 * Where a procedure stands that a step sends to, told beside its title: on which other card, “Moving off” (card “Cold start”), or
 * on which face of the same, “Shut everything” (face 3).
 */
import type { Procedure } from '../../procedure/procedure';
import type { World } from '../paper';
import type { Piece } from '../pieces';
import type { CardPlan } from '../plans';
import { standsOn } from './standsOn';

/** A stretch of text on a card, or where a procedure of the same card begins; a template that knows no faces prints nothing for that. */
export interface SendingPiece extends Piece {
  /** Key of the procedure whose face is told, which layout finds; empty for text. */
  readonly page: string;
  /** The words round the number of the face. */
  readonly before: string;
  readonly after: string;
}

/** A stretch that is text alone. */
export const textAlone = (piece: Piece): SendingPiece => ({ ...piece, page: '', before: '', after: '' });

/**
 * Titles of procedures that stand on other cards, each with the words that tell the card; and those told already, where a card
 * tells each once. Without `told` every step tells them anew, since it is read alone.
 */
export interface OtherCards {
  readonly words: ReadonlyMap<string, string>;
  readonly told?: Set<string>;
  /** Titles of procedures on this card, each with its key; and the words round the number of a face. */
  readonly here: ReadonlyMap<string, string>;
  readonly onFace: { readonly before: string; readonly after: string };
}

/** What one card has to tell of the others, in every step anew. A procedure that is on several stands on the first. */
export function otherCards(plan: CardPlan, world: World): OtherCards {
  return cardsBeside((procedure) => standsOn(plan, procedure), world);
}

/** The same for a paper on which the procedures stand that `isHere` finds. */
export function cardsBeside(isHere: (procedure: Procedure) => boolean, world: World): OtherCards {
  const { plans, proof, language } = world;
  const words = new Map<string, string>();
  const here = new Map<string, string>();
  for (const procedure of proof.procedures) {
    if (isHere(procedure)) {
      here.set(procedure.title, procedure.id);
      continue;
    }
    const card = plans.cards.find((each) => standsOn(each, procedure))?.title;
    if (card !== undefined) words.set(procedure.title, language.messages.say('on-card', { card }));
  }
  const [before = '', after = ''] = language.messages.say('on-face', { face: anyFace }).split(anyFace);
  return { words, here, onFace: { before, after } };
}

/** Stands for the number of a face while its words are taken apart; no language has it. */
const anyFace = '\ue000';

/** A text of a card in pieces, with the card or the face of each procedure that it sends to; `own` is where it stands. */
export function sendingTo(text: string, cards: OtherCards, own: string): readonly SendingPiece[] {
  return withFaces([{ text: withCards(text, cards), strong: false }], cards, own);
}

/** Pieces of a text with the face of each procedure of the same card behind its title; none behind that of the procedure itself. */
export function withFaces(
  pieces: readonly Piece[],
  { here, onFace: { before, after } }: Pick<OtherCards, 'here' | 'onFace'>,
  own: string,
): readonly SendingPiece[] {
  return pieces.flatMap((piece) => {
    if (piece.strong) return [textAlone(piece)];
    const cut: SendingPiece[] = [];
    let from = 0;
    for (const found of piece.text.matchAll(/[“„]([^“”„]+)[”“]/g)) {
      const page = here.get(found[1] ?? '');
      if (page === undefined || page === own) continue;
      const end = found.index + found[0].length;
      cut.push(textAlone({ text: piece.text.slice(from, end), strong: false }), {
        text: '',
        strong: false,
        page,
        before: ` ${before}`.replace(/ $/, '\u00a0'),
        after,
      });
      from = end;
    }
    return from < piece.text.length
      ? [...cut, textAlone({ text: piece.text.slice(from), strong: false })]
      : cut;
  });
}

/**
 * A text of a step with the cards of the procedures that it is the first to send to. They are noted in `told`, if the card tells
 * each once. Titles one after the other that stand on one card have it once, after the last.
 */
export function withCards(
  text: string,
  { words, told = new Set() }: Pick<OtherCards, 'words' | 'told'>,
): string {
  const quoted = /[“„]([^“”„]+)[”“]/g;
  const named = new Set([...text.matchAll(quoted)].map(([, title = '']) => title));
  const sentTo = [...named].filter((title) => words.has(title) && !told.has(title));
  return text.replace(quoted, (title, inside: string) => {
    const card = words.get(inside);
    if (card === undefined || told.has(inside)) return title;
    told.add(inside);
    const next = words.get(sentTo[sentTo.indexOf(inside) + 1] ?? '');
    return next === card ? title : `${title} ${card}`;
  });
}
