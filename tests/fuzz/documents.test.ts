import { BROKE_OFF, compareVessels } from '@tailshaft/drivetrain';
import { formatText } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';
import { times } from '../support/share.js';
import { mutated } from './mutated.js';

/* FUZZ_FROM and FUZZ_RUNS say which seeds. */
const FROM = Number(process.env.FUZZ_FROM ?? 1);
const RUNS = Number(process.env.FUZZ_RUNS ?? times(60, 2500));

/** What a run once found, made short, since other rules and examples give the same seed another text. */
const KEPT = [
  // The end of the text had its place before the text.
  'gear G {\n ratio 2:1 {\n }\n}\n}\nvessel A { arrangement a { } \n',
];

/** In steps, so that one that fails names its seeds, and the others still run. */
const STEP = 50;
const steps = Array.from({ length: Math.ceil(RUNS / STEP) }, (_, index) => {
  const from = FROM + index * STEP;
  return [from, Math.min(from + STEP, FROM + RUNS) - 1] as const;
});

describe('a spec with blocks, lines, numbers and words changed at random', () => {
  it.each(KEPT)('kept: %j', async text => {
    await tryOne(text, text, 'kept');
  });

  it.each(steps)(
    'is judged, told, laid out and compared: seeds %i to %i',
    async (from, to) => {
      for (let seed = from; seed <= to; seed++) {
        const { base, text } = mutated(seed);
        // Comparing costs most, and what can go wrong in it shows in a few.
        await tryOne(text, seed % 5 === 0 ? base : undefined, `seed ${seed}`);
      }
    },
    120_000,
  );
});

async function tryOne(text: string, base: string | undefined, name: string): Promise<void> {
  const checked = await checkText(text);
  expect(wrongIn(checked), name).toEqual([]);
  const once = formatText(text);
  expect(formatText(once) === once, `${name}: laid out twice`).toBe(true);
  expect(spaceless(once) === spaceless(text), `${name}: only space changes`).toBe(true);
  if (base === undefined) return;
  const [before, again] = [await checkText(base), await checkText(text)];
  for (const [at, vessel] of checked.check.vessels.entries()) {
    const was = before.check.vessels[at];
    if (was) compareVessels(was, vessel);
    const { changes } = compareVessels(vessel, again.check.vessels[at]!);
    expect(changes, `${name}: compared with itself`).toEqual([]);
  }
}

const spaceless = (text: string) => text.replace(/\s|\ufeff/g, '');

/** A check that broke off, a place outside the text, or words that no person should read. */
function wrongIn({ text, uri, findings }: Checked): string[] {
  return findings.flatMap(one => {
    const wrong: string[] = [];
    if (one.message.includes(BROKE_OFF)) wrong.push(one.message);
    if (/\[object|\bundefined\b|\bNaN\b/.test(one.message.replace(/"[^"]*"/g, ''))) wrong.push(one.message);
    const { start, end } = one.place;
    const here = !('uri' in one.place) || one.place.uri === uri;
    if (here && !(start >= 0 && start <= end && end <= text.length))
      wrong.push(`${one.code} at ${start}-${end}`);
    for (const route of one.verdict?.routes() ?? [])
      if (route.title === '') wrong.push(`${one.code}: a way out of no name`);
    return wrong;
  });
}
