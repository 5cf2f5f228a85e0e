import { aside, declareFact, type Fact, homeOfFact } from '@tailshaft/drivetrain';

type Fields = Record<string, unknown>;

/**
 * The facts of a part as facts of this part alone: what happened to it says nothing of another one of the same catalogue
 * entry, nor of what it was in the arrangement before.
 */
export function ownFacts(fields: Fields): Fields {
  return aside(() => copyOf(fields) as Fields);
}

function copyOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copyOf);
  if (typeof value !== 'object' || value === null) return value;
  const home = homeOfFact(value as Fact<unknown>);
  if (home) return declareFact({ ...(value as Fact<unknown>) }, home);
  // What is no fact and holds none is shared: places, values, and what the product made up.
  if ('written' in value || 'si' in value) return value;
  const copy = Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, SHARED.has(name) ? one : copyOf(one)]),
  );
  return Object.setPrototypeOf(copy, Object.getPrototypeOf(value));
}

const SHARED = new Set(['origin', 'host', 'damages']);
