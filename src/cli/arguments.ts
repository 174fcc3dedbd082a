/** What was asked for on the command line. */
import { parseArgs } from 'node:util';
import { nearest } from '../diagnostic/nearest';

/** One understood request, or why it was not understood. */
export type Asked =
  | { readonly kind: 'help'; readonly of?: string }
  | { readonly kind: 'version' }
  | { readonly kind: 'papers'; readonly spec?: string }
  | { readonly kind: 'steps'; readonly spec: string; readonly procedure?: string }
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
  steps: [],
};

const commands = Object.keys(takes)
  .map((name) => `\`${name}\``)
  .join(', ');

/** How each command that needs a file may be written. A new car is not begun over one that is there. */
const examples: Readonly<Record<string, string>> = {
  make: 'kettlebook make cars/marigold.yaml',
  check: 'kettlebook check cars/marigold.yaml',
  explain: 'kettlebook explain cars/marigold.yaml',
  compare: 'kettlebook compare my-car-C.yaml my-car.yaml',
  tour: 'kettlebook tour cars/marigold.yaml cars/marigold-tour.csv',
  unsaid: 'kettlebook unsaid cars/de/fingerhut.yaml',
  new: 'kettlebook new my-car.yaml',
  steps: 'kettlebook steps cars/marigold.yaml',
};

/** Read the arguments. Anything not understood is wrong use, never guessed at. */
export function readArguments(args: readonly string[]): Asked {
  const read = parse(args);
  if (typeof read === 'string') return { kind: 'wrong-use', why: read };
  const { values, positionals } = read;
  if (values.help === true) return helpWith(positionals[0]);
  if (positionals[0] === 'help') return helpWith(positionals[1]);
  if (values.version === true) return { kind: 'version' };
  const [command, spec, ...rest] = positionals;
  if (command === undefined) return wrong('nothing was asked for');
  const allowed = takes[command];
  if (allowed === undefined) return wrong(noCommand(command));
  const strange = (Object.keys(values) as Option[]).find((name) => !allowed.includes(name));
  if (strange !== undefined) return wrong(`\`${command}\` does not take \`--${strange}\``);
  if (command === 'papers' && rest.length === 0)
    return { kind: 'papers', ...(spec === undefined ? {} : { spec }) };
  if (spec === undefined)
    return wrong(`\`${command}\` needs the file of a car, such as \`${examples[command] ?? ''}\``);
  if (command === 'explain' && rest.length < 2) {
    const [figure] = rest;
    return { kind: 'explain', spec, json: values.json === true, ...(figure === undefined ? {} : { figure }) };
  }
  if (command === 'steps' && rest.length < 2) {
    const [procedure] = rest;
    return { kind: 'steps', spec, ...(procedure === undefined ? {} : { procedure }) };
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

/** Help with a command, or with all of them. */
function helpWith(command: string | undefined): Asked {
  if (command === undefined || command === 'help') return { kind: 'help' };
  return command in takes ? { kind: 'help', of: command } : wrong(noCommand(command));
}

function noCommand(given: string): string {
  if (/\.ya?ml$/i.test(given))
    return `say first what is to be done with \`${given}\`, such as \`kettlebook make ${given}\``;
  const near = nearest(given, Object.keys(takes));
  const meant = near === undefined ? `there are ${commands}` : `did you mean \`${near}\`?`;
  return `there is no command \`${given}\`; ${meant}`;
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    return notUnderstood(error instanceof Error ? error.message : String(error));
  }
}

/** What the reader of arguments complains of, in words. */
function notUnderstood(message: string): string {
  const [, strange] = /^Unknown option '(-[^']*)'/.exec(message) ?? [];
  if (strange !== undefined) {
    const near = nearest(
      strange,
      Object.keys(options).map((name) => `--${name}`),
    );
    return `there is no option \`${strange}\`${near === undefined ? '' : `; did you mean \`${near}\`?`}`;
  }
  const [, option, value] = /^Option '(?:-\w, )?(--[a-z]+)( <value>)?' /.exec(message) ?? [];
  if (option !== undefined)
    return value === undefined
      ? `\`${option}\` takes nothing after it`
      : `\`${option}\` needs something after it: \`${option} …\``;
  const [first = message] = message.split('. ');
  return first.charAt(0).toLowerCase() + first.slice(1);
}
