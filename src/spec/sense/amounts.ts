/** Volumes, shares, dates and sizes that cannot be so. */
import { finding, inOrder, type SenseCheck } from './finding';

/** Tanks: what is kept back fits in; the stick rises; the air has room. */
export const checkTanks: SenseCheck = (spec, source) =>
  Object.entries(spec.tanks).flatMap(([id, tank]) => {
    const path = (field: string) => ['tanks', id, field];
    const unusable = tank.unusable?.si ?? 0;
    const usual = tank['fill-to'] ?? tank.capacity;
    const kept = (tank.reserve?.si ?? 0) + unusable;
    const problems = inOrder(source, {
      code: 'spec-tank', low: tank['fill-to'], high: tank.capacity, mayBeEqual: true, lowPath: path('fill-to'), highPath: path('capacity'),
      lowName: `\`fill-to\` of ${tank.name}`, highName: 'its capacity', why: 'More cannot be put in than it holds.',
    });
    if (kept >= usual.si) {
      problems.push(finding(source, {
        code: 'spec-tank', path: path(tank.reserve === undefined ? 'unusable' : 'reserve'),
        message: `reserve and unusable part of ${tank.name} leave nothing to run on`,
        found: `${[tank.reserve?.written, tank.unusable?.written].filter((each) => each !== undefined).join(' and ')} of ${usual.written}`,
        expected: 'together less than what is put in', mend: 'correct the reserve, the unusable part or the capacity',
      }));
    }
    if (tank.pressure !== undefined && tank['fill-to'] === undefined) {
      problems.push(finding(source, {
        code: 'spec-tank', severity: 'remark', path: path('pressure'),
        message: `${tank.name} is charged with air, but nothing says how full it may be`, expected: '`fill-to`, below the capacity',
        mend: 'add `fill-to`; a charged tank needs air over the liquid', notes: ['The less air, the faster the pressure falls as fuel is used.'],
      }));
    }
    return [...problems, ...checkStick(id, tank, source)];
  });

type Tank = Parameters<SenseCheck>[0]['tanks'][string];

function checkStick(id: string, tank: Tank, source: Parameters<SenseCheck>[1]) {
  const points = tank.stick ?? [];
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    const path = ['tanks', id, 'stick', index];
    if (point.volume.si > tank.capacity.si * 1.001) {
      return [finding(source, {
        code: 'spec-tank', path: [...path, 'volume'], message: `a stick reading of ${tank.name} holds more than the tank`,
        found: `\`${point.volume.written}\``, expected: `at most \`${tank.capacity.written}\``, mend: 'correct the reading or the capacity',
      })];
    }
    if (before === undefined || (point.depth.si > before.depth.si && point.volume.si > before.volume.si)) return [];
    return [finding(source, {
      code: 'spec-tank', path, message: `the stick readings of ${tank.name} do not rise`,
      found: `\`${point.depth.written}\` with \`${point.volume.written}\` after \`${before.depth.written}\` with \`${before.volume.written}\``,
      expected: 'each reading deeper and fuller than the one before', mend: 'put them in order, or measure again',
    })];
  });
}

/** How far the shares of a blend may be from a whole: half a hundredth, for rounding. */
const shareSlack = 0.005;

/** Blends make a whole. */
export const checkBlends: SenseCheck = (spec, source) =>
  Object.entries(spec.fuels).flatMap(([id, fuel]) => {
    const whole = fuel.parts.reduce((sum, part) => sum + part.share.si, 0);
    if (Math.abs(whole - 1) <= shareSlack) return [];
    return [finding(source, {
      code: 'spec-shares', path: ['fuels', id, 'parts'], message: `the shares of ${fuel.name} make ${Math.round(whole * 1000) / 10} %`,
      expected: '100 %', mend: 'correct the shares',
    })];
  });

/** Rates, times, dates and speeds in their right order. */
export const checkOrders: SenseCheck = (spec, source) => [
  ...Object.entries(spec.burners).flatMap(([id, burner]) => [
    ...inOrder(source, {
      code: 'spec-order', low: burner['low-rate'], high: burner['full-rate'], mayBeEqual: false, lowPath: ['burners', id, 'low-rate'], highPath: ['burners', id, 'full-rate'],
      lowName: `the low rate of ${burner.name}`, highName: 'its full rate', why: 'The two may be changed about.',
    }),
    ...inOrder(source, {
      code: 'spec-order', low: burner.soak?.least, high: burner.soak?.good, mayBeEqual: true, lowPath: ['burners', id, 'soak', 'least'], highPath: ['burners', id, 'soak', 'good'],
      lowName: 'the least soak', highName: 'the good soak', why: 'A hurried soak floods the burner with liquid fuel.',
    }),
  ]),
  ...inOrder(source, {
    code: 'spec-order', low: spec.running['usual-speed'], high: spec.running['most-speed'], mayBeEqual: true, lowPath: ['running', 'usual-speed'], highPath: ['running', 'most-speed'],
    lowName: 'the usual speed', highName: 'the most', why: 'The two may be changed about.',
  }),
  ...checkDates(spec, source),
];

const checkDates: SenseCheck = (spec, source) => {
  const { inspection } = spec.boiler;
  const problems = [];
  if (inspection.due <= inspection.last) {
    problems.push(finding(source, {
      code: 'spec-order', path: ['boiler', 'inspection', 'due'], message: 'the next inspection is due before the last one was done',
      found: `\`${inspection.due}\``, expected: `later than \`${inspection.last}\``, mend: 'look at the certificate',
    }));
  } else if (inspection.due < spec.issue.date) {
    problems.push(finding(source, {
      code: 'spec-inspection-due', severity: 'remark', path: ['boiler', 'inspection', 'due'], message: `the boiler’s inspection was due on ${inspection.due}`,
      mend: 'do not raise steam before the inspector has seen it; then bring this up to date',
    }));
  }
  const issues = [spec.issue, ...(spec.issue.earlier ?? [])];
  issues.forEach((issue, index) => {
    const later = issues[index - 1];
    if (later === undefined || issue.date <= later.date) return;
    problems.push(finding(source, {
      code: 'spec-order', path: ['issue', 'earlier', index - 1, 'date'], message: `issue ${issue.letter} is dated after issue ${later.letter}`,
      found: `\`${issue.date}\``, expected: `not later than \`${later.date}\``, mend: 'put the newest issue first',
    }));
  });
  return problems;
};

/** How far a place may lie outside the stated length and width: a lamp or a step may stick out. */
const overhangM = 0.3;

/** Places lie on the car. */
export const checkPlaces: SenseCheck = (spec, source) =>
  Object.entries(spec.places).flatMap(([id, place]) => {
    const tooFarBack = place.at.back.si > spec.car.length.si + overhangM;
    const tooFarOut = Math.abs(place.at.right.si) > spec.car.width.si / 2 + overhangM;
    const problem = (field: 'back' | 'right', limit: string) => finding(source, {
      code: 'spec-outside-car', path: ['places', id, 'at', field], message: `${place.name} lies outside the car`,
      found: `\`${place.at[field].written}\``, expected: limit, mend: '`back` is measured from the foremost point, `right` from the centre line',
    });
    return [
      ...(tooFarBack ? [problem('back', `at most the length, \`${spec.car.length.written}\``)] : []),
      ...(tooFarOut ? [problem('right', `at most half the width, \`${spec.car.width.written}\``)] : []),
    ];
  });
