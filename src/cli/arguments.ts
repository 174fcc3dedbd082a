/** What was asked for on the command line. */
import { parseArgs } from 'node:util';

/** One understood request, or why it was not understood. */
export type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'version' }
  | { readonly kind: 'papers' }
  | { readonly kind: 'check'; readonly spec: string; readonly json: boolean }
  | { readonly kind: 'tour'; readonly spec: string; readonly way: string; readonly out: string }
  | { readonly kind: 'explain'; readonly spec: string; readonly figure?: string; readonly json: boolean }
  | {
      readonly kind: 'compare';
      readonly before: string;
      readonly after: string;
      readonly out: string;
      readonly json: boolean;
    }
  | { readonly kind: 'unsaid'; readonly spec: string; readonly papers: readonly string[] }
  | { readonly kind: 'new'; readonly file: string }
  | {
      readonly kind: 'make';
      readonly spec: string;
      readonly papers: readonly string[];
      readonly out: string;
      readonly sheet?: 'letter' | 'a4';
      /** The spec of the issue before, to mark changes against. */
      readonly since?: string;
    }
  | { readonly kind: 'wrong-use'; readonly why: string };

const options = {
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
  json: { type: 'boolean' },
  paper: { type: 'string', multiple: true },
  out: { type: 'string' },
  on: { type: 'string' },
  since: { type: 'string' },
} as const;

type Option = keyof typeof options;

/** Which options each command takes. */
const takes: Readonly<Record<string, readonly Option[]>> = {
  make: ['paper', 'out', 'on', 'since'],
  check: ['json'],
  explain: ['json'],
  compare: ['out', 'json'],
  tour: ['out'],
  unsaid: ['paper'],
  new: [],
  papers: [],
};

const commands = Object.keys(takes)
  .map((name) => `\`${name}\``)
  .join(', ');

/** Read the arguments. Anything not understood is wrong use, never guessed at. */
export function readArguments(args: readonly string[]): Asked {
  const read = parse(args);
  if (typeof read === 'string') return { kind: 'wrong-use', why: read };
  const { values, positionals } = read;
  if (values.help === true || positionals[0] === 'help') return { kind: 'help' };
  if (values.version === true) return { kind: 'version' };
  const [command, spec, ...rest] = positionals;
  if (command === undefined) return wrong('nothing was asked for');
  const allowed = takes[command];
  if (allowed === undefined) return wrong(`there is no command \`${command}\`; there are ${commands}`);
  const strange = (Object.keys(values) as Option[]).find((name) => !allowed.includes(name));
  if (strange !== undefined) return wrong(`\`${command}\` does not take \`--${strange}\``);
  if (command === 'papers') return spec === undefined ? { kind: 'papers' } : wrong('`papers` takes no file');
  if (spec === undefined)
    return wrong(
      `\`${command}\` needs the file of a car, such as \`kettlebook ${command} cars/marigold.yaml\``,
    );
  if (command === 'explain' && rest.length < 2) {
    const [figure] = rest;
    return { kind: 'explain', spec, json: values.json === true, ...(figure === undefined ? {} : { figure }) };
  }
  if (command === 'compare') return twoSpecs(spec, rest, values);
  if (command === 'tour') return specAndWay(spec, rest, values.out);
  if (rest.length > 0) return wrong(`\`${command}\` takes one file; \`${rest.join(' ')}\` is too many`);
  if (command === 'new') return { kind: 'new', file: spec };
  if (command === 'unsaid') return { kind: 'unsaid', spec, papers: values.paper ?? [] };
  if (command === 'check') return { kind: 'check', spec, json: values.json === true };
  const sheet = values.on;
  if (sheet !== undefined && sheet !== 'letter' && sheet !== 'a4')
    return wrong(`\`--on\` is \`letter\` or \`a4\`, not \`${sheet}\``);
  return {
    kind: 'make',
    spec,
    papers: values.paper ?? [],
    out: values.out ?? 'out',
    ...(sheet === undefined ? {} : { sheet }),
    ...(values.since === undefined ? {} : { since: values.since }),
  };
}

function twoSpecs(
  before: string,
  [after, ...rest]: readonly string[],
  values: { readonly out?: string | undefined; readonly json?: boolean | undefined },
): Asked {
  if (after === undefined || rest.length > 0)
    return wrong('`compare` takes two specs, the old one first and the new one second');
  return { kind: 'compare', before, after, out: values.out ?? 'out', json: values.json === true };
}

function specAndWay(spec: string, [way, ...rest]: readonly string[], out: string | undefined): Asked {
  if (way === undefined || rest.length > 0)
    return wrong('`tour` takes a spec and a way: a list of legs or a GPX track');
  return { kind: 'tour', spec, way, out: out ?? 'out' };
}

function wrong(why: string): Asked {
  return { kind: 'wrong-use', why };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    const [first = 'the arguments could not be read'] = (
      error instanceof Error ? error.message : String(error)
    ).split('. ');
    return first.charAt(0).toLowerCase() + first.slice(1);
  }
}
