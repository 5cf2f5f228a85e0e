import {
  type Comparison,
  compareSpecs,
  comparingAlone,
  comparisonMarkdown,
  isSame,
  LEVELS,
  levelsOf,
  type SpecSet,
} from '@tailshaft/drivetrain';
import { formatText } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText } from './support/check.js';
import { exampleSpecs, joinedExample } from './support/examples.js';
import { share } from './support/share.js';

async function setOf(text: string): Promise<SpecSet> {
  const { check } = await checkText(text);
  return {
    vessels: check.vessels.map(one => ({ vessel: one.vessel, verdicts: one.verdicts, file: '' })),
    entries: check.entries.map(({ reading }) => ({
      kind: reading.kind,
      name: reading.name,
      facts: reading.facts.fields,
    })),
    unread: check.problems.filter(one => one.severity === 'error').map(one => one.message),
  };
}

const moves = ({ vessels }: Comparison) =>
  vessels.flatMap(one => one.changes.flatMap(change => (change.kind === 'verdict' ? [change] : [])));

/** Every name that a spec declares: entries at the margin, arrangements and lines inside. */
const NAMES =
  /^(?:(?:vessel|engine|gear|motor|coupling|transfer|propeller|shaft material)| +(?:arrangement|shaftline)) ([A-Za-z][\w-]*)/gm;

/** Edits that change a consequence. */
const CHANGES: readonly (readonly [string, RegExp, string])[] = [
  ['the other hand', /hand left/, 'hand right'],
  ['more pitch', /pitch (\d)(\d)/, 'pitch $1$2$2'],
  ['a thinner shaft', /(shaft \{[^}]*?diameter) [\d ./]+ (mm|in)/, '$1 1 in'],
  ['less rated', /rated (\w+) 0\.\d+ kW/g, 'rated $1 0.03 kW'],
  ['more hours', /hours \d+ per year/, 'hours 6000 per year'],
  ['nothing of the hull', /\n {2}hull[\s\S]*?\n {2}\}/, ''],
];

/** What became worse one way became better the other way. */
const MIRROR: Readonly<Record<string, readonly string[]>> = {
  'newly fails': ['newly holds', 'newly cannot tell', 'newly accepted', 'no longer judged'],
  'fails by more': ['fails by less'],
  'fails by less': ['fails by more'],
  'margin smaller': ['margin larger'],
  'margin larger': ['margin smaller'],
  'newly holds': ['newly fails', 'reported under its cause', 'newly cannot tell', 'newly accepted'],
  'newly cannot tell': ['newly holds', 'newly fails', 'newly accepted', 'no longer judged'],
  'newly judged': ['no longer judged'],
  'reported under its cause': [
    'newly holds',
    'newly judged',
    'newly cannot tell',
    'newly fails',
    'newly accepted',
  ],
  'no longer judged': ['newly judged', 'newly fails', 'newly cannot tell', 'newly accepted'],
  'still fails, differently': ['still fails, differently'],
};

describe.each(share(exampleSpecs, 3))('%s', path => {
  const text = joinedExample(path);

  it('is the same in any layout', async () => {
    const [one, other] = [await setOf(text), await setOf(formatText(text.replaceAll('\n', '\n\n')))];
    expect(isSame(compareSpecs(one, other))).toBe(true);
  });

  it('moves no verdict when anything is renamed', async () => {
    const one = await setOf(text);
    const names = [...new Set([...text.matchAll(NAMES)].map(match => match[1]!))].filter(
      // The names of sides are facts: they say which side.
      name => !/^(Port|Starboard|Centre)$/.test(name),
    );
    for (const name of names) {
      const other = await setOf(
        text.replace(
          new RegExp(`(?<![\\w-])${name}(?![\\w-])(?=[^"\n]*(?:"[^"\n]*"[^"\n]*)*$)`, 'gm'),
          `${name}-X`,
        ),
      );
      expect(other.unread, name).toEqual(one.unread);
      const comparison = compareSpecs(one, other);
      expect(
        moves(comparison).map(move => `${move.rule} ${move.words}`),
        name,
      ).toEqual([]);
      expect(levelsOf(comparison), name).toEqual([]);
      const others = comparison.vessels
        .flatMap(one => one.changes)
        .filter(one => one.kind !== 'rename' && !(one.kind === 'silent' && one.what === 'no revision'));
      expect(
        others.map(one => `${one.kind} ${one.words}`),
        name,
      ).toEqual([]);
      expect([...comparison.addedVessels, ...comparison.removedVessels], name).toEqual([]);
    }
  });

  it.each(CHANGES)(
    'with %s: every verdict that differs is in it, and back it is the mirror',
    async (_, from, to) => {
      const changed = text.replace(from, to);
      const [one, other] = [await setOf(text), await setOf(changed)];
      const [there, back] = [compareSpecs(one, other), compareSpecs(other, one)];
      // A fleet is compared vessel by vessel, and says the same.
      const alone = comparingAlone(one.entries, other.entries);
      const already = one.vessels.flatMap((was, at) => alone(was, other.vessels[at]!) ?? []);
      if (already.length === one.vessels.length) {
        const without = (set: SpecSet) => ({ ...set, vessels: [] });
        const apart = compareSpecs(without(one), without(other), already);
        expect(comparisonMarkdown(apart)).toBe(comparisonMarkdown(there));
        expect(levelsOf(apart)).toEqual(levelsOf(there));
      }
      const states = (set: SpecSet) => {
        const found = new Map<string, string[]>();
        for (const { vessel, verdicts } of set.vessels)
          for (const { rule, subject, outcome } of verdicts) {
            const key = `${rule} ${vessel.name === subject ? '' : subject}`;
            found.set(key, [...(found.get(key) ?? []), outcome].sort());
          }
        return found;
      };
      const [before, after] = [states(one), states(other)];
      const told = new Set(moves(there).map(move => move.rule));
      for (const [key, outcomes] of after) {
        const was = before.get(key);
        if (was && was.join() !== outcomes.join()) expect([...told], key).toContain(key.split(' ')[0]);
      }
      const backwards = moves(back);
      for (const move of moves(there)) {
        const mirrored = backwards.filter(each => each.rule === move.rule && each.subject === move.subject);
        expect(mirrored.length, `${move.rule} ${move.movement} of ${move.subject}`).toBeGreaterThan(0);
        const wanted = MIRROR[move.movement];
        if (wanted) expect(wanted, move.words).toContain(mirrored[0]!.movement);
      }
      expect(backwards).toHaveLength(moves(there).length);
      expect(LEVELS).toEqual(expect.arrayContaining(levelsOf(there)));
    },
  );
});
