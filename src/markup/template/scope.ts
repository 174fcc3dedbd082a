/**
 * Finding the value a path stands for.
 *
 * Only what an object itself holds can be found: nothing inherited, no functions.
 */
import { nearest } from '../../diagnostic/nearest';
import { listNames } from './problem';
import type { PathNode } from './syntax';

/** What a stretch of a template sees. `outer` is what `../` leads to; it ends at the edge of a piece. */
export interface Scope {
  readonly value: unknown;
  readonly outer: Scope | undefined;
  /** Values after an `@`: `index`, `first`, `last`, `key`, `root`. */
  readonly data: Readonly<Record<string, unknown>>;
  /** Names given by `as |name|`. */
  readonly names: Readonly<Record<string, unknown>>;
}

/** Either the value, or why there is none. */
export type Found =
  | { readonly ok: true; readonly value: unknown }
  | {
      readonly ok: false;
      readonly missing: string;
      readonly inside: string;
      readonly known: string;
      readonly near: string | undefined;
    };

/** The value of `path`. Every part must be there. */
export function findValue(path: PathNode, scope: Scope): Found {
  const start = startOf(path, scope);
  if (!start.ok) return start;
  let value = start.value;
  let walked = start.walked;
  for (const part of path.parts.slice(start.used)) {
    if (!isObject(value) || !Object.hasOwn(value, part) || isAbsent(value[part]))
      return absent(part, walked, value);
    value = value[part];
    walked = walked === '' ? part : `${walked}.${part}`;
  }
  return isAbsent(value) ? absent(path.original, 'this place', undefined) : { ok: true, value };
}

type Start =
  | (Found & { ok: false })
  | { readonly ok: true; readonly value: unknown; readonly used: number; readonly walked: string };

function startOf(path: PathNode, scope: Scope): Start {
  const [first] = path.parts;
  if (path.data) {
    if (first === undefined || !Object.hasOwn(scope.data, first))
      return absent(`@${first ?? ''}`, 'this block', scope.data);
    return { ok: true, value: scope.data[first], used: 1, walked: `@${first}` };
  }
  const isName = path.depth === 0 && first !== undefined && !/^(?:this\b|\.\/)/.test(path.original);
  if (isName && Object.hasOwn(scope.names, first))
    return { ok: true, value: scope.names[first], used: 1, walked: first };
  let from: Scope | undefined = scope;
  for (let step = 0; step < path.depth && from; step += 1) from = from.outer;
  if (!from) return absent(path.original, 'this piece (`../` does not lead out of it)', scope.value);
  return { ok: true, value: from.value, used: 0, walked: '' };
}

function absent(missing: string, inside: string, value: unknown): Found & { ok: false } {
  const names = isObject(value) ? Object.keys(value).filter((name) => !isAbsent(value[name])) : [];
  const known = Array.isArray(value)
    ? `a list of ${value.length}`
    : isObject(value)
      ? listNames(names)
      : 'no parts';
  return {
    ok: false,
    missing,
    inside: inside === '' ? 'what is known here' : inside,
    known,
    near: nearest(missing, names),
  };
}

function isAbsent(value: unknown): boolean {
  return value === undefined || typeof value === 'function';
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
