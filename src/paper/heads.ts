/** Running heads and feet: every page says which car, which paper, which issue, and its fingerprint. */
import type { RunningLine, RunningPiece } from '../layout/types';
import { withApostrophes } from '../markup/apostrophes';
import type { ProvenWorld } from './paper';

const words = (text: string, strong = false): RunningPiece => ({
  kind: 'words',
  text: withApostrophes(text),
  strong,
});

/** The head of a page: car and paper to the left, chapter to the right. */
export function headOf(world: ProvenWorld, title: string): RunningLine {
  return {
    left: [words(world.car.spec.car.name, true), words(`  ${title}`)],
    centre: [],
    right: [{ kind: 'chapter' }],
  };
}

/** The foot of a page: issue and fingerprint to the left, page to the right. */
export function footOf(world: ProvenWorld, mark: string): RunningLine {
  return {
    left: [words(identityLine(world, mark))],
    centre: [],
    right: world.language.messages
      .pieces('page-of-pages')
      .map((piece) =>
        typeof piece === 'string' ? words(piece) : { kind: piece.value === 'page' ? 'page' : 'pages' },
      ),
  };
}

/** The foot of a page that has no head: car and paper as well. */
export function wholeFootOf(world: ProvenWorld, title: string, mark: string): RunningLine {
  const foot = footOf(world, mark);
  return { ...foot, left: [words(world.car.spec.car.name, true), words(`  ${title}. `), ...foot.left] };
}

/** Issue letter, date and fingerprint, as every sheet carries them. A line may end between them and within none. */
export function identityLine({ car, phrases, language }: ProvenWorld, mark: string): string {
  const { letter, date } = car.spec.issue;
  return language.messages.say('issue-line', {
    letter,
    date: phrases.date(date).replaceAll(' ', '\u00a0'),
    mark,
  });
}
