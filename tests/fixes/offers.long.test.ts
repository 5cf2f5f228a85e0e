import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { randomSpecs, writtenSpecs } from '../silence/base-specs.js';
import { triedOn } from './apply.js';
import { offeredFor } from './offered.js';

const SEED = Number(process.env.FIXES_SEED ?? 1);
const MANY = Number(process.env.FIXES_MANY ?? 60);

describe('every way out that is offered', () => {
  it(`keeps its promise on every spec of the examples and rules, and on ${MANY} random ones, seed ${SEED}`, async () => {
    const wrong: string[] = [];
    const total = { findings: 0, cures: 0, questions: 0, worse: 0, errors: 0, uncured: 0 };
    const without = new Map<string, number>();
    for (const { name, text } of [...writtenSpecs(), ...randomSpecs(SEED * 5000, MANY)]) {
      const { faults, counts } = await triedOn(text);
      wrong.push(...faults.map(one => `${name}: ${one}`));
      for (const what of ['findings', 'cures', 'questions', 'worse'] as const) total[what] += counts[what];
      const uncured = counts.uncured.filter(one => one.startsWith('error'));
      for (const one of uncured) without.set(one, (without.get(one) ?? 0) + 1);
      total.uncured += uncured.length;
      total.errors += counts.errors;
    }
    console.log(`Ways out: ${JSON.stringify(total)}; without one: ${JSON.stringify([...without])}`);
    expect(wrong).toEqual([]);
    expect(total.uncured / total.errors, 'errors without a way out').toBeLessThanOrEqual(0.1);
  }, 600_000);
});

describe('every rule', () => {
  it('offers a way out of its failing example, or its page says why none can be, and never both', async () => {
    const without: string[] = [];
    const both: string[] = [];
    for (const rule of RULES) {
      if (rule.severity === 'note') continue;
      const offered = await offeredFor(rule.examples().failing);
      const own = offered.filter(
        one => one.finding.code === rule.id && one.finding.verdict?.outcome === 'fails',
      );
      if (own.length === 0) continue;
      const offers = own.some(one => one.cures.length > 0);
      if (!offers && !rule.noCure) without.push(rule.id);
      if (offers && rule.noCure) both.push(rule.id);
    }
    expect(without).toEqual([]);
    expect(both).toEqual([]);
  }, 600_000);
});
