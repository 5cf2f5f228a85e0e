import { findRule } from '@tailshaft/drivetrain';
import { applyEdits, textEditsFor } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const RULE = 'capacity/gear-input-torque';
const { failing, passing } = findRule(RULE)!.examples();
const accepted = (spec: string, on = 'Centre') =>
  spec.replace(
    '  arrangement proposed {',
    `  accept ${RULE} on ${on} because "rating is being asked for"\n      by "class surveyor" dated 2026-01-20 until 2026-12-31\n\n  arrangement proposed {`,
  );
const said = async (spec: string) => {
  const checked = await checkText(spec);
  return checked.findings.filter(one => one.code === 'paper/acceptance');
};

describe('an acceptance that is no longer needed', () => {
  it('is silent while what it is for fails', async () => {
    const { check } = await checkText(accepted(failing));
    expect(check.vessels[0]!.verdicts.find(one => one.rule === RULE)!.outcome).toBe('accepted');
    expect(await said(accepted(failing))).toEqual([]);
  });

  it('is found once that holds, and can be taken out', async () => {
    const spec = accepted(passing);
    const [finding] = await said(spec);
    expect(finding!.verdict!.message).toContain(`is no longer needed: ${RULE} holds there now`);
    const [route] = finding!.verdict!.routes();
    const after = applyEdits(
      spec,
      textEditsFor(route!.edits, () => spec),
    );
    expect(after).not.toContain('accept ');
    expect((await checkText(after)).findings).toEqual([]);
  });

  it('says nothing while that cannot be told, or nothing of it is judged', async () => {
    expect(await said(accepted(findRule(RULE)!.examples().cannotTell))).toEqual([]);
    expect(await said(accepted(passing, 'Port'))).toEqual([]);
  });
});
