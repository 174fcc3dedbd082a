/** Plants drawn at random, for checking answers about flow against slower, simpler ones. */
import fc from 'fast-check';
import { connect } from '../../src/car/build';
import type { Part, PartId } from '../../src/car/car';
import type { FlowState, Piped } from '../../src/car/flow';
import type { Fluid, Pipe } from '../../src/car/plant';
import type { PartKind } from '../../src/spec/schema/field';

/** A plant from its pipes; each part is of the kind its key begins with, such as `valve-3`. */
export function plantOf(pipes: readonly (readonly [from: PartId, to: PartId, carries?: Fluid])[]): Piped {
  const made = pipes.map(
    ([from, to, carries = 'main fuel'], index): Pipe => ({ index, from, to, carries, line: index, step: 0 }),
  );
  const parts = new Map(
    made
      .flatMap(({ from, to }) => [from, to])
      .map((id): [PartId, Part] => [id, { id, kind: kindIn(id), name: id }]),
  );
  return { parts, plant: connect(made) };
}

const kinds = [
  'tank',
  'valve',
  'device',
  'pump',
  'fitting',
  'gauge',
  'burner',
  'outside',
  'vaporizer',
] as const satisfies readonly PartKind[];

function kindIn(id: PartId): PartKind {
  return kinds.find((kind) => id.startsWith(kind)) ?? 'fitting';
}

/** Plants of up to `most` parts with pipes any way round, rings and all. */
export function randomPlants(most: number, mostPipes: number): fc.Arbitrary<Piped> {
  return fc
    .array(fc.constantFrom(...kinds), { minLength: 2, maxLength: most })
    .chain((drawn) => {
      const ids = drawn.map((kind, index) => `${kind}-${index}`);
      const id = fc.constantFrom(...ids);
      const fluid = fc.constantFrom<Fluid[]>('main fuel', 'main fuel', 'pilot fuel', 'water');
      return fc.uniqueArray(fc.tuple(id, id, fluid), {
        minLength: 1,
        maxLength: mostPipes,
        selector: ([a, b, c]) => `${a} ${b} ${c}`,
      });
    })
    .map((pipes) => plantOf(pipes.filter(([from, to]) => from !== to)));
}

/** A state of a plant: any of its parts open, passing, pumping, giving. */
export function randomStates(plant: Piped): fc.Arbitrary<FlowState> {
  const some = fc.subarray([...plant.parts.keys()]).map((ids) => new Set(ids));
  return fc.record({ open: some, passing: some, pumping: some, sources: some });
}
