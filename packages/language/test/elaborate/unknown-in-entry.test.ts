import { expect, it } from 'vitest';
import { checkText } from '../../../../tests/support/check.js';
import { SINGLE_LINE } from '../../../drivetrain/src/rules/example-specs.js';
import { applyEdits, problemEdits } from '../../src/index.js';

it.each([
  ['at medium', 'at medum', 'The entry of engine Kittiwake-9 has no rating medum. Did you mean medium?'],
  ['ahead clutch B', 'ahead clutch C', 'The entry of gear Alder-63 has no clutch C.'],
])('%s written as %s is asked about where it stands', async (right, wrong, said) => {
  const text = SINGLE_LINE.replace(right, wrong);
  expect(text).not.toBe(SINGLE_LINE);
  const { findings, uri } = await checkText(text);
  const problems = findings.flatMap(one => one.problem ?? []);
  expect(problems).toHaveLength(1);
  const [problem] = problems;
  expect(problem!.message).toContain(said);
  expect(text.slice(problem!.start, problem!.end)).toBe(wrong.split(' ').at(-1));
  const mended = problem!.choices!.map(choice => applyEdits(text, problemEdits(problem!, choice, uri, text)));
  expect(mended).toContain(SINGLE_LINE);
});

it('says nothing where the name is an open question, or the entry has no such thing at all', async () => {
  for (const text of [
    SINGLE_LINE.replace('ahead clutch B', 'ahead clutch unknown'),
    SINGLE_LINE.replace(/ {4}clutch [AB].*\n/g, ''),
  ]) {
    expect(text).not.toBe(SINGLE_LINE);
    const { findings } = await checkText(text);
    expect(findings.filter(one => one.code === 'text/unknown-name')).toEqual([]);
  }
});
