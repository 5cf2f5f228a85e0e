import { expect, it } from 'vitest';
import { Offers } from '../../packages/language/test/actions/actions.js';
import { exampleWithStudy } from '../support/study.js';

const offered = (study: string): Promise<Offers> =>
  Offers.at(
    exampleWithStudy('pilot-cutter/ternhaven.shaft', study).replace('study wheel', 'study wh<|>eel'),
    'refactor.rewrite',
  );

it('offers the best candidates of a small study, the best first', async () => {
  const offers = await offered(`study wheel of proposed {
    vary gear any
    vary propeller pitch 33 in, 34 in, 35 in
    rank by speed at full power
  }`);
  expect(offers.titles.split('\n')).toMatchInlineSnapshot(`
    [
      "Write candidate 1 of study wheel into proposed: gear Alder-63 2.04:1, propeller pitch 35 in (speed at full power 28.76 kn; least margin 0.6 %, shafting/thrust-capacity)",
      "Write candidate 2 of study wheel into proposed: gear Alder-63 2.04:1, propeller pitch 34 in (speed at full power 27.78 kn; least margin 0.6 %, shafting/thrust-capacity)",
      "Write candidate 3 of study wheel into proposed: gear Alder-63 2.04:1, propeller pitch 33 in (speed at full power 26.77 kn; least margin 0.6 %, shafting/thrust-capacity)",
    ]
  `);
  const after = offers.after('Write candidate 1');
  expect(after).toContain('        pitch 35 in\n');
  expect(after).not.toContain('        pitch 34 in\n');
});

it('offers none of a study that nobody would wait for', async () => {
  const offers = await offered(`study wheel of proposed {
    vary propeller pitch 30 in .. 40 in by 0.1 in
    vary propeller diameter 26 in .. 29 in by 0.5 in
  }`);
  expect(offers.titles).toBe('');
});
