import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { changed, outcomes, passing, saidBy } from './verdicts.js';

describe('the name of a shaft material decides nothing', () => {
  const rule = 'propeller/material-pair';
  // A hull that makes no pair of its own, so that the shaft decides.
  const plastic = changed(passing(rule), ['material aluminium', 'material fibreglass']);
  const bare = changed(plastic, ['  corrosion protection "hull and shaft anodes, bonded, drawing E-12"', '']);

  it.each(['high-strength-stainless', 'Bar-7', 'bronze-like'])('called %s: fails alike', async name => {
    const renamed = bare.replaceAll('high-strength-stainless', name);
    expect(await outcomes(rule, renamed)).toEqual(['fails']);
    expect(await outcomes(rule, plastic.replaceAll('high-strength-stainless', name))).toEqual(['holds']);
  });

  it('asks for the metal where the entry does not say it', async () => {
    const [said] = await saidBy(rule, changed(bare, ['  metal stainless steel\n', '']));
    expect([said!.outcome, said!.asked]).toEqual(['cannot tell', ['metal']]);
  });
});

describe('a selector that is not known', () => {
  it.each(['kind damper', '  kind damper\n'])('"%s" as unknown leaves a wrong flywheel wrong', async kind => {
    const failing = RULES.find(one => one.id === 'interface/flywheel-recess')!.examples().failing;
    const other = kind.startsWith(' ') ? '' : 'kind unknown';
    expect(await outcomes('interface/flywheel-recess', changed(failing, [kind, other]))).toContain('fails');
  });
});
