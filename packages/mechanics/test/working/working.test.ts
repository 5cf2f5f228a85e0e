import { given, workingLine, workingMarkdown, workingSteps, workingText } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';

// A formula of the test's own, so that it is not added to the list of formulas.
const value = (more: object) =>
  ({
    ...given('input torque', 'T', 'torque', 300e3 / ((2300 * 2 * Math.PI) / 60)),
    working: {
      name: 'test torque',
      text: 'T = P / ω',
      inputs: [
        given('rated power', 'P', 'power', 300e3, { written: '300 kW' }),
        given('rated speed', 'n', 'rotational speed', (2300 * 2 * Math.PI) / 60, {
          assumed: 'the governor setting',
        }),
      ],
      keys: ['power', 'ω'],
      source: { title: 'definition of power', confidence: 'derived' },
      range: [
        { condition: 'speed is above zero', met: true },
        { condition: 'power is at most 200 kW', met: false },
      ],
      notes: ['at rated speed'],
      ...more,
    },
  }) as const;

it('prints working as text, down to what was written', () => {
  expect(workingText(value({}))).toMatchInlineSnapshot(`
    "input torque: T = 1246 N·m
        T = P / ω
        T = 300 kW / 2300 rpm = 1246 N·m
        source: definition of power (derived)
        holds: speed is above zero
        NOT MET: power is at most 200 kW
        note: at rated speed
      rated power: P = 300 kW (written 300 kW)
      rated speed: n = 2300 rpm (assumed: the governor setting)"
  `);
});

it('prints working as a Markdown list', () => {
  expect(workingMarkdown(value({}))).toMatchInlineSnapshot(`
    "- input torque: \`T = 1246 N·m\`  
      \`T = P / ω\`  
      \`T = 300 kW / 2300 rpm = 1246 N·m\`  
      source: definition of power (derived)  
      holds: speed is above zero  
      NOT MET: power is at most 200 kW  
      note: at rated speed
      - rated power: \`P = 300 kW\` (written 300 kW)
      - rated speed: \`n = 2300 rpm\` (assumed: the governor setting)"
  `);
});

it('prints one line for a hover', () => {
  expect(workingLine(value({}))).toBe('T = P / ω = 300 kW / 2300 rpm = 1246 N·m');
  expect(workingLine(given('power', 'P', 'power', 1e5))).toBe('P = 100 kW');
});

it('works out a shared input once', () => {
  const torque = value({});
  const twice = {
    ...given('sum', 'S', 'torque', 2 * torque.si),
    working: { ...torque.working, text: 'S = T + T', inputs: [torque, torque], keys: ['a', 'b'] },
  };
  const steps = [...workingSteps(twice)];
  expect(steps.map(step => [step.value.symbol, step.depth, step.shownAbove])).toEqual([
    ['S', 0, false],
    ['T', 1, false],
    ['P', 2, false],
    ['n', 2, false],
    ['T', 1, true],
  ]);
  expect(workingText(twice)).toContain('worked out above');
});

it('says so when there is no finite value', () => {
  expect(workingText({ ...value({}), si: Number.NaN })).toContain('no finite value');
});

it('takes nothing in a label or an author’s words as mark-up', () => {
  const hostile = given('a <b>*label*</b>', 'x', 'length', 1, { written: '[1 m](javascript:0)' });
  expect(workingMarkdown(hostile)).toBe(
    '- a \\<b\\>\\*label\\*\\</b\\>: `x = 1000 mm` (written \\[1 m\\](javascript:0))',
  );
});
