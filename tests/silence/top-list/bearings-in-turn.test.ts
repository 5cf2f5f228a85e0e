import { expect, it } from 'vitest';
import { changed, passing, saidBy } from './verdicts.js';

const RULE = 'shafting/section-places';
const spec = passing('shafting/overhang');
const at = (name: string) =>
  new RegExp(`bearing ${name} \\{\\s+kind [a-z ]+?\\s+at ([\\d.]+) m`).exec(spec)![0];

// Geometry: a strut stands outside the hull, which the shaft leaves by its tube.
it.each([
  ['strut', '0.2 m', 'fails'],
  ['strut', '2.9 m', 'no finding'],
])('a %s at %s of the shaft: %s', async (name, place, outcome) => {
  const whole = at(name);
  const said = await saidBy(RULE, spec.replace(whole, whole.replace(/at [\d.]+ m$/, `at ${place}`)));
  expect(said.filter(one => one.outcome === 'fails').map(one => one.outcome)).toEqual(
    outcome === 'fails' ? ['fails'] : [],
  );
});

it('leaves what rests on the places to be settled', async () => {
  const whole = at('strut');
  const wrong = changed(spec, [whole, whole.replace(/at [\d.]+ m$/, 'at 0.2 m')]);
  expect((await saidBy('shafting/overhang', spec)).map(one => one.outcome)).toEqual(['holds']);
  expect((await saidBy('shafting/bearing-span', wrong)).map(one => one.outcome)).not.toContain('holds');
});
