/** What `kettlebook --help` says. */
export const helpText = `kettlebook: printed papers for one steam car, from one spec file

  kettlebook make SPEC [--paper NAME]... [--out DIR] [--on letter|a4] [--since OLD]
      Make the papers of the car in SPEC: all of them, or those named.
      They go to DIR/<name of the spec>/ (DIR is \`out\` if not given).
      --on prints on other paper than the spec says. --since names the spec of the issue before: the owner's
      manual then has bars beside what reads otherwise (docs/reprinting.md).

  kettlebook check SPEC [--json]
      Read SPEC, say everything that is wrong with it, make nothing.

  kettlebook explain SPEC [FIGURE] [--json]
      How each figure was worked out: inputs and their lines, method, source, doubt.

  kettlebook new FILE
      Ask for what a spec needs, with what to measure and where, and write it into FILE. It can be left at
      any question and gone on with. What was not answered is left out, so that check tells of it.

  kettlebook tour SPEC FILE [--out DIR]
      Plan the way in FILE (a list of legs as CSV, or a GPX 1.1 track): water and fuel used, where to stop.
      Prints that as a card into DIR/<name of the spec>/. How FILE is written: docs/figures.md.

  kettlebook compare OLD NEW [--out DIR] [--json]
      What changed between two issues of one car's spec, which laminated cards to destroy, which papers
      to print again. Prints that as a reprint slip into DIR/<name of the new spec>/.

  kettlebook unsaid SPEC [--paper NAME]...
      What the language of SPEC does not yet say of those papers, or of all: as a file to fill in and put
      into the folder of the language (docs/languages.md).

  kettlebook papers
      What can be made.

  kettlebook --help, --version

Ends with 0 when done, 1 when the spec or the car is at fault, 2 when used wrongly.
How to write a spec: docs/car-spec.md. The meaning of each problem: docs/diagnostics.md.`;
