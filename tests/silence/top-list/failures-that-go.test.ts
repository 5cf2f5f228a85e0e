import { RULES } from '@tailshaft/drivetrain';
import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { folders, tailshaft } from '../../cli/run.js';
import { offeredFor } from '../../fixes/offered.js';
import { share, times } from '../../support/share.js';
import type { Letter } from '../change.js';
import { Bench, type Judged } from '../rejudge.js';
import { changesOf } from '../run.js';
import { lot } from '../seeded.js';

const SEED = Number(process.env.SILENCE_SEED ?? 1);
const folder = folders();

interface Other {
  readonly way: 'example' | 'cure' | 'left out' | 'said otherwise';
  readonly what: string;
  readonly text: string;
}

const failuresOf = ({ check }: Judged): string[] => failing(check, false);

/** Those as found too: where another arrangement comes behind, a failure becomes one of the record, and does not go. */
const stillThere = ({ check }: Judged): string[] => failing(check, true);

const failing = ({ vessels }: Judged['check'], asFoundToo: boolean): string[] =>
  vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.outcome === 'fails' && (asFoundToo || !one.asFound))
    .map(one => `${one.rule} ${one.subject}`);

/** What fails so often before and less often after. */
function goneBetween(before: readonly string[], after: readonly string[]): string[] {
  const left = [...after];
  return before.filter(key => {
    const at = left.indexOf(key);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

interface Told {
  readonly kind: string;
  readonly rule?: string;
  readonly subject: string;
}

/** The verdicts that the command tells as moved. */
function movedBetween(before: string, after: string): string[] {
  const cwd = folder({ 'before.shaft': before, 'after.shaft': after });
  const { stdout } = tailshaft('compare before.shaft after.shaft --json --today 2026-03-01', { cwd });
  const { vessels } = JSON.parse(stdout) as { vessels: { changes: Told[] }[] };
  return vessels
    .flatMap(one => one.changes)
    .filter(one => one.kind === 'verdict')
    .map(one => `${one.rule} ${one.subject}`);
}

const drawn = <T extends { what: string }>(all: readonly T[], many: number): T[] =>
  [...all].sort((a, b) => lot(SEED, a.what) - lot(SEED, b.what)).slice(0, many);

/** The other specs of the rule, in which it does not fail, and the ways out of what fails. */
async function curedBy({ examples }: (typeof RULES)[number]): Promise<Other[]> {
  const { failing, passing, cannotTell } = examples();
  const cures: Other[] = (await offeredFor(failing))
    .filter(one => one.finding.verdict?.outcome === 'fails')
    .flatMap(one => one.cures)
    .map(({ title, edits }) => ({ way: 'cure', what: title, text: applyEdits(failing, edits) }));
  return [
    { way: 'example', what: 'the spec that holds', text: passing },
    { way: 'example', what: 'the spec that leaves it open', text: cannotTell },
    ...drawn(cures, times(1, 4)),
  ].filter((one): one is Other => one.text.includes('{'));
}

const NAMES: Letter = 'h';

/** Changes by which a failure goes, the first that the lot finds; a name stands for the thing, and moves nothing. */
async function lostBy(base: Judged, fails: readonly string[]): Promise<Other[]> {
  const all = [...changesOf(base, SEED)].filter(one => one.letter !== NAMES);
  const bench = new Bench();
  const found: Other[] = [];
  for (const way of ['left out', 'said otherwise'] as const) {
    let many = times(1, 4);
    for (const { what, text } of drawn(
      all.filter(one => (one.letter === 'a') === (way === 'left out')),
      way === 'left out' ? times(20, 80) : times(0, 80),
    )) {
      if (many === 0) break;
      if (goneBetween(fails, stillThere(await bench.judge(text))).length === 0) continue;
      found.push({ way, what, text });
      many -= 1;
    }
  }
  return found;
}

const rules = share(
  RULES.filter(one => one.examples().failing.includes('{')),
  3,
  30,
);

describe('a failure that goes', () => {
  it('is told by compare, whichever way it goes', async () => {
    const counts = new Map<Other['way'], number>();
    for (const rule of rules) {
      const { failing } = rule.examples();
      const base = await new Bench().judge(failing);
      const fails = failuresOf(base);
      for (const { way, what, text } of [...(await curedBy(rule)), ...(await lostBy(base, fails))]) {
        const gone = goneBetween(fails, stillThere(await new Bench().judge(text)));
        const moved = movedBetween(failing, text);
        for (const one of gone) expect(moved, `${rule.id}, ${what}`).toContain(one);
        if (gone.length > 0) counts.set(way, (counts.get(way) ?? 0) + 1);
      }
    }
    // Both examples of nearly every rule; not every failure has a way out, or rests on what the lot leaves out.
    expect(counts.get('example'), 'example').toBeGreaterThanOrEqual(1.5 * rules.length);
    expect(counts.get('cure'), 'cure').toBeGreaterThanOrEqual(times(1, 15));
    expect(counts.get('left out'), 'left out').toBeGreaterThanOrEqual(times(1, 30));
    expect(counts.get('said otherwise') ?? 0, 'said otherwise').toBeGreaterThanOrEqual(times(0, 15));
  });
});
