/** The subjects in the index of the manual: what is looked up, and where this car’s book speaks of it. */
import type { World } from '../paper';
import { byAlphabet } from './partIndex';

/** One subject, with the headings that speak of it in order of use. */
export interface Subject {
  readonly subject: string;
  readonly at: readonly { readonly what: string; readonly link: string }[];
}

/** Subjects of which the book of this car says something, in the order of the alphabet of the papers. */
export function subjectIndex({
  car,
  guide,
  proof,
  faults,
}: Pick<World, 'car' | 'guide' | 'proof' | 'faults'>): readonly Subject[] {
  const titles: ReadonlyMap<string, string> = new Map([
    ...proof.procedures.map(({ id, title }) => [`procedure-${id}`, title] as const),
    ...faults.map(({ id, seen }) => [`fault-${id}`, seen.replace(/\.$/, '')] as const),
    ...guide.running.road.map(({ id, title }) => [`road-${id}`, title] as const),
    ...guide.upkeep.jobs.map(({ id, title }) => [`job-${id}`, title] as const),
  ]);
  const held = (link: string) => {
    const what = titles.get(link);
    return what === undefined ? [] : [{ what, link }];
  };
  const inOrder = byAlphabet(car);
  return guide.subjects.subjects
    .map(({ subject, at }) => ({
      subject,
      at: at.flatMap((place) => {
        if ('section' in place) return [{ what: place.say, link: place.section }];
        if ('procedure' in place) return held(`procedure-${place.procedure}`);
        if ('job' in place) return held(`job-${place.job}`);
        return 'fault' in place ? held(`fault-${place.fault}`) : held(`road-${place.road}`);
      }),
    }))
    .filter(({ at }) => at.length > 0)
    .sort((a, b) => inOrder(a.subject, b.subject));
}
