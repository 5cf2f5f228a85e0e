import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { offeredFor } from './offered.js';

/** A workboat that keeps shaft and propeller under nearly twice the power. Figures are invented. */
const engine = (name: string, power: number, speed: number, torque: number) => `engine ${name} {
  source "${name} sheet" dated 2025-03-01
  rotation standard viewed from flywheel
  rating medium { power ${power} kW at ${speed} rpm  measured at crankshaft  standard ISO-8665  hours 3000 per year }
  low idle 650 rpm
  high idle ${speed + 150} rpm
  peak torque ${torque} N.m at 1400 rpm
}
`;
const gear = (name: string, ratio: number, rated: number, facts = '') => `gear ${name} {
  source "${name} sheet" dated 2025-01-01
  input rotation standard viewed from flywheel
  input speed at most 2600 rpm
  thrust at most 40 kN
  efficiency 97 %
${facts}  ratio ${ratio}:1 exact ${ratio}:1 {
    clutch A  output opposite  ahead continuous
    rated medium ${rated} kW/rpm
  }
}
`;
const BAR = `shaft material bar-stainless {
  metal stainless steel
  torsional yield 300 MPa
}
`;
const HULL = `  duty medium { hours 1500 per year  passengers none }
  hull displacement {
    waterline length 16 m
    displacement 40 t
    resistance 2 kN at 5 kn
    resistance 9 kN at 8 kn
    resistance 16 kN at 9 kn
    resistance 28 kN at 10 kn
    wake fraction 0.18
    thrust deduction 0.17
  }
`;
const REPOWER = `${engine('Swift-4', 120, 2000, 620)}${engine('Dunlin-7', 230, 2200, 1150)}${gear('Holly-30', 3.04, 0.1)}${gear('Rush-50', 2.52, 0.2)}${BAR}vessel Knot {
${HULL}  arrangement existing {
    shaftline Centre {
      engine Swift-4 at medium { flywheel aft }
      gear Holly-30 ratio 3.04:1 ahead clutch A
      shaft { material bar-stainless  diameter 45 mm  length 3 m }
      propeller { hand right  blades 4  diameter 800 mm  pitch 560 mm  area ratio 0.6  cup none }
    }
  }
  arrangement proposed revises existing {
    shaftline Centre {
      replace engine Dunlin-7 at medium { flywheel aft }
      replace gear Rush-50 ratio 2.52:1 ahead clutch A
      retain shaft
      retain propeller
    }
  }
}
`;
const ofProposed = async (text: string, code: string) =>
  (await offeredFor(text)).filter(
    ({ finding }) => finding.code === code && /^proposed|^built/.test(finding.verdict?.subject ?? ''),
  );

describe('a kept shaft and propeller under nearly twice the power', () => {
  it('tells the shaft that is too thin once, with one size for both rules', async () => {
    const [thin] = await ofProposed(REPOWER, 'shafting/diameter');
    expect(await ofProposed(REPOWER, 'capacity/retained-shaft-torque')).toEqual([]);
    const said = [...(thin!.finding.folded ?? []).map(one => one.code), ...foldsOf(thin!.finding.verdict)];
    expect(said).toContain('capacity/retained-shaft-torque');
    const [cure] = thin!.cures;
    const after = await checkText(applyEdits(REPOWER, cure!.edits));
    expect(after.findings.map(one => one.code)).not.toContain('capacity/retained-shaft-torque');
  });

  it('says of a pitch that one method asks for that another then fails by more', async () => {
    const [over] = await ofProposed(REPOWER, 'capacity/retained-propeller-overload');
    const finer = over!.cures.find(one => one.title.startsWith('Make the pitch'));
    expect(finer!.title).toContain('accepted band" fails by more');
    expect([finer!.makesWorse, finer!.preferred ?? false]).toEqual([true, false]);
  });

  it('tells which rotation gives which hand, whichever check asks for it', async () => {
    const open = REPOWER.replaceAll(
      'rotation standard viewed from flywheel\n  rating',
      'rotation unknown\n  rating',
    );
    const [asked] = await ofProposed(open, 'rotation/engine-changed');
    expect(asked!.finding.verdict!.byAnswer?.map(one => one.given)).toEqual([
      ['engine rotation standard'],
      ['engine rotation opposite'],
    ]);
    expect(asked!.finding.message).toMatch(/With engine rotation opposite: a left-hand propeller is needed/);
  });
});

const FLANGE = 'outside diameter 146 mm  bolt circle 121 mm  bolts 4 x 12 mm  pilot 63.5 mm female';
const built = (
  coupling: string,
) => `${engine('Dunlin-7', 230, 2200, 1150)}${gear('Rush-50', 2.52, 0.2, `  output flange { ${FLANGE} }\n`)}${BAR}vessel Knot {
${HULL}  arrangement built {
    shaftline Centre {
      engine Dunlin-7 at medium { flywheel aft }
      gear Rush-50 ratio 2.52:1 ahead clutch A
      coupling { kind rigid  ${coupling} }
      shaft { material bar-stainless  diameter 60 mm  length 3 m }
      propeller { hand right  blades 4  diameter 800 mm  pitch 640 mm  area ratio 0.6  cup none }
    }
  }
}
`;

describe('a half-coupling that is still to be ordered', () => {
  const flange = (changes: string) =>
    `flange { ${FLANGE.replace('female', 'male').replace(...(changes.split(' -> ') as [string, string]))} }`;

  it.each([
    ['bolt circle 121 mm -> bolt circle 114 mm', 'bolt circle 121 mm'],
    ['bolts 4 x 12 mm -> bolts 6 x 10 mm', 'bolts 4 x 12 mm'],
    ['63.5 mm male -> 63.5 mm female', 'pilot 63.5 mm male'],
    ['63.5 mm male -> 60 mm male', 'pilot 63.5 mm male'],
  ])('is made for the flange of the gear: %s', async (changes, wanted) => {
    const text = built(flange(changes));
    const [wrong] = await ofProposed(text, 'shafting/coupling-flange');
    expect(wrong!.cures[0]!.title).toContain('Order the half-coupling for the flange of gear Rush-50');
    const after = applyEdits(text, wrong!.cures[0]!.edits);
    expect(after.slice(after.indexOf('coupling {'))).toContain(wanted);
    expect((await checkText(after)).findings.map(one => one.code)).not.toContain('shafting/coupling-flange');
  });

  it('is bored for the shaft, and its key stays asked for', async () => {
    const text = built('bore 58 mm');
    const [wrong] = await ofProposed(text, 'shafting/coupling-bore');
    expect(wrong!.cures[0]!.title).toMatch(/bored 60 mm instead of 58 mm; .*stay open questions/);
    expect(applyEdits(text, wrong!.cures[0]!.edits)).toContain('bore 60 mm');
  });
});

function foldsOf(verdict: { readonly folds?: readonly { readonly rule: string }[] } | undefined): string[] {
  return (verdict?.folds ?? []).map(one => one.rule);
}
