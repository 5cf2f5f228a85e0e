import { describe, expect, it } from 'vitest';
import { folders, tailshaft } from '../../cli/run.js';
import { checkText } from '../../support/check.js';
import { share, times } from '../../support/share.js';
import { writtenSpecs } from '../base-specs.js';
import type { Change } from '../change.js';
import { Bench } from '../rejudge.js';
import { changesOf } from '../run.js';
import { lot } from '../seeded.js';

const SEED = Number(process.env.SILENCE_SEED ?? 1);
const folder = folders();
const TODAY = '--today 2026-03-01';

interface Said {
  readonly rule: string;
  readonly subject: string;
  readonly outcome: string;
}
const words = ({ rule, subject, outcome }: Said) => `${rule} ${subject} ${outcome}`;
const answer = (line: string, cwd: string) =>
  JSON.parse(tailshaft(`${line} --json ${TODAY}`, { cwd }).stdout);

/** One change of each letter, as the lot has it: a fact left out, doubted, said again, moved, renamed, pushed ... */
async function oneOfEach(text: string, many: number): Promise<Change[]> {
  const drawn = new Map<string, Change>();
  for (const change of changesOf(await new Bench().judge(text), SEED)) {
    const had = drawn.get(change.letter);
    if (!had || lot(SEED, change.what) < lot(SEED, had.what)) drawn.set(change.letter, change);
  }
  return [...drawn.values()].sort((a, b) => lot(SEED, a.what) - lot(SEED, b.what)).slice(0, many);
}

const failing = share(
  writtenSpecs().filter(one => one.name.endsWith(' failing')),
  1,
  12,
);

describe.each(failing)('$name, said otherwise', ({ text }) => {
  it('is told by the commands as by the editor, and what no longer fails is told by compare', async () => {
    const fails = (await checkText(text)).check.vessels[0]!.verdicts.filter(
      one => one.outcome === 'fails' && !one.asFound,
    );
    for (const change of await oneOfEach(text, times(2, 10))) {
      const cwd = folder({ 'before.shaft': text, 'after.shaft': change.text });
      const own = (await checkText(change.text)).check.vessels.flatMap(one => one.verdicts);
      const told: Said[] = answer('check after.shaft', cwd).files[0].vessels.flatMap(
        (one: { verdicts: Said[] }) => one.verdicts,
      );
      expect(told.map(words).sort(), change.what).toEqual(own.map(words).sort());
      // A name stands for the thing, so that nothing moves, and the subject is called otherwise.
      if (change.letter === 'h') continue;
      const { vessels } = answer('compare before.shaft after.shaft', cwd);
      const moved = vessels.flatMap((one: { changes: { rule?: string; subject: string }[] }) => one.changes);
      const still = own.filter(one => one.outcome === 'fails').map(words);
      for (const one of fails.filter(two => !still.includes(words(two))))
        expect(moved, `${change.what}: ${words(one)}`).toContainEqual(
          expect.objectContaining({ rule: one.rule, subject: one.subject }),
        );
    }
  });
});
