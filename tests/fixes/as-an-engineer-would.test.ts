import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { offeredFor } from './offered.js';

/** A launch in US customary units, whose shaft was renewed in a first step and is too thin in the second. */
const LAUNCH = `engine Teal-6 "six-cylinder diesel engine" {
  source "Teal 6 sheet, issue 1" dated 2025-06-01
  rotation standard viewed from flywheel
  rating medium { power 400 hp at 2300 rpm  measured at crankshaft  standard ISO-3046  hours 3000 per year }
  high idle 2400 rpm
  peak torque 1100 lbf.ft at 1400 rpm
}

gear Ash-20 "reduction gear" {
  source "Ash 20 sheet" dated 2025-03-01
  input rotation standard viewed from flywheel
  input speed at most 2400 rpm
  thrust at most 4000 lbf
  ratio 2.5:1 exact 2.5:1 {
    clutch A  output opposite  ahead continuous
    rated medium 0.3 hp/rpm
  }
}

shaft material bar-22 "stainless bar" {
  source "mill list" dated 2024-05-01
  torsional yield 70000 psi
}

vessel Tender "survey launch" {
  duty medium { hours 1200 per year  passengers none }
  arrangement found {
    shaftline Centre {
      engine Teal-6 at medium { flywheel aft }
      gear Ash-20 ratio 2.5:1 ahead clutch A
      shaft { material bar-22  diameter 1 3/4 in  length 10 ft }
      propeller { hand right  blades 4  diameter 26 in  pitch 24 in  area ratio 0.7 }
    }
  }
  arrangement first revises found {
    shaftline Centre {
      retain engine
      retain gear
      replace shaft { material bar-22  diameter 2 in  length 10 ft }
      retain propeller
    }
  }
  arrangement second revises first {
    shaftline Centre {
      retain engine
      retain gear
      retain shaft
      retain propeller
    }
  }
}
`;

async function curesOf(code: string, arrangement: string) {
  const offered = await offeredFor(LAUNCH);
  const found = offered.filter(
    one => one.finding.code === code && one.finding.verdict?.subject.startsWith(arrangement),
  );
  return found.flatMap(one => one.cures);
}

describe('what is offered for a launch of an author who writes inches and pounds', () => {
  it('fits another shaft in the place of one that is kept, and offers it once', async () => {
    const cures = await curesOf('shafting/diameter', 'second');
    const thicker = cures.filter(one => one.title.includes('2 1/4 in'));
    expect(thicker.map(one => one.title)).toEqual([
      expect.stringMatching(/^Fit a 2 1\/4 in shaft: margin \d+ %/),
    ]);
    const after = applyEdits(LAUNCH, thicker[0]!.edits);
    expect(after.slice(after.indexOf('arrangement second'))).toContain(
      '      replace shaft { material bar-22  diameter 2 1/4 in  length 10 ft }\n',
    );
  });

  it('rates a thrust bearing in pounds, and cuts no propeller down to a toy', async () => {
    const titles = (await curesOf('shafting/thrust-capacity', 'first')).map(one => one.title);
    expect(titles.join('\n')).toMatch(/^Add a thrust bearing for \d+ lbf /);
    const inches = titles.flatMap(
      one => /diameter of the propeller ([\d.]+) in instead of 26 in/.exec(one)?.[1] ?? [],
    );
    for (const one of inches) expect(Number(one)).toBeGreaterThanOrEqual(26 / 1.25 - 0.5);
  });
});
