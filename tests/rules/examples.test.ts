import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText, shown } from '../support/check.js';

/** Whether the third example is a spec, or the sentence that says why there is none. */
const isSpec = (text: string) =>
  /^\s*(vessel|engine|gear|shaft material|motor|transfer|coupling|propeller|\/\/)/m.test(text) &&
  text.includes('{');

/** What a value that was printed as it stands, or one that does not exist, leaves in a sentence. */
const BROKEN =
  /\[object |\bundefined\b|\bNaN\b|\bInfinity\b|[a-z0-9%] (?:Fit|Take|Choose|Ask|Write|Check|Look|Replace|Use|Measure) (?:a|an|the|for|one|it)\b/;

/** Sentences of the verdicts and ways out of one rule that print something which is no word or number. */
function broken({ check, findings }: Checked, id: string): string[] {
  const verdicts = [...check.vessels, ...check.entries].flatMap(one => one.verdicts);
  const own = findings.filter(one => one.code === id);
  return [
    ...verdicts.filter(one => one.rule === id).map(one => one.message),
    ...own.flatMap(one => one.verdict?.routes() ?? []).map(one => one.title),
  ].filter(one => BROKEN.test(one));
}

describe.each(RULES.map(rule => [rule.id, rule] as const))('%s', (id, rule) => {
  it('finds its failing example, and nothing else', async () => {
    const checked = await checkText(rule.examples().failing);
    const own = checked.findings.filter(one => one.code === id && one.verdict?.outcome === 'fails');
    expect(shown(checked).filter(line => !line.startsWith(`${id} `))).toEqual([]);
    expect(own.length, 'findings of its own').toBeGreaterThan(0);
    expect(broken(checked, id)).toEqual([]);
  });

  it('is silent on its passing example, as all others are', async () => {
    const checked = await checkText(rule.examples().passing);
    expect(shown(checked)).toEqual([]);
    const verdicts = [...checked.check.vessels, ...checked.check.entries].flatMap(one => one.verdicts);
    expect(
      verdicts.some(one => one.rule === id && (one.outcome === 'holds' || one.outcome === 'does not apply')),
      'it judged',
    ).toBe(true);
    expect(broken(checked, id)).toEqual([]);
  });

  it('says cannot tell where a datum is missing', async () => {
    if (!isSpec(rule.examples().cannotTell)) {
      expect(rule.examples().cannotTell.length, 'why it always can').toBeGreaterThan(20);
      return;
    }
    const checked = await checkText(rule.examples().cannotTell);
    const own = checked.findings.filter(one => one.code === id);
    expect(own.map(one => one.verdict?.outcome)).toContain('cannot tell');
    expect(own.flatMap(one => one.verdict?.missing ?? []).length, 'names what is missing').toBeGreaterThan(0);
    expect(shown(checked).filter(line => line.startsWith('text/'))).toEqual([]);
    expect(broken(checked, id)).toEqual([]);
  });
});
