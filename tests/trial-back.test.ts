import { textEditsFor } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { PROPELLED } from '../packages/drivetrain/src/rules/propeller/example-hull.js';
import { TRIED } from '../packages/drivetrain/src/rules/trial/trial-specs.js';
import { checkText } from './support/check.js';

const changed = (spec: string, ...changes: readonly (readonly [string, string])[]) =>
  changes.reduce((text, [from, to]) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  }, spec);

async function verdictsBy(spec: string, rule: string) {
  const { check } = await checkText(spec);
  return check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === rule);
}

const SHORT = changed(TRIED, ['engine speed 2310 rpm', 'engine speed 2150 rpm']);
const RUN = 'run Centre at full throttle { engine speed 2150 rpm';

async function messageOf(...changes: readonly (readonly [string, string])[]) {
  const [verdict] = await verdictsBy(changed(SHORT, ...changes), 'trial/full-throttle');
  return verdict!.message;
}

describe('a run that falls short of rated speed', () => {
  it('says which ratio and diameter would have brought it, as a range', async () => {
    const message = await messageOf();
    // By hand: 1289.5 N·m at 2150 rpm between 1480 at 1500 and 1245.6 at 2300, so 290.3 kW; exponents 2.7 and 3, reading 1 % either way.
    expect(message).toContain('the propeller would absorb 113 % to 122 % of rated power at rated speed');
    expect(message).toContain('a ratio of 2.14:1 to 2.18:1');
    // 26 in × (300/366.3)^(1/3) and × (300/339.1)^(1/5).
    expect(message).toMatch(/a diameter of 24\.3 in to 25\.4 in/);
    expect(message).not.toContain('a pitch of');
  });

  it('gives a pitch once the speed, and so the slip, was read', async () => {
    // 24 in × (300/366.3)^(1/2), and with the exponent 1 + 1/s of 13.4 % slip: 24 × (300/339.1)^(1/8.5).
    expect(await messageOf([RUN, `${RUN}  speed 18 kn`])).toMatch(/a pitch of 21\.7 in to 23\.7 in/);
  });

  it('takes the exponent that the vessel assumes', async () => {
    const assumed = '  assume propeller exponent 2.7 because "like vessels"\n  arrangement proposed {';
    // (300/290.33)^(1/2.7) with 1 % either way alone.
    expect(await messageOf(['  arrangement proposed {', assumed])).toContain('a ratio of 2.14:1 to 2.18:1');
    expect(await messageOf(['  arrangement proposed {', assumed])).toContain('exponent 2.7, tachometer 1 %');
  });

  it.each([
    [
      'nothing read',
      RUN,
      'at tachometer, governor, throttle travel, ratio on the plate of the gear, fuel and air, hull and load and propeller last.',
    ],
    [
      'no smoke',
      `${RUN}  smoke none`,
      'fuel and air; then, though the readings point away from it, hull and load and propeller. No smoke points away from overload.',
    ],
    ['black smoke', `${RUN}  smoke black`, 'at fuel and air, hull and load, propeller, tachometer'],
    ['the exact ratio', `${RUN}  shaft speed 1052 rpm`, 'at governor, throttle travel, fuel and air'],
    [
      'another ratio',
      `${RUN}  shaft speed 853 rpm`,
      'at tachometer, ratio on the plate of the gear, governor',
    ],
    ['a throttle short of its stop', `${RUN}  throttle short of its stop`, 'at throttle travel, tachometer'],
    [
      'the no-load run short as well',
      `run Centre at no load { engine speed 2350 rpm }\n    ${RUN}`,
      'at tachometer, governor, throttle travel, ratio',
    ],
    [
      'the no-load run as it should be',
      `run Centre at no load { engine speed 2525 rpm }\n    ${RUN}`,
      'at ratio on the plate of the gear, fuel and air, hull and load and propeller last; then, though',
    ],
  ])('orders the causes by what was read: %s', async (_, run, order) => {
    expect(await messageOf([RUN, run])).toContain(order);
  });
});

