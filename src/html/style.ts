/** The style sheet of a page: the colours as variables, then the rules. */
import { signalWords } from '../language/signal';
import type { ScreenColours, ScreenLook } from './look';

/** All of it, light by default and on paper, dark where the device or the paper asks for it. */
export function styleOf({ colours, signals, style }: ScreenLook): string {
  const panels = signalWords.flatMap((signal) => [
    `--${signal}: ${signals[signal].panel};`,
    `--${signal}-letters: ${signals[signal].letters};`,
  ]);
  return [
    `:root { ${variables(colours.light)} ${panels.join(' ')} }`,
    `@media screen and (prefers-color-scheme: dark) { :root { ${variables(colours.dark)} } }`,
    `@media screen { :root.in-the-dark { color-scheme: dark; ${variables(colours.dark)} } }`,
    style,
  ].join('\n');
}

function variables(colours: ScreenColours): string {
  return Object.entries(colours)
    .map(([job, colour]) => `--${job.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}: ${colour};`)
    .join(' ');
}
