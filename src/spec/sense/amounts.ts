/** Volumes, shares, dates and sizes that cannot be so. */
import { entryOf } from '../entry';
import { finding, inOrder, isSame, type SenseCheck } from './finding';

/** Tanks: what is kept back fits in; the stick rises; the air has room. */
export const checkTanks: SenseCheck = (spec, source) =>
  Object.entries(spec.tanks).flatMap(([id, tank]) => {
    const path = (field: string) => ['tanks', id, field];
    const unusable = tank.unusable?.si ?? 0;
    const usual = tank['fill-to'] ?? tank.capacity;
    const kept = (tank.reserve?.si ?? 0) + unusable;
    const problems = inOrder(source, {
      code: 'spec-tank',
      low: tank['fill-to'],
      high: tank.capacity,
      mayBeEqual: true,
      lowPath: path('fill-to'),
      highPath: path('capacity'),
      lowName: `\`fill-to\` of ${tank.name}`,
      highName: 'its capacity',
      why: 'More cannot be put in than it holds.',
    });
    if (kept >= usual.si) {
      problems.push(
        finding(source, {
          code: 'spec-tank',
          path: path(tank.reserve === undefined ? 'unusable' : 'reserve'),
          message: `reserve and unusable part of ${tank.name} leave nothing to run on`,
          found: `${[tank.reserve?.written, tank.unusable?.written].filter((each) => each !== undefined).join(' and ')} of ${usual.written}`,
          expected: 'together less than what is put in',
          mend: 'correct the reserve, the unusable part or the capacity',
        }),
      );
    }
    const start = tank['least-to-start'];
    if (start !== undefined && start.si <= kept) {
      problems.push(
        finding(source, {
          code: 'spec-tank',
          path: path('least-to-start'),
          message: `the least to start with in ${tank.name} is no more than what is kept back`,
          found: `\`${start.written}\``,
          expected: 'more than reserve and unusable part together',
          mend: 'correct `least-to-start`, the reserve or the unusable part',
        }),
      );
    }
    if (start !== undefined) {
      problems.push(
        ...inOrder(source, {
          code: 'spec-tank',
          low: start,
          high: usual,
          mayBeEqual: true,
          lowPath: path('least-to-start'),
          highPath: path(tank['fill-to'] === undefined ? 'capacity' : 'fill-to'),
          lowName: `\`least-to-start\` of ${tank.name}`,
          highName: 'what it is filled to',
          why: 'A day cannot begin with more than is put in.',
        }),
      );
    }
    if (
      tank.pressure !== undefined &&
      tank['fill-to'] !== undefined &&
      isSame(tank['fill-to'], tank.capacity)
    ) {
      problems.push(
        finding(source, {
          code: 'spec-tank',
          path: path('fill-to'),
          message: `${tank.name} is charged with air, but filled to the brim`,
          found: `\`${tank['fill-to'].written}\``,
          expected: `less than \`${tank.capacity.written}\``,
          mend: 'leave room for the air; it is the air that drives the fuel out',
        }),
      );
    }
    if (tank.pressure === undefined && holdsFuel(spec, tank) && usual.si > mostFuelShare * tank.capacity.si) {
      problems.push(
        finding(source, {
          code: 'spec-tank',
          severity: 'remark',
          path: path(tank['fill-to'] === undefined ? 'capacity' : 'fill-to'),
          message: `${tank.name} is filled so full that its fuel has no room to swell`,
          found: `\`${usual.written}\` of \`${tank.capacity.written}\``,
          expected: 'a twentieth left empty',
          mend: 'put `fill-to` at 95 % of the capacity or less',
          notes: ['Fuel poured in cool swells beside a hot boiler, and comes out at the cap or the vent.'],
        }),
      );
    }
    if (tank.pressure !== undefined && tank['fill-to'] === undefined) {
      problems.push(
        finding(source, {
          code: 'spec-tank',
          severity: 'remark',
          path: path('pressure'),
          message: `${tank.name} is charged with air, but nothing says how full it may be`,
          expected: '`fill-to`, below the capacity',
          mend: 'add `fill-to`; a charged tank needs air over the liquid',
          notes: ['The less air, the faster the pressure falls as fuel is used.'],
        }),
      );
    }
    return [...problems, ...checkStick(id, tank, source), ...checkMarks(id, tank, source)];
  });