describe('what a trial gives the next prediction', () => {
  const trial = (speed: string) => `  trial "sea trial" of proposed dated 2026-02-20 {
    displacement 11.8 t
    bottom clean
    tachometers checked
    direction at the dock proven
    astern and stop recorded
    run Centre at rated speed { engine speed 2300 rpm  speed ${speed} }
  }
  arrangement proposed {`;

  it('is offered as an assumption, with which the speed read is the speed predicted', async () => {
    const [, word] = /arrangement (\w+)/.exec(PROPELLED)!;
    const [, line] = /shaftline (\w+)/.exec(PROPELLED)!;
    const spec = (speed: string) =>
      changed(PROPELLED, [
        `  arrangement ${word} {`,
        trial(speed).replaceAll('proposed', word!).replaceAll('Centre', line!),
      ]);
    const [probe] = (await verdictsBy(spec('3 kn'), 'trial/prediction')).filter(
      one => one.subject.endsWith('-speed') && !one.subject.includes('engine'),
    );
    const predicted = Number(/([\d.]+) kn predicted/.exec(probe!.message)![1]);
    const read = `${(predicted * 0.9).toFixed(2)} kn`;
    const [verdict] = (await verdictsBy(spec(read), 'trial/prediction')).filter(one =>
      one.message.includes(' kn predicted'),
    );
    expect(verdict?.outcome).toBe('fails');
    const [route] = verdict!.routes();
    expect(route?.title).toMatch(/^Assume resistance correlation 1\.\d\d: /);
    // Applied as it is offered.
    const text = spec(read);
    const edits = [...textEditsFor(route!.edits, () => text)].sort((one, other) => other.start - one.start);
    const corrected = edits.reduce(
      (all, one) => all.slice(0, one.start) + one.text + all.slice(one.end),
      text,
    );
    expect(corrected).toMatch(
      /assume resistance correlation 1\.\d\d because "sea trial, 2026-02-20, \w+ at rated speed"/,
    );
    const [then] = (await verdictsBy(corrected, 'trial/prediction')).filter(one =>
      one.message.includes(' kn predicted'),
    );
    expect(then?.outcome).toBe('holds');
    const [, again] = /([\d.]+) kn predicted/.exec(then!.message)!;
    expect(Math.abs(Number(again) / Number.parseFloat(read) - 1)).toBeLessThan(0.01);
  });

  it('calibrates the hull by the speed and power read, and then predicts both again', async () => {
    const [, word] = /arrangement (\w+)/.exec(PROPELLED)!;
    const [, line] = /shaftline (\w+)/.exec(PROPELLED)!;
    const spec = (readings: string) =>
      changed(PROPELLED, [
        `  arrangement ${word} {`,
        trial('3 kn')
          .replaceAll('proposed', word!)
          .replaceAll('Centre', line!)
          .replace('speed 3 kn', readings),
      ]);
    const readingsOf = async (text: string, unit: string) => {
      const said = (await verdictsBy(text, 'trial/prediction')).find(one =>
        one.message.includes(`${unit} predicted`),
      )!;
      return { said, predicted: Number(new RegExp(`([\\d.]+) ${unit} predicted`).exec(said.message)![1]) };
    };
    const probe = spec('speed 3 kn  shaft power 10 kW');
    const speed = (await readingsOf(probe, 'kn')).predicted;
    const power = (await readingsOf(probe, 'kW')).predicted;
    // A hull that is slower and asks more than its method says.
    const text = spec(`speed ${(speed * 0.92).toFixed(2)} kn  shaft power ${(power * 1.03).toFixed(1)} kW`);
    const [route] = (await readingsOf(text, 'kn')).said.routes();
    expect(route?.title).toMatch(/^Assume resistance correlation 1\.\d\d with a wake fraction of -?0\.\d+/);
    const edits = [...textEditsFor(route!.edits, () => text)].sort((one, other) => other.start - one.start);
    const corrected = edits.reduce(
      (all, one) => all.slice(0, one.start) + one.text + all.slice(one.end),
      text,
    );
    const then = { speed: await readingsOf(corrected, 'kn'), power: await readingsOf(corrected, 'kW') };
    expect(Math.abs(then.speed.predicted / (speed * 0.92) - 1)).toBeLessThan(0.01);
    expect(Math.abs(then.power.predicted / (power * 1.03) - 1)).toBeLessThan(0.01);
    expect(then.speed.said.outcome).toBe('holds');
  });

  it('says where a prediction goes beyond the speeds of the trial', async () => {
    const [, word] = /arrangement (\w+)/.exec(PROPELLED)!;
    const [, line] = /shaftline (\w+)/.exec(PROPELLED)!;
    const text = changed(PROPELLED, [
      `  arrangement ${word} {`,
      `  assume resistance correlation 1.05 because "trial"\n${trial('6 kn').replaceAll('proposed', word!).replaceAll('Centre', line!)}`,
    ]);
    const [verdict] = await verdictsBy(text, 'propeller/absorbed-power');
    expect(verdict!.message).toMatch(/resistance correlation was read at 6\.0 to 6\.0 kn on trial/);
  });
});
