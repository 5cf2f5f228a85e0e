import { given } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { byConsequence, compareVessels, type Outcome, type Verdict } from '../../src/index.js';
import { sayFor } from '../../src/judge/say.js';
import { arrangement, place, vessel } from '../build.js';

const about = vessel({ arrangements: [arrangement('proposed', { Port: {}, Starboard: {} })] });
const rule = { id: 'capacity/example', severity: 'error', criterion: 'capacity over demand' } as const;

/** A verdict with this outcome; with a capacity per cent of the demand where it has a margin. */
function said(outcome: Outcome | 'none', capacity?: number, more: Partial<Verdict> = {}): Verdict[] {
  if (outcome === 'none') return [];
  const newton = (si: number) => given('torque', 'T', 'torque', si);
  const verdict = sayFor(rule, 'proposed.Port').holds({
    place: place('here'),
    message: `${outcome} ${capacity ?? ''}`,
    ...(capacity === undefined ? {} : { capacity: newton(capacity), demand: newton(100) }),
  });
  return [{ ...verdict, outcome, ...more }];
}

const moves = (before: Verdict[], after: Verdict[]) =>
  compareVessels({ vessel: about, verdicts: before }, { vessel: about, verdicts: after }).changes.filter(
    one => one.kind === 'verdict',
  );

describe('a verdict moves', () => {
  it.each([
    [said('holds', 120), said('fails', 90), 'newly fails: holds with 20 % margin → fails, short by 10 %'],
    [said('none'), said('fails', 90), 'newly fails: not judged → fails, short by 10 %'],
    [said('cannot tell'), said('fails', 90), 'newly fails: cannot tell → fails, short by 10 %'],
    [
      said('accepted', 95),
      said('fails', 95),
      'no longer accepted: accepted, short by 5 % → fails, short by 5 %',
    ],
    [said('fails', 95), said('fails', 90), 'fails by more: fails, short by 5 % → fails, short by 10 %'],
    [said('fails', 90), said('fails', 95), 'fails by less: fails, short by 10 % → fails, short by 5 %'],
    [said('holds', 120), said('cannot tell'), 'newly cannot tell: holds with 20 % margin → cannot tell'],
    [said('fails', 90), said('cannot tell'), 'newly cannot tell: fails, short by 10 % → cannot tell'],
    [said('fails', 95), said('accepted', 95), 'newly accepted: fails, short by 5 % → accepted, short by 5 %'],
    [
      said('accepted', 97),
      said('accepted', 88),
      'accepted on other figures: accepted, short by 3 % → accepted, short by 12 %',
    ],
    [
      said('holds', 120),
      said('holds', 105),
      'margin smaller: holds with 20 % margin → holds with 5 % margin',
    ],
    [said('holds', 105), said('holds', 120), 'margin larger: holds with 5 % margin → holds with 20 % margin'],
    [said('fails', 90), said('holds', 120), 'newly holds: fails, short by 10 % → holds with 20 % margin'],
    [said('cannot tell'), said('holds'), 'newly holds: cannot tell → holds'],
    [said('holds', 120), said('none'), 'no longer judged: holds with 20 % margin → not judged'],
    [said('holds', 120), said('does not apply'), 'no longer judged: holds with 20 % margin → not judged'],
    [said('none'), said('holds', 120), 'newly judged: not judged → holds with 20 % margin'],
  ])('%#', (before, after, words) => {
    expect(moves(before, after).map(one => one.words)).toEqual([words]);
  });

  it.each([
    [said('holds', 120), said('holds', 120.01)],
    [said('holds'), said('holds')],
    [said('fails', 90), said('fails', 90)],
    [said('cannot tell'), said('cannot tell')],
    [said('accepted', 90), said('accepted', 90)],
    [said('none'), said('does not apply')],
  ])('not when it says the same: %#', (before, after) => {
    expect(moves(before, after)).toEqual([]);
  });

  it('is told by message where there is no margin', () => {
    const [one] = moves(
      said('fails', undefined, { message: 'left' }),
      said('fails', undefined, { message: 'right' }),
    );
    expect(one?.kind === 'verdict' && one.movement).toBe('still fails, differently');
  });
});

