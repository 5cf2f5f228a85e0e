import { judgeVessel, searched } from '@tailshaft/drivetrain';
import { variedRow } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText, TODAY } from '../support/check.js';
import { exampleSpecs } from '../support/examples.js';
import { share } from '../support/share.js';
import { exampleWithStudy, studied, told } from '../support/study.js';

/** Any two sizes that an example states, each a little less and a little more. */
describe.each(share(exampleSpecs, 3))('%s', example => {
  it('is studied as it is checked, whatever varies', async () => {
    const plain = await checkText(exampleWithStudy(example, ''));
    const [judged] = plain.check.vessels;
    const proposal = judged!.vessel.arrangements.findLast(
      one =>
        one.revises !== undefined || !judged!.vessel.arrangements.some(other => other.revises === one.name),
    );
    const reading = judged!.reading.arrangements.find(one => one.name === proposal!.name)!;
    const variations = reading.lines
      .filter(line => !line.mirrors)
      .flatMap(line => line.parts.filter(part => part.action !== 'retain' && part.action !== 'remove'))
      .flatMap(({ role, facts }) =>
        facts.facts.flatMap(({ row, fact }) => {
          const simple = /^(\d+(?:\.\d+)?) (\D.*)$/.exec(fact?.written ?? '');
          if (!simple || variedRow(role, row.words)?.kind.form !== 'quantity') return [];
          const [, number, unit] = simple;
          const value = (factor: number) => `${Number((Number(number) * factor).toPrecision(4))} ${unit}`;
          return [`vary ${role} ${row.words} ${value(0.9)}, ${value(1)}, ${value(1.15)}`];
        }),
      );
    const unique = [...new Map(variations.map(one => [one.split(/ \d/)[0], one])).values()];
    const pairs = unique.flatMap((one, at) => unique.slice(at + 1).map(other => [one, other]));
    expect(pairs.length).toBeGreaterThan(0);
    for (const pair of share(pairs, 2, 8)) {
      const { check, studies, withCandidate } = await studied(
        exampleWithStudy(example, `study s of ${proposal!.name} {\n    ${pair.join('\n    ')}\n  }`),
      );
      if (check.problems.some(one => one.code === 'text/out-of-range')) continue;
      expect(check.problems, pair.join()).toEqual([]);
      const [ready] = studies;
      const quick = searched(ready!);
      const thorough = searched(ready!, { thorough: true });
      expect(quick.holds, pair.join()).toEqual(thorough.holds);
      expect(quick.unknown, pair.join()).toEqual(thorough.unknown);
      for (const choice of [
        [0, 0],
        [2, 1],
      ]) {
        const written = await checkText(withCandidate(ready!, choice));
        expect(told(written.check.vessels[0]!.verdicts), pair.join()).toEqual(
          told(judgeVessel(ready!.vesselWith(choice)!, ready!.catalogue, TODAY)),
        );
      }
    }
  }, 400_000);
});
