import { allUnits } from './find.js';
import { asciiSpelling } from './typographic.js';
import type { Unit } from './unit.js';

/** The unit of those asked for that a misspelt one most likely means: wrong case first, then its name, then the nearest spelling. */
export function suggestUnit(misspelt: string, among: (unit: Unit) => boolean = () => true): Unit | undefined {
  const wanted = asciiSpelling(misspelt);
  const lower = wanted.toLowerCase();
  const named = lower.replace(/[\s-]+/g, ' ').replace(/s$/, '');
  const units = allUnits().filter(among);
  const byCase = units.find(unit => spellings(unit).some(one => one.toLowerCase() === lower));
  if (byCase) return byCase;
  const byName = units.find(unit => unit.name.toLowerCase().split(/[,(]/)[0]!.trim() === named);
  if (byName) return byName;
  let best: Unit | undefined;
  // One slip in a short symbol, two in a long word: more would be guessing.
  let limit = lower.length < 3 ? 1 : lower.length < 6 ? 1.5 : 2.5;
  for (const unit of units) {
    for (const one of [...spellings(unit), unit.name]) {
      const distance = editDistance(lower, one.toLowerCase());
      if (distance < limit && distance < Math.max(one.length, lower.length)) {
        limit = distance;
        best = unit;
      }
    }
  }
  return best;
}

function spellings(unit: Unit): string[] {
  return [unit.symbol, ...unit.aliases];
}

/** Insertions, deletions, replacements and swaps of neighbours that turn one word into the other. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}
