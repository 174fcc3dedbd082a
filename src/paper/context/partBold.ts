/** The name of the part that a step is done to, in bold, and of no other. */
import type { Car, PartId } from '../../car/car';
import { type Piece, withNamesStrong } from '../pieces';

/**
 * A text in pieces: strong are name and tag of this part, and neither within the longer name of another: where the main burner is meant,
 * “main burner valve” stays plain.
 */
export function withPartStrong(text: string, id: PartId | undefined, car: Car): readonly Piece[] {
  const part = id === undefined ? undefined : car.parts.get(id);
  if (part === undefined) return withNamesStrong(text, []);
  const names = [part.name, ...(part.tag === undefined ? [] : [part.tag])];
  return withNamesStrong(
    text,
    names,
    [...car.parts.values()].map(({ name }) => name),
  );
}
