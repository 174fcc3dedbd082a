import { expect, test } from 'vitest';
import { notKnownRemarks } from '../../../src/calc/figures/notKnownRemarks';
import { answeredSkeletons } from '../../newcar/skeletons';
import { demoCar, demoNames, figured } from './figured';

test('demo cars know how far they go', () => {
  for (const name of demoNames) {
    const { car, figures } = demoCar(name);
    expect(notKnownRemarks(car, figures)).toEqual([]);
  }
});

test('a new car does not, and is told what to measure', () => {
  for (const [, text] of answeredSkeletons()) {
    const { car, figures } = figured(text);
    const remarks = notKnownRemarks(car, figures);
    // nobody has said how much is in the fuel tank at which depth
    expect(remarks.map(({ message }) => message).join()).toContain('how far the car goes on its main fuel');
    for (const { severity, found } of remarks) {
      expect(severity).toBe('remark');
      expect(found).toMatch(/^not known: .{20}/);
    }
  }
});
