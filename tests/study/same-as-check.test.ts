import { choiceAt, combinationsOf, judgeVessel, limitOf, searched, unfolded } from '@tailshaft/drivetrain';
import type { ReadyStudy } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText, TODAY } from '../support/check.js';
import { share } from '../support/share.js';
import { exampleWithStudy, studied, told } from '../support/study.js';

/** Small studies of the examples, over everything that can be varied. */
const STUDIES: readonly (readonly [example: string, name: string, study: string])[] = [
  [
    'pilot-cutter/ternhaven.shaft',
    'gear, propeller and shaft',
    `study s of proposed {
      vary gear any
      vary propeller diameter 26 in, 28.5 in, 30 in
      vary propeller pitch 30 in .. 36 in by 3 in
      vary propeller area ratio 0.45, 0.74
      rank by speed at full power
      rank by least margin
    }`,
  ],
  [
    'pilot-cutter/ternhaven.shaft',
    'shaft and hull',
    `study s of proposed {
      vary shaft diameter 1 3/4 in, 2 in, 2 1/4 in
      vary shaft material any
      vary hull displacement 11 t .. 13 t by 1 t
      vary engine at any
      hold every check
      rank by mass
      rank by shaft torque
    }`,
  ],
  [
    'pilot-cutter/ternhaven.shaft',
    'clutch, hand and blades',
    `study s of proposed {
      vary gear ahead clutch A, B
      vary propeller blades 3, 4, 5
      vary propeller hand left, right
      vary propeller cup any
      vary engine any
      rank by propeller demand lowest first
    }`,
  ],
  [
    'harbour-tug/wrack.shaft',
    'nozzle and propeller',
    `study s of built {
      vary propeller nozzle any
      vary propeller pitch 1000 mm .. 1200 mm by 50 mm
      rank by bollard thrust
      rank by mass
    }`,
  ],
  [
    'twin-engine/sandwort.shaft',
    'engines of a gear with two inputs',
    `study s of built {
      vary gear ratio any
      vary propeller diameter 1100 mm .. 1300 mm by 50 mm
      rank by mass
      rank by least margin
    }`,
  ],
  [
    'hybrid-ferry/teasel.shaft',
    'modes and propeller',
    `study s of built {
      vary propeller diameter 28 in, 30 in
      vary propeller pitch 20 in .. 28 in by 1 in
      hold every check
      rank by speed at full power
    }`,
  ],
];

describe.each(share(STUDIES, 1))('%s, %s', (example, _, study) => {
  const text = exampleWithStudy(example, study);

  it('finds, cutting short, what judging each candidate by all checks finds', async () => {
    const { check, studies } = await studied(text);
    expect(check.problems).toEqual([]);
    const [ready] = studies;
    const quick = searched(ready!);
    const thorough = searched(ready!, { thorough: true });
    const shown = ({ holds, unknown, front }: typeof quick) => ({ holds, unknown, front });
    expect(shown(quick)).toEqual(shown(thorough));
    expect(quick.failed).toBe(thorough.failed);
    expect(quick.judged).toBeGreaterThan(10);
  });

  it('tells of each candidate what the ordinary judge tells of it', async () => {
    const { studies } = await studied(text);
    const [ready] = studies;
    const result = searched(ready!);
    const kept = new Map([...result.holds, ...result.unknown].map(one => [one.index, one]));
    const mustHold = ready!.study.hold.some(one => one.value === 'every check');
    for (const index of share(indicesOf(ready!), 10)) {
      const vessel = ready!.vesselWith(choiceAt(ready!.dimensions, index));
      if (!vessel) continue;
      const verdicts = judgeVessel(vessel, ready!.catalogue, TODAY).filter(
        one => !one.asFound && !one.subject.startsWith('existing'),
      );
      const asked = unfolded(verdicts).filter(
        one => mustHold || one.severity === 'error' || one.answers !== undefined,
      );
      const fails = asked.some(one => one.outcome === 'fails');
      const unknown = asked.some(one => one.outcome === 'cannot tell');
      const candidate = kept.get(index);
      expect(candidate?.outcome ?? 'fails', `candidate ${index}`).toBe(
        fails ? 'fails' : unknown ? 'cannot tell' : 'holds',
      );
      if (candidate) expect(candidate.limit, `candidate ${index}`).toEqual(limitOf(verdicts));
    }
  });

  it('tells of a candidate what check tells of the text that it is written into', async () => {
    const { studies, withCandidate } = await studied(text);
    const [ready] = studies;
    for (const index of share(indicesOf(ready!), 6)) {
      const choice = choiceAt(ready!.dimensions, index);
      const vessel = ready!.vesselWith(choice);
      if (!vessel) continue;
      const written = await checkText(withCandidate(ready!, choice));
      expect(written.check.problems, `candidate ${index}`).toEqual([]);
      expect(told(written.check.vessels[0]!.verdicts), `candidate ${index}`).toEqual(
        told(judgeVessel(vessel, ready!.catalogue, TODAY)),
      );
    }
  });
});

function indicesOf({ dimensions }: ReadyStudy): number[] {
  return Array.from({ length: combinationsOf(dimensions) }, (_, index) => index);
}
