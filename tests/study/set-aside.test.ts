import {
  type StudyCase,
  type StudyResult,
  searched,
  withoutWords,
  withSetAside,
} from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { exampleWithStudy, studied } from '../support/study.js';

const STUDY = `study wheel of proposed {
    vary gear any
    hold propeller/tip-clearance
    vary propeller pitch 33 in, 34 in, 35 in
    rank by speed at full power
  }`;
const RIGHT = exampleWithStudy('pilot-cutter/ternhaven.shaft', STUDY);
/** A mistake that no gear and no pitch puts right: the clearance follows from diameter and hull. */
const CLEARANCE = RIGHT.replace('tip clearance at least 15 %', 'tip clearance at least 40 %');

async function found(text: string): Promise<StudyResult> {
  const [study] = (await studied(text)).studies;
  return withSetAside(study!, searched(study!), async of => searched(of));
}
const choices = (candidates: StudyResult['holds']) => candidates.map(one => one.choice.join());

describe('a study of which every candidate fails the same checks by the same', () => {
  it('shows what it comes to without these, as if they were put right', async () => {
    const [right, wrong] = [await found(RIGHT), await found(CLEARANCE)];
    expect(right.without).toBeUndefined();
    expect(right.holds.length).toBeGreaterThan(2);
    expect([wrong.holds, wrong.unknown]).toEqual([[], []]);
    expect(wrong.without!.setAside).toEqual(['propeller/tip-clearance']);
    expect(choices(wrong.without!.holds)).toEqual(choices(right.holds));
    expect(wrong.without!.holds.map(one => one.warnings)).toEqual(right.holds.map(one => one.warnings));
    // Neither is what limits a candidate one of the checks that were set aside.
    expect(wrong.without!.holds.map(one => one.limit?.rule)).not.toContain('propeller/tip-clearance');
    expect(withoutWords(wrong.without!)).toBe(
      `Without propeller/tip-clearance, which every candidate fails: ${right.holds.length} hold, 0 cannot tell, ${right.failed} fail.`,
    );
  });

  it('sets aside all that every candidate fails', async () => {
    const both = CLEARANCE.replace('overhang 55 mm', 'overhang 900 mm').replace(
      'vary gear any',
      'vary gear any\n    hold shafting/overhang',
    );
    const { without } = await found(both);
    expect(without!.setAside).toContain('propeller/tip-clearance');
    expect(without!.setAside).toContain('shafting/overhang');
    expect(without!.holds.length).toBeGreaterThan(0);
  });

  it('sets aside what shows only behind what was set aside before', async () => {
    const [study] = (await studied(CLEARANCE)).studies;
    const hidden = 'shafting/overhang';
    const asked: (readonly string[])[] = [];
    // The search leaves out a costly check where others rule a candidate out, so that it shows when these are set aside.
    const { without } = await withSetAside(study!, searched(study!), async of => {
      asked.push(of.setAside ?? []);
      const next = searched(of);
      if (asked.length > 1) return next;
      const binding = [{ rule: hidden, failed: next.judged, alone: next.judged }];
      return { ...next, holds: [], unknown: [], binding, alike: [hidden] };
    });
    expect(asked).toEqual([['propeller/tip-clearance'], ['propeller/tip-clearance', hidden]]);
    expect(without!.setAside).toEqual(asked[1]);
    expect(without!.holds.length).toBeGreaterThan(0);
  });

  it.each([
    ['fail by what is chosen', STUDY.replace('33 in, 34 in, 35 in', '60 in, 62 in')],
    ['are there', STUDY],
  ])('leaves a study alone whose candidates %s', async (_what, study) => {
    const result = await found(exampleWithStudy('pilot-cutter/ternhaven.shaft', study));
    expect(result.without).toBeUndefined();
    expect(result.setAside).toBeUndefined();
  });

  it('asks for no second search where the first was ended, or nobody waits', async () => {
    const [study] = (await studied(CLEARANCE)).studies;
    const whole = searched(study!);
    const never = async (_: StudyCase) => {
      throw new Error('searched again');
    };
    expect(await withSetAside(study!, { ...whole, stoppedAt: 3 }, never)).toEqual({ ...whole, stoppedAt: 3 });
    expect(await withSetAside(study!, whole, async () => undefined)).toBe(whole);
  });
});
