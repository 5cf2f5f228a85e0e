import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { changed, outcomes, passing, saidBy } from './verdicts.js';

const HIGH_IDLE = '  high idle 2530 rpm\n';

describe.each(['shafting/bearing-span', 'shafting/propeller-whirl'])('%s without the high idle', rule => {
  it('fails a span that whirls at rated speed already', async () => {
    const failing = RULES.find(one => one.id === rule)!.examples().failing;
    expect(await outcomes(rule, changed(failing, [HIGH_IDLE, '']))).toContain('fails');
  });

  it('waits for it where the span is stiff enough at rated speed, and prints both speeds', async () => {
    const [said] = await saidBy(rule, changed(passing(rule), [HIGH_IDLE, '']));
    expect(said!.outcome).toBe('cannot tell');
    expect(said!.asked).toContain('high idle');
    expect(said!.message).toMatch(/Known so far: .*whirls .*rpm.*turns at least .*rpm/);
  });

  it('prints the whirling speed where no speed of the engine is known', async () => {
    const silent = changed(passing(rule), [HIGH_IDLE, ''], ['power 300 kW at 2300 rpm', 'power unknown']);
    const [said] = await saidBy(rule, silent);
    expect(said!.outcome).toBe('cannot tell');
    expect(said!.message).toMatch(/Known so far: .*whirls .*rpm/);
  });
});
