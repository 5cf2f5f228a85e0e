import type { Origin, Value } from '@tailshaft/mechanics';
import { homeOfFact, valueUnnoticed } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import { aside, KeptBy } from '../model/reads.js';
import type { ShaftLine } from '../model/vessel.js';
import type { Choosable } from './needed.js';

/** The figures that the parts of some lines are declared with, by where each stands. */
export function choosableOf(lines: readonly ShaftLine[]): Choosable {
  const [line] = lines;
  if (lines.length === 1 && line) return aside(() => figuresOf(line));
  return new Map(lines.flatMap(one => [...choosableOf([one])]));
}

const kept = new KeptBy<ShaftLine>();

function figuresOf(line: ShaftLine): Choosable {
  return kept.once(line, () => figuresIn(line));
}

function figuresIn(line: ShaftLine): Choosable {
  const found = new Map<Origin, { fact: Fact<unknown>; figure: Value }>();
  const seen = new Set<object>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if (homeOfFact(value as Fact<unknown>)) {
      const fact = value as Fact<unknown>;
      for (const figure of figuresOfValue(valueUnnoticed(fact))) found.set(figure.origin!, { fact, figure });
      return;
    }
    for (const [key, one] of Object.entries(value)) if (!LEFT.has(key)) visit(one);
  };
  visit(line.chain);
  return found;
}

/** What a line was before, and the words of the catalogue behind it, are no figures of it. */
const LEFT = new Set(['before', 'origin', 'nameOrigin', 'entry', 'grade', 'keptFrom', 'reference']);

/** The figures of a value: one, the two of a point or a range, several of a list. */
function figuresOfValue(value: unknown): Value[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('si' in value) return (value as Value).origin ? [value as Value] : [];
  return Object.values(value).flatMap(figuresOfValue);
}
