import { describe, expect, it } from 'vitest';
import { checkText } from '../../../../tests/support/check.js';
import { applyEdits, problemEdits } from '../../src/index.js';

const spec = (rule: string, on: string) => `vessel V {
  arrangement proposed {
    shaftline Port {}
  }
  accept ${rule} on ${on} because "seen" by "surveyor" dated 2026-01-20 until 2036-12-31
}
`;

const problemsOf = async (rule: string, on: string) => {
  const { findings, uri, text } = await checkText(spec(rule, on));
  return findings
    .flatMap(one => one.problem ?? [])
    .filter(one => one.code === 'text/unknown-name')
    .map(one => ({
      said: one.message,
      mended: one.choices && applyEdits(text, problemEdits(one, one.choices[0]!, uri, text)),
    }));
};

describe('an acceptance that covers nothing', () => {
  it.each([
    [
      'shafting/propeller-wirl',
      'Port',
      'There is no rule "shafting/propeller-wirl"',
      ['shafting/propeller-whirl', 'Port'],
    ],
    [
      'shafting/overhang',
      'proposed.Prt',
      'Arrangement proposed has no shaft line "Prt"',
      ['shafting/overhang', 'proposed.Port'],
    ],
    [
      'shafting/overhang',
      'propsed.Port',
      'Nothing here is called "propsed"',
      ['shafting/overhang', 'proposed.Port'],
    ],
    ['shafting/overhang', 'Centre.shaft', 'Nothing here is called "Centre"', undefined],
  ] as const)('%s on %s', async (rule, on, said, mended) => {
    const problems = await problemsOf(rule, on);
    expect(problems).toHaveLength(1);
    expect(problems[0]!.said).toContain(`${said}, so this accepts nothing.`);
    expect(problems[0]!.mended).toBe(mended && spec(mended[0], mended[1]));
  });

  it.each(['Port', 'Port.shaft', 'proposed', 'proposed.Port', 'proposed.Port.shaft', 'V'])(
    'on %s stands',
    async on => {
      expect(await problemsOf('shafting/overhang', on)).toEqual([]);
    },
  );
});