describe('several verdicts of one rule on one subject', () => {
  const crossing = (name: string, outcome: Outcome, capacity: number) =>
    said(outcome, capacity, { message: `${name} crossing at ${capacity}`, criterion: name })[0]!;

  it('are paired by what they are about, in whatever order they come', () => {
    const before = [crossing('first', 'holds', 120), crossing('second', 'holds', 130)];
    const after = [crossing('second', 'holds', 110), crossing('first', 'holds', 120)];
    expect(moves(before, after).map(one => one.words)).toEqual([
      'margin smaller: holds with 30 % margin → holds with 10 % margin',
    ]);
    expect(moves(before, [...before].reverse())).toEqual([]);
  });
});

describe('a finding that another one is the cause of', () => {
  const cause = said('fails', undefined, {
    rule: 'rotation/cause',
    explains: [{ rule: rule.id, subject: 'proposed.Port' }],
  });

  it('is not taken for a check that was lost', () => {
    expect(moves(said('holds', 120), cause).map(one => one.words)).toEqual([
      'newly fails: not judged → fails',
      'reported under its cause: holds with 20 % margin → reported under rotation/cause',
    ]);
  });

  it('is told for what it was when the cause goes and it stays', () => {
    expect(moves(cause, said('fails', 90)).map(one => one.words)).toContain(
      'newly fails: reported under rotation/cause → fails, short by 10 %',
    );
  });
});

describe('what several lines share', () => {
  const shared = (line: string, outcome: Outcome) =>
    said(outcome, undefined, { subject: `proposed.${line}.gear`, message: `${line}: ${outcome}` });

  it('is one verdict, on whichever line it is told', () => {
    expect(moves(shared('Port', 'holds'), shared('Starboard', 'holds'))).toEqual([]);
    expect(moves(shared('Port', 'fails'), shared('Starboard', 'fails'))).toEqual([]);
  });

  it('never hides a failure that is new', () => {
    const found = moves(shared('Port', 'holds'), shared('Starboard', 'fails'));
    expect(found.map(one => one.kind === 'verdict' && one.movement)).toContain('newly fails');
    const other = moves(
      said('fails', undefined, { subject: 'proposed.Port.gear', message: 'Port: too small' }),
      said('fails', undefined, { subject: 'proposed.Starboard.gear', message: 'Starboard: too fast' }),
    );
    expect(other.map(one => one.kind === 'verdict' && one.movement)).toContain('newly fails');
  });
});

describe('the order', () => {
  it('is by consequence: what fails first, among equals by the smaller margin', () => {
    const on = (id: string, outcome: Outcome, capacity: number) => said(outcome, capacity, { rule: id });
    const before = ['a', 'b', 'c', 'd', 'e'].flatMap(id => on(`x/${id}`, 'holds', 150));
    const after = [
      ...on('x/a', 'holds', 160),
      ...on('x/b', 'holds', 101),
      ...on('x/c', 'cannot tell', 100),
      ...on('x/d', 'fails', 95),
      ...on('x/e', 'fails', 50),
    ];
    const rules = (list: ReturnType<typeof moves>) => list.map(one => one.kind === 'verdict' && one.rule);
    const found = moves(before, after);
    expect(rules(found)).toEqual(['x/e', 'x/d', 'x/c', 'x/b', 'x/a']);
    expect(rules([...found].reverse().sort(byConsequence))).toEqual(rules(found));
  });

  it('puts a failed warning behind a failed error', () => {
    const found = moves(
      [],
      [
        ...said('fails', 50, { rule: 'x/mild', severity: 'warning' }),
        ...said('fails', 99, { rule: 'x/grave' }),
      ],
    );
    expect(found.map(one => one.kind === 'verdict' && one.rule)).toEqual(['x/grave', 'x/mild']);
  });
});
