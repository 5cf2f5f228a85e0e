import { INPUT_SHAFTS, type Mode } from '@tailshaft/vocabulary';
import type { Engine, Motor } from './engine.js';
import type { Gear, InputShaft } from './gear.js';
import { home, nameOf, type Part } from './part.js';
import { KeptBy } from './reads.js';
import type { Unclear } from './unclear.js';
import type { ShaftLine } from './vessel.js';

interface Seen {
  /** The gear as its line writes it. */
  readonly whole: Gear;
  /** The input shaft that it is looked at from, of a gear with two. */
  readonly by?: InputShaft['name'];
}

const seen = new WeakMap<Gear, Seen>();

/** Whether this is a gear as one of its two input shafts sees it. */
export function isThroughInput(gear: Gear | undefined): boolean {
  return gear !== undefined && seen.get(gear)?.by !== undefined;
}

/** The gear as its line writes it, whatever mode it is looked at in. */
export function asWritten(gear: Gear): Gear {
  return seen.get(gear)?.whole ?? gear;
}

/**
 * The parts that power passes in this mode, from its first mover on, with the gear as that mover drives it: in the clutch of
 * the mode, and by its own input where the gear has two. Parts ahead of such a gear belong to the engine before them.
 */
export function chainInMode(
  line: ShaftLine,
  mode: Mode,
  movers: readonly (Engine | Motor)[],
): readonly Part[] | Unclear {
  const primary = movers[0]!;
  const from = line.chain.slice(line.chain.indexOf(primary));
  const found = from.find(one => one.role === 'gear') as Gear | undefined;
  if (!found) return from;
  const { whole, by } = seen.get(found) ?? { whole: found };
  const ahead = line.chain.slice(0, line.chain.indexOf(found));
  const behind = from.slice(from.indexOf(found) + 1);
  // One mover drives by one input, whichever it is: as in a line without modes.
  const isAlone = !by && line.chain.filter(one => one.role === 'engine' || one.role === 'motor').length === 1;
  if (!hasInputs(whole) || isAlone)
    return [...from.slice(0, from.indexOf(found)), inClutchOf(mode, whole, whole), ...behind];
  const engines = ahead.filter(one => one.role === 'engine');
  if (!(by && engines.length === 1) && (engines.length !== 2 || ahead.some(one => one.role === 'motor')))
    return {
      what: `what drives each of the two input shafts of ${nameOf(whole)}`,
      host: mode.origin,
      property: 'driven by',
      at: whole.nameOrigin ?? whole.origin,
    };
  const which = engines.length === 1 ? by! : primary === engines[0] ? 'first' : 'second';
  const undeclared = INPUT_SHAFTS.find(one => !throughInput(whole, one));
  if (undeclared)
    return {
      what: `the ${undeclared} input shaft of ${nameOf(whole)}`,
      host: whole.variant?.origin ?? home(whole),
      property: 'input shaft',
    };
  const driving = ahead.filter(one => movers.includes(moverAhead(ahead, one)));
  return [...driving, inClutchOf(mode, throughInput(whole, which)!, whole, which), ...behind];
}

function inClutchOf(mode: Mode, gear: Gear, whole: Gear, by?: InputShaft['name']): Gear {
  if (!mode.aheadClutch) return gear;
  const engaged = like(gear, { aheadClutch: mode.aheadClutch });
  seen.set(engaged, { whole, ...(by ? { by } : {}) });
  return engaged;
}

/** The engine whose power passes this part ahead of the gear: the last one that is written before it. */
function moverAhead(ahead: readonly Part[], part: Part): Engine | Motor {
  return ahead.slice(0, ahead.indexOf(part) + 1).findLast(one => one.role === 'engine') as Engine;
}

/** The parts between the second engine that drives and a gear that it enters by an input of its own. */
export interface SecondInput {
  readonly engine: Engine;
  readonly parts: ReadonlySet<Part>;
  /** The gear as that engine sees it. */
  readonly gear: Gear;
}

export function secondInput({ chain, gear, joined, mode }: ShaftLine): SecondInput | undefined {
  const through = gear && seen.get(gear);
  const engine = joined?.find(one => one.role === 'engine') as Engine | undefined;
  if (!through?.by || !engine) return undefined;
  const by = through.by === 'first' ? 'second' : 'first';
  const input = throughInput(through.whole, by);
  const other = input && mode ? inClutchOf(mode, input, through.whole, by) : input;
  const from = chain.indexOf(engine);
  return other && { engine, gear: other, parts: new Set(chain.slice(from + 1, chain.indexOf(gear!))) };
}

function hasInputs(gear: Gear): boolean {
  return gear.inputs.length > 0 || (gear.variant?.inputs.length ?? 0) > 0;
}

const views: Readonly<Record<InputShaft['name'], KeptBy<Gear>>> = {
  first: new KeptBy(),
  second: new KeptBy(),
};

/** The gear as the engine on this input sees it: what the input says goes before what the gear says of itself. */
function throughInput(gear: Gear, by: InputShaft['name']): Gear | undefined {
  return views[by].once(gear, () => viewOf(gear, by));
}

function viewOf(gear: Gear, by: InputShaft['name']): Gear | undefined {
  const { variant } = gear;
  const own = variant?.inputs.find(one => one.name === by);
  const general = gear.inputs.find(one => one.name === by);
  if (!own && !general) return undefined;
  const said = <F extends 'rotation' | 'speedMax' | 'exact'>(field: F) => own?.[field] ?? general?.[field];
  const [rotation, speedMax, exact] = [said('rotation'), said('speedMax'), said('exact')];
  const view = like(gear, {
    ...(rotation ? { inputRotation: rotation } : {}),
    ...(speedMax ? { inputSpeedMax: speedMax } : {}),
    clutches: general?.clutches ?? [],
    ratings: general?.ratings ?? [],
    ...(variant
      ? {
          variant: like(variant, {
            ...(exact ? { exact } : {}),
            clutches: own?.clutches ?? [],
            ratings: own?.ratings ?? [],
          }),
        }
      : {}),
  });
  seen.set(view, { whole: gear, by });
  return view;
}

/** A copy that tells of what is left out as the object itself does. */
function like<T extends object>(object: T, changes: Partial<T>): T {
  return Object.setPrototypeOf({ ...object, ...changes }, Object.getPrototypeOf(object)) as T;
}
