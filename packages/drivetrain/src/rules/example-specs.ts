/*
 * Whole specs that give no finding, from which the rules make their examples by changing what they are about. One
 * invented scenario: the harbour pilot cutter Ternhaven and the parts offered for it.
 */

/** The same spec with some of its words changed; words that are not there are a mistake of the example. */
/* @__NO_SIDE_EFFECTS__ */
export function changed(spec: string, ...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the example does not say "${from}"`);
    return text.replace(from, to);
  }, spec);
}

const ENGINE = `engine Kittiwake-9 "six-cylinder diesel" {
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
`;

const GEAR = `gear Alder-63 "down-angle reduction gear" {
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
  ratio 2.1:1 exact 2.104:1 {
    clutch A output same ahead continuous
    clutch B output opposite ahead continuous
    rated medium 0.175 kW/rpm
  }
  ratio 2.52:1 exact 2.524:1 {
    clutch A output same ahead continuous
    clutch B output opposite ahead continuous
    rated medium 0.165 kW/rpm
  }
}
`;

const MATERIAL = `shaft material high-strength-stainless {
  source "Mill certificate 88" dated 2024-02-02
  metal stainless steel
  torsional yield 70000 psi
}
`;

const DUTY = '  duty medium { hours 1500 per year  passengers none }';
const SHAFT = 'shaft { material high-strength-stainless  diameter 65 mm [drawing] }';
const propeller = (hand: 'left' | 'right') =>
  `propeller { hand ${hand} [drawing]  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }`;

/** One engine, one gear, one right-hand propeller. */
export const SINGLE_LINE = `${ENGINE}
${GEAR}
${MATERIAL}
vessel Ternhaven "harbour pilot cutter" {
${DUTY}
  arrangement proposed {
    shaftline Centre {
      engine Kittiwake-9 at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch B
      ${SHAFT}
      ${propeller('right')}
    }
  }
}
`;

/** Two lines that turn outward, each ahead in its own clutch. */
export const TWIN_LINES = `${ENGINE}
${GEAR}
${MATERIAL}
vessel Ternhaven "harbour pilot cutter" {
${DUTY}
  arrangement proposed {
    shaftline Port {
      engine Kittiwake-9 at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch A
      ${SHAFT}
      ${propeller('left')}
    }
    shaftline Starboard {
      engine Kittiwake-9 at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch B
      ${SHAFT}
      ${propeller('right')}
    }
  }
}
`;

/** A new engine of the old power on the gear, shaft and propeller that stay. */
export const REPOWER = `engine Old-Eight "eight-cylinder diesel as fitted" {
  source "Old Eight manual" dated 2018-05-04
  rotation standard viewed from flywheel
  fuel diesel
  cylinders 8
  cycle four-stroke
  rating medium {
    power 300 kW at 2300 rpm
    measured at crankshaft
    standard ISO-8665
    hours 3000 per year
  }
  low idle 650 rpm
  high idle 2500 rpm
  peak torque 1530 N.m at 1500 rpm
  housing SAE-3
}

${ENGINE}
${GEAR}
${MATERIAL}
vessel Ternhaven "harbour pilot cutter" {
${DUTY}
  arrangement existing {
    shaftline Centre {
      engine Old-Eight at medium { flywheel aft }
      gear Alder-63 ratio 2.04:1 ahead clutch B
      ${SHAFT}
      ${propeller('right')}
    }
  }
  arrangement proposed revises existing {
    shaftline Centre {
      replace engine Kittiwake-9 at medium { flywheel aft  torsional statement "Kittiwake 9 with Alder 63, calculation 17" }
      retain gear
      retain shaft
      retain propeller
    }
  }
}
`;
