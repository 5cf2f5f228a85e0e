import { describe, expect, it } from 'vitest';
import { EMPTY_CATALOGUE, judgeVessel, type Rule, type Severity, sayFor } from '../../src/index.js';
import { arrangement, vessel } from '../build.js';

const BOAT = vessel({ arrangements: [arrangement('proposed', { Centre: { side: 'centre' } })] });

/** A rule that fails on every line and says that it explains others. */
function failing(id: string, severity: Severity, explains: readonly string[]): Rule {
  const info = { id, title: `${id} holds`, severity, criterion: 'none' };
  return {
    ...info,
    scope: 'line',
    check: ({ line }: { line: { path: string; origin: never } }) =>
      sayFor(info as never, line.path).fails({
        place: line.origin,
        message: 'It fails.',
        explains: explains.map(rule => ({ rule, subject: line.path })),
      }),
  } as unknown as Rule;
}

const left = (...rules: Rule[]) =>
  judgeVessel(BOAT, EMPTY_CATALOGUE, '2026-03-01', rules).map(one => one.rule);

describe('a finding that is told under another', () => {
  it.each<[string, Rule[], string[]]>([
    ['goes where another explains it', [failing('a', 'error', ['b']), failing('b', 'error', [])], ['a']],
    [
      'stays where the other weighs less',
      [failing('a', 'note', ['b']), failing('b', 'error', [])],
      ['a', 'b'],
    ],
    ['stays where it explains itself alone', [failing('a', 'error', ['a'])], ['a']],
    [
      'one of two that explain each other stays',
      [failing('a', 'error', ['b']), failing('b', 'error', ['a'])],
      ['b'],
    ],
    [
      'one of three in a circle stays',
      [failing('a', 'error', ['b']), failing('b', 'error', ['c']), failing('c', 'error', ['a'])],
      ['c'],
    ],
  ])('%s', (_, rules, expected) => {
    expect(left(...rules)).toEqual(expected);
  });
});
