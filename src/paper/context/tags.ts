/** The tags of the valves of a car: their words, the size they fit in, and how they stand on sheets. */
import { type TagSheetInput, tagGrid } from '../../drawing/tagSheet';
import {
  drawValveTag,
  type TagForm,
  type TagSize,
  type TagType,
  tagSizes,
  type ValveTagInput,
} from '../../drawing/valveTag';
import { heightSeenMm, preferredArcMinutes } from '../../layout/legibility';
import { pointsPerMm } from '../../layout/sheet';
import { anyMark } from '../fingerprint';
import { leastBookSizes, leastSizes } from '../legible';
import type { World } from '../paper';
import { measuredRoom } from '../sheets';

/** The tag itself is read from the dash, its name from as near as one works it, its back in the hand. */
export function tagType({ car, fonts }: World): TagType {
  const { dash, lap } = car.spec.print.distances;
  const capital = heightSeenMm(dash.si, preferredArcMinutes) * pointsPerMm;
  return {
    tagPt: capital / fonts['narrow-bold'].capHeight,
    namePt: leastSizes(fonts, lap.si)['narrow-bold'],
    backPt: leastBookSizes(fonts).narrow,
  };
}

/** The words of every valve’s tag, in the order of the spec; `mark` is the fingerprint they carry. */
export function tagInputs(
  { car, language, words }: World,
  form: TagForm,
  mark: string,
): readonly (ValveTagInput & { readonly id: string })[] {
  return Object.entries(car.spec.valves).map(([id, valve]) => ({
    id,
    name: `${form}-${id}`,
    form,
    tag: valve.tag,
    valve: valve.name,
    does: valve.does,
    say: language.messages.say,
    parked: language.messages.say('tag-parked', { position: words.parked[valve.parked] }),
    issue: language.messages.say('tag-issue', {
      car: car.spec.car.name,
      letter: car.spec.issue.letter,
      mark,
    }),
  }));
}

/** The smallest size that a tag’s words fit in; nothing if they fit in none. */
function sizeOf(input: ValveTagInput, type: TagType, { fonts }: World): TagSize | undefined {
  return tagSizes[input.form].find((size) => drawValveTag(input, size, type, fonts) !== undefined);
}

/**
 * The smallest size for each valve’s tag, whatever fingerprint it will carry: the one it will is taken over how tags stand on
 * their sheets. Tried once for a world: the paper asks for it whenever it speaks of its tags.
 */
function neededSizes(world: World, form: TagForm): readonly (TagSize | undefined)[] {
  const byForm = tried.get(world) ?? new Map<TagForm, readonly (TagSize | undefined)[]>();
  tried.set(world, byForm);
  const type = tagType(world);
  const sizes =
    byForm.get(form) ?? tagInputs(world, form, anyMark).map((input) => sizeOf(input, type, world));
  byForm.set(form, sizes);
  return sizes;
}

const tried = new WeakMap<World, Map<TagForm, readonly (TagSize | undefined)[]>>();

/** Valves whose words do not go on any tag of a form. */
export function untaggable(world: World, form: TagForm): readonly string[] {
  const sizes = neededSizes(world, form);
  return Object.keys(world.car.spec.valves).filter((_, index) => sizes[index] === undefined);
}

/** So many of the tags of a form are of one size; only the rest, with very long names, are larger. */
const ofOneSize = 0.75;

/** Tags of one size, and how many of that size stand beside each other and on a sheet. */
interface OfOneSize {
  readonly size: TagSize;
  readonly columns: number;
  readonly perSheet: number;
  readonly tags: readonly TagInput[];
}

type TagInput = ReturnType<typeof tagInputs>[number];

/** All tags of a form on sheets: those of the usual size first, then larger ones; none stands alone where that can be helped. */
export function tagSheets(world: World, form: TagForm, mark: string): readonly TagSheetInput[] {
  const type = tagType(world);
  const sizes = tagSizes[form];
  const widest = neededSizes(world, form);
  const inputs = tagInputs(world, form, mark);
  const needed = inputs.map((input, index) => {
    const size = widest[index];
    return { input, at: size === undefined ? sizes.length : sizes.indexOf(size) };
  });
  const usual = sizes.findIndex(
    (_, index) => needed.filter(({ at }) => at <= index).length >= ofOneSize * needed.length,
  );
  const bySize = sizes.map((size, index): OfOneSize => {
    const { columns, rows } = tagGrid(size, measuredRoom(world));
    const tags = needed.filter(({ at }) => Math.max(at, usual) === index).map(({ input }) => input);
    return { size, columns: Math.max(1, columns), perSheet: Math.max(1, columns * rows), tags };
  });
  const inOrder = (tags: readonly TagInput[]) => inputs.filter((input) => tags.includes(input));
  return withCompany(bySize, inOrder).flatMap(({ size, columns, tags, perSheet }) =>
    spread(tags, perSheet, columns).map((own, sheet) => ({
      name: `tags-${form}-${size.widthMm}-${sheet + 1}`,
      tags: own,
      size,
      type,
      columns,
    })),
  );
}

/**
 * A single tag of a larger size takes on its sheet the last of the size before it, as large as itself, if they would not fill a sheet
 * of their own and all go on one.
 */
function withCompany(
  bySize: readonly OfOneSize[],
  inOrder: (tags: readonly TagInput[]) => readonly TagInput[],
): readonly OfOneSize[] {
  const together: OfOneSize[] = [];
  for (const own of bySize) {
    const last = together.at(-1);
    const rest = last === undefined ? 0 : last.tags.length % last.perSheet;
    if (last === undefined || own.tags.length !== 1 || rest === 0 || rest + 1 > own.perSheet) {
      together.push(own);
      continue;
    }
    const stay = last.tags.length - rest;
    together[together.length - 1] = { ...last, tags: last.tags.slice(0, stay) };
    together.push({ ...own, tags: inOrder([...last.tags.slice(stay), ...own.tags]) });
  }
  return together;
}

/** On as few sheets as hold them; if the last would hold one alone, in whole rows and on each about as many as on the others. */
function spread(
  tags: readonly TagInput[],
  perSheet: number,
  columns: number,
): readonly (readonly TagInput[])[] {
  const sheets = Math.ceil(tags.length / perSheet);
  const isAlone = sheets > 1 && tags.length % perSheet === 1;
  const each = isAlone ? Math.ceil(tags.length / sheets / columns) * columns : perSheet;
  return Array.from({ length: sheets }, (_, sheet) => tags.slice(sheet * each, (sheet + 1) * each));
}
