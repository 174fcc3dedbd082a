import { expect, test } from 'vitest';
import * as z from 'zod';
import { inForm } from '../../src/spec/inForm';
import { readSource } from '../../src/spec/source';

test('a form has its name to itself', () => {
  const source = readSource('one: 1\n', 'one.yaml');
  if (!source.ok) throw new Error('the text is not read');
  const form = z.strictObject({ one: z.number() });
  expect(inForm(source.value, form, 'a form of this test').data).toEqual({ one: 1 });
  expect(inForm(source.value, form, 'a form of this test').success).toBe(true);
  expect(() => inForm(source.value, z.strictObject({}), 'a form of this test')).toThrow(
    'two forms have the name',
  );
});
