import { describe, expect, it } from 'vitest';
import { SINGLE_LINE, TWIN_LINES } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const turning = (spec: string, way: string) => withStatements(spec, `  require propellers turn ${way}`);
const byTurning = async (spec: string) =>
  (await verdictsBy(spec, 'rotation/turning-requirement')).map(one => one.outcome);

describe('"propellers turn" is judged by how the shafts turn', () => {
  it('of a pair that turns outward', async () => {
    expect(await byTurning(turning(TWIN_LINES, 'outward'))).toEqual(['holds']);
    expect(await byTurning(turning(TWIN_LINES, 'inward'))).toEqual(['fails']);
  });

  it('of a pair whose hands are those of outward turning, while both shafts turn inward', async () => {
    const crossed = TWIN_LINES.replace('ahead clutch A', 'ahead clutch X')
      .replace('ahead clutch B', 'ahead clutch A')
      .replace('ahead clutch X', 'ahead clutch B');
    expect(await byTurning(turning(crossed, 'outward'))).toEqual(['fails']);
  });

  it('of which one shaft is not known', async () => {
    const open = changed(TWIN_LINES, ['ratio 2.04:1 ahead clutch B', 'ratio 2.04:1']);
    expect(await byTurning(turning(open, 'outward'))).toEqual(['cannot tell']);
  });
});

describe('a requirement that nothing can tell', () => {
  it.each([
    ['propellers turn outward', SINGLE_LINE],
    ['speed at least 12 kn at full power', SINGLE_LINE],
    [
      'shaft speed at most 1200 rpm at rated power',
      changed(SINGLE_LINE, ['power 300 kW at 2300 rpm', 'power unknown']),
    ],
    ['speed at most 5 kn at idle ahead', changed(SINGLE_LINE, ['low idle 650 rpm', 'low idle unknown'])],
  ])('is told: %s', async (requirement, spec) => {
    const { check } = await checkText(withStatements(spec, `  require ${requirement}`));
    const answers = check.vessels[0]!.verdicts.filter(one => one.answers);
    expect(answers.length).toBeGreaterThan(0);
    for (const one of answers) expect(['cannot tell', 'fails']).toContain(one.outcome);
    expect(check.vessels[0]!.verdicts.map(one => one.message).join()).not.toContain('is met by a check');
  });
});

describe('a motor', () => {
  const line = (motor: string) => `motor Eider-40 { ${motor} }
vessel Reedmouth {
  duty medium
  arrangement proposed {
    shaftline Centre { motor Eider-40  shaft { diameter 40 mm }  propeller { hand right  diameter 18 in } }
  }
  require shaft torque at most 90 N.m at full power
}
`;
  it('is limited by its torque in every rule', async () => {
    // 40 kW at 3000 rpm would be 127 N.m; the motor gives 80.
    const met = async (motor: string) => (await verdictsBy(line(motor), 'trace/requirement-met'))[0];
    expect((await met('power 40 kW at 3000 rpm'))?.outcome).toBe('fails');
    const limited = await met('power 40 kW at 3000 rpm  torque 80 N.m');
    expect(limited?.outcome).toBe('holds');
    expect(limited?.demand?.si).toBeCloseTo(80, 0);
  });
});
