import { expect, it } from 'vitest';
import { checkText } from './support/check.js';

const MOTOR = `vessel Testcraft {
  arrangement proposed {
    shaftline Centre {
      motor { rotation either  power 60 kW at 1800 rpm  torque 318 N.m  base speed 1800 rpm  top speed 2600 rpm }
      propeller { hand right }
    }
  }
  trial "sea trial" of proposed dated 2026-02-20 {
    bottom clean
    tachometers checked
    run Centre at full throttle { engine speed SPEED }
  }
}`;

async function told(speed: string) {
  const { check } = await checkText(MOTOR.replace('SPEED', speed));
  return check.vessels[0]!.verdicts.find(one => one.rule === 'trial/full-throttle')!;
}

it('looks for what holds a motor back at what a motor has', async () => {
  const { outcome, message } = await told('1500 rpm');
  expect(outcome).toBe('fails');
  expect(message).toContain('voltage of the supply');
  expect(message).not.toMatch(/fuel and air|governor|throttle travel/);
});

it('takes a motor above its rated speed for light only at its top speed', async () => {
  expect((await told('2100 rpm')).outcome).not.toBe('fails');
  const light = await told('2600 rpm');
  expect([light.outcome, light.severity]).toEqual(['fails', 'warning']);
  expect(light.message).toContain('top speed');
});