type Tank = Parameters<SenseCheck>[0]['tanks'][string];

/**
 * The share of a fuel tank that may be filled. Gasoline swells by about 0.12 % for each degree and kerosene by 0.09 % (thermal
 * expansion coefficients of API MPMS chapter 11.1, 1980, from memory), so that a twentieth lets either warm by forty degrees.
 */
const mostFuelShare = 0.95;

const holdsFuel = (spec: Parameters<SenseCheck>[0], tank: Tank): boolean =>
  entryOf(spec.fuels, tank.holds) !== undefined;

function checkStick(id: string, tank: Tank, source: Parameters<SenseCheck>[1]) {
  const points = tank.stick ?? [];
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    const path = ['tanks', id, 'stick', index];
    if (point.volume.si > tank.capacity.si * 1.001) {
      return [
        finding(source, {
          code: 'spec-tank',
          path: [...path, 'volume'],
          message: `a stick reading of ${tank.name} holds more than the tank`,
          found: `\`${point.volume.written}\``,
          expected: `at most \`${tank.capacity.written}\``,
          mend: 'correct the reading or the capacity',
        }),
      ];
    }
    if (before === undefined || (point.depth.si > before.depth.si && point.volume.si > before.volume.si))
      return [];
    return [
      finding(source, {
        code: 'spec-tank',
        path,
        message: `the stick readings of ${tank.name} do not rise`,
        found: `\`${point.depth.written}\` with \`${point.volume.written}\` after \`${before.depth.written}\` with \`${before.volume.written}\``,
        expected: 'each reading deeper and fuller than the one before',
        mend: 'put them in order, or measure again',
      }),
    ];
  });
}

function checkMarks(id: string, tank: Tank, source: Parameters<SenseCheck>[1]) {
  const marks = tank.marks ?? [];
  const unread =
    marks.length === 0 || tank.read === 'gauge' || tank.read === 'glass'
      ? []
      : [
          finding(source, {
            code: 'spec-tank',
            path: ['tanks', id, 'marks'],
            message: `marks of a gauge are given for ${tank.name}, which is not read on one`,
            found: `\`read: ${tank.read}\``,
            expected: '`read: gauge` or `read: glass`',
            mend: 'change `read`, or write depths under `stick` instead',
          }),
        ];
  return [
    ...unread,
    ...marks.flatMap((point, index) => {
      const before = marks[index - 1];
      const path = ['tanks', id, 'marks', index];
      if (point.volume.si > tank.capacity.si * 1.001)
        return [
          finding(source, {
            code: 'spec-tank',
            path: [...path, 'volume'],
            message: `a mark of ${tank.name} stands for more than the tank holds`,
            found: `\`${point.volume.written}\``,
            expected: `at most \`${tank.capacity.written}\``,
            mend: 'correct the mark or the capacity',
          }),
        ];
      if (before === undefined || point.volume.si > before.volume.si) return [];
      return [
        finding(source, {
          code: 'spec-tank',
          path,
          message: `the marks of ${tank.name} do not rise`,
          found: `\`${point.volume.written}\` after \`${before.volume.written}\``,
          expected: 'each mark fuller than the one before',
          mend: 'put them in order from the lowest up, or measure again',
        }),
      ];
    }),
  ];
}

/** How far the shares of a blend may be from a whole: half a hundredth, for rounding. */
const shareSlack = 0.005;

/** Blends make a whole. */
export const checkBlends: SenseCheck = (spec, source) =>
  Object.entries(spec.fuels).flatMap(([id, fuel]) => {
    const whole = fuel.parts.reduce((sum, part) => sum + part.share.si, 0);
    if (Math.abs(whole - 1) <= shareSlack) return [];
    return [
      finding(source, {
        code: 'spec-shares',
        path: ['fuels', id, 'parts'],
        message: `the shares of ${fuel.name} make ${Math.round(whole * 1000) / 10} %`,
        expected: '100 %',
        mend: 'correct the shares',
      }),
    ];
  });
