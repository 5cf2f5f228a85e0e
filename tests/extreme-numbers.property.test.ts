import { RULES, type Verdict } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { type Checked, checkText } from './support/check.js';
import { exampleSpecs, joinedExample, ownText } from './support/examples.js';

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

describe('no number that a spec may hold makes a verdict of no number', () => {
  it.each(exampleSpecs)(
    '%s: each number once',
    async path => {
      const joined = joinedExample(path);
      const head = joined.slice(0, joined.indexOf(ownText(path)));
      // A count that shares no factor with the eleven hostile numbers, so that neighbours meet different ones.
      await tryEach(ownText(path), head, 12, index => [HOSTILE[(index * 3 + path.length) % HOSTILE.length]!]);
    },
    120_000,
  );

  it.each(RULES.map((rule, index) => [rule.id, rule, index] as const))(
    '%s: some numbers of its passing example',
    async (_, rule, at) => {
      await tryEach(rule.examples().passing, '', 1, index =>
        (index + at) % 8 === 0 ? [HOSTILE[(index + at * 5) % HOSTILE.length]!] : [],
      );
    },
  );

  it('refuses a number beyond all measure where it stands, with one problem, and reads on', async () => {
    const line = 'shaft { material S20910  diameter 1e999 mm  length 3 m }';
    const text = `vessel V { arrangement a { shaftline L { ${line} } } }`;
    const { findings } = await checkText(text);
    const said = findings.filter(one => one.code === 'text/number');
    expect(said.map(one => text.slice(one.place.start, one.place.end))).toEqual(['1e999 mm']);
    expect(said[0]!.message).toContain('beyond all measure');
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

async function tryEach(
  spec: string,
  head: string,
  about: number,
  hostile: (index: number) => readonly string[],
): Promise<void> {
  const tried = numbersIn(spec).flatMap((place, index) => hostile(index).map(other => ({ ...place, other })));
  for (const { start, end, other } of spread(tried, about)) {
    const checked = await checkText(head + spec.slice(0, start) + other + spec.slice(end));
    const around = `${spec.slice(Math.max(0, start - 40), start)}>>${other}<<${spec.slice(end, end + 20)}`;
    const authors = `${/\S+ *$/.exec(spec.slice(0, start))?.[0] ?? ''}${other}`;
    expect(wrongIn(checked, authors), around).toEqual([]);
  }
}

/** About so many, spread over the whole. All of them take more than ten minutes: EXTREME_WHOLE=1 tries each. */
function spread<T>(all: readonly T[], about: number): readonly T[] {
  if (process.env.EXTREME_WHOLE || all.length <= about) return all;
  const step = all.length / about;
  return Array.from(
    { length: about },
    (_, index) => all[Math.floor((index + (((index + 1) * 0.618_034) % 1)) * step)]!,
  );
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
