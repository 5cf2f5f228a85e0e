import { describe, expect, test } from 'vitest';
import { judgeVessel, LineAnalysis, type Rule, type ShaftLine } from '../../src/index.js';
import { Needs } from '../../src/judge/needs.js';
import { sayFor } from '../../src/judge/say.js';
import { EMPTY_CATALOGUE } from '../../src/model/catalogue.js';
import { ROTATION_RULES } from '../../src/rules/rotation/index.js';
import { arrangement, open, type PlainLine, place, rotation, sense, vessel } from '../build.js';
import { engine, gear, line } from './rotation-parts.js';

const rotationOf = (plain: PlainLine, name = 'Starboard') => {
  const one = arrangement('proposed', { [name]: plain }).lines[0] as ShaftLine;
  return new LineAnalysis(one, vessel({})).rotation;
};

describe('how a line turns', () => {
  test('ahead and astern, with a reason for each station', () => {
    const found = rotationOf(line({}));
    expect([found.ahead, found.astern, found.neededHand, found.neededPump, found.turning]).toEqual([
      1,
      -1,
      'right',
      'standard',
      'outward',
    ]);
    expect(found.steps.map(step => [step.station, step.turn])).toEqual([
      ['engine Kittiwake-9', 'counter-clockwise'],
      ['gear Alder-63, clutch B', 'clockwise'],
      ['propeller', 'clockwise'],
    ]);
    expect(found.asternSteps.map(step => step.turn)).toEqual([
      'counter-clockwise',
      'counter-clockwise',
      'counter-clockwise',
    ]);
    expect(found.steps[0]?.at).toBe(place('engine Kittiwake-9.rotation'));
  });

  test('turning depends on the side, and a centre line does neither', () => {
    expect(rotationOf(line({}), 'Port').turning).toBe('inward');
    expect(rotationOf(line({}), 'Centre').turning).toBeUndefined();
  });

  test('an open question stops the steps there, and nothing beyond is guessed', () => {
    const found = rotationOf(line({ engine: { from: engine({ rotation: open() }) } }));
    expect(found.ahead).toBeUndefined();
    expect(found.neededHand).toBeUndefined();
    expect(found.steps.map(step => step.turn)).toEqual([undefined, undefined]);
  });

  test('a layout left open matters only where the flywheel faces forward', () => {
    const own = {
      layout: undefined,
      clutches: [{ name: 'B', output: sense('opposite'), ahead: 'continuous' as const }],
    };
    expect(rotationOf(line({ gear: { from: gear(own) } })).ahead).toBe(1);
    const turned = rotationOf(line({ engine: { flywheelFaces: 'forward' }, gear: { from: gear(own) } }));
    expect(turned.ahead).toBeUndefined();
    expect(turned.missing.map(gap => gap.property)).toEqual(['layout']);
  });

  test('a ratio that is not chosen leaves the clutch open', () => {
    const { ratio: _, ...rest } = line({}).gear!;
    const two = gear({});
    const both = {
      ...two,
      facts: { ...two.facts, ratios: [...two.facts.ratios, ...gear({ at: '2.5:1' }).facts.ratios] },
    };
    const found = rotationOf({ ...line({}), gear: { ...rest, from: both } });
    expect(found.missing.map(gap => gap.property)).toEqual(['ratio']);
  });

  test('an engine seen from aft needs no facing for its shaft, but its pump does', () => {
    const seen = {
      from: engine({ rotation: rotation('counter-clockwise', 'aft') }),
      flywheelFaces: undefined,
    };
    const found = rotationOf({ ...line({}), engine: seen });
    expect([found.source, found.neededPump]).toEqual([-1, undefined]);
  });
});

describe('folding of findings', () => {
  const rule = (
    id: string,
    check: (say: ReturnType<typeof sayFor>) => ReturnType<ReturnType<typeof sayFor>['fails']>,
  ) =>
    ({
      ...ROTATION_RULES[0]!,
      id,
      scope: 'vessel',
      check: () => check(sayFor({ id, severity: 'error', criterion: '' }, 'x')),
    }) as Rule;
  const gaps = (...properties: string[]) => {
    const needs = new Needs();
    for (const property of properties) needs.miss({ what: property, host: place('host'), property });
    return needs;
  };
  const explains = [{ rule: 'b', subject: 'x' }];
  const said = { place: place('x'), message: '' };
  const rules = (...all: Rule[]) =>
    judgeVessel(vessel({}), EMPTY_CATALOGUE, '2026-03-02', all).map(one => `${one.rule} ${one.outcome}`);

  test.each([
    ['a failure folds a failure', 'fails', [], 'fails', [], []],
    ['an open question folds no failure', 'cannot tell', ['p'], 'fails', [], ['b fails']],
    ['an open question folds one that asks for no more', 'cannot tell', ['p', 'q'], 'cannot tell', ['q'], []],
    [
      'an open question leaves one that asks for more',
      'cannot tell',
      ['p'],
      'cannot tell',
      ['p', 'q'],
      ['b cannot tell'],
    ],
    ['a failure that asks for nothing folds an open question', 'fails', [], 'cannot tell', ['p'], []],
    [
      'a failure about one datum leaves an open question about another',
      'fails',
      ['p'],
      'cannot tell',
      ['q'],
      ['b cannot tell'],
    ],
    ['what holds is never folded', 'fails', [], 'holds', [], ['b holds']],
  ] as const)('%s', (_, outcome, asked, other, otherAsked, left) => {
    const a = rule('a', say =>
      outcome === 'fails'
        ? say.fails({ ...said, explains }, gaps(...asked).missing)
        : say.cannotTell(gaps(...asked), { ...said, explains }),
    );
    const b = rule('b', say =>
      other === 'fails'
        ? say.fails(said)
        : other === 'holds'
          ? say.holds(said)
          : say.cannotTell(gaps(...otherAsked), said),
    );
    expect(rules(a, b)).toEqual([`a ${outcome}`, ...left]);
  });
});
