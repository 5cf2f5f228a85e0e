import { findRule, silentTopics } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';

const topicsOf = ({ check }: Checked) =>
  check.vessels.flatMap(({ vessel, verdicts }) => silentTopics(vessel, verdicts));

/** A line of which no more is said than which parts it has, before and after. */
const BARE = `
vessel Bare {
  arrangement existing {
    shaftline Centre {
      engine { flywheel aft }
      gear {}
      shaft {}
      propeller {}
    }
  }
  arrangement proposed revises existing {
    shaftline Centre {
      replace engine { flywheel aft }
      replace gear {}
      replace shaft {}
      replace propeller {}
    }
  }
}
`;

const bare = topicsOf(await checkText(BARE));

it('names every topic of a line that is barely declared, and only for what will be built', () => {
  expect(bare.length).toBeGreaterThan(20);
  expect(new Set(bare.flatMap(one => one.subjects))).toEqual(new Set(['proposed.Centre', 'proposed']));
});

it('names each rule once', () => {
  const rules = bare.flatMap(one => one.rules);
  expect(rules).toEqual([...new Set(rules)]);
});

describe.each(bare.flatMap(({ of, rules }) => rules.map(rule => [rule, of] as const)))('%s', (id, of) => {
  const rule = findRule(id)!;

  it(`is no longer silent for want of ${of} once its examples declare it`, async () => {
    expect(rule, 'such a rule exists').toBeDefined();
    for (const spec of [rule.examples().failing, rule.examples().passing]) {
      const silent = topicsOf(await checkText(spec)).filter(one => one.rules.includes(id));
      expect(silent, spec).toEqual([]);
    }
  });
});
