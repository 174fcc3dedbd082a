/** How the checks of sense write down what they find. */
import type { DiagnosticCode } from '../../diagnostic/catalogue';
import type { Diagnostic, Severity } from '../../diagnostic/diagnostic';
import type { Quantity } from '../../quantity/quantity';
import type { CarSpec } from '../schema/carSpec';
import type { SpecPath, SpecSource } from '../source';

/** A check of sense: looks at the whole spec, returns what cannot be so. */
export type SenseCheck = (spec: CarSpec, source: SpecSource) => Diagnostic[];

/** What a check says of one finding. */
export interface Finding {
  readonly code: DiagnosticCode;
  readonly path: SpecPath;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly mend: string;
  readonly notes?: readonly string[];
  readonly severity?: Severity;
}

/** A finding with its place in the file: at a single value itself, at the key of anything larger. */
export function finding(source: SpecSource, { path, severity, ...rest }: Finding): Diagnostic {
  return { ...rest, severity: severity ?? 'error', at: source.spotOf(path) };
}

/** Two quantities that must stand in order. */
export interface Order {
  readonly code: DiagnosticCode;
  readonly low: Quantity | undefined;
  readonly high: Quantity | undefined;
  readonly lowPath: SpecPath;
  readonly highPath: SpecPath;
  readonly lowName: string;
  readonly highName: string;
  /** Whether the two may be equal. */
  readonly mayBeEqual: boolean;
  /** Why it matters. */
  readonly why: string;
}

/** Rounding slack when two written quantities in different units are compared. */
const slack = 1e-9;

/** True if two quantities are one, but for the rounding of their units. */
export function isSame(a: Quantity, b: Quantity): boolean {
  return Math.abs(a.si - b.si) <= slack * Math.max(Math.abs(a.si), Math.abs(b.si));
}

/** A finding if `low` is not below `high`; nothing if either is not given. */
export function inOrder(source: SpecSource, order: Order): Diagnostic[] {
  const { low, high } = order;
  if (low === undefined || high === undefined) return [];
  const room = slack * Math.max(Math.abs(low.si), Math.abs(high.si));
  const fine = order.mayBeEqual ? low.si <= high.si + room : low.si < high.si - room;
  if (fine) return [];
  const relation = order.mayBeEqual ? 'above' : 'not below';
  return [
    finding(source, {
      code: order.code,
      path: order.lowPath,
      message: `${order.lowName} (${low.written}) is ${relation} ${order.highName} (${high.written})`,
      found: `\`${low.written}\``,
      expected: `${order.mayBeEqual ? 'at most' : 'less than'} \`${high.written}\``,
      mend: `correct one of the two; ${order.highName} stands in line ${source.spotOfValue(order.highPath).line}`,
      notes: [order.why],
    }),
  ];
}
