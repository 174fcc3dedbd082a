/** What the drawing of the boiler's levels is made from: heights of the spec, with the words of its levels. */
import type { LevelMark, LevelsInput } from '../../drawing/levels';
import { inPrintedUnit } from '../../quantity/print';
import type { Quantity } from '../../quantity/quantity';
import type { World } from '../paper';

/** The drawing; none if no heights are given. */
export function levelsInputs({
  car,
  phrases,
  language: { messages, numbers },
}: World): readonly LevelsInput[] {
  const { boiler, valves, gauges, devices } = car.spec;
  const { heights } = boiler;
  if (heights === undefined) return [];
  const { say } = messages;
  const [system = 'metric'] = phrases.systems;
  const shown = (height: Quantity<'length'>): number => inPrintedUnit(height, { system });
  const mark = (
    kind: LevelMark['kind'],
    height: Quantity<'length'> | undefined,
    name: string,
    detail?: string,
  ): readonly LevelMark[] =>
    height === undefined
      ? []
      : [
          {
            kind,
            at: shown(height),
            name,
            height: phrases.first(height),
            ...(detail === undefined ? {} : { detail }),
          },
        ];
  const named = ({ name, tag }: { readonly name: string; readonly tag?: string | undefined }) =>
    tag === undefined ? name : `${name} ${tag}`;
  const glassId = boiler.level.find(({ gauge }) => gauges[gauge]?.kind === 'glass')?.gauge;
  const glass = gauges[glassId ?? ''];
  const cut = Object.values(devices).find(({ kind }) => kind === 'low-water-cut-off');
  return [
    {
      of: boiler.name,
      from: heights.from,
      unit: phrases.unit('length', system),
      top: shown(heights.top),
      say,
      decimal: numbers.decimal,
      marks: [
        ...mark('danger', heights['least-safe'], say('level-least-safe', {})),
        ...mark('level', heights['lowest-level'], say('level-lowest', {}), boiler['lowest-level']),
        ...mark('working', heights['working-level'], say('level-working', {}), boiler['working-level']),
        ...mark('level', heights['working-level-cold'], say('level-cold', {}), boiler['working-level-cold']),
        ...mark(
          'level',
          heights['highest-level-cold'],
          say('level-highest-cold', {}),
          boiler['highest-level-cold'],
        ),
        ...mark('level', heights['highest-level'], say('level-highest', {})),
        ...mark('level', heights['feed-from'], say('level-feed-from', {})),
        ...mark('level', heights['feed-to'], say('level-feed-to', {})),
        ...(glass === undefined
          ? []
          : [
              ...mark('glass', heights.glass?.top, say('level-glass-top', {}), named(glass)),
              ...mark('glass', heights.glass?.bottom, say('level-glass-bottom', {}), named(glass)),
            ]),
        ...(heights.cocks ?? []).flatMap(({ valve, at }) =>
          mark('cock', at, named(valves[valve] ?? { name: valve })),
        ),
        ...(cut === undefined ? [] : mark('cut', heights['low-water-cut'], say('level-cut', {}), named(cut))),
      ],
    },
  ];
}
