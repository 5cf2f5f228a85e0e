import { ORDER_OF_DAYS } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { RECORDED } from '../../../packages/drivetrain/src/rules/paper/record-specs.js';
import { TRIED } from '../../../packages/drivetrain/src/rules/trial/trial-specs.js';
import { verdictsBy } from './spec-of.js';
import { changed, passing } from './verdicts.js';

type Day = (typeof ORDER_OF_DAYS)[number]['before' | 'after'];

const FOUND = `  arrangement found {
    shaftline Centre {
      engine Kittiwake-9 at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch B
      shaft { material high-strength-stainless  diameter 65 mm [measured SURVEY] }
      propeller { hand right  diameter 25 in }
    }
  }
`;

/** A vessel whose trial, or last revision, is dated so, and what it rests on so. */
const SPECS: Readonly<Record<Day, ((first: string, then: string) => string) | undefined>> = {
  survey: (first, then) =>
    changed(
      TRIED,
      ['dated 2026-02-20', `dated ${then} of proposed`],
      ...['engine Kitt', 'gear Alder', 'shaft {', 'propeller {'].map(
        part => [`      ${part}`, `      replace ${part}`] as const,
      ),
      [
        '  arrangement proposed {',
        `${FOUND.replace('SURVEY', first)}\n  arrangement proposed revises found {`,
      ],
    ),
  document: undefined,
  trial: (first, then) =>
    changed(
      TRIED,
      ['dated 2026-02-20', `dated ${then}`],
      ['issue 4" dated 2025-02-10', `issue 4" dated ${first}`],
    ),
  revision: (first, then) =>
    changed(
      RECORDED,
      ['revision B dated 2025-11-20', `revision B dated ${then}`],
      ['[drawing]', `[drawing ${first}]`],
    ),
};
const RULES = { trial: 'trial/conditions', revision: 'paper/revision-order' } as const;

describe('what one thing rests on is not dated after it', () => {
  it.each(ORDER_OF_DAYS.map(one => [`${one.before} before ${one.after}`, one] as const))(
    '%s',
    async (_, { before, after, grave }) => {
      const spec = SPECS[before] ?? SPECS[after]!;
      const found = async (first: string) =>
        (await verdictsBy(spec(first, '2025-11-20'), RULES[after], 'Ternhaven')).filter(
          one => /2025-11-2[01]/.test(one.message) && one.outcome === 'fails',
        );
      expect(await found('2025-11-20')).toEqual([]);
      const said = await found('2025-11-21');
      expect(said.map(one => one.severity)).toEqual([grave ? 'warning' : 'note']);
      expect(said[0]!.message).toMatch(/2025-11-20.*2025-11-21/);
    },
  );

  it('weighs more where somebody approved the revision', async () => {
    const spec = changed(
      RECORDED,
      [
        'as "checker" dated 2025-11-21',
        'as "checker" dated 2025-11-21\n    approved by "H. Dunlin" as "principal"',
      ],
      ['[drawing]', '[drawing 2026-01-15]'],
    );
    const said = (await verdictsBy(spec, 'paper/revision-order', 'Ternhaven')).filter(
      one => one.outcome === 'fails',
    );
    expect(said.map(one => one.severity)).toEqual(['warning']);
  });

  it('an acceptance is not given after its last day', async () => {
    const spec = passing('paper/acceptance').replace('until 2026-12-31', 'until 2026-01-10');
    const [said] = await verdictsBy(spec, 'paper/acceptance', 'Ternhaven');
    expect([said!.outcome, said!.message]).toEqual([
      'fails',
      expect.stringContaining('is dated 2026-01-20, after its last day, 2026-01-10'),
    ]);
  });
});
