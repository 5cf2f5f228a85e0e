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

interface Said {
  readonly rule: string;
  readonly subject: string;
  readonly outcome: string;
}
const words = ({ rule, subject, outcome }: Said) => `${rule} ${subject} ${outcome}`;

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
  it('is told by the command as by the editor', async () => {
    for (const change of await oneOfEach(text, times(2, 10))) {
      const cwd = folder({ 'after.shaft': change.text });
      const own = (await checkText(change.text)).check.vessels.flatMap(one => one.verdicts);
      const { stdout } = tailshaft('check after.shaft --json --today 2026-03-01', { cwd });
      const { files } = JSON.parse(stdout) as { files: { vessels: { verdicts: Said[] }[] }[] };
      const told = files[0]!.vessels.flatMap(one => one.verdicts);
      expect(told.map(words).sort(), change.what).toEqual(own.map(words).sort());
    }
  });
});
