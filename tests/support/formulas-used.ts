import type { Rule } from '@tailshaft/drivetrain';
import { allFormulas, type Formula, type Value } from '@tailshaft/mechanics';
import { checkText } from './check.js';

/** The formulas behind what a rule says of its failing example, those nearest to its verdict first. */
export async function formulasUsed(rule: Rule): Promise<readonly Formula[]> {
  const names = new Set<string>();
  const { check } = await checkText(rule.examples().failing);
  for (const { verdicts } of [...check.vessels, ...check.entries]) {
    for (const one of verdicts) {
      if (one.rule !== rule.id) continue;
      gather(
        [one.demand, one.capacity, ...one.workings].filter(value => value !== undefined),
        names,
      );
    }
  }
  return [...names].flatMap(name => allFormulas().get(name) ?? []);
}

/** Names of the formulas behind some values, level by level. */
function gather(values: readonly Value[], names: Set<string>): void {
  const seen = new Set<Value>();
  for (let level = values; level.length > 0; ) {
    const next: Value[] = [];
    for (const value of level) {
      if (seen.has(value)) continue;
      seen.add(value);
      if (value.working) names.add(value.working.name);
      next.push(...(value.working?.inputs ?? []));
    }
    level = next;
  }
}
