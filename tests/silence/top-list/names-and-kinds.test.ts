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

describe('a box that does not say whether the line turns back in it', () => {
  const rule = 'rotation/propeller-hand';
  const box = (kind: string, back: string, output = 'output same seen from aft') =>
    changed(
      passing('capacity/transfer-torque'),
      ['kind chain\n', `kind ${kind}\n`],
      ['  turns the line back no\n', back],
      ['output same seen from aft', output],
      ['flywheel aft', 'flywheel forward'],
    );

  it('is a V-drive: it does', async () => {
    const said = await outcomes(rule, box('gear V-drive', '  turns the line back yes\n'));
    const silent = box('gear V-drive', '');
    const other = silent.includes('hand right')
      ? silent.replaceAll('hand right', 'hand left')
      : silent.replaceAll('hand left', 'hand right');
    expect(await outcomes(rule, silent)).toEqual(said);
    expect([...said, ...(await outcomes(rule, other))].sort()).toEqual(['fails', 'holds']);
  });

  it('is a belt: nobody knows', async () => {
    const asked = (await saidBy(rule, box('belt', '', 'output same'))).flatMap(one => one.asked);
    expect(asked).toContain('turns the line back');
  });
});

describe('a motor of one rotation on the input of a gear', () => {
  it.each([
    ['rotation clockwise viewed from aft', 'fails'],
    ['rotation counter-clockwise viewed from aft', 'holds'],
  ])('%s: %s', async (rotation, outcome) => {
    const harbour = changed(passing('capacity/mode-power'), ['rotation either', rotation]);
    const [said] = await saidBy('rotation/input-accepted', harbour);
    expect([said!.outcome, said!.message]).toEqual([outcome, expect.not.stringContaining('Needed: .')]);
  });
});
