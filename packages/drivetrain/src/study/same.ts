import { homeOfFact, valueUnnoticed } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';

/** Whether two parts of a model say the same, wherever they were made; nobody is noted to have looked. */
export function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one))
    return (
      Array.isArray(other) && one.length === other.length && one.every((each, at) => same(each, other[at]))
    );
  if (Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return false;
  if (homeOfFact(one as Fact<unknown>)) return sameFact(one as Fact<unknown>, other as Fact<unknown>);
  return sameFields(one as Record<string, unknown>, other as Record<string, unknown>);
}

function sameFields(
  one: Readonly<Record<string, unknown>>,
  other: Readonly<Record<string, unknown>>,
  but?: string,
): boolean {
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every(key => key === but || (Object.hasOwn(other, key) && same(one[key], other[key])))
  );
}

function sameFact(one: Fact<unknown>, other: Fact<unknown>): boolean {
  const [home, otherHome] = [homeOfFact(one)!, homeOfFact(other)];
  return (
    otherHome !== undefined &&
    home.host === otherHome.host &&
    home.property === otherHome.property &&
    same(valueUnnoticed(one), valueUnnoticed(other)) &&
    sameFields(
      one as unknown as Record<string, unknown>,
      other as unknown as Record<string, unknown>,
      'value',
    )
  );
}
