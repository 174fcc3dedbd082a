/** The page on the step library lists what the program knows, and its files are the ones on disk. */
import { describe, expect, test } from 'vitest';
import { libraryFileNames } from '../../src/cli/generatedFiles';
import { carValueMeanings, carValues } from '../../src/procedure/carValues';
import { readLibrary } from '../../src/procedure/library';
import { libraryGuide } from '../../src/procedure/libraryGuide';
import { PartValues, partValueMeanings } from '../../src/procedure/partValues';
import { demoCar, demoCars, textOf } from '../cars/demo';
import { english, languageFiles } from '../helpers/english';
import { libraryFiles, theLibrary } from './shared';

function leaves(values: object, path = ''): readonly string[] {
  return Object.entries(values).flatMap(([name, value]) => {
    const here = path === '' ? name : `${path}.${name}`;
    return typeof value === 'object' && value !== null ? leaves(value, here) : [here];
  });
}

describe('the page', () => {
  test('is made from the files on disk', () => {
    const own = [...languageFiles().keys()].filter((name) => /^languages\/en\/[a-z]+\.yaml$/.test(name));
    expect([...libraryFileNames].sort()).toEqual([...libraryFiles().keys(), ...own].sort());
  });

  test('stands in `docs` as it is made', () => {
    expect(textOf('docs/procedures.md')).toBe(
      libraryGuide(textOf('docs/procedures.head.md'), readLibrary(libraryFiles(), english)),
    );
  });

  test('names every step of the library', () => {
    const page = textOf('docs/procedures.md');
    const missing = theLibrary().procedures.filter(
      ({ form }) => !page.includes(`**\`${form.id}\`** – ${form.title}`),
    );
    expect(missing.map(({ form }) => form.id)).toEqual([]);
    expect(page).toContain('`crack-pilot-valve`');
  });

  test('knows every value that words can ask for', () => {
    for (const name of demoCars) {
      const car = demoCar(name);
      const ofCar = leaves(carValues(car, { system: 'us' }, english)).map((path) =>
        path.replace(/\.(?:called|name)$/, ''),
      );
      expect(ofCar.filter((path) => !(path in carValueMeanings))).toEqual([]);
      const parts = new PartValues(car, { system: 'us' }, english);
      for (const id of car.parts.keys()) {
        const ofPart = Object.keys(parts.of(id));
        expect(ofPart.filter((value) => !(value in partValueMeanings))).toEqual([]);
      }
    }
  });
});
