/** From a checked spec to the car: every part by its key, places, and the plant as a graph. */

import type { LoadedSpec } from '../spec/load';
import { namedThings } from '../spec/named';
import type { CarSpec } from '../spec/schema/carSpec';
import type { SpecSource } from '../spec/source';
import type { Car, Part, PartId, Place } from './car';
import type { Pipe, Plant } from './plant';

/** Ends of lines that every car has. */
const outside: readonly Part[] = [
  { id: 'open-air', kind: 'outside', name: 'open air' },
  { id: 'ground', kind: 'outside', name: 'ground' },
];

/** Build the car. The spec has passed every check, so nothing can fail here. */
export function buildCar({ spec, source }: LoadedSpec): Car {
  const parts = partsOf(spec);
  return {
    spec,
    parts,
    places: placesOf(spec, parts),
    plant: plantOf(spec),
    spotOf: (path) => source.spotOf(pathFromText(path, source)),
  };
}

function partsOf(spec: CarSpec): ReadonlyMap<PartId, Part> {
  const listed = namedThings(spec)
    .filter((thing) => thing.kind !== 'place' && thing.kind !== 'fuel' && thing.kind !== 'liquid')
    .map((thing): Part => {
      const [section, id] = thing.path;
      const entry = id === undefined ? spec[section as 'boiler'] : spec[section as 'valves']?.[id];
      return {
        id: thing.id,
        kind: thing.kind,
        name: thing.name ?? thing.id,
        ...(thing.tag === undefined ? {} : { tag: thing.tag }),
        ...(entry?.place === undefined ? {} : { place: entry.place }),
      };
    });
  return new Map([...listed, ...outside].map((part) => [part.id, part]));
}

function placesOf(spec: CarSpec, parts: ReadonlyMap<PartId, Part>): ReadonlyMap<string, Place> {
  const here = new Map<string, PartId[]>();
  for (const part of parts.values()) {
    if (part.place === undefined) continue;
    const list = here.get(part.place);
    if (list === undefined) here.set(part.place, [part.id]);
    else list.push(part.id);
  }
  return new Map(
    Object.entries(spec.places).map(([id, place]) => [
      id,
      {
        id,
        name: place.name,
        backM: place.at.back.si,
        rightM: place.at.right.si,
        reach: place.reach,
        parts: here.get(id) ?? [],
        ...(place.at.up === undefined ? {} : { upM: place.at.up.si }),
        ...(place.how === undefined ? {} : { how: place.how }),
      },
    ]),
  );
}

/** The graph of the spec's lines. A length of pipe named by two lines of one fluid is one pipe. */
function plantOf(spec: CarSpec): Plant {
  const pipes: Pipe[] = [];
  const seen = new Set<string>();
  spec.lines.forEach((line, lineIndex) => {
    line.through.slice(1).forEach((to, step) => {
      const from = line.through[step];
      const key = `${from} ${to} ${line.carries}`;
      if (from === undefined || seen.has(key)) return;
      seen.add(key);
      pipes.push({ index: pipes.length, from, to, carries: line.carries, line: lineIndex, step });
    });
  });
  return connect(pipes);
}

/** Index pipes by the parts they join. */
export function connect(pipes: readonly Pipe[]): Plant {
  const out = new Map<PartId, Pipe[]>();
  const into = new Map<PartId, Pipe[]>();
  const add = (map: Map<PartId, Pipe[]>, id: PartId, pipe: Pipe) => {
    const list = map.get(id);
    if (list === undefined) map.set(id, [pipe]);
    else list.push(pipe);
  };
  for (const pipe of pipes) {
    add(out, pipe.from, pipe);
    add(into, pipe.to, pipe);
  }
  return { pipes, out, into };
}

/** The data path a printed path stands for; list positions are counted from 1 in print. */
function pathFromText(path: string, source: SpecSource): readonly (string | number)[] {
  let here: unknown = source.data;
  return path.split('.').map((part) => {
    const step = Array.isArray(here) ? Number(part) - 1 : part;
    here =
      typeof here === 'object' && here !== null
        ? Object.getOwnPropertyDescriptor(here, step)?.value
        : undefined;
    return step;
  });
}
