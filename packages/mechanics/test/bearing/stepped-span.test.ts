import {
  given,
  massPerLength,
  steppedSpanWhirlingLeast,
  steppedSpanWhirlingMost,
  whirlingSpeedOfSpan,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { published } from '../published.js';

// 100 √(20/45) = 66.667; 150 √(45/20) = 225
published(steppedSpanWhirlingLeast, 'bounds of a Rayleigh quotient, worked by hand', [
  {
    case: '20 and 45 kg/m',
    inputs: { whirlingSpeed: 100, massPerLength: 20, countedMassPerLength: 45 },
    gives: 66.667,
    within: 0.0005,
  },
]);
published(steppedSpanWhirlingMost, 'bounds of a Rayleigh quotient, worked by hand', [
  {
    case: '45 and 20 kg/m',
    inputs: { whirlingSpeed: 150, massPerLength: 45, countedMassPerLength: 20 },
    gives: 225,
    within: 0.0005,
  },
]);

const E = 200e9;
const RHO = 7850;

it('the Rayleigh quotient of a half sine lies between the bounds, wherever the step is', () => {
  const thickness = fc.double({ min: 0.04, max: 0.12, noNaN: true });
  fc.assert(
    fc.property(thickness, thickness, fc.double({ min: 0, max: 1, noNaN: true }), (one, other, step) => {
      const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
      const span = 2;
      let [bending, moving] = [0, 0];
      for (let i = 0; i < 2000; i += 1) {
        const x = (i + 0.5) / 2000;
        const d = x < step ? thin : thick;
        const w = Math.sin(Math.PI * x) ** 2;
        bending += E * (Math.PI / 64) * d ** 4 * w * (Math.PI / span) ** 4;
        moving += RHO * (Math.PI / 4) * d ** 2 * w;
      }
      const speed = Math.sqrt(bending / moving);
      expect(speed).toBeGreaterThanOrEqual(bound(steppedSpanWhirlingLeast, thin, thick, span) * (1 - 1e-9));
      expect(speed).toBeLessThanOrEqual(bound(steppedSpanWhirlingMost, thick, thin, span) * (1 + 1e-9));
    }),
  );
});

function bound(formula: typeof steppedSpanWhirlingLeast, stiff: number, heavy: number, span: number): number {
  const density = given('density', 'ρ', 'density', RHO);
  const bore = given('bore', 'd_i', 'length', 0);
  const size = (d: number) => ({ outsideDiameter: given('diameter', 'd', 'length', d), bore });
  return formula({
    whirlingSpeed: whirlingSpeedOfSpan({
      ...size(stiff),
      span: given('span', 'L', 'length', span),
      youngsModulus: given('modulus', 'E', 'pressure', E),
      density,
    }),
    massPerLength: massPerLength({ density, ...size(stiff) }),
    countedMassPerLength: massPerLength({ density, ...size(heavy) }),
  }).si;
}
