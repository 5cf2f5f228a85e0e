import type { Verdict } from './verdict.js';

/** What counts of a verdict without its words and workings. */
export interface Outline {
  readonly known: Pick<Verdict, 'rule' | 'outcome' | 'severity' | 'subject'> &
    Partial<Pick<Verdict, 'asFound'>>;
  /** Names of all that the verdict says. */
  readonly says: ReadonlySet<string | symbol>;
}

export function outlineOf(verdict: Verdict): Outline {
  const { rule, outcome, severity, subject } = verdict;
  return { known: { rule, outcome, severity, subject }, says: new Set(Reflect.ownKeys(verdict)) };
}

const putOff = new WeakMap<Verdict, { readonly outline: Outline; readonly said: () => Verdict }>();

/**
 * A verdict of which it is known what it comes to, and that is worked out when somebody looks at anything else of it: thousands
 * hold, and hardly one of them is looked at while somebody types.
 */
export function whenLookedAt(outline: Outline, say: () => Verdict): Verdict {
  let made: Verdict | undefined;
  const said = () => {
    made ??= say();
    return made;
  };
  const { known, says } = outline;
  const of = (key: string | symbol): unknown =>
    Object.hasOwn(known, key)
      ? Reflect.get(known, key)
      : says.has(key)
        ? Reflect.get(said(), key)
        : undefined;
  const verdict = new Proxy({} as Verdict, {
    get: (_nothing, key) => of(key),
    has: (_nothing, key) => says.has(key),
    ownKeys: () => [...says],
    getOwnPropertyDescriptor: (_nothing, key) =>
      says.has(key) ? { value: of(key), enumerable: true, writable: true, configurable: true } : undefined,
  });
  putOff.set(verdict, { outline, said });
  return verdict;
}

/** A verdict with some of its outline other; one that was put off stays so. */
export function withOutline(verdict: Verdict, other: Partial<Outline['known']>): Verdict {
  const had = putOff.get(verdict);
  if (!had) return { ...verdict, ...other };
  const { known, says } = had.outline;
  const outline = { known: { ...known, ...other }, says: new Set([...says, ...Object.keys(other)]) };
  return whenLookedAt(outline, () => ({ ...had.said(), ...other }));
}
