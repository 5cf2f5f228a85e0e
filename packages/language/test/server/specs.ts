/*
 * The specs that the tests of the editor server begin with: the harbour pilot cutter Ternhaven and two invented parts.
 */

export const CATALOGUE = `/// A six-cylinder diesel.
engine Kittiwake-9 "six-cylinder diesel" {
  source "Kittiwake 9 data sheet, issue 2" dated 2025-01-20
  rotation standard viewed from flywheel
  fuel diesel
  cylinders 6
  cycle four-stroke
  rating medium {
    power 300 kW at 2300 rpm
    measured at crankshaft
    standard ISO-8665
    hours 3000 per year
  }
  low idle 650 rpm
  high idle 2530 rpm
  peak torque 1480 N.m at 1500 rpm
  housing SAE-3
}

gear Alder-63 "down-angle reduction gear" {
  source "Alder 63 technical sheet, issue 4" dated 2025-02-10
  layout down-angle 8 deg
  input rotation standard viewed from flywheel
  input speed at most 3000 rpm
  input speed at least 600 rpm
  input housing SAE-3
  slip device offered
  ratio 2.04:1 exact 2.043:1 {
    clutch A output same ahead continuous
    clutch B output opposite ahead continuous
    rated medium 0.18 kW/rpm
  }
  ratio 2.52:1 exact 2.524:1 {
    clutch A output same ahead continuous
    clutch B output opposite ahead continuous
    rated medium 0.165 kW/rpm
  }
}

gear Rowan-7 "small reduction gear" {
  source "Rowan 7 sheet" dated 2024-03-01
  layout parallel-offset
  input rotation standard viewed from flywheel
  input speed at most 3000 rpm
  input speed at least 600 rpm
  input housing SAE-3
  ratio 2:1 exact 2.01:1 {
    clutch A output same ahead never
    clutch B output opposite ahead continuous
    rated medium 0.1 kW/rpm
  }
}

shaft material high-strength-stainless {
  source "Mill certificate 88" dated 2024-02-02
  torsional yield 70000 psi
}
`;

export const VESSEL = `vessel Ternhaven "harbour pilot cutter" {
  duty medium { hours 1500 per year  passengers none }
  arrangement proposed {
    shaftline Port {
      engine Kittiwake-9 at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch A
      shaft { material high-strength-stainless  diameter 65 mm [drawing] }
      propeller { hand left [drawing]  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }
    }
    shaftline Starboard {
      engine Kittiwake-9 at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch B
      shaft { material high-strength-stainless  diameter 65 mm [drawing] }
      propeller { hand right [drawing]  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }
    }
  }
}
`;

export const SPEC = `${CATALOGUE}\n${VESSEL}`;

/** The spec with one place of it changed; words that are not there are a mistake of the test. */
export function withChange(from: string, to: string, spec = SPEC): string {
  if (!spec.includes(from)) throw new Error(`the spec does not say "${from}"`);
  return spec.replace(from, to);
}
