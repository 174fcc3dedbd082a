/** Where things are on the cards, and what a card says only once. */
import { describe, expect, test } from 'vitest';
import type { SaidOnCard } from '../../src/paper/context/placesSaid';
import {
  nothingSaid,
  nothingSaidInTrouble,
  placesOnCard,
  taggedParts,
} from '../../src/paper/context/placesSaid';
import { cardProcedure, cardSteps } from '../../src/paper/context/procedures';
import type { Procedure } from '../../src/procedure/procedure';
import { demoCar, demoCars } from '../cars/demo';
import { proceduresOf, theLibrary } from '../procedure/shared';

const library = theLibrary();

const saidBy = (procedure: Procedure, car: ReturnType<typeof demoCar>, said: SaidOnCard) =>
  cardProcedure(procedure, car, new Set(), said);

describe.each(demoCars)('%s', (name) => {
  const car = demoCar(name);
  const procedures = proceduresOf(car, library);
  const named = (procedure: Procedure) => {
    const words = cardSteps(procedure, new Set())
      .map(({ say, result }) => `${say} ${result}`)
      .join(' ');
    return taggedParts(car).filter(({ tag }) => words.includes(`(${tag})`));
  };

  /** Where a hand works a part: at its switch, if it has one. */
  const handAt = (id: string) =>
    car.places.get(car.parts.get(car.spec.pumps[id]?.['switched-by'] ?? id)?.place ?? '');

  test('every part that the steps name by its tag stands once in the list of places, at its place', () => {
    for (const procedure of procedures.filter(({ phase }) => phase !== 'emergency')) {
      const places = placesOnCard(cardSteps(procedure, new Set()), car);
      for (const { id, tag } of named(procedure)) {
        const at = places.filter(({ parts }) => parts.includes(tag)).map(({ place }) => place);
        const own = handAt(id)?.name;
        const filler = car.places.get(car.spec.tanks[id]?.filler.place ?? '')?.name;
        expect(at.length, `${procedure.id} ${tag}`).toBeGreaterThan(0);
        expect(
          at.every((place) => place === own || place === filler),
          `${procedure.id} ${tag}`,
        ).toBe(true);
      }
    }
  });

  test('in trouble each part out of reach of the seat has its place beside its name, once in each emergency', () => {
    const emergencies = procedures.filter(({ phase }) => phase === 'emergency');
    const away = emergencies.flatMap((procedure) => {
      const { steps } = saidBy(procedure, car, nothingSaidInTrouble(car));
      const words = steps
        .flatMap(({ say, result }) => [...say, ...result])
        .map(({ text }) => text)
        .join('');
      return named(procedure).flatMap(({ id, tag }) => {
        const place = handAt(id);
        const times = words.split(`${tag}, ${place?.name})`).length - 1;
        expect(times, `${procedure.id} ${tag}`).toBe(place?.reach === 'seated' ? 0 : 1);
        return place?.reach === 'seated' ? [] : [tag];
      });
    });
    expect(away.length).toBeGreaterThan(0);
  });

  test('a caution is said in full the first time on a card, and after that with what to do alone', () => {
    const card = nothingSaid();
    const said = new Set<string>();
    const cautions = procedures
      .filter(({ phase }) => ['pilot', 'soak', 'main-burner', 'raising-steam'].includes(phase))
      .flatMap((procedure) => saidBy(procedure, car, card).steps.flatMap((step) => step.cautions));
    for (const { id, brief, repeated } of cautions) {
      expect(brief).toBe(true);
      expect(repeated, id).toBe(said.has(id));
      said.add(id);
    }
    expect(cautions.some(({ repeated }) => repeated)).toBe(true);
  });
});

test('what a caution says again is no longer than what it says the first time, and fits in a line', () => {
  for (const [id, { form }] of library.cautions) {
    expect(form.again.length, id).toBeLessThanOrEqual(38);
    expect(form.again.length, id).toBeLessThanOrEqual(form.short.length);
  }
});

test('what a switch works is looked for at the switch, not at the machine', () => {
  const car = demoCar('heron');
  const shut = proceduresOf(car, library).filter(({ id }) => id === 'shut-everything');
  const blower = car.parts.get('blower');
  const [at] = placesOnCard(cardSteps(shut[0] ?? missing(), new Set()), car).filter(({ parts }) =>
    parts.includes(blower?.tag ?? ''),
  );
  expect(at?.place).toBe(car.places.get(car.parts.get('blower-switch')?.place ?? '')?.name);
  expect(at?.place).not.toBe(car.places.get(blower?.place ?? '')?.name);
});

function missing(): never {
  throw new Error('no such procedure');
}
