import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';
import { exampleSpecs, joinedExample } from '../support/examples.js';
import { without, writtenFacts } from '../support/facts.js';
import { share } from '../support/share.js';

/** Outcome of each check by rule and subject; the worst where a rule says several things of one subject. */
function outcomes(checked: Checked): Map<string, string> {
  const worst = ['does not apply', 'holds', 'accepted', 'cannot tell', 'fails'];
  const map = new Map<string, string>();
  for (const verdict of [...checked.check.vessels, ...checked.check.entries].flatMap(one => one.verdicts)) {
    const key = `${verdict.rule} ${verdict.subject}`;
    const had = map.get(key);
    if (!had || worst.indexOf(verdict.outcome) > worst.indexOf(had)) map.set(key, verdict.outcome);
  }
  return map;
}

/** Checks that a `cannot tell` or `fails` became `holds` by taking a fact away. */
async function gained(
  before: Checked,
  factIndex: number,
): Promise<{ property: string; gained: string[]; after: Checked }> {
  const fact = writtenFacts(before.check)[factIndex]!;
  const after = await checkText(without(before.text, fact));
  const was = outcomes(before);
  const is = outcomes(after);
  const better = [...is]
    .filter(([key, outcome]) => outcome === 'holds' && was.get(key) === 'cannot tell')
    .map(([key]) => key);
  return { property: fact.property, gained: better, after };
}

/** Words of the criteria that a practice in the text sets. */
function setByPractice({ check }: Checked): ReadonlySet<string> {
  const practices = check.entries.filter(one => one.reading.kind === 'practice');
  return new Set(practices.flatMap(one => one.reading.facts.facts.map(fact => fact.row.words)));
}

/** Pairs are many: three specs of different kinds stand for all. */
const PAIRED = ['pilot-cutter/ternhaven.shaft', 'workboat/saltmarsh.shaft', 'sport-boat/quickgrass.shaft'];

describe('taking a fact away never turns a cannot tell into a holds', () => {
  it.each(share(exampleSpecs, 5))(
    '%s, each fact, then each other fact of the block',
    async path => {
      const whole = await checkText(joinedExample(path));
      const findings = whole.findings.filter(one => !one.verdict?.asFound).map(one => one.message);
      expect(findings, 'with all its facts').toEqual([]);
      const facts = writtenFacts(whole.check);
      const used = facts.map((_, index) => index);
      for (const index of share(used, 5, 60)) {
        const gap = await gained(whole, index);
        expect(gap.gained, `without ${gap.property}`).toEqual([]);
      }
      // Pairs: after the first gap many checks wait, and a second gap must not close any of them.
      const first = PAIRED.includes(path) ? used.filter(one => one % 5 === 0) : [];
      for (const index of share(first, 1)) {
        const gap = await gained(whole, index);
        const rest = writtenFacts(gap.after.check).map((_, other) => other);
        const seconds = rest.filter(one => (one + index) % 11 === 0);
        for (const other of share(seconds, 3)) {
          const second = await gained(gap.after, other);
          expect(second.gained, `without ${gap.property} and ${second.property}`).toEqual([]);
        }
      }
    },
    300_000,
  );

  it.each(share(RULES, 60).map(rule => [rule.id, rule] as const))(
    '%s, from its cannot-tell example',
    async (_, rule) => {
      if (!rule.examples().cannotTell.includes('{')) return;
      const whole = await checkText(rule.examples().cannotTell);
      const facts = writtenFacts(whole.check);
      for (const index of share([...facts.keys()], 2, 16)) {
        // Where leaving a property out has a meaning of its own, `unknown` says more than nothing: see `absent` of its row.
        if (facts[index]!.moreThanAbsent) continue;
        // A criterion that is left out is the practice's: one that is left open in its place says more.
        if (setByPractice(whole).has(facts[index]!.property)) continue;
        const step = await gained(whole, index);
        expect(step.gained, `without ${step.property}`).toEqual([]);
      }
    },
  );
});
