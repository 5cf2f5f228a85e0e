import {
  given,
  handbookDiameter,
  pitchThatAbsorbs,
  propellerOfBestEfficiency,
  type SizingCase,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

const HP = 745.7;
const KNOT = 1852 / 3600;

interface Duty {
  readonly horsepower: number;
  readonly rpm: number;
  readonly knots: number;
  readonly blades: number;
  readonly area: number;
}

function sizingOf({ horsepower, rpm, knots, blades, area }: Duty): SizingCase {
  return {
    series: 'Wageningen B',
    geometry: {
      diameter: given('diameter', 'D', 'length', 0.5),
      pitch: given('pitch', 'P', 'length', 0.4),
      blades: given('blades', 'Z', 'number', blades),
      areaRatio: given('area ratio', 'AE/A0', 'ratio', area),
    },
    power: given('power', 'PD', 'power', horsepower * HP),
    shaftSpeed: given('shaft speed', 'ω', 'rotational speed', (rpm * 2 * Math.PI) / 60),
    speedOfAdvance: given('speed of advance', 'VA', 'speed', knots * KNOT),
    density: given('density', 'ρ', 'density', 1025.9),
  };
}

const room = (metres: number) => given('room', 'D_max', 'length', metres);

const DUTIES: readonly Duty[] = [
  { horsepower: 50, rpm: 1000, knots: 7, blades: 3, area: 0.5 },
  { horsepower: 100, rpm: 1000, knots: 8, blades: 3, area: 0.5 },
  { horsepower: 200, rpm: 1200, knots: 10, blades: 3, area: 0.5 },
  { horsepower: 350, rpm: 1700, knots: 18, blades: 3, area: 0.5 },
];

/**
 * Gerr, Propeller Handbook (1989): D = 632.7 SHP^0.2 / N^0.6 in, three blades of ordinary width; coefficient from memory. It gives
 * the diameter to fit behind a boat, which practice takes some hundredths less than that of best efficiency in open water.
 */
describe('the diameter of best efficiency is up to a tenth over that which the handbook fits', () => {
  it.each(DUTIES)('$horsepower hp at $rpm rpm and $knots kn', duty => {
    const sizing = sizingOf(duty);
    const found = propellerOfBestEfficiency(sizing, room(1.2));
    const fitted = handbookDiameter({ power: sizing.power, shaftSpeed: sizing.shaftSpeed });
    const share = found.applies ? found.diameter.si / fitted.si : 0;
    expect(share).toBeGreaterThan(1);
    expect(share).toBeLessThan(1.1);
  });
});

describe('nothing on a fine grid does better', () => {
  it.each([...DUTIES, { horsepower: 268, rpm: 1100, knots: 17, blades: 4, area: 0.7 }])(
    '$horsepower hp, $blades blades',
    duty => {
      const sizing = sizingOf(duty);
      for (const largest of [0.5, 0.65, 1.2]) {
        const found = propellerOfBestEfficiency(sizing, room(largest));
        let best = 0;
        for (let si = 0.25 * largest; si <= largest + 1e-9; si += largest / 120) {
          const geometry = { ...sizing.geometry, diameter: given('diameter', 'D', 'length', si) };
          const pitch = pitchThatAbsorbs({ ...sizing, geometry });
          const j = (2 * Math.PI * sizing.speedOfAdvance.si) / (sizing.shaftSpeed.si * si);
          if (pitch.applies && pitch.curve.covers(j).met) best = Math.max(best, pitch.curve.efficiency(j));
        }
        expect(found.applies).toBe(best > 0);
        if (!found.applies) continue;
        expect(found.efficiency).toBeGreaterThan(best - 2e-4);
        expect(found.diameter.si).toBeLessThanOrEqual(largest);
        expect(found.bounded).toBe(found.diameter.si > largest * (1 - 1e-6));
      }
    },
  );
});
