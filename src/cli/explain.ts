/** `kettlebook explain`: how figures were worked out. */
import { nearest } from '../diagnostic/nearest';
import { explain, explainText } from '../paper/explain';
import type { Asked } from './arguments';
import { openCarOrTell } from './openCar';
import { type ExitCode, exitCodes, type Terminal } from './terminal';

/** Explain one figure, or all of them. */
export async function explainFigures(
  asked: Extract<Asked, { kind: 'explain' }>,
  root: string,
  terminal: Terminal,
): Promise<ExitCode> {
  const opened = await openCarOrTell(asked.spec, root, terminal);
  if (opened === undefined) return exitCodes.atFault;
  const { workshop, ready } = opened;
  const { car, figures } = ready;
  const ids = figures.all.map((figure) => figure.id);
  const { figure: wanted } = asked;
  if (wanted !== undefined && !ids.includes(wanted)) {
    const near = nearest(wanted, ids);
    terminal.complain(
      `kettlebook: there is no figure \`${wanted}\`; ${near === undefined ? `\`kettlebook explain ${asked.spec}\` tells them all, each with its name` : `did you mean \`${near}\`?`}`,
    );
    return exitCodes.wrongUse;
  }
  const explained = figures.all
    .filter((figure) => wanted === undefined || figure.id === wanted)
    .map((figure) => explain(figure, car, workshop.languages.plain));
  terminal.say(
    asked.json
      ? JSON.stringify({ figures: explained }, null, 2)
      : explained.map((each) => explainText(each, asked.spec)).join('\n\n'),
  );
  return exitCodes.done;
}
