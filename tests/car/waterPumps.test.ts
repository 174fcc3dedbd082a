import { describe, expect, test } from 'vitest';
import { feedPumps, filledByTransfer, transferPumps, waterTanksBefore } from '../../src/car/waterPumps';
import { demoCar, demoCars, fixtureCar } from '../cars/demo';

describe('a pump that moves water from tank to tank', () => {
  const bramble = fixtureCar('bramble');

  test('is told from those that feed the boiler, whatever drives them', () => {
    expect(transferPumps(bramble)).toEqual(['transfer-pump']);
    expect(feedPumps(bramble)).toEqual(['feed-pump', 'injector']);
  });

  test('draws from one tank and fills the other', () => {
    expect(waterTanksBefore(bramble, 'transfer-pump')).toEqual(['rear-water']);
    expect(filledByTransfer(bramble, 'transfer-pump')).toEqual(['service-water']);
    expect(waterTanksBefore(bramble, 'boiler')).toEqual(['service-water']);
  });

  test('is not what a bypass makes of a feed pump', () => {
    for (const car of demoCars.map(demoCar)) {
      const moving = Object.entries(car.spec.pumps).filter(([, { moves }]) => moves === 'water');
      expect(feedPumps(car)).toEqual(moving.map(([id]) => id));
      expect(moving.length).toBeGreaterThan(0);
    }
  });
});
