/** What no car may be without. */
import type { CarSpec } from '../schema/carSpec';
import { isRoofed } from '../schema/identity';
import { type Finding, finding, type SenseCheck } from './finding';

/** An extinguisher, water and a pump for it, a main burner, a steam gauge, a gauge for every tank under pressure. */
export const checkNeeds: SenseCheck = (spec, source) => {
  const lacks: Finding[] = [];
  const need = (there: boolean, path: string, what: string, mend: string) => {
    if (!there) lacks.push({ code: 'spec-lacks', path: [path], message: `the car has no ${what}`, mend });
  };
  need(
    Object.values(spec.equipment).some((each) => each.kind === 'extinguisher'),
    'equipment',
    'extinguisher',
    'carry one for liquid fuel, and add it with `kind: extinguisher`',
  );
  need(
    Object.values(spec.tanks).some((tank) => tank.holds === 'water'),
    'tanks',
    'water tank',
    'add the tank that holds `water`',
  );
  need(
    Object.values(spec.burners).some((burner) => burner.job === 'main'),
    'burners',
    'main burner',
    'add a burner with `job: main`',
  );
  need(
    Object.values(spec.pumps).some((pump) => pump.moves === 'water'),
    'pumps',
    'pump that moves water',
    'add the feed pump with `moves: water`',
  );
  need(
    Object.values(spec.gauges).some((gauge) => gauge.of === 'boiler' && gauge.reads === 'pressure'),
    'gauges',
    'steam gauge',
    'add the gauge with `reads: pressure` and `of: boiler`',
  );
  return [
    ...lacks,
    ...roofWithoutHeight(spec),
    ...unreadTanks(spec),
    ...noTorches(spec),
    ...nothingKeptOn(spec),
  ].map((each) => finding(source, each));
};

/** What keeps a brake on is a parking brake, and what it keeps on is a brake: else a step on the one or the other would be lost. */
function nothingKeptOn({ controls }: CarSpec): readonly Finding[] {
  return Object.entries(controls).flatMap(([id, { kind, name, 'keeps-on': kept }]): Finding[] => {
    const other = controls[kept ?? ''];
    if (other === undefined || (kind === 'parking-brake' && other.kind === 'brake')) return [];
    return [
      {
        code: 'spec-wrong-part',
        path: ['controls', id, 'keeps-on'],
        message: `the ${name} cannot keep the ${other.name} on`,
        found: `\`kind: ${kind}\` and \`kind: ${other.kind}\``,
        expected: 'a control of `kind: parking-brake` that keeps on one of `kind: brake`',
        mend: 'name the brake that it holds on, or leave `keeps-on` out',
      },
    ];
  });
}

/** A roof is drawn as high as it is: without a height it would be made up. */
function roofWithoutHeight({ car: { outline, height } }: CarSpec): readonly Finding[] {
  if (outline === undefined || !isRoofed(outline) || height !== undefined) return [];
  return [
    {
      code: 'spec-lacks',
      path: ['car', 'outline'],
      message: 'the roof is to be drawn and has no height',
      found: `\`outline: ${outline}\` without \`height\``,
      expected: 'the height of the roof above the ground',
      mend: 'measure from the ground to the top of the roof and give it as `height`',
    },
  ];
}

/**
 * What is to light a burner or heat its vaporizer, and can be nothing that burns on by itself: whoever does it stands aside
 * by then.
 */
function noTorches({ burners, vaporizers, equipment }: CarSpec): readonly Finding[] {
  const uses = [
    ...Object.entries(burners).map(([id, { name, 'lit-by': by }]) => ({
      path: ['burners', id, 'lit-by'],
      by,
      what: `the ${name} is lit`,
    })),
    ...Object.entries(vaporizers ?? {}).flatMap(([id, { name, 'heated-by': heaters }]) =>
      heaters.map((by, at) => ({
        path: ['vaporizers', id, 'heated-by', at],
        by,
        what: `the ${name} is heated`,
      })),
    ),
  ];
  return uses.flatMap(({ path, by, what }): Finding[] => {
    const lighter = equipment[by];
    return lighter === undefined || lighter.kind === 'torch'
      ? []
      : [
          {
            code: 'spec-lit-by',
            path,
            message: `${what} by the ${lighter.name}, which is no torch`,
            found: `\`kind: ${lighter.kind}\``,
            expected:
              'equipment of `kind: torch`: what stands by itself and burns on while everybody is clear',
            mend: 'name what is set burning there, such as a blowlamp, or a wick on a wire, with `kind: torch`; a match in the hand keeps the hand there',
          },
        ];
  });
}

/** Tanks that are run at a pressure which nothing on the car shows. */
function unreadTanks({ tanks, gauges }: CarSpec): readonly Finding[] {
  const read = new Set(
    Object.values(gauges).flatMap((gauge) => (gauge.reads === 'pressure' ? [gauge.of] : [])),
  );
  return Object.entries(tanks).flatMap(([id, { name, pressure }]): Finding[] =>
    pressure === undefined || read.has(id)
      ? []
      : [
          {
            code: 'spec-lacks',
            path: ['tanks', id, 'pressure'],
            message: `no gauge reads the pressure of the ${name}`,
            found: `run between ${pressure.from.written} and ${pressure.to.written}, and nothing that shows it`,
            expected: `a gauge with \`reads: pressure\` and \`of: ${id}\``,
            mend: 'add the gauge under `gauges`, be it on the pump; without one nobody can keep a pressure in its band',
          },
        ],
  );
}
