/** What the small drawing of the glass is made from: the heights of the spec, as shares of what is seen in the glass. */
import type { GlassInput, GlassMark } from '../../drawing/glass';
import type { Quantity } from '../../quantity/quantity';
import type { World } from '../paper';

/** Of which glass the drawing is: under steam, or of a cold boiler before a fire, with the most that may stand in it. */
export type GlassWhen = 'steaming' | 'cold';

/**
 * The drawing, its words `sizePt` tall; none for a car without a glass, or whose heights nobody has measured. A cold glass is drawn only
 * where its highest level is known: without it, the drawing would say nothing that holds cold alone.
 */
export function glassInputs(
  { car, language: { messages } }: World,
  sizePt: number,
  widthPt: number,
  when: GlassWhen = 'steaming',
): readonly GlassInput[] {
  const { boiler, gauges } = car.spec;
  const { heights } = boiler;
  const ends = heights?.glass;
  const id = boiler.level.find(({ gauge }) => gauges[gauge]?.kind === 'glass')?.gauge;
  const glass = gauges[id ?? ''];
  if (heights === undefined || ends === undefined || glass === undefined) return [];
  const { say } = messages;
  const mark = (
    kind: GlassMark['kind'],
    height: Quantity<'length'> | undefined,
    name: string,
    detail?: string,
  ): readonly GlassMark[] => {
    if (height === undefined) return [];
    const share = (height.si - ends.bottom.si) / (ends.top.si - ends.bottom.si);
    // what is out of sight cannot be shown in the glass
    return share < 0 || share > 1 ? [] : [{ kind, share, name, ...(detail === undefined ? {} : { detail }) }];
  };
  const cold = when === 'cold';
  if (cold && heights['highest-level-cold'] === undefined) return [];
  const least = heights['working-level-cold'];
  const working =
    cold && least !== undefined
      ? mark('working', least, say('level-cold', {}), boiler['working-level-cold'])
      : mark(
          'working',
          heights['working-level'],
          say(cold ? 'level-cold' : 'level-working', {}),
          boiler['working-level'],
        );
  if (working.length === 0) return [];
  return [
    {
      glass: glass.tag === undefined ? glass.name : `${glass.name} ${glass.tag}`,
      marks: [
        ...(cold
          ? mark(
              'highest',
              heights['highest-level-cold'],
              say('level-highest-cold', {}),
              boiler['highest-level-cold'],
            )
          : mark('highest', heights['highest-level'], say('glass-highest', {}))),
        ...working,
        ...mark('lowest', heights['lowest-level'], say('level-lowest', {}), boiler['lowest-level']),
      ],
      say,
      sizePt,
      widthPt,
    },
  ];
}
