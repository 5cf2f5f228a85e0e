import { compareArrangements, type Verdict } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { changed, REPOWER } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { type Checked, checkText, shown } from '../../support/check.js';

/** The shaft found aboard fails; the proposal keeps it, or replaces it by a larger one. */
const THIN = changed(REPOWER, ['diameter 65 mm [drawing]', 'diameter 40 mm [drawing]']);
const CURED = changed(THIN, [
  'retain shaft',
  'replace shaft { material high-strength-stainless  diameter 65 mm [drawing] }',
]);
const TWO = changed(
  REPOWER,
  ['power 300 kW at 2300 rpm', 'power 280 kW at 2100 rpm'],
  ['high idle 2500 rpm', 'high idle 2310 rpm'],
);
/** The same again under another name, with nothing changed. */
const repeated = (spec: string) =>
  `${spec.trimEnd().slice(0, -1)}  arrangement painted revises proposed {
    shaftline Centre {
      retain engine
      retain gear
      retain shaft
      retain propeller
    }
  }
}
`;

it('judges what was found by all rules, and weighs none of it more than a note', async () => {
  const checked = await checkText(CURED);
  const found = verdictsOf(checked, 'existing').filter(one => one.outcome === 'fails');
  expect(found.map(one => [one.rule, one.asFound, one.severity])).toContainEqual([
    'shafting/diameter',
    true,
    'note',
  ]);
  expect(checked.findings.map(one => [one.code, one.severity])).toEqual(found.map(one => [one.rule, 'hint']));
});

it('tells the cure of an old failure, and does not call an old failure new', async () => {
  const moves = async (spec: string) => {
    const judged = (await checkText(spec)).check.vessels[0]!;
    const [existing, proposed] = judged.vessel.arrangements;
    return compareArrangements(judged, existing!, proposed!).changes.flatMap(one =>
      one.kind === 'verdict' ? [`${one.rule}: ${one.movement}`] : [],
    );
  };
  expect(await moves(CURED)).toContain('shafting/diameter: newly holds');
  expect(await moves(THIN)).not.toContain('shafting/diameter: newly fails');
});

it('judges every proposal, also one that another revises', async () => {
  const alone = failures(await checkText(TWO), 'proposed');
  expect(alone).toContain('capacity/retained-propeller-overload');
  const both = await checkText(repeated(TWO));
  expect(failures(both, 'proposed')).toEqual(alone);
});

it('a single arrangement is a proposal', async () => {
  const checked = await checkText(
    changed(REPOWER.replace(/ {2}arrangement proposed[\s\S]*/, '}\n'), ['diameter 65 mm', 'diameter 40 mm']),
  );
  expect(shown(checked).join()).toContain('shafting/diameter');
  expect(checked.findings.some(one => one.severity === 'error')).toBe(true);
});

function failures(checked: Checked, arrangement: string): string[] {
  return verdictsOf(checked, arrangement).flatMap(one => (one.outcome === 'fails' ? [one.rule] : []));
}

function verdictsOf({ check }: Checked, arrangement: string): Verdict[] {
  return check.vessels.flatMap(one =>
    one.verdicts.filter(({ subject }) => subject.startsWith(`${arrangement}.`)),
  );
}
