import { expect, it } from 'vitest';
import { FRESH } from './fixes/fresh-vessels.js';
import { checkText } from './support/check.js';

/** The vessel with nothing but its motor, in a mode that limits it. */
const MOTOR = FRESH.hybrid
  .replace('      engine Petrel-5 at medium { flywheel aft }\n', '')
  .replace(/ {6}mode passage .*\n/, '')
  .replace(/ {2}require speed.*\n/, '');

/** What a rule says of it. */
async function said(rule: string, ...changes: readonly (readonly [string, string])[]) {
  const text = changes.reduce((whole, [from, to]) => {
    expect(whole).toContain(from);
    return whole.replace(from, to);
  }, MOTOR);
  const { check } = await checkText(text);
  return check.vessels[0]!.verdicts.filter(one => one.rule === rule);
}

/** Power is what its control leaves it, so that it turns slower and carries less; torque is what would hold it back. */
it.each(['24 kW', '12 kW', '8 kW', '40 kW'])(
  'holds a lone motor that %s limits, within its torque',
  async limit => {
    const [one] = await said('propeller/absorbed-power', ['at most 24 kW', `at most ${limit}`]);
    expect(one!.outcome).toBe('holds');
  },
);

it('tells a share of torque where the motor first gives its power', async () => {
  const [one] = await said('propeller/absorbed-power');
  // By hand: 24 kW over 239 N·m is 100.42 rad/s, 958.9 rpm.
  expect(one!.message).toMatch(/from 959 rpm up the motor gives its 24 kW/);
  expect(one!.message).toMatch(/% of the motor’s 239 N·m/);
});

it('fails a lone motor whose torque the propeller exceeds before its power is reached', async () => {
  const [one] = await said(
    'propeller/absorbed-power',
    ['pitch 535 mm', 'pitch 760 mm'],
    ['motor power at most 24 kW', ''],
  );
  expect([one!.outcome, one!.severity]).toEqual(['fails', 'warning']);
  expect(one!.message).toContain('its torque holds it below that speed');
});

it('tells a propeller too light only where even the top speed leaves power, and asks for that speed', async () => {
  const light = [
    ['pitch 535 mm', 'pitch 480 mm'],
    ['motor power at most 24 kW', ''],
  ] as const;
  const at = (top: string) => said('propeller/absorbed-power', ...light, ['  top speed 3000 rpm\n', top]);
  expect((await at('  top speed 3000 rpm\n'))[0]!.outcome).toBe('holds');
  const slow = (await at('  top speed 1620 rpm\n'))[0]!;
  expect(slow.outcome).toBe('fails');
  expect(slow.message).toContain('at its top speed of 1620 rpm');
  const open = (await at(''))[0]!;
  expect(open.outcome).toBe('cannot tell');
  expect(open.missing.map(one => one.property)).toEqual(['top speed']);
});

const RUN = `
  trial "sea trial" of built dated 2026-02-20 {
    bottom clean
    tachometers checked
    run Centre at full throttle { engine mode quiet  engine speed SPEED }
  }
}
`;

it.each([
  ['1420 rpm', 'holds'],
  ['980 rpm', 'holds'],
  ['900 rpm', 'fails'],
])('takes %s of a motor limited to 24 kW, read at full throttle, as what %s', async (speed, outcome) => {
  const text = MOTOR.replace(/\}\n$/, RUN.replace('SPEED', speed));
  const { check } = await checkText(text);
  const one = check.vessels[0]!.verdicts.find(each => each.rule === 'trial/full-throttle')!;
  expect(one.outcome).toBe(outcome);
  if (outcome === 'fails') expect(one.message).toContain('gives 24 kW from 958.9 rpm up');
});

/** The same hull and propeller with an engine before, and by the motor alone now. */
const KEPT = FRESH.hybrid
  .replace('      motor Grebe-40\n', '')
  .replace(/ {6}mode .*\n/g, '')
  .replace(/ {2}require speed.*\n/, '')
  .replace(
    /\}\n$/,
    `  arrangement electric revises built {
    shaftline Centre {
      remove engine
      replace motor Grebe-40
      retain gear
      retain shaft
      retain propeller
      mode quiet { driven by motor  motor power at most LIMIT }
    }
  }
}
`,
  );

it.each(['12 kW', '5 kW'])(
  'judges a kept propeller by the torque of the motor limited to %s',
  async limit => {
    const { check, findings } = await checkText(KEPT.replace('LIMIT', limit));
    expect(findings.filter(one => one.code.startsWith('text/'))).toEqual([]);
    const verdicts = check.vessels[0]!.verdicts.filter(
      one => one.rule === 'capacity/retained-propeller-overload',
    );
    expect(verdicts.map(one => one.outcome)).toEqual(['holds']);
  },
);
