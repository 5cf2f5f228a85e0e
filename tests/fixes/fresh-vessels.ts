/** Vessels of five kinds as somebody new to the language wrote them: right, until one thing is made wrong. Figures are invented. */

const engine = (
  name: string,
  power: number,
  speed: number,
  duty: string,
  torque: number,
  torqueSpeed: number,
) => `engine ${name} "six-cylinder diesel engine" {
  source "data sheet, issue 1" dated 2025-03-01
  rotation standard viewed from flywheel
  fuel diesel
  cylinders 6
  cycle four-stroke
  aspiration turbocharged charge-cooled
  rating ${duty} { power ${power} kW at ${speed} rpm  measured at crankshaft  standard ISO-8665  hours 4000 per year }
  low idle 650 rpm
  high idle ${Math.round(speed * 1.08)} rpm
  peak torque ${torque} N.m at ${torqueSpeed} rpm
  full-load torque ${torque} N.m at ${torqueSpeed} rpm
  full-load power ${power} kW at ${speed} rpm
  housing SAE-2
  flywheel size 11.5
  mass 700 kg
}
`;
const BAR = `shaft material bar-stainless "duplex stainless bar" {
  metal stainless steel
  torsional yield 300 MPa
  tensile yield 450 MPa
  tensile strength 620 MPa
  elastic modulus 200 GPa
  shear modulus 77 GPa
  density 7800 kg/m3
}
`;
const HYBRID =
  engine('Petrel-5', 130, 2400, 'medium', 600, 1500) +
  `motor Grebe-40 "synchronous motor" {
  source "Grebe 40 sheet" dated 2025-02-01
  rotation either
  power 40 kW at 1600 rpm
  peak power 55 kW
  torque 239 N.m
  base speed 1600 rpm
  top speed 3000 rpm
  mass 130 kg
}
gear Maple-50 "parallel-offset gear" {
  source "Maple 50 sheet" dated 2025-01-01
  layout parallel-offset
  input rotation standard viewed from flywheel
  input speed at most 3000 rpm
  input speed at least 550 rpm
  input housing SAE-2
  thrust at most 22 kN
  efficiency 96 %
  mass 140 kg
  ratio 2.5:1 exact 2.519:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead never
    rated medium 0.072 kW/rpm
  }
  ratio 3:1 exact 2.963:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead never
    rated medium 0.066 kW/rpm
  }
}
` +
  BAR +
  `vessel Linnet "Linnet, hybrid day boat" {
  duty medium { hours 1800 per year  passengers carried }
  hull displacement {
    waterline length 13.5 m
    displacement 16 t
    resistance 1.1 kN at 5 kn
    resistance 3.1 kN at 7 kn
    resistance 5.2 kN at 8 kn
    resistance 9 kN at 9 kn
    resistance 15 kN at 10 kn
    wake fraction 0.16
    thrust deduction 0.15
  }

  arrangement built {
    shaftline Centre {
      engine Petrel-5 at medium { flywheel aft }
      motor Grebe-40
      gear Maple-50 ratio 2.519:1 ahead clutch A
      shaft { material bar-stainless  diameter 55 mm  length 3.2 m }
      propeller { hand right  blades 4  diameter 720 mm  pitch 535 mm  area ratio 0.6  cup none }
      mode passage "engine alone" { driven by engine }
      mode quiet "motor alone" { driven by motor  motor power at most 24 kW }
    }
  }

  require speed at least 8 kn at full power in mode passage "owner"
}
`;
const TUG =
  engine('Fulmar-11', 330, 1800, 'heavy', 2000, 1300) +
  `gear Oak-70 "reduction gear" {
  source "Oak 70 sheet" dated 2025-01-01
  layout parallel-offset
  input rotation standard viewed from flywheel
  input speed at most 2300 rpm
  input speed at least 550 rpm
  input housing SAE-2
  thrust at most 60 kN
  efficiency 97 %
  mass 520 kg
  ratio 4:1 exact 4.037:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead continuous
    rated heavy 0.21 kW/rpm
  }
  ratio 5:1 exact 4.95:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead continuous
    rated heavy 0.19 kW/rpm
  }
}
` +
  BAR +
  `vessel Bittern "Bittern, line-handling tug" {
  duty heavy { hours 2000 per year  passengers none }
  hull displacement {
    waterline length 15 m
    displacement 90 t
    resistance 4 kN at 5 kn
    resistance 10 kN at 7 kn
    resistance 18 kN at 8 kn
    resistance 32 kN at 9 kn
    resistance 60 kN at 10 kn
    wake fraction 0.18
    thrust deduction 0.18
  }

  arrangement built {
    shaftline Centre {
      engine Fulmar-11 at heavy { flywheel aft }
      gear Oak-70 ratio 4.037:1 ahead clutch A
      shaft { material bar-stainless  diameter 110 mm  length 4 m }
      propeller {
        hand right
        blades 4
        diameter 1400 mm
        pitch 1110 mm
        area ratio 0.7
        nozzle N19A
        nozzle gap 8 mm
        cup none
      }
    }
  }

  criteria { nozzle gap at most 0.8 % }
  require bollard thrust at least 45 kN "line handling"
}
`;
const LEG =
  engine('Wigeon-6', 130, 3600, 'light', 400, 2200) +
  `gear Larkspur-1 "stern leg" {
  source "Larkspur sheet" dated 2025-01-01
  layout parallel-offset
  input rotation standard viewed from flywheel
  input speed at most 4000 rpm
  input speed at least 600 rpm
  input housing SAE-2
  thrust at most 20 kN
  efficiency 95 %
  mass 110 kg
  ratio 1.78:1 exact 1.78:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead continuous
    rated light 0.06 kW/rpm
  }
  ratio 1.95:1 exact 1.95:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead continuous
    rated light 0.056 kW/rpm
  }
}
` +
  BAR +
  `vessel Dotterel "Dotterel, patrol launch on a stern leg" {
  duty light { hours 600 per year  passengers none }
  hull planing {
    waterline length 7.6 m
    displacement 4.2 t
    chine beam 2.3 m
    deadrise 19 deg
    LCG 2.6 m
    VCG 0.7 m
    wake fraction 0.03
    thrust deduction 0.03
  }

  arrangement built {
    shaftline Centre {
      engine Wigeon-6 at light { flywheel aft }
      gear Larkspur-1 ratio 1.78:1 ahead clutch A
      shaft { material bar-stainless  diameter 45 mm  length 0.3 m }
      propeller { hand right  blades 4  diameter 17 in  pitch 17.5 in  area ratio 0.75  cup none }
    }
  }

  criteria { speed method Savitsky }
}
`;
const V_DRIVES =
  engine('Scoter-8', 270, 2800, 'light', 1200, 1700) +
  `gear Sallow-32 "V-drive gear" {
  source "Sallow 32 sheet" dated 2025-01-01
  layout V-drive
  input rotation either by pump index
  input speed at most 3200 rpm
  input speed at least 600 rpm
  input housing SAE-2
  thrust at most 38 kN
  efficiency 96 %
  mass 190 kg
  ratio 1.75:1 exact 1.743:1 {
    clutch A  output opposite seen from aft  ahead continuous
    clutch B  output same seen from aft  ahead continuous
    rated light 0.14 kW/rpm
  }
  ratio 2:1 exact 1.97:1 {
    clutch A  output opposite seen from aft  ahead continuous
    clutch B  output same seen from aft  ahead continuous
    rated light 0.13 kW/rpm
  }
}
` +
  BAR +
  `vessel Pochard "Pochard, twin V-drive cruiser" {
  duty light { hours 500 per year  passengers none }
  hull planing {
    waterline length 12 m
    displacement 13 t
    chine beam 3.3 m
    deadrise 17 deg
    LCG 4.2 m
    VCG 1.2 m
    appendage resistance 12 %
    wake fraction 0.05
    thrust deduction 0.06
  }

  arrangement built {
    shaftline Port {
      engine Scoter-8 at light { flywheel forward }
      gear Sallow-32 ratio 1.743:1 ahead clutch A { pump set for standard viewed from flywheel }
      shaft { material bar-stainless  diameter 55 mm  length 2.6 m }
      propeller { hand left  blades 4  diameter 24 in  pitch 27 in  area ratio 0.75  cup none }
    }
    shaftline Starboard mirrors Port {
      gear ahead clutch B { pump set for standard viewed from flywheel }
      propeller hand right
    }
  }

  criteria { speed method Savitsky }
  require propellers turn outward
  require speed at least 20 kn at full power "owner"
}
`;
const CONTROLLABLE =
  engine('Skua-10', 400, 1600, 'heavy', 2700, 1200) +
  `gear Rowan-44 "reduction gear for controllable pitch" {
  source "Rowan 44 sheet" dated 2025-01-01
  layout parallel-offset
  input rotation standard viewed from flywheel
  input speed at most 2000 rpm
  input speed at least 500 rpm
  input housing SAE-2
  thrust at most 90 kN
  efficiency 97 %
  reversing no
  mass 700 kg
  ratio 4.5:1 exact 4.53:1 {
    clutch A  output opposite  ahead continuous
    rated heavy 0.31 kW/rpm
  }
  ratio 5.2:1 exact 5.18:1 {
    clutch A  output opposite  ahead continuous
    rated heavy 0.27 kW/rpm
  }
}
` +
  BAR +
  `vessel Smew "Smew, single-screw seiner" {
  duty heavy { hours 3500 per year  passengers none }
  hull displacement {
    waterline length 21 m
    displacement 160 t
    resistance 6 kN at 5 kn
    resistance 12 kN at 7 kn
    resistance 18 kN at 8 kn
    resistance 28 kN at 9 kn
    resistance 44 kN at 10 kn
    resistance 75 kN at 11 kn
    wake fraction 0.22
    thrust deduction 0.2
  }

  arrangement built {
    shaftline Centre {
      engine Skua-10 at heavy { flywheel aft }
      gear Rowan-44 ratio 4.53:1 ahead clutch A
      shaft { material bar-stainless  diameter 125 mm  length 5.5 m }
      propeller {
        kind controllable pitch
        hand right
        blades 4
        diameter 1750 mm
        pitch 1500 mm
        pitch range 300 mm .. 2200 mm
        area ratio 0.55
        cup none
      }
    }
  }

  require speed at least 9.5 kn at full power "owner"

  trial "acceptance trial" dated 2026-02-20 {
    displacement 160 t
    bottom clean
    tachometers checked
    water depth 40 m
    direction at the dock proven
    astern and stop recorded
    run Centre at full throttle { engine speed 1600 rpm  shaft speed 353 rpm  speed 10.2 kn }
  }
}
`;

export const FRESH = {
  hybrid: HYBRID,
  tug: TUG,
  leg: LEG,
  'V-drives': V_DRIVES,
  'controllable pitch': CONTROLLABLE,
} as const;
