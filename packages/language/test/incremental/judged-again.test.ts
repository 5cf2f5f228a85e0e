import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { types } from 'node:util';
import type { Verdict } from '@tailshaft/drivetrain';
import { formatValue } from '@tailshaft/mechanics';
import { EmptyFileSystem, URI } from 'langium';
import { describe, expect, it } from 'vitest';
import { share, times } from '../../../../tests/support/share.js';
import { placeOf } from '../../src/reading/place.js';
import { createTailshaftCore } from '../../src/services/module.js';
import { Testbed } from '../server/testbed.js';

/*
 * A vessel in which somebody types is judged by the checks that looked at what is other now; all others are put off. Whatever is
 * typed, every verdict is what a fresh server says, to the last word and place, when somebody looks at it.
 */

const examples = resolve(import.meta.dirname, '../../../../examples');
const CATALOGUE = readdirSync(`${examples}/catalogue`)
  .filter(one => one.endsWith('.shaft'))
  .map(one => readFileSync(`${examples}/catalogue/${one}`, 'utf8'))
  .join('\n')
  .replace(/^import.*$/gm, '');
const SPECS = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter(path => path.endsWith('.shaft') && !/^(?:catalogue|mistakes)\b/.test(path))
  .map(path => [path, readFileSync(`${examples}/${path}`, 'utf8').replace(/^import.*$/gm, '')] as const)
  .filter(([, text]) => /^vessel/m.test(text));

const WORDS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\b(?:left|right)\b/g, ['left', 'right']],
  [/\b(?:medium|light|continuous)\b/g, ['medium', 'light', 'continuous']],
  [/\bclutch [AB]\b/g, ['clutch A', 'clutch B']],
  [/\[(?:drawing|measured|plate|assumed|hearsay)\b/g, ['[drawing', '[measured', '[hearsay']],
  [/\bunknown\b/g, ['12', 'unknown']],
];

describe('a vessel that is judged again after a key', () => {
  let putOffInAll = 0;

  it.each(share(SPECS, 6))('%s', async (path, spec) => {
    const random = randomFrom(path.length * 7919);
    const pick = <T>(all: readonly T[]): T => all[Math.floor(random() * all.length)]!;
    const original = `${spec}\n${CATALOGUE}`;
    const vessel = spec.length;
    const bed = new Testbed();
    let text = original;
    let putOff = 0;
    const compare = async () => {
      const document = await bed.open(text);
      const { vessels } = bed.services.project.check(document);
      putOff += vessels.flatMap(one => one.verdicts).filter(one => types.isProxy(one)).length;
      expect(vessels.flatMap(one => one.verdicts.map(told))).toEqual(await toldAfresh(text));
    };
    await compare();
    for (let step = 0; step < times(2, 15); step++) {
      const kind = random();
      const change = (all: RegExp, into: (found: string) => string) => {
        const found = [...text.slice(0, vessel).matchAll(all)];
        if (found.length === 0) return;
        const { index, 0: word } = pick(found);
        text = text.slice(0, index) + into(word) + text.slice(index + word.length);
      };
      if (kind < 0.75)
        change(/(?<![\w.-])\d+(?:\.\d+)?(?![\w.:/-])/g, one =>
          String(Number((Number(one) * pick([0.5, 0.9, 1.02, 1.3, 10])).toPrecision(4))),
        );
      else if (kind < 0.95) {
        const [words, others] = pick(WORDS);
        change(words, () => pick(others));
      } else change(/\n/g, () => pick(['\n\n', '\n  // a remark\n', ' \n']));
      await compare();
      if (step % 10 === 9) text = original;
    }
    putOffInAll += putOff;
    // What is said of a line with modes goes by all of them; of a few keys each may contradict what stands there.
    if (times(0, 1) === 1 && !/^ +mode /m.test(spec)) expect(putOff).toBeGreaterThan(0);
  });

  it('puts checks off', () => {
    expect(putOffInAll).toBeGreaterThan(100);
  });
});

const fresh = createTailshaftCore(EmptyFileSystem);
fresh.language.project.today = () => '2026-06-01';
let count = 0;

async function toldAfresh(text: string): Promise<unknown[]> {
  const { LangiumDocumentFactory } = fresh.shared.workspace;
  const document = LangiumDocumentFactory.fromString(text, URI.file(`/fresh-${count++}.shaft`));
  await fresh.language.project.load(document);
  return fresh.language.project.check(document).vessels.flatMap(one => one.verdicts.map(told));
}

function told(one: Verdict): unknown {
  const at = (origin: object) => {
    const { start, end } = placeOf(origin);
    return `${start}-${end}`;
  };
  const gaps = (all: Verdict['missing']) =>
    all.map(({ host, at: where, ...gap }) => ({ ...gap, host: at(host), at: where && at(where) }));
  return {
    ...one,
    place: at(one.place),
    related: one.related.map(other => [at(other.at), other.message]),
    missing: gaps(one.missing),
    open: one.open && gaps(one.open),
    workings: one.workings.map(value => formatValue(value)),
    capacity: one.capacity && formatValue(one.capacity),
    demand: one.demand && formatValue(one.demand),
    routes: one.routes().map(route => route.title),
    folds: one.folds?.map(told),
    balance: one.balance !== undefined,
    needed: one.needed?.map(other => Object.keys(other)),
    answers: one.answers && at(one.answers),
    acceptance: one.acceptance && at(one.acceptance.origin),
    ...Object.fromEntries(
      (['disputes', 'outweighs', 'outOfRange', 'disputed'] as const).map(key => [
        key,
        one[key]?.map(fact => `${at(fact.origin)} ${fact.written}`),
      ]),
    ),
  };
}

/** The same numbers each time (the generator of Park and Miller, 1988). */
function randomFrom(seed: number): () => number {
  let state = seed % 2147483647;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}
