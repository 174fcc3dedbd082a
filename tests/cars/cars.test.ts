/** The demo cars are specs like any keeper's: each loads without a problem and says that it is invented. */
import { describe, expect, test } from 'vitest';
import { fuelRoutes } from '../../src/car/flow';
import { demoCar, demoCars, loadDemo, textOf } from './demo';

describe.each([...demoCars, 'de/fingerhut'])('%s', (name) => {
  test('loads without an error or a remark', () => {
    const outcome = loadDemo(name);
    expect(outcome.ok ? outcome.remarks : outcome.problems).toEqual([]);
  });

  test('says at its head and in its data that it is invented', () => {
    expect(textOf(`cars/${name}.yaml`).split('\n').slice(0, 5).join('\n')).toContain('INVENTED');
    expect(demoCar(name).spec.car.invented).toBe(true);
  });

  test('has at least one part at every place', () => {
    const car = demoCar(name);
    const fillers = Object.values(car.spec.tanks).map((tank) => tank.filler.place);
    const empty = [...car.places.values()].filter(
      (place) => place.parts.length === 0 && !fillers.includes(place.id),
    );
    expect(empty.map((place) => place.id)).toEqual([]);
  });

  test('every valve has a tag of its own', () => {
    const tags = Object.values(demoCar(name).spec.valves).map((each) => each.tag);
    expect(new Set(tags).size).toBe(tags.length);
  });

  test('names end with the word for what the thing is', () => {
    const { spec } = demoCar(name);
    if (spec.print.language === 'de') {
      const german = [
        ...Object.values(spec.valves).filter(
          (each) => !/([vV]entil|[hH]ahn( oben| unten)?|Regler|ung)$/.test(each.name),
        ),
        ...Object.values(spec.tanks).filter((each) => !/[tT]ank$/.test(each.name)),
        ...Object.values(spec.pumps).filter((each) => !/[pP]umpe$/.test(each.name)),
      ];
      expect(german.map((each) => each.name)).toEqual([]);
      return;
    }
    const odd = [
      ...Object.values(spec.valves).filter((each) => !/(valve|cock|tap)$/.test(each.name)),
      ...Object.values(spec.gauges).filter((each) => !/(gauge|glass)$/.test(each.name)),
      ...Object.values(spec.tanks).filter((each) => !/tank$/.test(each.name)),
      ...Object.values(spec.pumps).filter((each) => !/(pump|blower)$/.test(each.name)),
    ];
    expect(odd.map((each) => each.name)).toEqual([]);
  });

  test('lets the driver cut the fuel of every burner from the seat', () => {
    const car = demoCar(name);
    for (const burner of Object.keys(car.spec.burners)) {
      const routes = fuelRoutes(car, burner);
      expect(routes.length).toBeGreaterThan(0);
      for (const route of routes) {
        const seated = route.filter((id) => {
          const part = car.parts.get(id);
          return part?.kind === 'valve' && car.places.get(part.place ?? '')?.reach === 'seated';
        });
        expect(seated, `${route.join(' > ')}`).not.toEqual([]);
      }
    }
  });

  test('has two shut valves between every fuel tank and every burner when put away', () => {
    const car = demoCar(name);
    const routes = Object.keys(car.spec.burners).flatMap((burner) => fuelRoutes(car, burner));
    for (const route of routes) {
      const shut = route.filter((id) => car.spec.valves[id]?.parked === 'shut');
      expect(shut.length, `${route.join(' > ')}`).toBeGreaterThanOrEqual(2);
    }
  });
});
