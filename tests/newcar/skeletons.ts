/** The skeletons of new cars, answered in full. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readNewCar } from '../../src/newcar/questions';
import { fillIn, questionsFor } from '../../src/newcar/skeleton';
import { goodOf, root } from '../whole/made';
import { replyTo } from './replies';

/** A file of `shared`. */
const shared = (name: string): string => readFileSync(join(root, 'shared', name), 'utf8');

/** What is asked of a new car. */
export const asking = goodOf(readNewCar(shared('new-car.yaml'), 'new-car.yaml'));

/** The skeleton of a kind of plant. */
export const skeletonOf = (kind: string): string => shared(`skeletons/${kind}.yaml`);

/** An answer to every question that a kind of plant waits for. */
export function replies(kind: string): Map<string, string> {
  return new Map(
    questionsFor(skeletonOf(kind), asking.questions).map(({ key }) => [key, replyTo(key)] as const),
  );
}

/** Every skeleton with its answers put in, by the kind of plant. */
export function answeredSkeletons(): readonly (readonly [string, string])[] {
  return asking.kinds.map(
    ({ key }) => [key, fillIn(skeletonOf(key), asking.questions, replies(key))] as const,
  );
}
