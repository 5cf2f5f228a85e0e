import { describe, expect, it, test } from 'vitest';
import {
  declareFact,
  type Fact,
  Kept,
  noteAbsent,
  type Rule,
  recorded,
  sayFor,
  type Verdict,
} from '../../src/index.js';
import { disputedBy, underTheirDispute, whileDisputed } from '../../src/judge/disputes.js';
import { settled } from '../../src/judge/settle.js';
import { apart, aside, each } from '../../src/model/reads.js';

const PLACE = { name: 'place' } as never;
const ABOUT = { subject: 'proposed.Port', place: PLACE };
const RULE = { id: 'test/rule', title: 'It is so', severity: 'error', criterion: 'c' } as unknown as Rule;
const say = sayFor(RULE, ABOUT.subject);
const told = { place: PLACE, message: 'said.' };

function fact(more: Partial<Fact<string>>): Fact<string> {
  const given = { value: 'as declared', written: 'as declared', origin: { at: {} } as never, ...more };
  return declareFact(given, { host: PLACE, property: 'kind', of: 'propeller' });
}

function outcomeOf(read: Fact<string>, verdict: Verdict, rule: Rule = RULE) {
  const [said] = settled(rule, ABOUT, () => {
    void read.value;
    return verdict;
  });
  return said!.verdict;
}

describe('what a check looked at decides what it may say', () => {
  it.each<[string, Partial<Fact<string>>, Verdict['outcome'], Verdict['outcome']]>([
    ['a proven fact', { evidence: { kind: 'measured' } }, 'holds', 'fails'],
    ['hearsay', { evidence: { kind: 'hearsay' } }, 'cannot tell', 'fails'],
    ['an assumption', { evidence: { kind: 'assumed' } }, 'cannot tell', 'fails'],
    ['an open question', { value: undefined, written: 'unknown' }, 'cannot tell', 'fails'],
    ['a slip of the unit', { outOfRange: 'not between 0.5 and 1' }, 'cannot tell', 'fails'],
  ])('%s', (_, more, good, bad) => {
    expect(outcomeOf(fact(more), say.holds(told)).outcome).toBe(good);
    expect(outcomeOf(fact(more), say.fails(told)).outcome).toBe(bad);
  });

  test('a check that falls silent over an open question asks it', () => {
    const open = fact({ value: undefined, written: 'unknown' });
    const [said] = settled(RULE, ABOUT, () => {
      void open.value;
      return undefined;
    });
    expect(said!.verdict).toMatchObject({ outcome: 'cannot tell', missing: [{ property: 'kind' }] });
    expect(said!.verdict.message).toBe(
      'Port: cannot tell whether it is so. Needed: the kind of the propeller.',
    );
  });

  test('a property left out is open unless its absence has a meaning', () => {
    const looking = (takenAs?: string) =>
      settled(RULE, ABOUT, () => {
        noteAbsent({ host: PLACE, property: 'kind', ...(takenAs ? { takenAs } : {}) });
        return say.holds(told);
      })[0]!.verdict.outcome;
    expect([looking(), looking('a fixed propeller')]).toEqual(['cannot tell', 'holds']);
  });

  test('a rule may name what it holds without, and judge evidence itself', () => {
    const open = fact({ value: undefined, written: 'unknown' });
    expect(outcomeOf(open, say.holds(told), { ...RULE, standsWithout: ['kind'] }).outcome).toBe('holds');
    const heard = fact({ evidence: { kind: 'hearsay' } });
    expect(outcomeOf(heard, say.holds(told), { ...RULE, judgesEvidence: true }).outcome).toBe('holds');
  });

  test('what rests on facts that contradict cannot be told, whichever way it went', () => {
    const [one, other] = [fact({}), fact({})];
    const contradiction = settled(RULE, ABOUT, () => say.fails({ ...told, disputes: [one, other] }));
    const resting = (verdict: Verdict) =>
      settled(RULE, ABOUT, () => {
        void one.value;
        return verdict;
      })[0]!;
    const disputed = disputedBy(contradiction);
    expect(whileDisputed(resting(say.holds(told)), disputed).outcome).toBe('cannot tell');
    expect(whileDisputed(resting(say.fails(told)), disputed).outcome).toBe('cannot tell');
    expect(whileDisputed(contradiction[0]!, disputed).outcome).toBe('fails');
  });

  test('what waits for a contradiction is told under it', () => {
    const heard = fact({});
    const all = [
      ...settled(RULE, ABOUT, () => say.fails({ ...told, disputes: [heard] })),
      ...settled({ ...RULE, id: 'test/resting' }, ABOUT, () => {
        void heard.value;
        return sayFor({ ...RULE, id: 'test/resting' }, ABOUT.subject).holds(told);
      }),
    ];
    const [contradiction, resting] = underTheirDispute(all, disputedBy(all));
    expect(resting!.outcome).toBe('cannot tell');
    expect(contradiction!.explains).toEqual([{ rule: 'test/resting', subject: ABOUT.subject }]);
  });
});

describe('the record of what was read', () => {
  const heard = fact({ evidence: { kind: 'hearsay' } });

  test('goes with a kept result to whoever takes it', () => {
    const kept = new Kept();
    const take = () => recorded(() => kept.once('key', () => heard.value)).reads.facts.size;
    expect([take(), take()]).toEqual([1, 1]);
  });

  const open = fact({ value: undefined, written: 'unknown' });
  const looking = (at: Fact<string>) => () => {
    void at.value;
    return say.holds(told);
  };

  test('of one of several subjects is not that of the others', () => {
    const said = settled(RULE, ABOUT, () => apart(looking(open), looking(fact({}))));
    expect(said.map(one => one.verdict.outcome)).toEqual(['cannot tell', 'holds']);
  });

  test('of a subject within a subject is that of both', () => {
    const said = settled(RULE, ABOUT, () =>
      each([open, fact({})], outer => {
        void outer.value;
        return apart(looking(fact({})), looking(fact({})));
      }),
    );
    expect(said.map(one => one.verdict.outcome)).toEqual(['cannot tell', 'cannot tell', 'holds', 'holds']);
  });

  test('of a subject of which nothing is said still asks what is open, once', () => {
    const silent = () => {
      void open.value;
      return undefined;
    };
    const said = settled(RULE, ABOUT, () => apart(silent, looking(fact({})), silent));
    expect(said.map(one => one.verdict.outcome)).toEqual(['holds', 'cannot tell']);
    const asked = settled(RULE, ABOUT, () => apart(silent, looking(open)));
    expect(asked.map(one => one.verdict.outcome)).toEqual(['cannot tell']);
  });

  test('is of the work alone, and leaves out what is looked at in passing', () => {
    const { reads } = recorded(() => {
      const inner = recorded(() => heard.value);
      aside(() => heard.value);
      return inner.reads.facts.size;
    });
    expect(reads.facts.size).toBe(0);
  });

  test('a copy of a fact holds the value', () => {
    expect({ ...heard }).toMatchObject({ value: 'as declared', evidence: { kind: 'hearsay' } });
  });
});
