import { expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const codes = (findings: readonly { code: string }[]) => findings.map(one => one.code);

const GEAR = `gear Alder {
  source "Alder sheet" dated 2025-02-10
  layout coaxial
  input rotation either by pump index
  ratio 2:1 exact 2:1 {
    clutch A output same ahead EVIDENCE
    clutch B output opposite ahead continuous
  }
}`;

const vessel = (facts: {
  engine?: string;
  gear?: string;
  line?: string;
  more?: string;
  steps?: string;
}) => `vessel Testcraft {
  arrangement existing {
    shaftline Centre {
      engine { rotation standard viewed from flywheel  flywheel aft ${facts.engine ?? ''} }
      gear Alder ratio 2:1 ahead clutch A { ${facts.gear ?? ''} }
      ${facts.line ?? ''}
      shaft { diameter 50 mm }
      propeller { hand right }
    }
  }
  ${facts.steps ?? ''}
  ${facts.more ?? ''}
}`;

it('judges the age of a sheet that a place names beside that of its entry', async () => {
  const entry = GEAR.replace('EVIDENCE', 'continuous');
  const old = 'source "Alder sheet" dated 2010-02-10';
  const { findings, text } = await checkText(`${entry}\n${vessel({ gear: old })}`);
  const found = findings.filter(one => one.code === 'paper/sheet-age');
  expect(found.map(one => [one.verdict?.severity, text.slice(one.place.start, one.place.end)])).toEqual([
    ['warning', '"Alder sheet" dated 2010-02-10'],
  ]);
  const undated = await checkText(`${entry}\n${vessel({ gear: 'source "Alder sheet"' })}`);
  expect(undated.findings.find(one => one.code === 'paper/sheet-age')?.verdict?.outcome).toBe('cannot tell');
  const current = await checkText(`${entry}\n${vessel({ gear: 'source "Alder sheet" dated 2026-01-10' })}`);
  expect(codes(current.findings)).not.toContain('paper/sheet-age');
});

it.each(['hearsay', 'assumed'])('fails what may never run ahead though that is only %s', async evidence => {
  const { findings } = await checkText(`${GEAR.replace('EVIDENCE', `never [${evidence}]`)}\n${vessel({})}`);
  expect(codes(findings)).toContain('rotation/ahead-clutch');
  expect(findings.find(one => one.code === 'rotation/clutch-permission')?.message).toContain(
    'may never run ahead',
  );
});

it('shows what a second step keeps where the step before declares it, and not in the catalogue', async () => {
  const keeping = ['engine', 'gear', 'shaft', 'propeller'].map(one => `retain ${one}`).join('  ');
  const steps = `arrangement first revises existing {
    shaftline Centre { retain engine  retain gear  retain shaft  replace propeller { hand right } }
  }
  arrangement second revises first { shaftline Centre { ${keeping} } }`;
  const { findings, text } = await checkText(
    `${GEAR.replace('EVIDENCE', 'continuous')}\n${vessel({ steps })}`,
  );
  const of = (arrangement: string) =>
    findings.find(
      one => one.code === 'rotation/propeller-hand' && one.verdict?.subject === `${arrangement}.Centre`,
    )!;
  const shown = (arrangement: string) => text.slice(of(arrangement).place.start, of(arrangement).place.end);
  expect(shown('first')).toBe('right');
  expect(shown('second')).toBe('retain propeller');
});

const BELT = `transfer Gorse { kind belt  output same  turns the line back no  exact 2:1 }
vessel Testcraft {
  arrangement proposed {
    shaftline Centre {
      motor { angle 3 deg }
      transfer Gorse
      shaft { angle ANGLE }
    }
  }
}`;

it('adds up the angles of a belt drive: its shafts are parallel', async () => {
  const wrong = await checkText(BELT.replace('ANGLE', '9 deg'));
  expect(codes(wrong.findings)).toContain('shafting/angle-stack');
  const right = await checkText(BELT.replace('ANGLE', '3 deg'));
  expect(codes(right.findings)).not.toContain('shafting/angle-stack');
  const box = await checkText(BELT.replace('ANGLE', '9 deg').replace('kind belt', 'kind gears'));
  const [asked] = box.check.vessels[0]!.verdicts.filter(one => one.rule === 'shafting/angle-stack');
  expect([asked!.outcome, asked!.missing.map(one => one.property)]).toEqual(['cannot tell', ['down-angle']]);
});

const HYBRID = `vessel Testcraft {
  certificate { power 30 kW }
  arrangement proposed {
    shaftline Centre {
      engine {
        flywheel aft
        rating medium { power 60 kW at 2400 rpm  measured at crankshaft }
        high idle 2600 rpm
      }
      motor { power 10 kW at 1500 rpm  torque 64 N.m  base speed 1500 rpm  top speed 2800 rpm }
      gear { efficiency 97 % }
      propeller { hand right }
      mode passage { driven by engine }
      mode tide { driven by engine and motor }
    }
  }
  trial "sea trial" of proposed dated 2026-02-20 {
    bottom clean
    tachometers checked
    run Centre at full throttle { engine speed SPEED }
  }
}`;

it('fails in any mode what one mover exceeds by itself', async () => {
  const short = await checkText(HYBRID.replace('SPEED', '2100 rpm'));
  const outcome = (checked: typeof short, rule: string) =>
    checked.check.vessels[0]!.verdicts.filter(one => one.rule === rule).map(one => one.outcome);
  expect(outcome(short, 'capacity/certificate')).toEqual(['fails']);
  expect(outcome(short, 'trial/full-throttle')).toEqual(['fails']);
  const enough = await checkText(HYBRID.replace('SPEED', '2410 rpm').replace('power 30 kW', 'power 65 kW'));
  expect(outcome(enough, 'capacity/certificate')).toEqual(['cannot tell']);
  expect(outcome(enough, 'trial/full-throttle')).toEqual(['cannot tell']);
});

it('asks no tolerance class of a propeller that was found', async () => {
  const { findings } = await checkText(
    vessel({
      steps:
        'arrangement proposed revises existing { shaftline Centre { retain engine retain gear retain shaft retain propeller } }',
    }).replace('hand right', 'hand right  material nickel-aluminium bronze'),
  );
  expect(codes(findings)).not.toContain('propeller/tolerance-class');
});
