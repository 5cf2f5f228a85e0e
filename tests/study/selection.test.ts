import { type Candidate, searched } from '@tailshaft/drivetrain';
import {
  expectedSlip,
  given,
  handbookDiameter,
  pitchFromSlip,
  propellerOfBestEfficiency,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { studied } from '../support/study.js';

const HP = 745.7;
const INCH = 0.0254;
const KNOT = 1852 / 3600;

interface Duty {
  readonly power: number;
  readonly rpm: number;
  readonly knots: number;
  /** Where the sizes of the study begin, inches. */
  readonly first: number;
  readonly pitch: number;
}

/** A line that gives a power at a shaft speed to a propeller in a known flow, and the study that chooses the propeller. */
const spec = ({ power, rpm, knots, first, pitch }: Duty) => `
engine Plain-4 {
  rating continuous { power ${power} hp at ${rpm} rpm  measured at propeller shaft }
  rotation standard viewed from flywheel
}
gear Plain-1 {
  layout coaxial
  input rotation either
  ratio 1:1 exact 1:1 { clutch A { output same  ahead continuous } }
}
vessel Chosen {
  hull displacement {
    speed at rated power ${knots} kn
    wake fraction 0
  }
  criteria {
    speed method given speed
    propeller demand at least 97 %
    propeller demand at most 103 %
  }
  arrangement proposed {
    shaftline Centre {
      engine Plain-4 at continuous { flywheel aft }
      gear Plain-1 ratio 1:1 ahead clutch A
      shaft { material unknown  diameter unknown }
      propeller { hand left  blades 3  diameter 24 in  pitch 16 in  area ratio 0.5  cup none  series Wageningen B }
    }
  }
  study wheel of proposed {
    vary propeller diameter ${first} in .. ${first + 5} in by 0.5 in
    vary propeller pitch ${pitch} in .. ${pitch + 5} in by 0.5 in
    hold propeller/absorbed-power
    rank by propeller efficiency
  }
}
`;

const optionOf = (one: Candidate, at: number, all: readonly { readonly options: readonly string[] }[]) =>
  Number.parseFloat(all[at]!.options[one.choice[at]!]!);

/**
 * Gerr, Propeller Handbook (1989), its formulas from memory: the pitch by expected slip, and a diameter that a boat is fitted
 * with, which is some hundredths under that of best efficiency in open water.
 */
describe('a study chooses the propeller that a handbook chooses, and the very one of the series', () => {
  it.each<Duty>([
    { power: 50, rpm: 1000, knots: 7, first: 21, pitch: 12 },
    { power: 100, rpm: 1000, knots: 8, first: 24, pitch: 14 },
  ])('$power hp at $rpm rpm and $knots kn', async duty => {
    const { studies, check } = await studied(spec(duty));
    expect(check.problems).toEqual([]);
    const { holds, unknown, dimensions, binding } = searched(studies[0]!);
    // Of shaft and gear little is said, so that nothing is certain; the power that is absorbed alone rules out.
    expect(binding.map(one => one.rule)).toEqual(['propeller/absorbed-power']);
    const [best] = [...holds, ...unknown];
    const [diameter, pitch] = [optionOf(best!, 0, dimensions), optionOf(best!, 1, dimensions)];
    const power = given('P', 'P', 'power', duty.power * HP);
    const shaftSpeed = given('ω', 'ω', 'rotational speed', (duty.rpm * 2 * Math.PI) / 60);
    const vesselSpeed = given('V', 'V', 'speed', duty.knots * KNOT);
    const sized = propellerOfBestEfficiency(
      {
        series: 'Wageningen B',
        geometry: {
          diameter: given('D', 'D', 'length', 0.6),
          pitch: given('P', 'P', 'length', 0.4),
          blades: given('Z', 'Z', 'number', 3),
          areaRatio: given('AE/A0', 'AE/A0', 'ratio', 0.5),
        },
        power,
        shaftSpeed,
        speedOfAdvance: vesselSpeed,
        density: given('ρ', 'ρ', 'density', 1025.9),
      },
      given('D', 'D', 'length', 1),
    );
    if (!sized.applies) throw new Error(sized.reason);
    expect(Math.abs(diameter - sized.diameter.si / INCH)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(pitch - sized.pitch.si / INCH)).toBeLessThanOrEqual(0.5);
    const handbook = {
      diameter: handbookDiameter({ power, shaftSpeed }).si / INCH,
      pitch: pitchFromSlip({ vesselSpeed, shaftSpeed, slip: expectedSlip({ vesselSpeed }) }).si / INCH,
    };
    expect(Math.abs(pitch / handbook.pitch - 1)).toBeLessThan(0.06);
    expect(diameter / handbook.diameter).toBeGreaterThan(1);
    expect(diameter / handbook.diameter).toBeLessThan(1.1);
  });
});
