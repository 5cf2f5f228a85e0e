import { homeOfFact, numberOfFact, standsFor, valueUnnoticed } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Vessel } from '../model/vessel.js';

/**
 * The numbers of the facts in which a vessel that was read anew differs from what it was, where nothing else differs: the same
 * arrangements, lines and parts, each with the same facts said of it. Undefined where anything else is other, or a fact is
 * known now that was open: then nothing that was said before is of use. Where things stand in the text does not count.
 * Facts of the new vessel get the numbers of those in whose places they stand.
 */
export function changedFacts(before: Vessel, now: Vessel): ReadonlySet<number> | undefined {
  const walk = new Walk();
  return walk.alike(before, now) ? walk.changed : undefined;
}

/** Lists of the whole text, made of the facts that are compared one by one. Only the checks of units look at them. */
const LISTS = new Set(['quantities', 'unitConcerns', 'openQuestions']);

/** What of a fact may be other without anything but the fact being other. */
const OWN = new Set(['value', 'written', 'origin', 'outOfRange']);

type Fields = Readonly<Record<string, unknown>>;

class Walk {
  readonly changed = new Set<number>();
  /** What stands where what stood: one and the same thing is never two. */
  readonly #pairs = new Map<object, object>();
  readonly #back = new Map<object, object>();

  alike(one: unknown, other: unknown): boolean {
    if (one === other || Object.is(one, other)) return true;
    if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return false;
    const had = this.#pairs.get(one);
    if (had) return had === other;
    if (this.#back.has(other)) return false;
    this.#pairs.set(one, other);
    this.#back.set(other, one);
    if (Array.isArray(one))
      return (
        Array.isArray(other) &&
        one.length === other.length &&
        one.every((each, at) => this.alike(each, other[at]))
      );
    if (Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return false;
    if (isPlace(one)) return isPlace(other) && one.uri === other.uri;
    if (one instanceof Map || one instanceof Set) return false;
    if (homeOfFact(one as Fact<unknown>)) return this.#facts(one as Fact<unknown>, other as Fact<unknown>);
    return this.#fields(one as Fields, other as Fields, LISTS);
  }

  #facts(one: Fact<unknown>, other: Fact<unknown>): boolean {
    const [home, place] = [homeOfFact(one)!, homeOfFact(other)];
    if (!place || home.property !== place.property || home.of !== place.of) return false;
    if (!this.alike(home.host, place.host)) return false;
    const [value, now] = [valueUnnoticed(one), valueUnnoticed(other)];
    if ((value === undefined) !== (now === undefined)) return false;
    if (!this.#fields(one as unknown as Fields, other as unknown as Fields, OWN)) return false;
    standsFor(other, one);
    const same = one.written === other.written && one.outOfRange === other.outOfRange && says(value, now);
    if (!same) this.changed.add(numberOfFact(one)!);
    return true;
  }

  #fields(one: Fields, other: Fields, but: ReadonlySet<string>): boolean {
    const keys = Object.keys(one);
    return (
      keys.length === Object.keys(other).length &&
      keys.every(key => Object.hasOwn(other, key) && (but.has(key) || this.alike(one[key], other[key])))
    );
  }
}

/** Whether two values of facts say the same, wherever they stand. */
function says(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return false;
  if (Array.isArray(one))
    return (
      Array.isArray(other) && one.length === other.length && one.every((each, at) => says(each, other[at]))
    );
  if (Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return false;
  if (isPlace(one)) return isPlace(other);
  const [a, b] = [one as Fields, other as Fields];
  const keys = Object.keys(a);
  const of = (fields: Fields, key: string) =>
    key === 'value' && homeOfFact(fields as never) ? valueUnnoticed(fields as never) : fields[key];
  return (
    keys.length === Object.keys(b).length &&
    keys.every(key => Object.hasOwn(b, key) && says(of(a, key), of(b, key)))
  );
}

function isPlace(one: object): one is { readonly uri: string; readonly start: number } {
  const { uri, start, end } = one as Fields;
  return typeof uri === 'string' && typeof start === 'number' && typeof end === 'number';
}
