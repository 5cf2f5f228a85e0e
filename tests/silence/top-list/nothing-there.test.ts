import { silentTopics } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed } from './spec-of.js';

/** The single line without one of its parts. */
const without = (part: string) => SINGLE_LINE.replace(new RegExp(`^ {6}${part} .*\n`, 'm'), '');
const EMPTY_LINE = SINGLE_LINE.replace(/( {4}shaftline Centre \{\n)( {6}.*\n)+/, '$1');
const WRONG_HAND = changed(SINGLE_LINE, ['hand right [drawing]', 'hand left [drawing]']);

async function asked(spec: string): Promise<string[]> {
  const { check } = await checkText(spec);
  return check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === 'interface/load-path' && one.outcome === 'cannot tell')
    .flatMap(({ subject, missing }) => missing.map(one => `${subject}: ${one.property}`));
}

describe('what is not there fails nothing, and is asked for', () => {
  it.each([
    ['a line without propeller', without('propeller'), ['proposed.Centre: propeller']],
    ['a line without engine or motor', without('engine'), ['proposed.Centre: engine']],
    ['a line without parts', EMPTY_LINE, ['proposed.Centre: engine', 'proposed.Centre: propeller']],
    ['an arrangement without lines', 'vessel V {\n  arrangement a {\n  }\n}\n', ['a: shaftline']],
    ['a whole line', SINGLE_LINE, []],
  ])('%s', async (_what, spec, missing) => {
    expect(await asked(spec)).toEqual(missing);
  });

  it('arrangements that are not there stand under Not assessed', async () => {
    const { vessel, verdicts } = (await checkText('vessel V {\n}\n')).check.vessels[0]!;
    expect(silentTopics(vessel, verdicts).map(one => one.of)).toEqual(['arrangements']);
  });

  it('a shaft that is not there stands under Not assessed', async () => {
    const { vessel, verdicts } = (await checkText(without('shaft'))).check.vessels[0]!;
    const topics = silentTopics(vessel, verdicts, vessel.arrangements).map(one => one.of);
    expect(topics).toContain('the propeller shaft');
  });

  it.each([
    ['keeps no line', 'remove shaftline Centre', 'empty: shaftline'],
    [
      'keeps no part',
      'shaftline Centre { remove engine  remove gear  remove shaft  remove propeller }',
      'empty.Centre: engine',
    ],
  ])('a revision that %s does not make a proposal as found in silence', async (_what, text, first) => {
    const revised = `${WRONG_HAND.trimEnd().slice(0, -1)}  arrangement empty revises proposed { ${text} }\n}\n`;
    expect((await asked(revised))[0]).toBe(first);
  });
});
