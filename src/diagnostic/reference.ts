/** `docs/diagnostics.md`: every kind of problem with its meaning, made from the catalogue. */
import { catalogue } from './catalogue';

/** What each group of codes, told by the first word of the code, is about. */
const groups: Readonly<Record<string, string>> = {
  spec: 'The spec of the car',
  library: 'The step library',
  procedure: 'Procedures, made for the car',
  rule: 'Rules of safety that a procedure breaks',
  proof: 'The proof of the procedures',
  figure: 'Figures far outside what such cars do',
  log: 'The log of trips',
  words: 'Lists of words',
  language: 'Languages of the papers',
  folder: 'The folder of its own that a spec names',
  compare: 'Comparing two issues of a spec',
  tour: 'Ways to be driven',
  track: 'Recorded ways',
  template: 'Templates',
  markup: 'The markup that templates make',
  theme: 'Themes',
  picture: 'Pictures of a museum’s own',
  sheet: 'Sheets',
  layout: 'Laying out pages',
  check: 'Checks of finished pages',
  screen: 'Pages for the screen',
  paper: 'Papers',
  file: 'Files',
  shared: 'The shared data',
};

const opening = `# Problems and their meaning

Every problem the program tells of has a code. The code of a meaning never changes, and none is used again for another.

An **error** stops the making of papers. A **remark** is worth reading and stops nothing.

On a terminal a problem is told like this: where, what it is, what stands there, what would be right, what to do.

\`\`\`
pipkin.yaml:63:15 error[spec-quantity] \`tanks.water-tank.capacity\` cannot be used as it stands
    found     \`20 gal\`
    expected  a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
    mend      write \`20 US gal\` or \`20 imp gal\`: a US gallon is 3.785 L and an imperial gallon 4.546 L
\`\`\`

All problems of a file are told at once, in its order. Faults of form (indentation, quotes, the same key twice) are told
alone, because little else can be read before they are mended; figures that contradict each other are looked for once
every field can be read, and the plant as a whole once every name leads to its part.

## For other programs

With \`--json\`, \`kettlebook check\` writes one object: \`format\` (always \`1\` while the shape is kept), \`errors\` and \`remarks\`
(how many), and \`problems\`. Each problem has \`severity\`, \`code\`, \`meaning\` (as below), \`message\` and \`mend\`; and \`file\`,
\`line\`, \`column\` (from 1), \`path\`, \`found\`, \`expected\` and \`notes\` where they say something. Fields may be added.
`;

/** The whole page. */
export function diagnosticsReference(): string {
  const byGroup = new Map<string, [code: string, meaning: string][]>();
  for (const [code, meaning] of Object.entries(catalogue)) {
    const group = code.split('-', 1)[0] ?? code;
    byGroup.set(group, [...(byGroup.get(group) ?? []), [code, meaning]]);
  }
  const tables = [...byGroup].map(([group, codes]) => {
    const rows = codes.map(([code, meaning]) => `| \`${code}\` | ${meaning.replaceAll('|', '\\|')} |`);
    return [`## ${groups[group] ?? group}`, '', '| Code | Meaning |', '|---|---|', ...rows].join('\n');
  });
  return `${[opening.trimEnd(), ...tables].join('\n\n')}\n`;
}

/** First words of codes for which the page has no heading in words. */
export function groupsWithoutWords(): readonly string[] {
  const used = new Set(Object.keys(catalogue).map((code) => code.split('-', 1)[0] ?? code));
  return [...used].filter((group) => groups[group] === undefined);
}
