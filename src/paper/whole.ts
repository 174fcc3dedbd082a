/** Papers that cannot be made because the language of a car’s papers does not say all of their texts. */
import type { Diagnostic, Spot } from '../diagnostic/diagnostic';
import type { Language } from '../language/language';
import type { Paper } from './paper';

/** More texts than this are counted and not told. */
const told = 12;

/** Whether a language says all of a paper; one that a museum made up is said by its template. */
export function isWhole({ papers }: Language, { name, own }: Pick<Paper, 'name' | 'own'>): boolean {
  return own === true || papers === 'all' || papers.includes(name);
}

/** Which papers are left out of those of a car, since its language does not say all of them. */
export function notWhole(papers: readonly Paper[], language: Language, at: Spot): Diagnostic {
  return {
    code: 'language-left-out',
    severity: 'remark',
    at,
    message: `${papers.length === 1 ? 'one paper is' : `${papers.length} papers are`} not yet said in ${language.name} and left out`,
    found: papers.map(({ name }) => `\`${name}\``).join(', '),
    mend: 'make them in another language, or say their texts in this one (`docs/languages.md`)',
  };
}

/** The same for one paper that was asked for by its name: `lacking` is what the language does not say of it, in English. */
export function askedButNotWhole(
  { name }: Pick<Paper, 'name'>,
  language: Language,
  lacking: readonly string[],
): Diagnostic {
  return {
    code: 'language-left-out',
    severity: 'error',
    message: `the paper \`${name}\` is not yet said in ${language.name}`,
    ...(lacking.length === 0
      ? {}
      : { found: `${counted(lacking)} not said, such as ${quoted(lacking.slice(0, told))}` }),
    ...(language.papers === 'all'
      ? {}
      : { expected: `one of ${language.papers.map((each) => `\`${each}\``).join(', ')}` }),
    mend: `make it in another language, or say its texts in this one: \`kettlebook unsaid\` lists them all (\`docs/languages.md\`)`,
  };
}

/** The problem that a paper would print texts that its language does not say, if there are any: `lacking`, in English. */
export function lackingTexts(
  { name }: Pick<Paper, 'name'>,
  language: Language,
  lacking: readonly string[],
): readonly Diagnostic[] {
  if (lacking.length === 0) return [];
  const [folder = ''] = language.tag.split('-');
  return [
    {
      code: 'language-lacks-text',
      severity: 'error',
      message: `the paper \`${name}\` cannot be made in ${language.name}, which does not say ${counted(lacking)}`,
      found: quoted(lacking.slice(0, told)),
      ...(lacking.length > told
        ? { notes: [`There are ${lacking.length - told} more; \`kettlebook unsaid\` lists them all.`] }
        : {}),
      mend: `say each in a file of \`shared/languages/${folder}\`, or take the paper out of \`papers\` in its \`language.yaml\``,
    },
  ];
}

function counted(lacking: readonly string[]): string {
  return lacking.length === 1 ? 'one of its texts' : `${lacking.length} of its texts`;
}

function quoted(texts: readonly string[]): string {
  return texts.map((text) => `“${text}”`).join(', ');
}
