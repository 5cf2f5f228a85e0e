import { compareSpecs, fleetHeadline, levelsOf, type SpecSet } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { changed, REPOWER, SINGLE_LINE, TWIN_LINES } from '../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from './support/check.js';
import { exampleSpecs, joinedExample } from './support/examples.js';
import { share } from './support/share.js';

async function setOf(text: string): Promise<SpecSet> {
  const { check } = await checkText(text);
  expect(check.problems.filter(one => one.severity === 'error')).toEqual([]);
  return {
    vessels: check.vessels.map(one => ({ vessel: one.vessel, verdicts: one.verdicts, file: '' })),
    entries: check.entries.map(({ reading }) => ({
      kind: reading.kind,
      name: reading.name,
      facts: reading.facts.fields,
    })),
  };
}

/** The text with every one of the names in place of the one before it, the first in place of the last. */
function rotated(text: string, names: readonly string[]): string {
  return text.replace(
    new RegExp(`(?<![\\w-])(${names.join('|')})(?![\\w-])(?=[^"\n]*(?:"[^"\n]*"[^"\n]*)*$)`, 'gm'),
    name => names[(names.indexOf(name) + 1) % names.length]!,
  );
}

async function compared(before: string, after: string) {
  const comparison = compareSpecs(await setOf(before), await setOf(after));
  const changes = comparison.vessels.flatMap(one => one.changes);
  return {
    headline: fleetHeadline(comparison),
    levels: levelsOf(comparison),
    moves: changes.flatMap(one => (one.kind === 'verdict' ? [`${one.rule} ${one.words}`] : [])),
    renames: changes.flatMap(one => (one.kind === 'rename' ? [one.words] : [])),
    others: changes.filter(one => one.kind !== 'rename').map(one => `${one.subject}: ${one.words}`),
  };
}

const OLD_ENGINE = REPOWER.split(/^(?=engine Kittiwake-9)/m)[0]!;

/** Two more proposals beside the first one, which differ in the ratio, the propeller or the shaft. */
const THREE_PROPOSALS = `${TWIN_LINES}`.replace(
  /( {2}arrangement )proposed([\s\S]*?\n {2}\}\n)/,
  (whole, head, body) =>
    `${whole}${head}second${body.replaceAll('diameter 26 in', 'diameter 24 in').replaceAll('pitch 24 in', 'pitch 20 in').replaceAll('blades 4', 'blades 3')}${head}third${body.replaceAll('diameter 65 mm', 'diameter 75 mm')}`,
);

describe('names that went round', () => {
  it.each([
    [
      'two vessels',
      `${OLD_ENGINE}${TWIN_LINES}\nvessel Quickgrass${REPOWER.split('vessel Ternhaven')[1]}`,
      ['Ternhaven', 'Quickgrass'],
    ],
    ['two arrangements', THREE_PROPOSALS, ['second', 'third']],
    ['three arrangements', THREE_PROPOSALS, ['proposed', 'second', 'third']],
  ])('are told as renames: %s', async (_, text, names) => {
    const { levels, others, renames } = await compared(text, rotated(text, names));
    expect(renames).toHaveLength(names.length);
    expect(renames.join()).toContain(`${names[0]} renamed ${names[1]}`);
    expect(others).toEqual([]);
    expect(levels).toEqual([]);
  });

  it('hide nothing that changed with them', async () => {
    const thinner = rotated(THREE_PROPOSALS, ['second', 'third']).replace('diameter 75 mm', 'diameter 30 mm');
    const { levels, renames } = await compared(THREE_PROPOSALS, thinner);
    expect(renames).toHaveLength(2);
    expect(levels[0]).toBe('newly fails');
  });

  it.each([
    // What stands on a side is its line, whatever it looks like: a vessel whose sides change places turns inward.
    ['the sides of a twin', TWIN_LINES, (text: string) => rotated(text, ['Port', 'Starboard'])],
    [
      'the shafts of two sister vessels',
      `${SINGLE_LINE}\nvessel Fennick${changed(SINGLE_LINE, ['diameter 65 mm', 'diameter 40 mm']).split('vessel Ternhaven')[1]}`,
      (text: string) =>
        text.replace(/diameter (65|40) mm/g, (_, size) => `diameter ${size === '65' ? '40' : '65'} mm`),
    ],
  ])('are not thought of where both may have changed: %s', async (_, text, edit) => {
    const { levels, renames } = await compared(text, edit(text));
    expect(renames).toEqual([]);
    expect(levels).not.toEqual([]);
  });
});

describe.each(share(exampleSpecs, 2))('%s', path => {
  it('moves no verdict when all its arrangements take the name of another', async () => {
    const text = joinedExample(path);
    const names = [...text.matchAll(/^ +arrangement ([A-Za-z][\w-]*)/gm)].map(match => match[1]!);
    if (names.length < 2) return;
    const { moves, levels, renames } = await compared(text, rotated(text, names));
    expect(moves).toEqual([]);
    expect(levels).toEqual([]);
    expect(renames).toHaveLength(names.length);
  });
});
