import { expect, it } from 'vitest';
import { passing, saidBy } from './verdicts.js';

const RULE = 'capacity/gear-input-torque';
const RATED = 'rated medium 0.18 kW/rpm';

it.each(['for diesel', 'running ahead', 'from 500 .. 2600 rpm'])(
  'a rating %s goes before one for all, in whatever order they are written',
  async narrow => {
    const less = `rated medium 0.09 kW/rpm ${narrow}`;
    for (const both of [`${RATED}\n    ${less}`, `${less}\n    ${RATED}`]) {
      const spec = passing(RULE).replace(RATED, both);
      expect(spec).toContain(less);
      expect((await saidBy(RULE, spec))[0]!.outcome).toBe('fails');
    }
  },
);
