import { describe, expect, it } from 'vitest';
import { checkText } from '../../support/check.js';
import { changed, REPOWER } from './spec-of.js';

const COUPLINGS = changed(
  REPOWER,
  [
    'engine Old-Eight at medium { flywheel aft }',
    'engine Old-Eight at medium { flywheel aft }\n      coupling Elm-4\n      coupling Elm-6',
  ],
  [
    'engine Old-Eight "',
    'coupling Elm-4 { kind flexible  torque at most 2000 N.m }\ncoupling Elm-6 { kind flexible  torque at most 3000 N.m }\nengine Old-Eight "',
  ],
);
const keeping = (statements: string) => changed(COUPLINGS, ['retain gear', `${statements}  retain gear`]);

const built = async (spec: string) => {
  const { check, findings } = await checkText(spec);
  const line = check.vessels[0]!.vessel.arrangements.at(-1)!.lines[0]!;
  return {
    couplings: line.couplings.map(one => `${one.change} ${one.entry?.name}`),
    problems: findings.flatMap(one => (one.problem ? [`${one.code}: ${one.message}`] : [])),
  };
};

describe('two couplings of a line before', () => {
  it.each([
    ['retain coupling', ['retained Elm-4', 'retained Elm-6']],
    ['retain coupling Elm-4  retain coupling Elm-6', ['retained Elm-4', 'retained Elm-6']],
    ['retain coupling Elm-6  retain coupling Elm-4', ['retained Elm-4', 'retained Elm-6']],
    ['retain coupling  retain coupling', ['retained Elm-4', 'retained Elm-6']],
    ['remove coupling Elm-4  retain coupling Elm-6', ['retained Elm-6']],
    ['retain coupling Elm-4  replace coupling Elm-6', ['retained Elm-4', 'replaced Elm-6']],
    ['remove coupling', []],
  ])('%s keeps what it names', async (statements, couplings) => {
    expect(await built(keeping(statements))).toEqual({ couplings, problems: [] });
  });

  it.each([
    ['retain coupling Elm-4', 'does not account for the coupling Elm-6 of the earlier line'],
    ['replace coupling Elm-4', 'does not account for the coupling Elm-6 of the earlier line'],
    ['remove coupling Elm-4', 'does not account for the coupling Elm-6 of the earlier line'],
    ['retain coupling Elm-4  retain coupling Elm-4  retain coupling Elm-6', 'has no coupling Elm-4 left'],
    ['retain coupling Elm-9  retain coupling', 'has no coupling Elm-9 left'],
    ['retain coupling  remove transfer', 'nothing can be removed'],
  ])('%s is refused: %s', async (statements, message) => {
    expect((await built(keeping(statements))).problems.join('\n')).toContain(message);
  });
});
