/** Every paper that can be made. */
import type { Paper } from './paper';
import { burnerFront } from './papers/burnerFront';
import { cardForTheDark } from './papers/cardForTheDark';
import { dashCard } from './papers/dashCard';
import { dipsticks } from './papers/dipsticks';
import { docentGuide } from './papers/docentGuide';
import { inspectionSheet } from './papers/inspectionSheet';
import { logSheet } from './papers/logSheet';
import { ownersManual } from './papers/ownersManual';
import { ownPaper } from './papers/ownPaper';
import { rangeTable } from './papers/rangeTable';
import { tripCard } from './papers/tripCard';
import { valveCard } from './papers/valveCard';
import { valveTags } from './papers/valveTags';
import { visitingDriver } from './papers/visitingDriver';
import type { Plans } from './plans';

/** The papers, in the order a keeper thinks of them: the cards and sheets, the range table, the books. */
export function papersOf(plans: Plans): readonly Paper[] {
  const { papers } = plans;
  return [
    ...plans.cards.map(dashCard),
    valveCard(papers['card-valve-positions']),
    burnerFront(papers['card-burner-front']),
    cardForTheDark(papers['card-for-the-dark']),
    visitingDriver(papers['visiting-driver']),
    logSheet(papers['log-sheet']),
    rangeTable(papers['range-table']),
    tripCard(papers['trip-card']),
    dipsticks(papers.dipsticks),
    valveTags(papers['valve-tags']),
    inspectionSheet(papers['inspection-sheet']),
    docentGuide(papers['docent-guide']),
    ownersManual(papers['owners-manual']),
    ...(plans.own ?? []).map(ownPaper),
  ];
}
