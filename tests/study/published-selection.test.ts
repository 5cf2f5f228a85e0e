import { searched } from '@tailshaft/drivetrain';
import { DIESEL_DENSITY, given, openWater } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { studied } from '../support/study.js';

/**
 * Kuiper, The Wageningen Propeller Series, MARIN Publication 92-001 (1992), section 9.3: the four-bladed propeller for a thrust
 * of 1393 kN at a speed of advance of 8.65 m/s, at most 7 m in diameter, of blade area ratio 0.55 as chosen there against
 * cavitation. Inputs and results as the tests of a public program quote them (GijsB/propy, test/test_optimizations.py, MIT
 * licence); the book itself was not at hand. Section 9.4: the torque of that propeller at the lowest shaft speed, of a free
 * diameter; its pitch is not quoted.
 */
const INPUTS = { thrust: 1393e3, advance: 8.65, blades: 4, area: 0.55, largest: 7, density: 1025 };
const CHOSEN = {
  diameter: 7,
  pitchRatio: 1,
  turns: 1.767,
  torque: 1_667_435,
  j: 0.699,
  kt: 0.181,
  kq: 0.031,
  eta: 0.651,
};
const AT_LEAST_TURNS = { diameter: 7.36, j: 0.665, kt: 0.148, kq: 0.0239, eta: 0.656 };
/** The text reads diagrams and its quoted figures have three digits. */
const READ = 0.011;

const SPECIFIC_FUEL = 190;
const GEAR = 0.97;

const spec = `
engine Plain-9 {
  rating continuous { power 30 MW at 600 rpm  measured at crankshaft }
  high idle 650 rpm
  rotation standard viewed from flywheel
  specific fuel ${SPECIFIC_FUEL} g/kWh
}
gear Plain-1 {
  layout coaxial
  input rotation either
  efficiency ${100 * GEAR} %
  ratio 5:1 exact 5:1 { clutch A { output same  ahead continuous } }
}
vessel Chosen {
  duty light { running 1000 h at ${INPUTS.advance} m/s }
  hull displacement {
    wake fraction 0
    thrust deduction 0
    water density ${INPUTS.density} kg/m3
    resistance 1100 kN at 7.7 m/s
    resistance ${INPUTS.thrust / 1000} kN at ${INPUTS.advance} m/s
    resistance 1900 kN at 10 m/s
  }
  criteria { speed method given resistance }
  arrangement proposed {
    shaftline Centre {
      engine Plain-9 at continuous { flywheel aft }
      gear Plain-1 ratio 5:1 ahead clutch A
      shaft { material unknown  diameter unknown }
      propeller {
        hand left  blades ${INPUTS.blades}  diameter 6 m  pitch 5 m  area ratio ${INPUTS.area}  cup none
        series Wageningen B
      }
    }
  }
  study wheel of proposed {
    vary propeller diameter 6 m .. ${INPUTS.largest} m by 0.25 m
    vary propeller pitch 5.6 m .. 8.4 m by 0.35 m
    rank by fuel per mile
  }
}
`;

const curveOf = (diameter: number, pitchRatio: number) => {
  const curve = openWater('Wageningen B', {
    diameter: given('D', 'D', 'length', diameter),
    pitch: given('P', 'P', 'length', pitchRatio * diameter),
    blades: given('Z', 'Z', 'number', INPUTS.blades),
    areaRatio: given('AE/A0', 'AE/A0', 'ratio', INPUTS.area),
  });
  if (!curve.applies) throw new Error(curve.reason);
  return curve;
};

const halved = (over: (x: number) => boolean, low: number, high: number): number => {
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (over(middle)) high = middle;
    else low = middle;
  }
  return high;
};

describe('Kuiper, The Wageningen Propeller Series, sections 9.3 and 9.4', () => {
  it('a study chooses the diameter and pitch ratio of section 9.3 from its thrust, speed and largest diameter', async () => {
    const { studies, check } = await studied(spec);
    expect(check.problems).toEqual([]);
    const { holds, unknown, dimensions } = searched(studies[0]!);
    expect(holds.length + unknown.length).toBe(45);
    const [best] = unknown;
    const chosen = best!.choice.map((option, at) => Number.parseFloat(dimensions[at]!.options[option]!));
    expect(chosen).toEqual([CHOSEN.diameter, CHOSEN.pitchRatio * CHOSEN.diameter]);
    // Its fuel is that of the power which the section gives by torque and speed.
    const fuel = best!.ranks[0]!.si * DIESEL_DENSITY * 1000;
    const hours = 1852 / INPUTS.advance / 3600;
    const power = (fuel / hours / SPECIFIC_FUEL) * 1000 * GEAR;
    expect(Math.abs(power / (2 * Math.PI * CHOSEN.turns * CHOSEN.torque) - 1)).toBeLessThan(READ);
  });

  it('the series gives its advance, coefficients, shaft speed, torque and efficiency', () => {
    const curve = curveOf(CHOSEN.diameter, CHOSEN.pitchRatio);
    const loading = INPUTS.thrust / (INPUTS.density * INPUTS.advance ** 2 * CHOSEN.diameter ** 2);
    const j = halved(one => curve.thrustCoefficient(one) / one ** 2 < loading, 0.1, 1);
    const turns = INPUTS.advance / (j * CHOSEN.diameter);
    const kq = curve.torqueCoefficient(j);
    const found = {
      j,
      kt: curve.thrustCoefficient(j),
      kq,
      turns,
      torque: kq * INPUTS.density * turns ** 2 * CHOSEN.diameter ** 5,
      eta: curve.efficiency(j),
    };
    for (const [name, value] of Object.entries(found))
      expect(Math.abs(value / CHOSEN[name as keyof typeof found] - 1), name).toBeLessThan(READ);
  });

  it('the propeller of section 9.4 has the torque coefficient and efficiency that its advance and thrust ask', () => {
    const { diameter, j, kt, kq, eta } = AT_LEAST_TURNS;
    const pitchRatio = halved(one => curveOf(diameter, one).thrustCoefficient(j) > kt, 0.6, 1.2);
    const curve = curveOf(diameter, pitchRatio);
    // A digit of the quoted advance ratio is nearly one per cent of the thrust coefficient.
    expect(Math.abs(curve.torqueCoefficient(j) / kq - 1)).toBeLessThan(0.02);
    expect(Math.abs(curve.efficiency(j) / eta - 1)).toBeLessThan(0.02);
    const turns = INPUTS.advance / (j * diameter);
    expect(Math.abs((kq * INPUTS.density * turns ** 2 * diameter ** 5) / CHOSEN.torque - 1)).toBeLessThan(
      0.02,
    );
    expect(turns).toBeLessThan(CHOSEN.turns * (1 + READ));
  });
});
