import { RULES, type Verdict } from '@tailshaft/drivetrain';
import { allFormulas } from '@tailshaft/mechanics';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Checked, checkText } from './support/check.js';
import { exampleSpecs, joinedExample, ownText } from './support/examples.js';
import { share, times } from './support/share.js';

/** Each number made each of these: EXTREME_WHOLE=1. */
const WHOLE = process.env.EXTREME_WHOLE !== undefined;
const seed = Number(process.env.SEED ?? 1);

/** Numbers that a slip of the hand, a bad conversion or an ill will puts where a sensible one stood. */
const HOSTILE = [
  '0',
  '-7',
  '0.000000001',
  '100000000000',
  '1e999',
  '1/0',
  'NaN',
  'Infinity',
  '1e308',
  '1e-308',
  '1e-320',
];

/** Formulas worked out since the last look, by any check. */
let workedOut = 0;
const restore: (() => void)[] = [];

beforeAll(() => {
  for (const { spec } of allFormulas().values()) {
    const own = spec as { compute: typeof spec.compute };
    const { compute } = own;
    own.compute = numbers => {
      workedOut++;
      return compute(numbers);
    };
    restore.push(() => {
      own.compute = compute;
    });
  }
});
afterAll(() => {
  for (const one of restore) one();
});

describe('no number that a spec may hold makes a verdict of no number, nor a check that does not end', () => {
  it.each(share(exampleSpecs, 5))(
    '%s',
    async path => {
      const joined = joinedExample(path);
      await tryNumbers(ownText(path), joined.slice(0, joined.indexOf(ownText(path))), times(5, 60));
    },
    WHOLE ? 3_600_000 : 300_000,
  );

  it.each(share(RULES, 45).map(rule => [rule.id, rule] as const))(
    '%s: its passing example',
    async (_, rule) => {
      await tryNumbers(rule.examples().passing, '', times(1, 6));
    },
    WHOLE ? 3_600_000 : 300_000,
  );

  it('refuses a number beyond all measure where it stands, with one problem, and reads on', async () => {
    const line = 'shaft { material S20910  diameter 1e999 mm  length 3 m }';
    const text = `vessel V { arrangement a { shaftline L { ${line} } } }`;
    const { findings } = await checkText(text);
    const said = findings.filter(one => one.code === 'text/number');
    expect(said.map(one => text.slice(one.place.start, one.place.end))).toEqual(['1e999 mm']);
    expect(said[0]!.message).toContain('too large');
  });

  it('an engine of no power leaves no share to tell of', async () => {
    const rule = RULES.find(one => one.id === 'capacity/gear-input-torque')!;
    const text = rule.examples().cannotTell.replace('power 300 kW', 'power 0 kW');
    expect(text).not.toBe(rule.examples().cannotTell);
    const { check } = await checkText(text);
    const said = check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === rule.id);
    expect(said.map(one => one.outcome)).toEqual(['cannot tell']);
    expect(said[0]!.message).not.toMatch(/Infinity|NaN/);
  });

  it('a shaft of no thickness is within no guide: the figure that makes it so is named', async () => {
    const rule = RULES.find(one => one.id === 'shafting/span-guide')!;
    const text = rule.examples().passing.replace('diameter 65 mm', 'diameter 0 mm');
    expect(text).not.toBe(rule.examples().passing);
    const { check } = await checkText(text);
    const ids = ['span-guide', 'bearing-span', 'overhang', 'bearing-length'].map(one => `shafting/${one}`);
    const verdicts = check.vessels.flatMap(one => one.verdicts).filter(one => ids.includes(one.rule));
    expect(verdicts.length).toBeGreaterThan(1);
    for (const verdict of verdicts) {
      expect(verdict.outcome, verdict.message).toBe('cannot tell');
      expect(verdict.message).toMatch(/diameter/);
    }
  });
});

/** Routes out try sizes, so some numbers ask for more work than the spec as it was; never for much more. */
const TIMES_THE_WORK = 30;

async function tryNumbers(spec: string, head: string, about: number): Promise<void> {
  const places = numbersIn(spec);
  // Neighbours meet different numbers; another seed gives each number others.
  const tried = WHOLE
    ? places.flatMap(place => HOSTILE.map(other => ({ ...place, other })))
    : spread(places, about).map((place, index) => ({
        ...place,
        other: HOSTILE[(index * 3 + spec.length + seed) % HOSTILE.length]!,
      }));
  const usual = await workOf(head + spec);
  for (const { start, end, other } of tried) {
    const around = `${spec.slice(Math.max(0, start - 40), start)}>>${other}<<${spec.slice(end, end + 20)}`;
    const authors = `${/\S+ *$/.exec(spec.slice(0, start))?.[0] ?? ''}${other}`;
    const { work, wrong } = await workOf(head + spec.slice(0, start) + other + spec.slice(end), authors);
    expect(wrong, around).toEqual([]);
    expect(work, `formulas worked out: ${around}`).toBeLessThan(TIMES_THE_WORK * usual.work + 1000);
  }
}

/** What a person would read that is no number, and how many formulas it took to check the text and offer ways out. */
async function workOf(text: string, authors = ''): Promise<{ work: number; wrong: string[] }> {
  workedOut = 0;
  const wrong = wrongIn(await checkText(text), authors);
  return { work: workedOut, wrong };
}

/** About so many, spread over the whole. */
function spread<T>(all: readonly T[], about: number): readonly T[] {
  if (all.length <= about) return all;
  const step = all.length / about;
  const within = (index: number) => ((index + 1) * 0.618_034 * seed) % 1;
  return Array.from({ length: about }, (_, index) => all[Math.floor((index + within(index)) * step)]!);
}

/** Places of the numbers that a text states: not those in words, names, dates, comments or brackets of evidence. */
function numbersIn(text: string): { start: number; end: number }[] {
  const masked = text.replace(/"[^"\n]*"|\/\/.*|\[[^\]\n]*\]|\d{4}-\d\d-\d\d/g, found =>
    ' '.repeat(found.length),
  );
  return [...masked.matchAll(/(?<![\w.\-/:])\d+(?:\.\d+)?(?![\w.]*-)/g)].map(found => ({
    start: found.index,
    end: found.index + found[0].length,
  }));
}

/** Also what a rule says that broke off. */
const NO_NUMBER = /broke off|\bNaN\b|Infinity|\bundefined\b|\[object|no finite/;

/** What a person would read that is no number; words that the author wrote, in quotes or as they stood, are theirs. */
function wrongIn({ check }: Checked, authors: string): string[] {
  const verdicts = [...check.vessels, ...check.entries].flatMap(one => one.verdicts);
  return verdicts.flatMap(one => wrongWith(one, authors));
}

function wrongWith(verdict: Verdict, authors: string): string[] {
  const texts = [
    verdict.message,
    ...verdict.steps,
    ...verdict.related.map(one => one.message),
    ...verdict.missing.map(one => one.what),
    ...verdict.routes().map(one => one.title),
  ];
  const judged = verdict.outcome === 'holds' || verdict.outcome === 'fails';
  const numbers = [verdict.margin, ...(judged ? [verdict.capacity?.si, verdict.demand?.si] : [])];
  const wrong = [
    ...texts.filter(text => NO_NUMBER.test(text.replaceAll(authors, '').replace(/"[^"]*"/g, ''))),
    ...numbers.filter(one => one !== undefined && !Number.isFinite(one)).map(one => `a number is ${one}`),
  ];
  return wrong.map(text => `${verdict.rule} (${verdict.outcome}, ${verdict.subject}): ${text}`);
}
