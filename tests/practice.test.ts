import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE } from '../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './cli/run.js';

const folder = folders();
const today = '--today 2026-03-01';
const practice = (facts: string) =>
  `practice Harbour-Office "design office" {\n  ${facts.replaceAll('  ', '\n  ')}\n}\n`;
const vessel = (name: string, more = '') =>
  `import "practice"\n${changed(SINGLE_LINE.replaceAll('Ternhaven', name), ['  arrangement proposed {', `  ${more}\n  arrangement proposed {`])}`;

interface Verdict {
  readonly rule: string;
  readonly outcome: string;
  readonly severity: string;
  readonly criterion?: string;
  readonly message: string;
}

function verdicts(facts: string, more = ''): Verdict[] {
  const cwd = folder({ 'practice.shaft': practice(facts), 'a.shaft': vessel('Ternhaven', more) });
  const { files } = JSON.parse(tailshaft(`check a.shaft --json ${today}`, { cwd }).stdout);
  expect(files[0].findings.filter((one: { code: string }) => one.code.startsWith('text/'))).toEqual([]);
  return files[0].vessels[0].verdicts;
}
const of = (rule: string, facts: string, more = '') => verdicts(facts, more).filter(one => one.rule === rule);
const outcomes = (facts: string, more: string) =>
  of('paper/practice-relaxed', facts, more).map(one => one.outcome);

describe('a practice that a spec imports', () => {
  it('judges by its criteria where the vessel chooses none, and by the vessel where it does', () => {
    expect(of('speed/tip-speed', 'tip speed at most 60 m/s').map(one => one.outcome)).toEqual(['holds']);
    expect(of('speed/tip-speed', 'tip speed at most 10 m/s').map(one => one.outcome)).toEqual(['fails']);
    const tighter = of(
      'speed/tip-speed',
      'tip speed at most 60 m/s',
      'criteria { tip speed at most 10 m/s }',
    );
    expect(tighter.map(one => one.outcome)).toEqual(['fails']);
  });

  it('judges on where the vessel leaves open what it asks', () => {
    const facts = 'tip speed at most 10 m/s  shaft diameter by small-craft formula factor 30';
    for (const open of ['tip speed at most unknown', 'shaft diameter by unknown']) {
      for (const rule of ['speed/tip-speed', 'shafting/diameter'])
        expect(of(rule, facts, `criteria { ${open} }`).map(one => one.outcome)).toEqual(['fails']);
    }
  });

  it.each([
    ['tip speed at most 45 m/s', 'tip speed at most 44 m/s', ['holds']],
    ['tip speed at most 45 m/s', 'tip speed at most 45 m/s', ['holds']],
    ['tip speed at most 45 m/s', 'tip speed at most 46 m/s', ['fails']],
    ['tip speed at most 45 m/s', 'tip speed at most unknown', ['cannot tell']],
    ['tip speed at most 45 m/s', 'gear torque margin at least 1 %', []],
    ['gear torque margin at least 5 %', 'gear torque margin at least 6 %', ['holds']],
    ['gear torque margin at least 5 %', 'gear torque margin at least 4 %', ['fails']],
    [
      'shaft diameter by small-craft formula factor 5.0',
      'shaft diameter by small-craft formula factor 6.0',
      ['holds'],
    ],
    [
      'shaft diameter by small-craft formula factor 5.0',
      'shaft diameter by small-craft formula factor 2.0',
      ['fails'],
    ],
    ['shaft diameter by small-craft formula factor 5.0', 'shaft diameter by class formula', ['fails']],
  ])('that says %s, and a vessel %s: %s', (facts, own, expected) => {
    expect(outcomes(facts, `criteria { ${own} }`)).toEqual(expected);
  });

  it('is departed from only with a reason, by who may, which comparison then tells', () => {
    const own = 'criteria { tip speed at most 46 m/s }';
    const accept = (by: string, until = '2027-01-01') =>
      `${own}\n  accept paper/practice-relaxed on Ternhaven because "trial showed no noise" by "${by}" dated 2026-02-01 until ${until}`;
    const facts =
      'tip speed at most 45 m/s  acceptances of "paper/" by "principal"  acceptances last at most 1 year';
    expect(outcomes(facts, accept('principal of the office'))).toEqual(['accepted']);
    expect(outcomes(facts, accept('yard engineer'))).toEqual(['fails']);
    expect(outcomes(facts, accept('principal', '2028-01-01'))).toEqual(['fails']);
    const cwd = folder({
      'before/practice.shaft': practice(facts),
      'before/a.shaft': vessel('Ternhaven'),
      'after/practice.shaft': practice(facts),
      'after/a.shaft': vessel('Ternhaven', accept('principal')),
    });
    const { levels, vessels } = JSON.parse(tailshaft(`compare before after --json ${today}`, { cwd }).stdout);
    expect(levels).toEqual(['newly accepted', 'acceptance weakened', 'criterion relaxed']);
    const words = vessels[0].changes.map((one: { words: string }) => one.words).join('\n');
    expect(words).toContain('trial showed no noise');
    expect(words).toContain('tip speed at most 45 m/s → tip speed at most 46 m/s');
  });

  it('makes a rule graver and never lighter', () => {
    const slow = 'tip speed at most 10 m/s';
    const [usual] = of('speed/tip-speed', slow);
    const [graver] = of('speed/tip-speed', `${slow}  gravity of "speed/" is error`);
    expect([usual!.severity, graver!.severity]).toEqual(['warning', 'error']);
    const wrong = changed(SINGLE_LINE, ['hand right', 'hand left']);
    const cwd = folder({
      'a.shaft': `${practice('gravity of "rotation/" is warning')}${wrong}`,
    });
    expect(tailshaft(`check a.shaft ${today}`, { cwd }).stdout).toMatch(
      /^error {2}rotation\/propeller-hand/m,
    );
  });

  it('shows each vessel that a change of it touches', () => {
    const specs = (facts: string, folder: string) => ({
      [`${folder}/practice.shaft`]: practice(facts),
      [`${folder}/a.shaft`]: vessel('Ternhaven'),
      [`${folder}/b.shaft`]: vessel('Ollersea', 'criteria { tip speed at most 12 m/s }'),
      [`${folder}/c.shaft`]: vessel('Marram'),
    });
    const cwd = folder({
      ...specs('tip speed at most 60 m/s', 'before'),
      ...specs('tip speed at most 10 m/s', 'after'),
    });
    const { vessels, entries } = JSON.parse(
      tailshaft(`compare before after --json ${today}`, { cwd }).stdout,
    );
    expect(vessels.map((one: { name: string }) => one.name).sort()).toEqual([
      'Marram',
      'Ollersea',
      'Ternhaven',
    ]);
    const ollersea = vessels.find((one: { name: string }) => one.name === 'Ollersea');
    expect(ollersea.changes.map((one: { rule?: string }) => one.rule)).toContain('paper/practice-relaxed');
    expect(entries).toEqual([
      expect.objectContaining({ kind: 'practice', name: 'Harbour-Office', fate: 'modified' }),
    ]);
  });

  it.each([
    ['gravity of "speed/tip-sped" is error', 'Did you mean speed/tip-speed?'],
    ['acceptances of "rotaton/" by "class"', 'No rule begins with "rotaton/"'],
  ])('refuses %s', (facts, why) => {
    const cwd = folder({ 'practice.shaft': practice(facts) });
    expect(tailshaft('check .', { cwd }).stdout.replace(/\s+/g, ' ')).toContain(why);
  });

  it('is one: two that a vessel sees are told', () => {
    const cwd = folder({
      'practice.shaft': `${practice('tip speed at most 60 m/s')}practice Other { tip speed at most 50 m/s }\n`,
      'a.shaft': vessel('Ternhaven'),
    });
    expect(tailshaft(`check a.shaft ${today}`, { cwd }).stdout.replace(/\s+/g, ' ')).toContain(
      'Vessel Ternhaven imports two practices, Harbour-Office and Other',
    );
  });

  it('stands on the sheet', () => {
    const cwd = folder({
      'practice.shaft': practice('title block "Design office, harbour road 4"'),
      'a.shaft': vessel('Ternhaven'),
    });
    expect(tailshaft(`sheet a.shaft --markdown ${today}`, { cwd }).stdout).toContain(
      'Design office, harbour road 4',
    );
  });
});
