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

/** All tags of a form on sheets: those of the usual size first, then larger ones. */
export function tagSheets(world: World, form: TagForm, mark: string): readonly TagSheetInput[] {
  const type = tagType(world);
  const sizes = tagSizes[form];
  const widest = neededSizes(world, form);
  const needed = tagInputs(world, form, mark).map((input, index) => {
    const size = widest[index];
    return { input, at: size === undefined ? sizes.length : sizes.indexOf(size) };
  });
  const usual = sizes.findIndex(
    (_, index) => needed.filter(({ at }) => at <= index).length >= ofOneSize * needed.length,
  );
  return sizes.flatMap((size, index) => {
    const { columns, rows } = tagGrid(size, measuredRoom(world));
    const tags = needed.filter(({ at }) => Math.max(at, usual) === index).map(({ input }) => input);
    const perSheet = Math.max(1, columns * rows);
    return Array.from({ length: Math.ceil(tags.length / perSheet) }, (_, sheet) => ({
      name: `tags-${form}-${size.widthMm}-${sheet + 1}`,
      tags: tags.slice(sheet * perSheet, (sheet + 1) * perSheet),
      size,
      type,
      columns: Math.max(1, columns),
    }));
  });
}
