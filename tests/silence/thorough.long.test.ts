import { expect, it } from 'vitest';
import { baseOf, randomSpecs, writtenSpecs } from './base-specs.js';
import { EXCEPTIONS, used } from './exceptions.js';
import { KNOWN, listed, writeKnown } from './known.js';
import { type Conviction, runOne, runOver } from './run.js';

/** The seed decides the random specs, and which changes of all specs are judged. */
const SEED = Number(process.env.SILENCE_SEED ?? 1);
const SHARE = Number(process.env.SILENCE_SHARE ?? 0.05);
const SECONDS = Number(process.env.SILENCE_SECONDS ?? 100);

it(`no verdict improves by what is left out, said again, doubted, renamed or pushed, seed ${SEED}`, async () => {
  const only = process.env.SILENCE_ONLY ?? '';
  const specs = [...writtenSpecs(), ...randomSpecs(SEED * 1000, 60)].filter(one => one.name.includes(only));
  const { convictions, judged, left } = await runOver(specs, { seed: SEED, share: SHARE, seconds: SECONDS });
  console.log(`seed ${SEED}, share ${SHARE}: judged ${JSON.stringify(judged)}; ${left} specs left`);
  if (process.env.SILENCE_USED)
    for (const { because } of EXCEPTIONS)
      console.log(`${because}:\n  ${[...(used.get(because) ?? ['nothing needed it'])].sort().join('\n  ')}`);
  if (process.env.SILENCE_WRITE) {
    const still: Conviction[] = [];
    for (const one of KNOWN) {
      const found = await runOne(baseOf(one.spec), one.what, SEED);
      if (found.some(other => other.key === one.key)) still.push(one);
    }
    writeKnown([...still, ...convictions]);
    return;
  }
  const known = new Set(KNOWN.map(one => one.key));
  expect(listed(convictions.filter(one => !known.has(one.key)))).toEqual([]);
}, 900_000);
