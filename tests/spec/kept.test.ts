import { expect, test } from 'vitest';
import * as z from 'zod';
import { inForm } from '../../src/spec/inForm';
import { keepTexts, keptData, watchingForms } from '../../src/spec/kept';
import { readSource } from '../../src/spec/source';

const text = 'car:\n  name: Kept by itself\n  valves: [one, two]\n';

test('a text kept yields the data kept with it, and the same places as a text read', () => {
  const before = readSource(text, 'a.yaml');
  keepTexts([{ text, data: '{"car":{"name":"Kept by itself","valves":["one","two"]}}', forms: {} }]);
  const after = readSource(text, 'a.yaml');
  if (!before.ok || !after.ok) throw new Error('unread');
  expect(after.value.data).toEqual(before.value.data);
  for (const path of [['car'], ['car', 'valves', 1], ['car', 'absent']])
    for (const ask of ['spotOf', 'spotOfValue', 'spotOfKey', 'written'] as const)
      expect(after.value[ask](path)).toEqual(before.value[ask](path));
});

test('a text that differs by one letter is read anew', () => {
  keepTexts([{ text, data: '{"car":"as kept"}', forms: {} }]);
  const changed = readSource(text.replace('two', 'too'), 'a.yaml');
  expect(changed.ok && changed.value.data).toEqual({
    car: { name: 'Kept by itself', valves: ['one', 'too'] },
  });
});

test('what is done to the data of one reading is not seen by the next', () => {
  keepTexts([{ text, data: '{"list":["one"]}', forms: {} }]);
  const first = keptData(text)?.data as { list: string[] };
  first.list.push('two');
  expect(keptData(text)?.data).toEqual({ list: ['one'] });
});

test('a text kept in a form is not held to it again; in another form, or changed by a letter, it is', () => {
  const form = z.strictObject({ car: z.strictObject({ name: z.string(), valves: z.array(z.string()) }) });
  const strict = z.strictObject({ car: z.number() });
  keepTexts([{ text, forms: { cars: '{"car":"as found"}' } }]);
  const read = (given: string) => {
    const source = readSource(given, 'a.yaml');
    if (!source.ok) throw new Error('unread');
    return source.value;
  };
  expect(inForm(read(text), form, 'cars').data).toEqual({ car: 'as found' });
  expect(inForm(read(text), strict, 'numbers').success).toBe(false);
  expect(inForm(read(text.replace('two', 'too')), form, 'cars').data?.car.valves).toEqual(['one', 'too']);
  expect(inForm(read(text.replace('name', 'nome')), form, 'cars').success).toBe(false);
});

test('the build hears of the forms that texts have, and of no other', () => {
  const fresh = readSource('a: 1\n', 'a.yaml');
  if (!fresh.ok) throw new Error('unread');
  const heard: unknown[] = [];
  const number = z.strictObject({ a: z.number() });
  watchingForms(
    (...told) => heard.push(told),
    () => {
      inForm(fresh.value, number, 'number');
      inForm(fresh.value, z.strictObject({ a: z.string() }), 'words');
    },
  );
  inForm(fresh.value, number, 'number');
  expect(heard).toEqual([['number', 'a: 1\n', { a: 1 }]]);
});
