/** Tags to hang on the valves, at true size: cut out, folded so that both sides lie on each other, and laminated. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { drawTagSheet } from '../../drawing/tagSheet';
import { partsOfKind } from '../context/controls';
import { identityContext } from '../context/identity';
import { tagSheets, untaggable } from '../context/tags';
import type { Paper, World } from '../paper';
import type { PaperTitle } from '../plans';
import { asMeasuredSheets } from '../ways';

/** The tags of all valves of a car, in each form that the plans ask for. */
export const valveTags = ({ title, what }: PaperTitle): Paper => ({
  name: 'valve-tags',
  title,
  what,
  template: 'valve-tags',
  context: (world) => ({
    car: identityContext(world.car.spec, world.phrases),
    words: world.words,
    valves: partsOfKind(world, 'valve'),
    // the fingerprint is on the tags and taken over this, so that it cannot be in it
    sheets: sheetsOf(world, '').map(({ name, tags, size }, index) => ({
      number: index + 1,
      drawing: name,
      form: tags[0] === undefined ? '' : world.words['tag-form'][tags[0].form],
      round: tags[0]?.form === 'round',
      size: sizeWords(size.widthMm, size.heightMm, tags[0]?.form === 'round'),
      tags,
    })),
  }),
  drawings: () => [],
  cutOut: (world, mark) => sheetsOf(world, mark).map((sheet) => drawTagSheet(sheet, world.fonts)),
  problems,
  ...asMeasuredSheets(title),
});

function sheetsOf(world: World, mark: string) {
  return world.plans['valve-tags'].flatMap((form) => tagSheets(world, form, mark));
}

function sizeWords(widthMm: number, heightMm: number, round: boolean): string {
  return round ? `${widthMm}\u00a0mm` : `${widthMm} × ${heightMm}\u00a0mm`;
}

function problems(world: World): readonly Diagnostic[] {
  const found = world.plans['valve-tags'].flatMap((form) =>
    untaggable(world, form).map((id) => ({ form, id })),
  );
  return found.map(({ form, id }) => {
    const valve = world.car.spec.valves[id];
    return {
      code: 'paper-name-too-long',
      severity: 'error',
      message: `the words of the valve \`${id}\` do not fit on the largest ${form} tag in type that can be read`,
      at: world.car.spotOf(`valves.${id}.name`),
      found: `“${valve?.name ?? ''}” on the front, “${valve?.does ?? ''}” on the back`,
      expected: 'words that go on a tag',
      mend: 'shorten the name or what it does; or take the form out of `valve-tags` in `shared/papers.yaml`',
    };
  });
}
