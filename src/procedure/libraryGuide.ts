/** `docs/procedures.md`: the page on the step library, its tables made from the program and the library themselves. */
import type { Outcome } from '../diagnostic/diagnostic';
import { actions } from '../spec/schema/change';
import { carValueMeanings } from './carValues';
import { beginnings, endings, meaningOf } from './circumstances';
import { duties } from './duties';
import { type Fact, facts, type Setting, settings } from './facts';
import type { Library } from './library';
import { stepKeys } from './libraryForm';
import { partValueMeanings } from './partValues';
import { phases } from './procedure';
import { relations } from './relations';
import { carTraits, partTraits } from './traits';

/** The page: what a person wrote (`head`), then the lists. A library that cannot be read gives a page that says so. */
export function libraryGuide(head: string, library: Outcome<Library>): string {
  return [
    head.trimEnd(),
    meanings('Duties', 'Parts of the whole car, named in `duty` and `except`.', duties),
    meanings('Relations', 'Parts that belong to the part at hand, named in `its`.', relations),
    meanings('Traits of a part', 'Named in `where`, `where-not` and `it-is`.', partTraits),
    meanings('Traits of the car', 'Named in `trait`.', carTraits),
    texts(
      'Values of a part',
      'Used in words as `{{part.turns}}`, `{{it.name}}` and so on.',
      partValueMeanings,
    ),
    texts('Values of the car', 'Used in words as they stand here.', carValueMeanings),
    section('Acts', `One of: ${actions.map((action) => `\`${action}\``).join(', ')}.`),
    factTable(),
    settingTable(),
    texts(
      'Beginnings',
      'What is so when an emergency can begin, named in `begins-while`; left out, there is a flame or steam.',
      meaningsOf(beginnings),
    ),
    texts('Endings', 'What must be so when an emergency has ended, named in `leaves`.', meaningsOf(endings)),
    library.ok ? stepLists(library.value) : section('Steps', 'The library could not be read.'),
  ]
    .join('\n\n')
    .concat('\n');
}

function section(title: string, body: string): string {
  return `## ${title}\n\n${body}`;
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replace(/\|/g, '\\|')).join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}

function meanings(
  title: string,
  lead: string,
  entries: Readonly<Record<string, { readonly meaning: string }>>,
): string {
  const rows = Object.entries(entries).map(([name, { meaning }]) => [`\`${name}\``, meaning]);
  return section(title, `${lead}\n\n${table(['Name', 'Meaning'], rows)}`);
}

function texts(title: string, lead: string, entries: Readonly<Record<string, string>>): string {
  const rows = Object.entries(entries).map(([name, meaning]) => [`\`${name}\``, meaning]);
  return section(title, `${lead}\n\n${table(['Name', 'Meaning'], rows)}`);
}

function meaningsOf(keys: readonly (keyof typeof meaningOf)[]): Readonly<Record<string, string>> {
  return Object.fromEntries(keys.map((key) => [key, meaningOf[key]]));
}

function factTable(): string {
  const rows = Object.entries<Fact>(facts).map(([name, fact]) => [
    `\`${name}\``,
    fact.of === 'car' ? 'the car' : `the ${fact.of}`,
    fact.meaning,
    fact.lapses === '' ? 'nothing within a day' : fact.lapses,
  ]);
  const lead = 'What a step can prove. A fact holds from the end of its step until something undoes it.';
  return section('Facts', `${lead}\n\n${table(['Name', 'Of', 'Meaning', 'Undone'], rows)}`);
}

function settingTable(): string {
  const values = (setting: Setting): string => {
    if (setting.values === 'number') return 'a number';
    if (setting.values === 'yes-no') return '`true`, `false`';
    if (setting.values === 'part') return '`it`, `part`';
    return setting.values.map((value) => `\`${value}\``).join(', ');
  };
  const rows = Object.entries<Setting>(settings).map(([name, setting]) => [
    `\`${name}\``,
    setting.meaning,
    values(setting),
  ]);
  const lead = 'What a step can set, beyond what its act does to its part by itself.';
  return section('Settings', `${lead}\n\n${table(['Name', 'Meaning', 'Values'], rows)}`);
}

/** Every procedure with the keys of its steps, for those who write `changes`. */
function stepLists(library: Library): string {
  const lead = 'The keys that a car’s `changes` can name, procedure by procedure, in order.';
  const parts = phases.flatMap((phase) =>
    library.procedures
      .filter(({ form }) => form.phase === phase)
      .map(({ form }) => {
        const keys = stepKeys(form.steps).map((key) => `\`${key}\``);
        return `**\`${form.id}\`** – ${form.title}: ${keys.join(', ')}.`;
      }),
  );
  return section('Steps', [lead, ...parts].join('\n\n'));
}
