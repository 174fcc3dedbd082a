/** Dipsticks: for every tank that is read by stick, its strip at true size, and how to make and prove the stick. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { drawStripSheet } from '../../drawing/stripSheet';
import { dipsticksContext } from '../context/dipsticks';
import { identityContext } from '../context/identity';
import { stripSheets, unnameable } from '../context/strips';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asMeasuredSheets } from '../ways';

/** The dipsticks of a car. */
export const dipsticks = ({ title, what }: PaperTitle): Paper => ({
  name: 'dipsticks',
  title,
  what,
  template: 'dipsticks',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    ...dipsticksContext(world),
  }),
  drawings: () => [],
  cutOut: (world, mark) => stripSheets(world, mark).map((sheet) => drawStripSheet(sheet, world.fonts)),
  problems,
  ...asMeasuredSheets(title),
});

function problems(world: World): readonly Diagnostic[] {
  return unnameable(world).map(({ id, name }) => ({
    code: 'paper-name-too-long',
    severity: 'error',
    message: `the name of the tank \`${id}\` does not fit on its dipstick`,
    at: world.car.spotOf(`tanks.${id}.name`),
    found: `“${name}”, ${name.length} letters`,
    expected: 'a name and a name of the car that go on the head of a strip in legible type',
    mend: 'give the tank a shorter name; what else there is to say of it goes into `note`',
  }));
}
