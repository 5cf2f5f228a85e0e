import { expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const THIN = changed(SINGLE_LINE, ['diameter 65 mm', 'diameter 46 mm']);
const RATED = changed(THIN, [
  '  input housing SAE-3\n  slip',
  '  input housing SAE-3\n  efficiency 97 %\n  slip',
]);
const LOSSY = 'assume gear efficiency 60 % because "old oil"';

it('an assumption stands in for what is not known, and puts no figure of the maker aside', async () => {
  const factor = async (spec: string) => (await verdictsBy(spec, 'shafting/diameter'))[0]!.margin;
  const least = await factor(RATED);
  expect(least).toBeLessThan(0);
  expect(await factor(withStatements(RATED, LOSSY))).toBe(least);
  expect(await factor(withStatements(THIN, LOSSY))).toBeGreaterThan(least!);
});

it.each([
  [`${LOSSY}\n  assume gear efficiency 97 % because "sheet"`, ['text/twice error']],
  [`${LOSSY}\n  assume slip 30 % because "usual"`, []],
  ['assume gear efficiency 96 %', ['text/sentence warning']],
  ['assume gear efficiency 96 % because unknown', []],
])('%s', async (text, told) => {
  const { check } = await checkText(withStatements(SINGLE_LINE, text));
  expect(check.problems.map(one => `${one.code} ${one.severity}`)).toEqual(told);
});
