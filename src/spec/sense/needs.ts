/** What no car may be without, and changes that say too little or too much. */
import type { CarSpec } from '../schema/carSpec';
import { type Finding, finding, type SenseCheck } from './finding';

/** An extinguisher, water, a main burner, a way for its fire to be put out. */
export const checkNeeds: SenseCheck = (spec, source) => {
  const lacks: Finding[] = [];
  const need = (there: boolean, path: string, what: string, mend: string) => {
    if (!there) lacks.push({ code: 'spec-lacks', path: [path], message: `the car has no ${what}`, mend });
  };
  need(Object.values(spec.equipment).some((each) => each.kind === 'extinguisher'), 'equipment', 'extinguisher', 'carry one for liquid fuel, and add it with `kind: extinguisher`');
  need(Object.values(spec.tanks).some((tank) => tank.holds === 'water'), 'tanks', 'water tank', 'add the tank that holds `water`');
  need(Object.values(spec.burners).some((burner) => burner.job === 'main'), 'burners', 'main burner', 'add a burner with `job: main`');
  need(Object.values(spec.pumps).some((pump) => pump.moves === 'water'), 'pumps', 'pump that moves water', 'add the feed pump with `moves: water`');
  need(Object.values(spec.gauges).some((gauge) => gauge.of === 'boiler' && gauge.reads === 'pressure'), 'gauges', 'steam gauge', 'add the gauge with `reads: pressure` and `of: boiler`');
  return lacks.map((each) => finding(source, each));
};

type Change = NonNullable<CarSpec['changes']>[number];

/** Each change says one thing: add, replace, move or leave out. */
export const checkChanges: SenseCheck = (spec, source) =>
  (spec.changes ?? []).flatMap((change, index) => {
    const said = whatItSays(change);
    const path = ['changes', index];
    if (said.length !== 1) {
      return [finding(source, {
        code: 'spec-change', path, message: `this change says ${said.length === 0 ? 'nothing' : said.map((each) => `\`${each}\``).join(' and ')}`,
        expected: 'one of `add`, `replace`, `move`, `leave-out`', mend: 'write one change to an entry',
      })];
    }
    const placed = change.before !== undefined || change.after !== undefined;
    const both = change.before !== undefined && change.after !== undefined;
    const needsPlace = said[0] === 'add' || said[0] === 'move';
    if (needsPlace && (!placed || both)) {
      return [finding(source, {
        code: 'spec-change', path, message: `this change does not say where the step goes`, expected: 'either `before` or `after`, naming a step',
        mend: 'add one of the two',
      })];
    }
    if (said[0] === 'replace' && change.with === undefined) {
      return [finding(source, { code: 'spec-change', path, message: 'this change does not say what the step is replaced with', expected: '`with`, and the new step', mend: 'add it' })];
    }
    return [];
  });

function whatItSays(change: Change): readonly string[] {
  return (['add', 'replace', 'move', 'leave-out'] as const).filter((each) => change[each] !== undefined);
}
