import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { changed, REPOWER } from '../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../support/check.js';
import { offeredFor } from './offered.js';

const BEARINGS =
  'length 3 m  overhang 90 mm  bearing aft { kind strut  at 2.8 m  length 200 mm }  bearing forward { kind stern tube  at 0.4 m  length 150 mm }';
const shaft = (revised: string) =>
  changed(
    REPOWER,
    ['diameter 65 mm [drawing] }', `diameter 65 mm [drawing]  ${BEARINGS} }`],
    ['retain shaft', revised],
  );

describe('what is offered for a fact that has lapsed with another', () => {
  it.each([
    ['of the part', shaft('modify shaft { length 3.2 m }'), /overhang unknown/],
    [
      'of a block that an arrangement before writes',
      shaft('modify shaft { length 3.2 m }'),
      /bearing aft (\{ )?at unknown/,
    ],
    [
      'of a block that is said anew in part',
      shaft('modify shaft { length 3.2 m  bearing aft { length 220 mm } }'),
      /bearing aft \{[^}]*at unknown/,
    ],
  ])('asks for it in the part as it is now, and leaves the record: %s', async (_, text, written) => {
    const waiting = (await offeredFor(text)).filter(one => /was measured with/.test(one.finding.message));
    const offers = waiting.flatMap(one => one.questions).filter(one => /was measured with/.test(one.title));
    expect(offers.length).toBeGreaterThan(0);
    const record = text.slice(0, text.indexOf('arrangement proposed'));
    const after = offers.map(({ edits }) => applyEdits(text, edits));
    for (const [at, one] of after.entries()) {
      expect(one.slice(0, record.length)).toBe(record);
      const { check } = await checkText(one);
      expect(check.problems).toEqual([]);
      const missing = check.vessels.flatMap(({ verdicts }) => verdicts).flatMap(({ missing }) => missing);
      // What was asked for as measured with something else is an open question now, and nothing else.
      const asked = /: (.* was measured with .*)$/.exec(offers[at]!.title)![1];
      expect(missing.map(({ what }) => what)).not.toContain(asked);
    }
    expect(after.some(one => written.test(one))).toBe(true);
  });
});
