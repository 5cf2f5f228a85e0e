import { expect, it } from 'vitest';
import { TWIN_LINES } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const OVERLOAD = 'capacity/retained-propeller-overload';
const FOUND = changed(TWIN_LINES, ['arrangement proposed', 'arrangement existing']);
const KEPT = 'retain engine  retain gear  retain shaft  retain propeller';
const proposal = (lines: string, spec = FOUND) =>
  withStatements(spec, `  arrangement proposed revises existing {\n${lines}\n  }`);

it('a twin made single does not hold by the water of the twin', async () => {
  const twin = proposal(`    shaftline Port { ${KEPT} }\n    shaftline Starboard { ${KEPT} }`);
  expect((await verdictsBy(twin, OVERLOAD)).map(one => one.outcome)).toEqual(['holds', 'holds']);
  const single = proposal(`    shaftline Port { ${KEPT} }\n    remove shaftline Starboard`);
  const [verdict] = await verdictsBy(single, OVERLOAD);
  expect(verdict?.outcome).toBe('cannot tell');
  expect(verdict?.message).toContain('where 2 drove the vessel before');
});

it('and fails as soon as the scaling alone says too much: slower water only adds to it', async () => {
  const shallower = KEPT.replace('retain gear', 'modify gear Alder-57 ratio 1.5:1 ahead clutch A');
  const spec = changed(FOUND, [
    '  ratio 2.1:1 exact',
    '  ratio 1.5:1 exact 1.5:1 {\n    clutch A output same ahead continuous\n    clutch B output opposite ahead continuous\n    rated medium 0.2 kW/rpm\n  }\n  ratio 2.1:1 exact',
  ]);
  const single = proposal(
    `    shaftline Port { ${shallower.replace(' Alder-57', '')} }\n    remove shaftline Starboard`,
    spec,
  );
  expect((await verdictsBy(single, OVERLOAD)).map(one => one.outcome)).toEqual(['fails']);
});
