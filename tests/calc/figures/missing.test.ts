/** Every field that a spec may leave out is left out in turn: nothing breaks, nothing is guessed, what is lost says what to measure. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import type * as z from 'zod';
import type { Figure } from '../../../src/calc/figure';
import { carFigures } from '../../../src/calc/figures/carFigures';
import { figureRemarks } from '../../../src/calc/figures/remarks';
import type { Car } from '../../../src/car/car';
import { workingOf } from '../../../src/paper/context/workings';
import { phrasesFor } from '../../../src/paper/phrase';
import { loadSpec } from '../../../src/spec/load';
import { type CarSpec, carSpecSchema } from '../../../src/spec/schema/carSpec';
import { child, isRequired } from '../../../src/spec/schemaWalk';
import { workshop } from '../../whole/made';
import { demoCar, demoNames, liquids, timeline } from './figured';

const { plain } = (await workshop()).languages;

/** Everything that is said, in one line. */
function written(said: unknown): string {
  if (Array.isArray(said)) return said.map(written).join(' ');
  return typeof said === 'object' && said !== null
    ? Object.values(said).map(written).join(' ')
    : String(said);
}

type Path = readonly (string | number)[];

/** Every field of the spec that stands there and need not. */
function mayBeMissing(schema: z.ZodType, value: unknown, at: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [];
  const parts: readonly (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return parts.flatMap((part) => {
    const field = child(schema, part, value);
    if (field === undefined) return [];
    const inner: unknown = Object.getOwnPropertyDescriptor(value, part)?.value;
    const here = [...at, part];
    const optional = typeof part === 'string' && !isRequired(field) && !Array.isArray(value);
    return [...(optional ? [here] : []), ...mayBeMissing(field, inner, here)];
  });
}

/** Sections that figures are worked out from. */
const sections = ['boiler', 'burners', 'vaporizers', 'tanks', 'pumps', 'engine', 'running', 'car', 'devices'];

/** Without these the reader of specs refuses the spec, as a test below shows. */
const refused = [/^vaporizers$/, /^devices\.[^.]*\.set$/];

/** A copy of the spec without one field. */
function without(value: unknown, path: Path): unknown {
  const [part, ...rest] = path;
  if (Array.isArray(value)) return value.map((each, index) => (index === part ? without(each, rest) : each));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) => {
      if (name !== part) return [[name, inner]];
      return rest.length === 0 ? [] : [[name, without(inner, rest)]];
    }),
  );
}

/** Figures of one kind: where one of them is lost, another of the kind says what to measure. */
const kinds: readonly (readonly [lost: RegExp, told: RegExp])[] = [
  [/^start-up-/, /^start-up-good$/],
  [/^steam-(cold|warm)-/, /^steam-cold-(working|least-to-move)$/],
  [/^(boiler-horsepower|surface-per-horsepower)$/, /^steam-full-fire$/],
  [/^blow-down-fuel$/, /^blow-down-loss$/],
  [/^(fill-up|stick)-|-stick-step$/, /^stick-/],
  [/^(fall|endurance|pumpings|charge-lasts)-/, /^(charge-lasts|delivered)-/],
  [/^(one-charge|cold-night|in-the-sun|up-high|strokes)-/, /^(delivered|strokes)-/],
];

/** Left out, these take away the thing itself, so that there is nothing to know. */
const nothingToKnow: readonly (readonly [left: RegExp, lost: RegExp])[] = [
  [/^boiler\.(blow-down-pressure|least-to-move)$/, /^boiling-/],
  [/^pumps\.[^.]*\.(strokes-per-engine-turn|stroke-volume)$/, /^road-speeds$/],
  [/^running\.log$/, /./],
];

describe.each(demoNames)('%s', (name) => {
  const whole = demoCar(name);
  const paths = mayBeMissing(carSpecSchema, whole.car.spec).filter(
    (path) => sections.includes(String(path[0])) && !refused.some((field) => field.test(path.join('.'))),
  );
  const figuresOf = (car: Car) =>
    carFigures(car, {
      liquids,
      timeline,
      face: { name: 'a face of this test', xHeight: 0.52 },
      system: car.spec.print.units.first,
    });
  const phrases = phrasesFor(whole.car.spec, plain);
  const toldOf = (figures: readonly Figure[]): string =>
    figures.map((figure) => Object.values(workingOf(figure, phrases)).map(written).join(' ')).join('\n');
  const before = new Set(figuresOf(whole.car).all.map(({ id }) => id));

  test('there are many such fields', () => {
    expect(paths.length).toBeGreaterThan(40);
    expect(paths.map((path) => path.join('.'))).toContain('boiler.steel-mass');
  });

  test('each left out in turn', () => {
    for (const path of paths) {
      const left = path.join('.');
      const car: Car = { ...whole.car, spec: without(whole.car.spec, path) as CarSpec };
      const figures = figuresOf(car);
      const told = toldOf(figures.all);
      expect(told, left).not.toMatch(/NaN|undefined|Infinity|\[object|null/);
      for (const { id, value } of figures.all)
        if (value.kind === 'unknown') expect(value.measure.length, `${left}: ${id}`).toBeGreaterThan(15);
      for (const { message, found = '', expected = '' } of figureRemarks(car, figures))
        expect(`${message} ${found} ${expected}`, left).not.toMatch(/NaN|undefined|Infinity/);
      const after = new Set(figures.all.map(({ id }) => id));
      const unknown = figures.all.flatMap(({ id, value }) => (value.kind === 'unknown' ? [id] : []));
      for (const lost of [...before].filter((id) => !after.has(id))) {
        const answered = kinds.some(([kind, asks]) => kind.test(lost) && unknown.some((id) => asks.test(id)));
        const gone = nothingToKnow.some(([field, figure]) => field.test(left) && figure.test(lost));
        expect(answered || gone, `${left} left out loses ${lost} without a word`).toBe(true);
      }
    }
  });

  test('all of them left out at once', () => {
    const bare = [...paths].reverse().reduce<unknown>((spec, path) => without(spec, path), whole.car.spec);
    const car: Car = { ...whole.car, spec: bare as CarSpec };
    const figures = figuresOf(car);
    const told = toldOf(figures.all);
    expect(told).not.toMatch(/NaN|undefined|Infinity|\[object|null/);
    expect(figures.all.filter(({ value }) => value.kind === 'unknown').length).toBeGreaterThan(6);
  });
});

test('without its safety valve’s setting, or the vaporizers its burners name, a spec is refused', () => {
  const text = readFileSync(new URL('../../../cars/marigold.yaml', import.meta.url), 'utf8');
  const whole: unknown = parse(text);
  const load = (path: Path) => loadSpec(stringify(without(whole, path)), 'car.yaml', [...liquids.keys()]).ok;
  expect(load(['vaporizers'])).toBe(false);
  expect(load(['devices', 'safety-valve', 'set'])).toBe(false);
  expect(load(['boiler', 'steel-mass'])).toBe(true);
});
