import { compareVessels } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE, TWIN_LINES } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { PROPELLED } from '../../../packages/drivetrain/src/rules/propeller/example-hull.js';
import { WITH_BEARINGS } from '../../../packages/drivetrain/src/rules/shafting/bearing-specs.js';
import { AFTER_BREAK, MADE_GOOD } from '../../../packages/drivetrain/src/rules/shafting/damage-specs.js';
import { checkText } from '../../support/check.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const DAMAGE = 'damage cracked { at keyway  dated 2025-11-03  seen by "yard foreman" }';

/** The same spec with something that happened to one of its parts. */
const hurt = (spec: string, opening: string, damage = DAMAGE) =>
  changed(spec, [opening, `${opening} ${damage} `]);

async function outcomesOf(spec: string) {
  const { check } = await checkText(spec);
  return check.vessels.flatMap(one => one.verdicts).flatMap(one => [one, ...(one.folds ?? [])]);
}

const PARTS: readonly (readonly [string, string, string])[] = [
  ['shaft', SINGLE_LINE, '      shaft {'],
  ['engine', SINGLE_LINE, 'engine Kittiwake-9 at medium {'],
  ['shaft with bearings', WITH_BEARINGS, '      shaft {'],
  ['propeller in its hull', PROPELLED, '      propeller {'],
];

describe('a part that was found damaged and not made good', () => {
  it.each(PARTS)('%s: nothing new holds, no failure goes, and something is withheld', async (_, spec, at) => {
    const sound = await outcomesOf(spec);
    const damaged = await outcomesOf(hurt(spec, at));
    const keys = (all: typeof sound, outcome: string) =>
      all.filter(one => one.outcome === outcome).map(one => `${one.rule} ${one.subject}`);
    const held = keys(sound, 'holds');
    expect(keys(damaged, 'holds').filter(one => !held.includes(one))).toEqual([]);
    expect(keys(sound, 'fails').filter(one => !keys(damaged, 'fails').includes(one))).toEqual([]);
    expect(held.filter(one => !keys(damaged, 'holds').includes(one))).not.toEqual([]);
  });

  it('is one finding, with all that waits for it told under it', async () => {
    const { check } = await checkText(hurt(SINGLE_LINE, '      shaft {'));
    const told = check.vessels.flatMap(one => one.verdicts).filter(one => one.outcome !== 'holds');
    const [finding] = told.filter(one => one.rule === 'shafting/damage-made-good');
    expect(finding?.message).toContain('was found cracked at the keyway on 2025-11-03');
    expect(finding?.folds?.map(one => one.rule)).toContain('shafting/diameter');
  });

  it('again where it was made good once: the second crack at one place is another one', async () => {
    const mended = DAMAGE.replace(
      'seen by',
      'made good "ground out, crack-tested"  made good on 2025-11-20  seen by',
    );
    const again = hurt(
      SINGLE_LINE,
      '      shaft {',
      `${mended} ${DAMAGE.replace('2025-11-03', '2026-01-09')}`,
    );
    const found = (await outcomesOf(again)).filter(one => one.rule === 'shafting/damage-made-good');
    expect(found.map(one => one.outcome).sort()).toEqual(['fails', 'holds']);
  });

  it('is made good by a modification that does not say again when it was found', async () => {
    const spec = withStatements(
      hurt(SINGLE_LINE, '      shaft {'),
      `  arrangement repaired revises proposed { shaftline Centre { retain engine  retain gear  retain propeller
        modify shaft { damage cracked { at keyway  made good "ground out, crack-tested"  made good on 2025-12-01 } } } }`,
    );
    const found = (await outcomesOf(spec)).filter(one => one.rule === 'shafting/damage-made-good');
    expect(found.map(one => `${one.subject}: ${one.outcome}`)).toEqual([
      'proposed.Centre.shaft: fails',
      'repaired.Centre.shaft: holds',
    ]);
    expect(found[1]?.message).toContain('2025-11-03');
  });

  it('fails all the more where it failed', async () => {
    const thin = changed(SINGLE_LINE, ['diameter 65 mm', 'diameter 40 mm']);
    const [verdict] = (await outcomesOf(hurt(thin, '      shaft {'))).filter(
      one => one.rule === 'shafting/diameter',
    );
    expect(verdict?.outcome).toBe('fails');
  });

  it('says nothing of the other line, though both parts are of one catalogue entry', async () => {
    const spec = hurt(TWIN_LINES, 'engine Kittiwake-9 at medium {');
    const torque = (await outcomesOf(spec)).filter(one => one.rule === 'capacity/gear-input-torque');
    expect(torque.map(one => [one.subject, one.outcome]).sort()).toEqual([
      ['proposed.Port', 'cannot tell'],
      ['proposed.Starboard', 'holds'],
    ]);
  });
});

describe('a shaft that broke', () => {
  it('is not followed by one of the same section, whatever the formula holds', async () => {
    const same = changed(AFTER_BREAK, ['diameter 75 mm [drawing] }', 'diameter 65 mm [drawing] }']);
    expect((await verdictsBy(same, 'shafting/diameter')).map(one => one.outcome)).toEqual(['holds']);
    const [verdict] = await verdictsBy(same, 'shafting/after-break');
    expect([verdict?.outcome, verdict?.severity]).toEqual(['fails', 'error']);
    // 16 T / (π d³) on 65 mm behind 2.043:1 at 97 %, by hand: 1480 N·m of the new engine, 1530 N·m of the old one.
    expect(verdict?.message).toContain('54.4 MPa of torsional stress at greatest torque, 56.2 MPa then');
  });

  it('is followed by one that a fatigue calculation covers', async () => {
    const covered = changed(AFTER_BREAK, [
      'diameter 75 mm [drawing] }',
      'diameter 65 mm [drawing]  fatigue statement "calculation 21" }',
    ]);
    const [verdict] = await verdictsBy(covered, 'shafting/after-break');
    expect(verdict?.outcome).toBe('holds');
    expect(verdict?.message).toContain('"calculation 21"');
  });

  it('is evidence in the third step as well', async () => {
    const again = changed(AFTER_BREAK, [
      'replace shaft { material high-strength-stainless  diameter 75 mm [drawing] }',
      'retain shaft',
    ]);
    const [verdict] = await verdictsBy(again, 'shafting/after-break');
    expect(verdict?.outcome).toBe('fails');
  });
});

describe('what happened, in a comparison', () => {
  it('sends notices to class and flag to the list of papers', async () => {
    const judgedOf = async (text: string) => {
      const [one] = (await checkText(text)).check.vessels;
      return { vessel: one!.vessel, verdicts: one!.verdicts };
    };
    const without = MADE_GOOD.replace(/\s*damage bent \{[^}]*\}/, '');
    const { changes } = compareVessels(await judgedOf(without), await judgedOf(MADE_GOOD));
    const papers = changes.filter(one => one.kind === 'paper');
    expect(papers.map(one => one.words).join('\n')).toMatch(/notice .*class .*flag/);
    const back = compareVessels(await judgedOf(MADE_GOOD), await judgedOf(without)).changes;
    expect(
      back
        .filter(one => one.kind === 'silent')
        .map(one => one.words)
        .join('\n'),
    ).toMatch(/the record of the shaft of Centre, found bent .* was taken out/);
  });
});
