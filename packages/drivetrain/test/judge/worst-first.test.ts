import { expect, it } from 'vitest';
import { worstFirst } from '../../src/judge/gravity.js';
import type { Outcome, Verdict } from '../../src/judge/verdict.js';

const verdict = (rule: string, outcome: Outcome, more: Partial<Verdict> = {}) =>
  ({ rule, outcome, severity: 'error', explains: [], ...more }) as Verdict;

it('puts what fails first, the graver before the less grave, and leaves what holds in its order', () => {
  const all = [
    verdict('speed/idle', 'holds'),
    verdict('capacity/rating-duty', 'fails'),
    verdict('trial/pair', 'fails'),
    verdict('shafting/diameter', 'fails', { margin: -0.47 }),
    verdict('shafting/key', 'fails', { margin: -0.6, asFound: true }),
    verdict('paper/age', 'cannot tell'),
    verdict('rotation/propeller-hand', 'fails'),
    verdict('capacity/torque', 'fails', { margin: -0.5 }),
    verdict('speed/tip', 'fails', { severity: 'warning', margin: -0.9 }),
    verdict('capacity/clutch', 'holds'),
  ];
  expect(worstFirst(all).map(one => one.rule)).toEqual([
    'rotation/propeller-hand',
    'capacity/torque',
    'shafting/diameter',
    'capacity/rating-duty',
    'trial/pair',
    'shafting/key',
    'speed/tip',
    'paper/age',
    'speed/idle',
    'capacity/clutch',
  ]);
});
