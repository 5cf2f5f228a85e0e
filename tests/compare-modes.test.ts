import { compareSpecs, levelsOf, type SpecChange } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from './support/check.js';
import { joinedExample } from './support/examples.js';

const text = joinedExample('hybrid-ferry/teasel.shaft');

async function setOf(of: string) {
  const { check } = await checkText(of);
  return {
    vessels: check.vessels.map(one => ({ vessel: one.vessel, verdicts: one.verdicts, file: '' })),
    entries: [],
    unread: check.problems.filter(one => one.severity === 'error').map(one => one.message),
  };
}

async function compared(from: string, to: string) {
  expect(text).toContain(from);
  const comparison = compareSpecs(await setOf(text), await setOf(text.replace(from, to)));
  expect(comparison.unread).toEqual([]);
  const changes: readonly SpecChange[] = comparison.vessels.flatMap(one => one.changes);
  return { words: changes.map(one => one.words), levels: levelsOf(comparison) };
}

const CHARGING =
  'mode charging "engine, with the battery on charge" { driven by engine  generator load 4 kW }';
const PASSAGE = 'mode passage "engine alone" { driven by engine }';

describe('a comparison tells what changes in the modes of a line', () => {
  it('a mode that is taken out, whatever held in it', async () => {
    const { words, levels } = await compared(CHARGING, '');
    expect(words).toContain('mode taken out: charging driven by engine generator load 4 kW');
    expect(levels).toContain('newly unknown');
  });

  it('a mode that is added', async () => {
    const { words } = await compared(
      CHARGING,
      `${CHARGING}\n mode idle { driven by motor motor power at most 2 kW }`,
    );
    expect(words).toContain('mode added: idle driven by motor motor power at most 2 kW');
  });

  it('a fact of a mode, and how it is known', async () => {
    const load = await compared('generator load 4 kW', 'generator load 3.9 kW');
    expect(load.words).toContain('mode charging: generator load 4 kW → 3.9 kW');
    const heard = await compared('generator load 4 kW', 'generator load 4 kW [hearsay]');
    expect(heard.words).toContain(
      'mode charging, generator load 4 kW: weaker evidence, none written → hearsay',
    );
  });

  it('a mode of another name, as that alone', async () => {
    const { words, levels } = await compared('mode charging', 'mode plugged-in');
    expect(words).toContain('mode charging renamed plugged-in');
    expect(words.filter(one => !/renamed|no revision/.test(one))).toEqual([]);
    expect(levels).toEqual([]);
  });

  it('nothing of their order', async () => {
    const moved = text.replace(PASSAGE, '').replace(CHARGING, `${CHARGING}\n      ${PASSAGE}`);
    expect(moved).not.toBe(text);
    const comparison = compareSpecs(await setOf(text), await setOf(moved));
    expect(comparison.vessels.flatMap(one => one.changes.map(change => change.words))).toEqual([]);
  });
});
