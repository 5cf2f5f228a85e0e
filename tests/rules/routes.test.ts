import { type Route, RULES } from '@tailshaft/drivetrain';
import { applyEdits, type Finding, formatText, problemEdits, textEditsFor } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';
import { share } from '../support/share.js';
import { dataOf, misread } from './route-data.js';

/** Findings as rule and subject: what must go, and what must not come. */
const keys = (checked: Checked, outcome?: string) =>
  new Set(
    checked.findings
      .filter(one => outcome === undefined || one.verdict?.outcome === outcome)
      .map(one => (one.verdict ? `${one.code} of ${one.verdict.subject}` : one.code)),
  );

/** Checks that were passed. */
function heldBy(checked: Checked): Set<string> {
  const verdicts = [...checked.check.vessels, ...checked.check.entries].flatMap(one => one.verdicts);
  return new Set(verdicts.filter(one => one.outcome === 'holds').map(one => `${one.rule} of ${one.subject}`));
}

const specOf = (text: string) => (text.includes('{') ? [text] : []);

describe.each(share(RULES, 45).map(rule => [rule.id, rule] as const))('%s', (_, rule) => {
  it('offers only ways out that read, clear their finding, break nothing and are laid out as the rest', async () => {
    for (const spec of [rule.examples().failing, ...specOf(rule.examples().cannotTell)]) {
      const before = await checkText(spec);
      for (const finding of before.findings) {
        for (const route of finding.verdict?.routes() ?? []) await tryRoute(before, finding, route);
        for (const choice of finding.problem?.choices ?? []) {
          const after = applyEdits(spec, problemEdits(finding.problem!, choice, before.uri, spec));
          expect(after, choice.title).not.toBe(spec);
        }
      }
    }
  });
});

async function tryRoute(before: Checked, finding: Finding, route: Route): Promise<void> {
  const edits = textEditsFor(route.edits, () => before.text);
  expect(edits.length, `${route.title}: can be written`).toBeGreaterThan(0);
  expect(
    route.edits.some(edit => 'property' in edit && edit.property === 'shift cable'),
    'never the shift cable',
  ).toBe(false);
  expect(dataOf(route.edits).fragments, `${route.title}: data, no text`).toEqual([]);
  const text = applyEdits(before.text, edits);
  const after = await checkText(text);
  expect(misread(route, edits, after), `${route.title} reads back as it was meant\n${text}`).toEqual([]);
  const problems = after.findings.filter(one => one.problem).map(one => `${one.code}: ${one.message}`);
  expect(problems, `${route.title}\n${text}`).toEqual([]);
  const key = `${finding.code} of ${finding.verdict!.subject}`;
  if (!route.stub) expect([...keys(after)], `${route.title} clears it\n${text}`).not.toContain(key);
  // A unit once written may let a check speak that could not before; none that held may fail.
  const held = heldBy(before);
  const came = [...keys(after, 'fails')].filter(one => held.has(one));
  expect(came, `${route.title} breaks nothing else\n${text}`).toEqual([]);
  const laidOut = formatText(text);
  expect(formatText(laidOut), 'formatting is stable').toBe(laidOut);
  if (formatText(before.text) === before.text)
    expect(text, `${route.title} is laid out as the rest`).toBe(laidOut);
}
