import { describe, expect, it } from 'vitest';
import { REPOWER } from '../../packages/drivetrain/src/rules/example-specs.js';
import { changed, verdictsBy } from '../silence/top-list/spec-of.js';

const RULE = 'shafting/length-stack';

/** The engine before and after at these heights or offsets; and the gear replaced by one of another drop, where told. */
function spec(old: string, now: string, drops?: readonly [string, string]): string {
  const engines = changed(
    REPOWER,
    ['engine Old-Eight at medium { flywheel aft', `engine Old-Eight at medium { flywheel aft  ${old}`],
    [
      'replace engine Kittiwake-9 at medium { flywheel aft',
      `replace engine Kittiwake-9 at medium { flywheel aft  ${now}`,
    ],
  );
  if (!drops) return engines;
  const [, gear] = /(gear Alder-63 [\s\S]*?\n\}\n)/.exec(engines)!;
  const other = gear!.replace('gear Alder-63', 'gear Alder-64').replace('{\n', `{\n  ${drops[1]}\n`);
  return changed(
    engines,
    [gear!, `${gear!.replace('{\n', `{\n  ${drops[0]}\n`)}\n${other}`],
    ['retain gear', 'replace gear Alder-64 ratio 2.04:1 ahead clutch B'],
  );
}

describe('height and offset of the output of the gear', () => {
  it.each<[string, string, string, readonly [string, string] | undefined, string, RegExp]>([
    [
      'the engine moves up 12 mm',
      'axis height 0.42 m',
      'axis height 0.432 m',
      undefined,
      'fails',
      /lies 12 mm higher than before/,
    ],
    [
      'the engine moves up 3 mm',
      'axis height 0.42 m',
      'axis height 0.423 m',
      undefined,
      'holds',
      /within 3 mm/,
    ],
    [
      'a gear of 18 mm more drop, the engine up as much',
      'axis height 0.42 m',
      'axis height 0.438 m',
      ['output drop 142 mm', 'output drop 160 mm'],
      'holds',
      /within/,
    ],
    [
      'a gear of 18 mm more drop alone',
      'axis height 0.42 m',
      'axis height 0.42 m',
      ['output drop 142 mm', 'output drop 160 mm'],
      'fails',
      /lies 18 mm lower/,
    ],
    [
      'a gear of unknown drop',
      'axis height 0.42 m',
      'axis height 0.42 m',
      ['output drop 142 mm', 'output drop unknown'],
      'cannot tell',
      /output drop of gear Alder-64/,
    ],
    [
      'nothing of the old engine',
      '',
      'axis height 0.42 m',
      undefined,
      'cannot tell',
      /axis height of engine Old-Eight/,
    ],
    [
      'the engine further to starboard',
      'axis offset 0 mm',
      'axis offset 8 mm',
      undefined,
      'fails',
      /lies 8 mm further to starboard/,
    ],
    [
      'the engine at another angle',
      'axis height 0.42 m  angle 3 deg',
      'axis height 0.42 m  angle 5 deg',
      undefined,
      'cannot tell',
      /new angle/,
    ],
  ])('%s', async (_, old, now, drops, outcome, said) => {
    const found = (await verdictsBy(spec(old, now, drops), RULE)).filter(one => /axis-/.test(one.subject));
    expect(found.map(one => one.outcome)).toEqual([outcome]);
    expect(found[0]!.message).toMatch(said);
  });

  it('says nothing where nothing is declared', async () => {
    expect((await verdictsBy(REPOWER, RULE)).filter(one => /axis-/.test(one.subject))).toEqual([]);
  });
});
