import { type Hand, handThatDrivesAhead, type Turning, turning } from './propeller-hand.js';
import { oppositeSense, type Sense } from './sense.js';

/** Whether a clutch may carry full power ahead; undefined where the data sheet does not say. */
export type AheadPermission = 'continuous' | 'never' | undefined;

/** One clutch position of a gear as it stands in a line. */
export interface TwinClutch {
  readonly name: string;
  /** Everything between engine and propeller in this position, seen from aft; undefined when it cannot be told. */
  readonly factor: Sense | undefined;
  readonly ahead: AheadPermission;
}

/** Machinery of one side as written. It moves as one when sides are swapped; propellers stay a matter of hand. */
export interface TwinLine {
  readonly side: 'port' | 'starboard';
  readonly engine: Sense | undefined;
  /** The engine or motor can be had or set to turn either way. */
  readonly eitherRotation?: boolean;
  readonly clutches: readonly TwinClutch[];
  /** Name of the clutch used ahead as written. */
  readonly clutch?: string | undefined;
  readonly hand?: Hand | undefined;
}

/** One side of a combination. */
export interface TwinChoice {
  readonly side: 'port' | 'starboard';
  /** The side whose machinery stands here. */
  readonly machineryOf: 'port' | 'starboard';
  readonly engine: Sense;
  readonly clutch: string;
  readonly shaftAhead: Sense;
  readonly hand: Hand;
  readonly turning: Turning;
  readonly permission: AheadPermission;
}

/** What one combination would change against the lines as written. */
export interface TwinCost {
  readonly what: 'hand' | 'clutch' | 'engine rotation' | 'sides' | 'turning';
  readonly side?: 'port' | 'starboard';
  readonly text: string;
}

/** A combination in which both propellers drive ahead. */
export interface TwinCombination {
  readonly port: TwinChoice;
  readonly starboard: TwinChoice;
  /** Both hands opposite: they turn outward, inward; or both one way. */
  readonly pair: Turning | 'same hand';
  /** `no` when a clutch may never run ahead, `cannot tell` when the permission of one is not stated. */
  readonly allowed: 'yes' | 'no' | 'cannot tell';
  readonly costs: readonly TwinCost[];
}

export interface TwinResult {
  readonly combinations: readonly TwinCombination[];
  /** What must be known before the rest can be listed. */
  readonly missing: readonly string[];
}

/**
 * Every way in which two lines can drive ahead: machinery as written or swapped between the sides, each clutch,
 * each rotation an engine can be had in, with the hand each needs. The allowed and cheapest come first.
 */
export function twinCombinations(port: TwinLine, starboard: TwinLine): TwinResult {
  const missing = [port, starboard].flatMap(missingOf);
  const combinations: TwinCombination[] = [];
  for (const swapped of [false, true]) {
    const portChoices = choices('port', swapped ? starboard : port);
    const starboardChoices = choices('starboard', swapped ? port : starboard);
    for (const p of portChoices)
      for (const s of starboardChoices) combinations.push(combine(p, s, port, starboard, swapped));
  }
  const seen = new Set<string>();
  // Swapping machinery that is alike changes nothing: the plain combination, which comes first, stands for both.
  const distinct = combinations.filter(one => {
    const alike = sameMachinery(port, starboard);
    const key = JSON.stringify(
      [one.port, one.starboard].map(c => [alike || c.machineryOf, c.engine, c.clutch]),
    );
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
  const rank = { yes: 0, 'cannot tell': 1, no: 2 };
  return {
    combinations: distinct.sort(
      (a, b) => rank[a.allowed] - rank[b.allowed] || a.costs.length - b.costs.length,
    ),
    missing,
  };
}

function choices(side: 'port' | 'starboard', line: TwinLine): TwinChoice[] {
  if (!line.engine) return [];
  const engines: Sense[] = line.eitherRotation ? [line.engine, oppositeSense(line.engine)] : [line.engine];
  const all: TwinChoice[] = [];
  for (const engine of engines) {
    for (const clutch of line.clutches) {
      if (!clutch.factor) continue;
      const shaftAhead = (engine * clutch.factor) as Sense;
      all.push({
        side,
        machineryOf: line.side,
        engine,
        clutch: clutch.name,
        shaftAhead,
        hand: handThatDrivesAhead(shaftAhead),
        turning: turning(side, shaftAhead)!,
        permission: clutch.ahead,
      });
    }
  }
  return all;
}

function combine(
  port: TwinChoice,
  starboard: TwinChoice,
  asPort: TwinLine,
  asStarboard: TwinLine,
  swapped: boolean,
): TwinCombination {
  const pair = port.hand === starboard.hand ? 'same hand' : port.turning;
  const costs: TwinCost[] = [];
  if (swapped) costs.push({ what: 'sides', text: 'port and starboard machinery change places' });
  for (const [choice, here] of [
    [port, asPort],
    [starboard, asStarboard],
  ] as const) {
    const machinery = choice.machineryOf === 'port' ? asPort : asStarboard;
    const { side } = choice;
    if (machinery.engine !== choice.engine) {
      costs.push({ what: 'engine rotation', side, text: `${side} engine turns the other way` });
    }
    if (machinery.clutch !== undefined && machinery.clutch !== choice.clutch) {
      costs.push({
        what: 'clutch',
        side,
        text: `${side} runs ahead on clutch ${choice.clutch} instead of ${machinery.clutch}`,
      });
    }
    if (here.hand !== undefined && here.hand !== choice.hand) {
      costs.push({ what: 'hand', side, text: `${side} propeller becomes ${choice.hand}-hand` });
    }
  }
  const written = writtenPair(asPort, asStarboard);
  if (written && written !== pair) {
    costs.push({ what: 'turning', text: `propellers turn ${named(pair)} instead of ${named(written)}` });
  }
  const permissions = [port.permission, starboard.permission];
  const allowed = permissions.includes('never')
    ? 'no'
    : permissions.includes(undefined)
      ? 'cannot tell'
      : 'yes';
  return { port, starboard, pair, allowed, costs };
}

function writtenPair(port: TwinLine, starboard: TwinLine): TwinCombination['pair'] | undefined {
  if (!port.hand || !starboard.hand) return undefined;
  if (port.hand === starboard.hand) return 'same hand';
  return starboard.hand === 'right' ? 'outward' : 'inward';
}

function named(pair: TwinCombination['pair']): string {
  return pair === 'same hand' ? 'the same way' : pair;
}

function sameMachinery(port: TwinLine, starboard: TwinLine): boolean {
  const shape = (line: TwinLine) => JSON.stringify([line.engine, line.eitherRotation, line.clutches]);
  return shape(port) === shape(starboard);
}

function missingOf(line: TwinLine): string[] {
  const missing: string[] = [];
  if (!line.engine) missing.push(`sense of the ${line.side} engine`);
  if (line.clutches.length === 0) missing.push(`clutches of the ${line.side} gear`);
  for (const clutch of line.clutches) {
    if (!clutch.factor) missing.push(`output sense of clutch ${clutch.name} on the ${line.side} side`);
  }
  return missing;
}
