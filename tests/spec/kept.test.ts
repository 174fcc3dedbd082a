import { expect, test } from 'vitest';
import { keepTexts, keptData } from '../../src/spec/kept';
import { readSource } from '../../src/spec/source';

const text = 'car:\n  name: Kept by itself\n  valves: [one, two]\n';

test('a text kept yields the data kept with it, and the same places as a text read', () => {
  const before = readSource(text, 'a.yaml');
  keepTexts([[text, '{"car":{"name":"Kept by itself","valves":["one","two"]}}']]);
  const after = readSource(text, 'a.yaml');
  if (!before.ok || !after.ok) throw new Error('unread');
  expect(after.value.data).toEqual(before.value.data);
  for (const path of [['car'], ['car', 'valves', 1], ['car', 'absent']])
    for (const ask of ['spotOf', 'spotOfValue', 'spotOfKey', 'written'] as const)
      expect(after.value[ask](path)).toEqual(before.value[ask](path));
});

test('a text that differs by one letter is read anew', () => {
  keepTexts([[text, '{"car":"as kept"}']]);
  const changed = readSource(text.replace('two', 'too'), 'a.yaml');
  expect(changed.ok && changed.value.data).toEqual({
    car: { name: 'Kept by itself', valves: ['one', 'too'] },
  });
});

test('what is done to the data of one reading is not seen by the next', () => {
  keepTexts([[text, '{"list":["one"]}']]);
  const first = keptData(text)?.data as { list: string[] };
  first.list.push('two');
  expect(keptData(text)?.data).toEqual({ list: ['one'] });
});
