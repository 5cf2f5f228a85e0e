import { expect, it } from 'vitest';
import { checkText } from '../../../../tests/support/check.js';
import { applyEdits, problemEdits } from '../../src/index.js';

const spec = (statement: string) => `vessel V {\n  ${statement} {}\n}\n`;

it.each([
  [
    'duty medum',
    '"medum" is no duty class that another part is rated for: did you mean medium?',
    'duty medium',
  ],
  ['hull plaining', '"plaining" is no form of a hull: did you mean planing?', 'hull planing'],
  [
    'hull round',
    '"round" is no form of a hull. It is planing, semi-displacement or displacement.',
    'hull planing',
  ],
])('%s: is asked about where it stands', async (written, said, mended) => {
  const { findings, text, uri } = await checkText(spec(written));
  expect(findings.map(one => one.message)).toEqual([said]);
  const { problem } = findings[0]!;
  expect(text.slice(problem!.start, problem!.end)).toBe(written.split(' ')[1]);
  expect(applyEdits(text, problemEdits(problem!, problem!.choices![0]!, uri, text))).toBe(spec(mended));
});

it.each([
  'duty patrol',
  'duty medium',
  'duty Heavy',
  'duty unknown',
  'hull semi-displacement',
  'hull unknown',
])('%s: may stand', async written => {
  const { findings } = await checkText(spec(written));
  expect(findings.filter(one => one.problem)).toEqual([]);
});
