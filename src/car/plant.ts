/**
 * The plant as a directed graph: parts are nodes, lengths of pipe are edges in the direction of flow.
 */
import type { fluids } from '../spec/schema/fittings';
import type { PartId } from './car';

/** What a pipe carries. */
export type Fluid = (typeof fluids)[number];

/** One length of pipe between two neighbouring parts of a line. */
export interface Pipe {
  /** Position in `Plant.pipes`. */
  readonly index: number;
  readonly from: PartId;
  readonly to: PartId;
  readonly carries: Fluid;
  /** Which entry of the spec's `lines` it belongs to, from 0. */
  readonly line: number;
  /** Place within that line, from 0. */
  readonly step: number;
}

/** The graph. */
export interface Plant {
  readonly pipes: readonly Pipe[];
  /** Pipes leaving a part. */
  readonly out: ReadonlyMap<PartId, readonly Pipe[]>;
  /** Pipes arriving at a part. */
  readonly into: ReadonlyMap<PartId, readonly Pipe[]>;
}
