/** The smallest valid spec loads, and what stands in it comes out as the later stages need it. */
import { expect, test } from 'vitest';
import { lineOf, loadedTiny, loadTiny, spoiled, tinySpec } from '../helpers/tinySpec';

test('the smallest spec loads without a remark', () => {
  const outcome = loadTiny(tinySpec);
  expect(outcome.ok ? outcome.remarks : outcome.problems).toEqual([]);
});

test('quantities come out in SI units, with what was written and whether it was estimated', () => {
  const { spec } = loadedTiny();
  // 1 US gal = 231 in³ and 1 lb = 0.45359237 kg exactly: NIST Handbook 44, Appendix C
  expect(spec.tanks['water-tank']?.capacity.si).toBeCloseTo(20 * 231 * 0.0254 ** 3, 12);
  expect(spec.tanks['water-tank']?.capacity).toMatchObject({ written: '20 US gal', estimated: false });
  expect(spec.running['mass-empty'].si).toBeCloseTo(1100 * 0.45359237, 9);
  expect(spec.running['mass-empty']).toMatchObject({ written: 'about 1100 lb', estimated: true });
  expect(spec.fuels.blend?.parts.map((part) => part.share.si)).toEqual([0.9, 0.1]);
});

test('words come out without blanks around them', () => {
  const { spec } = loadedTiny(spoiled(['model: Smallest', 'model: "  Smallest "']));
  expect(spec.car.model).toBe('Smallest');
});

test('the order of entries is that of the file', () => {
  expect(Object.keys(loadedTiny().spec.tanks)).toEqual(['water-tank', 'fuel-tank', 'pilot-tank']);
});

test('the source knows where everything stands and what was written there', () => {
  const { source } = loadedTiny();
  const path = ['tanks', 'water-tank', 'capacity'];
  const line = lineOf(tinySpec, 'capacity: 20 US gal');
  expect(source.spotOfValue(path)).toEqual({
    file: 'pipkin.yaml',
    line,
    column: 15,
    path: 'tanks.water-tank.capacity',
  });
  expect(source.spotOfKey(path)).toMatchObject({ line, column: 5 });
  expect(source.spotOf(path)).toMatchObject({ line, column: 15 });
  expect(source.spotOf(['tanks', 'water-tank'])).toMatchObject({
    line: lineOf(tinySpec, '  water-tank:'),
    column: 3,
  });
  expect(source.spotOf(['tanks', 'water-tank', 'tag'])).toMatchObject({
    line: lineOf(tinySpec, '  water-tank:'),
  });
  expect(source.written(path)).toBe('20 US gal');
  expect(source.written(['tanks', 'water-tank'])).toBeUndefined();
  expect(source.written(['tanks', 'water-tank', 'tag'])).toBeUndefined();
  expect(source.spotOfValue(['lines', 1, 'through', 2]).path).toBe('lines.2.through.3');
});
