/** Everything in a spec that has a key, as the references, the checks and the car see it. */
import { entryOf, isMapping } from './entry';
import type { CarSpec } from './schema/carSpec';
import type { PartKind } from './schema/field';
import type { SpecPath } from './source';

/** Ends of lines that every car has. */
export const outsideNames = ['open-air', 'ground'] as const;

/** Contents of tanks that every car has, beside the fuels its spec lists. */
export const contentNames = ['water', 'cylinder-oil'] as const;

/** Which section of the spec lists which kind of part. */
export const sectionsByKind = {
  place: 'places',
  liquid: 'liquids',
  fuel: 'fuels',
  tank: 'tanks',
  equipment: 'equipment',
  burner: 'burners',
  vaporizer: 'vaporizers',
  pump: 'pumps',
  valve: 'valves',
  device: 'devices',
  gauge: 'gauges',
  lock: 'locks',
  control: 'controls',
  fitting: 'fittings',
} as const satisfies Partial<Record<PartKind, keyof CarSpec>>;

/** Sections that describe one part each; their key is the part's key. */
export const singleParts = [
  'boiler',
  'superheater',
  'feed-heater',
  'condenser',
  'engine',
] as const satisfies readonly (PartKind & keyof CarSpec)[];

/** One thing with a key. */
export interface Named {
  readonly id: string;
  readonly kind: PartKind;
  readonly path: SpecPath;
  readonly name?: string;
  readonly tag?: string;
}

/**
 * Everything in the spec that can be named: single parts first, then section by section in the order of the file.
 * Works on a checked spec and on plain data alike; what has not the right form is passed over.
 */
export function namedThings(spec: unknown): readonly Named[] {
  const sections = isMapping(spec) ? spec : {};
  const single = singleParts.flatMap((kind): Named[] => {
    const entry = entryOf(sections, kind);
    return isMapping(entry) ? [{ id: kind, kind, path: [kind], ...labels(entry) }] : [];
  });
  const listed = kindsAndSections.flatMap(([kind, section]) => {
    const entries = entryOf(sections, section);
    if (!isMapping(entries)) return [];
    return Object.entries(entries).map(
      ([id, entry]): Named => ({ id, kind, path: [section, id], ...(isMapping(entry) ? labels(entry) : {}) }),
    );
  });
  return [...single, ...listed];
}

/** `sectionsByKind` as a list. */
export const kindsAndSections = Object.entries(sectionsByKind) as readonly [
  keyof typeof sectionsByKind,
  (typeof sectionsByKind)[keyof typeof sectionsByKind],
][];

function labels(entry: Readonly<Record<string, unknown>>): Pick<Named, 'name' | 'tag'> {
  const name = entryOf(entry, 'name');
  const tag = entryOf(entry, 'tag');
  return {
    ...(typeof name === 'string' ? { name: name.trim() } : {}),
    ...(typeof tag === 'string' ? { tag: tag.trim() } : {}),
  };
}
