/** What the small drawing of the glass is made from: the heights of the spec, as shares of what is seen in the glass. */
import type { GlassInput, GlassMark } from '../../drawing/glass';
import type { Quantity } from '../../quantity/quantity';
import type { World } from '../paper';

/** The drawing, its words `sizePt` tall; none for a car without a glass, or whose heights nobody has measured. */
export function glassInputs(
  { car, language: { messages } }: World,
  sizePt: number,
  widthPt: number,
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
  const working = mark(
    'working',
    heights['working-level'],
    say('level-working', {}),
    boiler['working-level'],
  );
  if (working.length === 0) return [];
  return [
    {
      glass: glass.tag === undefined ? glass.name : `${glass.name} ${glass.tag}`,
      marks: [
        ...mark('highest', heights['highest-level'], say('glass-highest', {})),
        ...working,
        ...mark('lowest', heights['lowest-level'], say('level-lowest', {}), boiler['lowest-level']),
      ],
      say,
      sizePt,
      widthPt,
    },
  ];
}
