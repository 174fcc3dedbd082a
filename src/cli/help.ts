/** What `kettlebook --help` says, and what it says of one command. */

/** One command: how it is written, what it does in a line, and all there is to say of it. */
interface CommandHelp {
  readonly usage: string;
  readonly short: string;
  readonly long: string;
}

const byCommand: Readonly<Record<string, CommandHelp>> = {
  new: {
    usage: 'kettlebook new CAR',
    short: 'Begin the file of a car: asks for what it needs, with what to measure and where.',
    long: `Asks one thing at a time and writes every answer into CAR at once. Where an answer is wanted, type
  ?        what to measure, and where
  nothing  pass the question over; it stays open
  back     go back to the question before
  leave    leave for now; the same command goes on where it was left
Answers are kept beside CAR in a file that ends in \`.answers.yaml\`; delete it when the car’s file is done.
What was not answered is never made up: \`kettlebook check\` tells of it. More: docs/new-car.md.

  kettlebook new my-car.yaml`,
  },
  check: {
    usage: 'kettlebook check CAR [--json]',
    short: 'Say everything that is wrong in the file of a car, and how to mend it; make nothing.',
    long: `Each problem is told with its line and column, what stands there, what would be right, and how to mend it.
An error stops the papers; a remark is worth a look and stops nothing. With --json it is told for machines.
What each kind of problem means: docs/diagnostics.md.

  kettlebook check my-car.yaml`,
  },
  make: {
    usage: 'kettlebook make CAR [--paper NAME]... [--out FOLDER] [--on letter|a4] [--since OLD]',
    short: 'Make the papers of a car: all of them, or those named.',
    long: `  --paper NAME   only this paper; may be given several times; \`kettlebook papers\` lists the names
  --out FOLDER   where they go: into FOLDER/<name of the car’s file>/; left out, FOLDER is \`out\`
  --on PAPER     print on letter or a4, whatever the car’s file says
  --since OLD    the file of the issue before: the owner’s manual then has bars beside what reads otherwise
If anything is wrong nothing is made, and papers made earlier stay as they were.

  kettlebook make my-car.yaml
  kettlebook make my-car.yaml --paper range-table --paper card-cold-start
  kettlebook make my-car.yaml --since my-car-C.yaml        (docs/reprinting.md)`,
  },
  papers: {
    usage: 'kettlebook papers [CAR]',
    short: 'List the papers that can be made, and what each is for.',
    long: `With the file of a car it lists the papers of that car, those of its own folder among them.

  kettlebook papers`,
  },
  steps: {
    usage: 'kettlebook steps CAR [PROCEDURE]',
    short: 'List the procedures of a car, or the steps of one, with the names that `changes` calls them by.',
    long: `To add, replace, move or leave out a step, the file of the car names the procedure and a step of it under
\`changes\` (docs/car-spec.md). The first word of each line here is that name.

  kettlebook steps my-car.yaml
  kettlebook steps my-car.yaml walk-round`,
  },
  explain: {
    usage: 'kettlebook explain CAR [FIGURE] [--json]',
    short: 'How each figure was worked out: from which lines, by which method, how sure.',
    long: `With FIGURE, that one alone; its name is the first word of each answer. With --json it is told for machines.
How figures are worked out and what they were checked against: docs/figures.md.

  kettlebook explain my-car.yaml
  kettlebook explain my-car.yaml water-range`,
  },
  tour: {
    usage: 'kettlebook tour CAR WAY [--out FOLDER]',
    short: 'Plan a way: water and fuel used on each leg, where to stop; prints a card for it.',
    long: `WAY is a list of legs (a table saved as CSV, text with commas) or a track from a route planner (GPX 1.1). How a
list of legs is written: docs/figures.md.
The card goes into FOLDER/<name of the car’s file>/; left out, FOLDER is \`out\`.

  kettlebook tour my-car.yaml saturday.csv`,
  },
  compare: {
    usage: 'kettlebook compare OLD NEW [--out FOLDER] [--json]',
    short: 'What changed between two issues of a car’s file, and which laminated cards to destroy.',
    long: `OLD and NEW are the files of two issues of one car. What changed is told, and printed as a reprint slip into
FOLDER/<name of NEW>/; left out, FOLDER is \`out\`. With --json it is told for machines.
The way of it: docs/reprinting.md.

  kettlebook compare my-car-C.yaml my-car.yaml`,
  },
  unsaid: {
    usage: 'kettlebook unsaid CAR [--paper NAME]...',
    short: 'What the language of a car’s papers does not say yet, as a file to fill in.',
    long: `For whoever puts the papers into another language (docs/languages.md). With --paper only what those papers need.

  kettlebook unsaid my-car.yaml --paper card-cold-start`,
  },
};

/** Every command, in the order they are told. */
export const commandNames: readonly string[] = Object.keys(byCommand);

/** How every command ends. */
const ending =
  'Ends with 0 when done, 1 when the file or the car is at fault, 2 when it was not understood what to do.';

/** What `kettlebook --help` says. */
export const helpText = `kettlebook: printed papers for one steam car, from one text file that describes it

CAR is that file, such as my-car.yaml; \`kettlebook new\` begins one.

${Object.values(byCommand)
  .map(({ usage, short }) => `  ${usage}\n      ${short}`)
  .join('\n\n')}

  kettlebook COMMAND --help
      More of one command, with examples.

  kettlebook --help, --version

${ending}
How to write the file of a car: docs/car-spec.md. The meaning of each problem: docs/diagnostics.md.`;

/** What is said of one command; nothing of one there is not. */
export function helpOf(command: string): string | undefined {
  const help = byCommand[command];
  return help === undefined ? undefined : `  ${help.usage}\n\n${help.short}\n\n${help.long}\n\n${ending}`;
}
