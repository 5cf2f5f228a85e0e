import type { Part } from '../model/part.js';
import { noteSlot } from '../model/reads.js';
import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';
import { same } from './same.js';
import { Slots } from './slots.js';

/** A candidate as the checks see it, with what it has in each varied place. */
export interface Viewed {
  readonly vessel: Vessel;
  readonly leaves: readonly number[];
  /** Set where a place was found that was not known to vary: what was worked out before does not tell of it. */
  readonly grown: boolean;
}

/** Fields that are taken apart themselves, or hold what is. */
const TAKEN_APART = new Set([
  ...['engine', 'motor', 'gear', 'propeller', 'couplings', 'transfers', 'shafts', 'chain'],
  ...['lines', 'arrangements', 'hull', 'quantities', 'unitConcerns', 'openQuestions'],
]);

/** Lists of the whole text: each candidate has its own. */
const LISTS = ['quantities', 'unitConcerns', 'openQuestions'] as const;

/**
 * Shows candidates as variants of the first one: whatever is the same is the same object, and every varied place tells when it
 * is looked at.
 */
export class Views {
  readonly #slots = new Slots();
  readonly #lists = LISTS.map(list => ({ list, slot: this.#slots.reserve() }));
  readonly #varied = new Set<number>();
  #count = 0;

  constructor(readonly base: Vessel) {}

  /** Undefined where a candidate is built otherwise than the first one: it is judged by itself then. */
  of(vessel: Vessel): Viewed | undefined {
    if (!this.#isAlike(vessel)) return undefined;
    const leaves: number[] = [];
    this.#count += 1;
    for (const { slot } of this.#lists) leaves[slot] = this.#count;
    const grown = this.#find(vessel, leaves);
    if (grown) this.#slots.forgetViews();
    return { vessel: this.#view(vessel, leaves), leaves, grown };
  }

  /** Whether there are the same arrangements, lines and parts, and nothing else differs. */
  #isAlike(vessel: Vessel): boolean {
    const { base } = this;
    return (
      isAlike(base, vessel) &&
      (base.hull === undefined) === (vessel.hull === undefined) &&
      base.arrangements.length === vessel.arrangements.length &&
      base.arrangements.every((one, at) => {
        const other = vessel.arrangements[at]!;
        if (one === other) return true;
        return (
          isAlike(one, other) &&
          one.lines.length === other.lines.length &&
          one.lines.every(
            (line, index) => isAlike(line, other.lines[index]!) && hasParts(line, other.lines[index]!),
          )
        );
      })
    );
  }

  #find(vessel: Vessel, leaves: number[]): boolean {
    const { base } = this;
    let grown = false;
    const find = (place: string, one: object, other: object) => {
      if (this.#slots.find(place, one as never, other as never, leaves)) grown = true;
    };
    if (base.hull && vessel.hull) find('hull', base.hull, vessel.hull);
    for (const [at, arrangement] of vessel.arrangements.entries()) {
      const was = base.arrangements[at]!;
      if (was === arrangement && !this.#varied.has(at)) continue;
      if (!this.#varied.has(at)) {
        this.#varied.add(at);
        grown = true;
      }
      for (const [index, line] of arrangement.lines.entries())
        for (const [place, part] of line.chain.entries())
          find(`${at}.${index}.${place}`, was.lines[index]!.chain[place]!, part);
    }
    return grown;
  }

  #view(vessel: Vessel, leaves: readonly number[]): Vessel {
    const { base } = this;
    const arrangements = base.arrangements.map((one, at) =>
      this.#varied.has(at) ? this.#arrangement(one, at, leaves) : one,
    );
    const made = { ...base, arrangements };
    if (base.hull) made.hull = this.#slots.view('hull', base.hull, leaves);
    for (const { list, slot } of this.#lists)
      Object.defineProperty(made, list, {
        enumerable: true,
        get() {
          noteSlot(slot);
          return vessel[list];
        },
      });
    return made;
  }

  #arrangement(base: Arrangement, at: number, leaves: readonly number[]): Arrangement {
    return { ...base, lines: base.lines.map((line, index) => this.#line(line, `${at}.${index}`, leaves)) };
  }

  #line(base: ShaftLine, path: string, leaves: readonly number[]): ShaftLine {
    const views = new Map<Part, Part>(
      base.chain.map((part, place) => [part, this.#slots.view(`${path}.${place}`, part, leaves)]),
    );
    const seen = <P>(part: P): P => views.get(part as Part) as P;
    return {
      ...base,
      ...(base.engine ? { engine: seen(base.engine) } : {}),
      ...(base.motor ? { motor: seen(base.motor) } : {}),
      ...(base.gear ? { gear: seen(base.gear) } : {}),
      ...(base.propeller ? { propeller: seen(base.propeller) } : {}),
      couplings: base.couplings.map(seen),
      transfers: base.transfers.map(seen),
      shafts: base.shafts.map(seen),
      chain: base.chain.map(seen),
    };
  }
}

function isAlike(one: object, other: object): boolean {
  if (one === other) return true;
  const [a, b] = [one as Record<string, unknown>, other as Record<string, unknown>];
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every(key => Object.hasOwn(b, key) && (TAKEN_APART.has(key) || same(a[key], b[key])))
  );
}

function hasParts({ chain }: ShaftLine, other: ShaftLine): boolean {
  return (
    chain.length === other.chain.length &&
    chain.every((part, at) => {
      const is = other.chain[at]!;
      return part.role === is.role && Object.getPrototypeOf(part) === Object.getPrototypeOf(is);
    })
  );
}
