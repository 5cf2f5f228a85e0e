import { type Comparison, compareSpecs, type SpecSet } from '@tailshaft/drivetrain';
import { marksOf, placeOf } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { REPOWER, TWIN_LINES } from '../packages/drivetrain/src/rules/example-specs.js';
import { type Checked, checkText } from './support/check.js';
import { exampleSpecs, joinedExample } from './support/examples.js';

function setOf({ check }: Checked): SpecSet {
  return {
    vessels: check.vessels.map(one => ({ vessel: one.vessel, verdicts: one.verdicts })),
    entries: check.entries.map(({ reading }) => ({
      kind: reading.kind,
      name: reading.name,
      facts: reading.facts.fields,
    })),
  };
}

async function marked(before: string, after: string) {
  const now = await checkText(after);
  const comparison: Comparison = compareSpecs(setOf(await checkText(before)), setOf(now));
  const marks = marksOf(comparison, now.check.vessels, now.uri);
  const lineOf = (offset: number) => after.slice(0, offset).split('\n').length;
  const lines = marks.map(one => ({
    text: after.split('\n')[lineOf(one.place.start) - 1]!.trim(),
    gravity: one.gravity,
    words: one.words.join('\n'),
  }));
  return { comparison, marks, lines, uri: now.uri };
}

describe('marks on the lines whose consequence moved', () => {
  it('stand on the part that changed and on what newly fails, with what moved', async () => {
    const { lines } = await marked(REPOWER, REPOWER.replaceAll('hand right', 'hand left'));
    expect(
      lines.some(
        one =>
          one.gravity === 'worse' &&
          /newly fails: rotation\/propeller-hand on proposed\.Centre: /.test(one.words),
      ),
    ).toBe(true);
    expect(lines.some(one => one.text.startsWith('propeller {') && one.words.includes('hand'))).toBe(true);
  });

  it('tell at a changed gear what followed of its line', async () => {
    const { lines } = await marked(
      TWIN_LINES,
      TWIN_LINES.replace('ratio 2.04:1 ahead clutch A', 'ratio 2.52:1 ahead clutch A'),
    );
    const [gear] = lines.filter(one => one.text.startsWith('gear Alder-63 ratio 2.52:1'));
    expect(gear?.words).toMatch(/shaft speed at rated power/);
  });

  it('are none where only order, layout or comments changed', async () => {
    const { marks } = await marked(REPOWER, `// a comment\n${REPOWER.replaceAll('  ', '    ')}`);
    expect(marks).toEqual([]);
  });

  it('are worse where a criterion was relaxed', async () => {
    const strict = TWIN_LINES.replace(
      '  arrangement proposed {',
      '  criteria { gear torque margin at least 10 % }\n  arrangement proposed {',
    );
    const { lines } = await marked(strict, strict.replace('at least 10 %', 'at least 2 %'));
    expect(lines.some(one => one.gravity === 'worse' && one.words.includes('gear torque margin'))).toBe(true);
  });

  it.each(exampleSpecs.slice(0, 4))(
    'hold every change of %s that has a place in the text, once',
    async path => {
      const text = joinedExample(path);
      const { comparison, marks, uri } = await marked(
        text,
        text.replace(/pitch (\d)(\d)/, 'pitch $1$2$2').replace(/hand left/, 'hand right'),
      );
      const places = comparison.vessels.flatMap(one =>
        one.changes.flatMap(change => {
          const at = change.placeAfter && placeOf(change.placeAfter);
          return at && at.uri === uri && at.start >= 0 ? [at.start] : [];
        }),
      );
      expect(places.length).toBeGreaterThan(0);
      const starts = marks.map(one => one.place.start);
      expect(new Set(starts).size).toBe(starts.length);
      expect([...new Set(places)].filter(one => !starts.includes(one))).toEqual([]);
    },
  );
});
