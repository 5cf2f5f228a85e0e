import type { Role } from '@tailshaft/drivetrain';
import type { LineReading, ModeReading } from '../reading/arrangement.js';
import type { PartLayers } from './part.js';

/** A line before its parts are made: what a revising or mirroring line builds upon. */
export interface LinePlan {
  readonly reading: LineReading;
  readonly arrangement: string;
  readonly layers: readonly PartLayers[];
  /** Its ways of running: its own, or those of the line that it mirrors or revises. */
  readonly modes: readonly ModeReading[];
  /** Whether its arrangement revises nothing: what it holds is what is there. */
  readonly isBase: boolean;
  /** Parts of which it says nothing, and which therefore were asked for. */
  readonly notMentioned: ReadonlySet<Role>;
}
