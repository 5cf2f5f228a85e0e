import { isFinding, RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { applyEdits, textEditsFor } from '../../src/edit/index.js';
import { formatText } from '../../src/index.js';
import { Specs } from './specs.js';

describe('a way out, taken', () => {
  const failing = RULES.filter(rule => rule.examples.failing.includes('{'));
  it.each(failing.map(rule => [rule.id, rule] as const))('clears its finding: %s', async (_, rule) => {
    const specs = await Specs.read(rule.examples.failing);
    const text = specs.textOf(specs.document.uri.toString());
    const all = [...specs.check.vessels, ...specs.check.entries].flatMap(one => one.verdicts);
    const verdicts = all.filter(one => one.rule === rule.id && isFinding(one));
    expect(verdicts.length).toBeGreaterThan(0);
    for (const verdict of verdicts) {
      for (const route of verdict.routes()) {
        if (route.stub) continue;
        const after = formatText(applyEdits(text, textEditsFor(route.edits, specs.textOf)));
        const again = await Specs.read(after);
        const left = [...again.check.vessels, ...again.check.entries]
          .flatMap(one => one.verdicts)
          .filter(one => one.rule === rule.id && one.subject === verdict.subject && isFinding(one));
        expect(
          left.map(one => one.message),
          `${route.title}\n${after.slice(after.indexOf('vessel '))}`,
        ).toEqual([]);
      }
    }
  });
});
