/** Problems to print. */
import type { Diagnostic } from '../../src/diagnostic/diagnostic';

export const gallons: Diagnostic = {
  code: 'spec-quantity',
  severity: 'error',
  at: { file: 'cars/pipkin.yaml', line: 63, column: 15, path: 'tanks.water-tank.capacity' },
  message: '`tanks.water-tank.capacity` cannot be used as it stands',
  found: '`20 gal`',
  expected: 'a volume, such as `25 US gal`, `20 imp gal` or `95 L`',
  mend: 'write `20 US gal` or `20 imp gal`: a US gallon is 3.785 L and an imperial gallon 4.546 L',
};

export const pressures: Diagnostic = {
  code: 'spec-pressures',
  severity: 'error',
  at: { file: 'cars/pipkin.yaml', line: 103, column: 20, path: 'boiler.burner-cuts-out' },
  message:
    'the pressure at which the burner cuts out (260 psi gauge) is not below the safety valve’s set pressure (250 psi gauge)',
  found: '`260 psi gauge`',
  expected: 'less than `250 psi gauge`',
  mend: 'correct one of the two',
  notes: [
    'The safety valve would lift before the automatic shuts the burner, and be worn out when it is needed.',
    'It is the last thing between the boiler and its bursting.',
  ],
};

export const due: Diagnostic = {
  code: 'spec-inspection-due',
  severity: 'remark',
  at: { file: 'cars/pipkin.yaml', line: 112, column: 66 },
  message: 'the boiler’s inspection was due on 2026-02-01',
  mend: 'do not raise steam before the inspector has seen it',
};

export const placeless: Diagnostic = {
  code: 'theme-yaml',
  severity: 'error',
  message: 'the theme cannot be read',
  mend: 'look at its first line',
  notes: [],
};
