/** Every paper that can be made. */
import type { Paper } from './paper';
import { dashCard } from './papers/dashCard';
import { ownersManual } from './papers/ownersManual';
import { rangeTable } from './papers/rangeTable';
import { valveCard } from './papers/valveCard';
import type { Plans } from './plans';

/** The papers, in the order a keeper thinks of them: the cards, the range table, the book. */
export function papersOf(plans: Plans): readonly Paper[] {
  return [...plans.cards.map(dashCard), valveCard, rangeTable, ownersManual];
}
