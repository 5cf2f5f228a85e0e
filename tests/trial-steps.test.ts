import { describe, expect, it } from 'vitest';
import { TRIED } from '../packages/drivetrain/src/rules/trial/trial-specs.js';
import { checkText } from './support/check.js';

const STEP =
  'station "wheelhouse"  with lever ahead pulls ahead  with lever astern pulls astern  neutral no drive';
const withStep = (step: string, more = '') =>
  TRIED.replace('    run Centre at rated speed', `    ${step}\n    run Centre at rated speed`).replace(
    '  trial "sea trial"',
    `${more}  trial "sea trial"`,
  );

async function told(spec: string, rule: string): Promise<string[]> {
  const { check } = await checkText(spec);
  return check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === rule)
    .map(one => `${one.outcome}: ${one.message}`);
}

const HELM = `  helm {
    station wheelhouse { thrust direction shown  gear oil pressure shown  gear oil temperature shown  engine stop apart from the speed lever }
    station flybridge { thrust direction shown  gear oil pressure shown  gear oil temperature shown  engine stop apart from the speed lever }
  }
`;

describe('steps at the dock', () => {
  it.each([
    [`dock Centre { ${STEP} }`, '', /^holds: .*ahead, astern and neutral do what the lever says/],
    [`dock Centre { ${STEP}  shaft turns clockwise }`, '', /^holds: .*the shaft turns clockwise ahead/],
    [
      `dock Centre { ${STEP}  shaft turns counter-clockwise }`,
      '',
      /^fails: .*turns counter-clockwise ahead, seen from aft, and the spec works out clockwise/,
    ],
    [
      `dock Centre { ${STEP.replace('astern pulls astern', 'astern pulls ahead')} }`,
      '',
      /^fails: .*lever astern pulls ahead/,
    ],
    [`dock Centre { ${STEP.replace('no drive', 'drives')} }`, '', /^fails: .*neutral drives/],
    [`dock Port { ${STEP} }`, '', /^fails: .*no line of that name/],
    [`dock Centre { ${STEP} }`, HELM, /^cannot tell: .*a step of Centre from flybridge/],
  ] as const)('%s', async (step, more, expected) => {
    const verdicts = await told(withStep(step, more), 'trial/dock-steps');
    expect(verdicts.some(one => expected.test(one))).toBe(true);
  });
});

describe('helm and drills where passengers are carried', () => {
  const CARRIED = TRIED.replace('passengers none', 'passengers carried');

  it('asks for the fittings of the helm, and takes the text that the author names as the criterion', async () => {
    expect((await told(CARRIED, 'interface/helm-fittings'))[0]).toMatch(
      /^cannot tell: .*stations of the helm/,
    );
    const named = CARRIED.replace(
      '  trial "sea trial"',
      '  helm { required by "licence condition 7"  station wheelhouse { engine stop none } }\n  trial "sea trial"',
    );
    expect((await told(named, 'interface/helm-fittings'))[0]).toMatch(
      /^fails: Helm wheelhouse: no engine stop\. "licence condition 7" requires it/,
    );
  });

  it('asks for the three drills of any trial with runs', async () => {
    expect((await told(CARRIED, 'trial/drills'))[0]).toMatch(
      /^cannot tell: .*the drills loss of control, full astern, stop in "sea trial"/,
    );
    expect(await told(TRIED, 'trial/drills')).toEqual([]);
  });
});
