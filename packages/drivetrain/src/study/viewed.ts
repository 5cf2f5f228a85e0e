import type { Part } from '../model/part.js';
import { noteSlot, standsNow } from '../model/reads.js';
import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';
import { same } from './same.js';
import { Slots } from './slots.js';

/** A candidate as the checks see it, with what it has in each varied place. */
export interface Viewed {
  /**
   * The same object for all candidates, until a place was found that was not known to vary: what was worked out before does not
   * tell of that.
   */
  readonly vessel: Vessel;
  readonly leaves: readonly number[];
}

/** Fields that are taken apart themselves, or hold what is. */
const TAKEN_APART = new Set([
  ...['engine', 'motor', 'gear', 'propeller', 'couplings', 'transfers', 'shafts', 'chain'],
  ...['lines', 'arrangements', 'hull', 'quantities', 'unitConcerns', 'openQuestions'],
]);

/** Lists of the whole text. */
const LISTS = ['quantities', 'unitConcerns', 'openQuestions'] as const;

/**
 * Shows candidates one after the other as one vessel, which has in every varied place what the candidate has that stands now, and
 * tells when somebody looks there. So whatever was worked out for one candidate serves every other in which it looked at the same.
 */
export class Views {
  readonly #slots = new Slots();
  readonly #lists = LISTS.map(list => ({ list, slot: this.#slots.reserve() }));
  readonly #varied = new Set<number>();
  #count = 0;
  #now: Vessel;
  #seen: Vessel | undefined;

  constructor(readonly base: Vessel) {
    this.#now = base;
  }

  /** Undefined where a candidate is built otherwise than the first one: it is judged by itself then. */
  of(vessel: Vessel): Viewed | undefined {
    if (!this.#isAlike(vessel)) return undefined;
    const leaves: number[] = [];
    this.#count += 1;
    for (const { slot } of this.#lists) leaves[slot] = this.#count;
    this.#now = vessel;
    if (this.#find(vessel, leaves)) {
      this.#slots.forgetViews();
      this.#seen = undefined;
    }
    this.#seen ??= this.#view();
    this.#slots.stand(leaves);
    standsNow(leaves);
    return { vessel: this.#seen, leaves };
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

  #view(): Vessel {
    const { base } = this;
    const arrangements = base.arrangements.map((one, at) =>
      this.#varied.has(at) ? this.#arrangement(one, at) : one,
    );
    const made = { ...base, arrangements };
    if (base.hull) made.hull = this.#slots.view('hull', base.hull);
    const now = () => this.#now;
    for (const { list, slot } of this.#lists)
      Object.defineProperty(made, list, {
        // Whoever copies the vessel does not look at them.
        enumerable: false,
        get() {
          noteSlot(slot);
          return now()[list];
        },
      });
    return made;
  }

  #arrangement(base: Arrangement, at: number): Arrangement {
    return { ...base, lines: base.lines.map((line, index) => this.#line(line, `${at}.${index}`)) };
  }

  #line(base: ShaftLine, path: string): ShaftLine {
    const views = new Map<Part, Part>(
      base.chain.map((part, place) => [part, this.#slots.view(`${path}.${place}`, part)]),
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
