import { everyCar, type Rule } from './rule';

export const safetyValveSetting: Rule = {
  id: 'safety-valve-setting',
  code: 'rule-safety-valve-setting',
  group: 'steam',
  title: 'the safety valve is set above the burner’s cut-out and not above the allowed pressure',
  reason: 'set too low it wears out on what the automatic should do; set too high it protects nothing',
  mend: 'correct the figure; the boiler inspector decides what is allowed',
  asks: [],
  appliesTo: everyCar,
  ofCar: ({ car }) => {
    const { boiler, devices } = car.spec;
    const set = devices[boiler['safety-valve']]?.set;
    if (set === undefined) return 'the safety valve has no set pressure';
    if (set.si > boiler['allowed-pressure'].si)
      return `the safety valve is set to ${set.written}, above the allowed ${boiler['allowed-pressure'].written}`;
    return set.si <= boiler['burner-cuts-out'].si
      ? `the safety valve is set to ${set.written}, not above the burner’s cut-out of ${boiler['burner-cuts-out'].written}`
      : undefined;
  },
};
