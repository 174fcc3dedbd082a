/** No two things share a key, and no two a name or a tag, so that a paper can mean only one. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { contentNames, type Named, namedThings, outsideNames, singleParts } from './named';
import { type SpecPath, type SpecSource, showPath } from './source';

/** Keys that mean something in every spec. */
const reserved: readonly string[] = [...outsideNames, ...contentNames, ...singleParts];

/** No two things share a key, nor take one that means something in every spec. */
export function checkKeys(source: SpecSource): Diagnostic[] {
  return [
    ...groups(source).flatMap((group) => twice(group, 'key', (thing) => thing.id, source)),
    ...namedThings(source.data)
      .filter(isTaken)
      .map((thing) => takenKey(thing, source)),
  ];
}

/** No two things share a name or a tag; capitals do not tell two names apart. */
export function checkLabels(source: SpecSource): Diagnostic[] {
  return groups(source).flatMap((group) => [
    ...twice(group, 'name', (thing) => thing.name, source),
    ...twice(group, 'tag', (thing) => thing.tag, source),
  ]);
}

/** Liquids are named only within fuels, so that a fuel of one liquid may be called what the liquid is called. */
function groups(source: SpecSource): readonly (readonly Named[])[] {
  const things = namedThings(source.data);
  return [
    things.filter((thing) => thing.kind !== 'liquid'),
    things.filter((thing) => thing.kind === 'liquid'),
  ];
}

type Label = 'key' | 'name' | 'tag';

function twice(
  things: readonly Named[],
  what: Label,
  pick: (thing: Named) => string | undefined,
  source: SpecSource,
): Diagnostic[] {
  const first = new Map<string, Named>();
  return things.flatMap((thing) => {
    const word = pick(thing);
    const plain = word?.toLowerCase();
    if (word === undefined || plain === undefined || plain === '') return [];
    const other = first.get(plain);
    if (other === undefined) {
      first.set(plain, thing);
      return [];
    }
    const line = source.spotOfKey(labelPath(other, what)).line;
    return [
      {
        code: 'spec-name-twice' as const,
        severity: 'error' as const,
        at: what === 'key' ? source.spotOfKey(thing.path) : source.spotOfValue(labelPath(thing, what)),
        message: `the ${what} \`${word}\` is used twice`,
        found: `\`${showPath(thing.path)}\` and \`${showPath(other.path)}\` (line ${line})`,
        expected: `a ${what} of its own for each`,
        mend: `give one of them another ${what}`,
      },
    ];
  });
}

function labelPath(thing: Named, what: Label): SpecPath {
  return what === 'key' ? thing.path : [...thing.path, what];
}

function isTaken(thing: Named): boolean {
  return thing.path.length > 1 && thing.kind !== 'liquid' && reserved.includes(thing.id);
}

function takenKey(thing: Named, source: SpecSource): Diagnostic {
  return {
    code: 'spec-name-twice',
    severity: 'error',
    at: source.spotOfKey(thing.path),
    message: `the key \`${thing.id}\` already means something in every spec`,
    found: `\`${showPath(thing.path)}\``,
    expected: 'a key of its own',
    mend: `rename it, such as \`${thing.id}-${thing.kind}\``,
  };
}
