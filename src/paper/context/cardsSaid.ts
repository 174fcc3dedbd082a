/** On which card a procedure stands that a step sends to, told beside its title: “Moving off” (card “Cold start”). */
import type { World } from '../paper';
import type { CardPlan } from '../plans';
import { standsOn } from './standsOn';

/** Titles of procedures that stand on other cards, each with the words that tell the card; and those told already. */
export interface OtherCards {
  readonly words: ReadonlyMap<string, string>;
  readonly told: Set<string>;
}

/** What one card has to tell of the others, nothing of it told yet. A procedure that is on several stands on the first. */
export function otherCards(plan: CardPlan, world: World): OtherCards {
  const { plans, proof, language } = world;
  const words = new Map<string, string>();
  for (const procedure of proof.procedures) {
    if (standsOn(plan, procedure)) continue;
    const card = plans.cards.find((each) => standsOn(each, procedure))?.title;
    if (card !== undefined) words.set(procedure.title, language.messages.say('on-card', { card }));
  }
  return { words, told: new Set() };
}

/**
 * A text of a step with the cards of the procedures that it is the first to send to. They are noted in `told`. Titles one
 * after the other that stand on one card have it once, after the last.
 */
export function withCards(text: string, { words, told }: OtherCards): string {
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
