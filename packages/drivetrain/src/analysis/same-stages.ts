import { given, type Value } from '@tailshaft/mechanics';
import type { Gear, Transfer } from '../model/gear.js';
import type { Part } from '../model/part.js';
import { aside } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { changedOf, keptOf } from './kept.js';
import { LineAnalysis } from './line.js';
import { gearRatio, transferRatio } from './speeds.js';

/** A line now and as it was, to be held against each other. */
export interface Compared {
  readonly now: LineAnalysis;
  readonly before: LineAnalysis;
  /** Set where a ratio is not known and is the same on both sides: speeds are then those before that stage. */
  readonly cancels?: true;
}

const RATIO_RESTS_ON = ['ratioUsed', 'aheadClutch', 'clutches', 'exact', 'train'] as const;

/**
 * The two analyses by which a line is compared with what it was. A ratio that nobody knows, of a stage that is kept as it
 * was, is the same on both sides and takes itself out: any figure stands for it, and 1:1 is taken.
 */
export function comparedWith(now: LineAnalysis, then: LineAnalysis, vessel: Vessel): Compared {
  const open = aside(() => stagesOf(now.line).filter(one => !hasRatio(one) && isSame(one, now.line, vessel)));
  if (open.length === 0) return { now, before: then };
  // In the order that power passes them, as the part that is kept stands in the line that it was kept from.
  const [stages, old] = [stagesOf(now.line), stagesOf(then.line)];
  const kept = open.flatMap(one => old[stages.indexOf(one)] ?? []);
  if (kept.length < open.length) return { now, before: then };
  return {
    now: new LineAnalysis(withoutRatios(now.line, open), vessel),
    before: new LineAnalysis(withoutRatios(then.line, kept), vessel),
    cancels: true,
  };
}

function stagesOf({ gear, transfers }: ShaftLine): (Gear | Transfer)[] {
  return [...(gear ? [gear] : []), ...transfers];
}

function hasRatio(stage: Gear | Transfer): boolean {
  const ratio = stage.role === 'gear' ? gearRatio(stage as Gear, 'ahead') : transferRatio(stage as Transfer);
  return ratio.value !== undefined;
}

function isSame(stage: Gear | Transfer, line: ShaftLine, vessel: Vessel): boolean {
  const kept = keptOf(stage, line, vessel);
  return kept !== undefined && changedOf(kept, RATIO_RESTS_ON).length === 0;
}

function withoutRatios(line: ShaftLine, stages: readonly object[]): ShaftLine {
  const others = new Map<object, Part>(stages.map(one => [one, inOne(one as Gear | Transfer)]));
  const other = <T extends object>(part: T): T => (others.get(part) ?? part) as T;
  return {
    ...line,
    ...(line.gear ? { gear: other(line.gear) } : {}),
    transfers: line.transfers.map(other),
    chain: line.chain.map(other),
  };
}

/** A copy of a stage whose ratio is one. */
function inOne(stage: Gear | Transfer): Part {
  const value: Value<'ratio'> = given('ratio that is the same before and after', 'i', 'ratio', 1, {
    assumed: 'not known, but the same on both sides: it cancels out, so any figure may be used',
  });
  const fact = { value, written: 'the same ratio', origin: stage.origin };
  if (stage.role !== 'gear') return { ...stage, exact: fact } as Part;
  const { variant: _, aheadClutch: __, ...rest } = stage as Gear;
  return { ...rest, clutches: [], ratios: [], ratioUsed: fact } as unknown as Part;
}
