import { describe, expect, it } from 'vitest';
import { TWIN_LINES } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText, shown } from '../../support/check.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const SHAFT = 'shaft { material high-strength-stainless  diameter 65 mm [drawing] }';
const WEAK = `
shaft material mild-steel-bar {
  source "Mill certificate 12" dated 2024-02-02
  torsional yield 20000 psi
}
`;
/** The starboard shaft found aboard is thinner and of another grade; both are kept. */
const FOUND = changed(TWIN_LINES, ['arrangement proposed', 'arrangement existing']);
const THIN = (() => {
  const at = FOUND.lastIndexOf(SHAFT);
  return `${WEAK}${FOUND.slice(0, at)}shaft { material mild-steel-bar  diameter 40 mm [drawing] }${FOUND.slice(at + SHAFT.length)}`;
})();
const MIRRORED = (spec: string, port: string, starboard = '') =>
  withStatements(
    spec,
    `  arrangement proposed revises existing {
    shaftline Port { ${port} }
    shaftline Starboard mirrors Port { ${starboard} }
  }`,
  );

describe('what a mirrored line keeps', () => {
  it('is what its own side had: a thinner shaft is judged as itself', async () => {
    const spec = MIRRORED(THIN, 'retain engine  retain gear  retain shaft  retain propeller');
    const strength = await verdictsBy(spec, 'shafting/diameter');
    expect(strength.map(one => [one.subject, one.outcome])).toEqual([
      ['proposed.Port', 'holds'],
      ['proposed.Starboard', 'fails'],
    ]);
  });

  it('is its own gear and propeller: no line would go astern', async () => {
    const spec = MIRRORED(FOUND, 'retain engine  retain gear  retain shaft  retain propeller');
    expect(shown(await checkText(spec))).toEqual([]);
    const hands = await verdictsBy(spec, 'rotation/propeller-hand');
    expect(hands.map(one => one.outcome)).toEqual(['holds', 'holds']);
  });

  it('takes the modification of the other side, and only what is new there is new here', async () => {
    const spec = MIRRORED(
      THIN,
      'retain engine  retain gear  modify shaft { diameter 60 mm }  replace propeller { hand left  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }',
      'propeller hand right',
    );
    const { vessel } = (await checkText(spec)).check.vessels[0]!;
    const starboard = vessel.arrangements[1]!.lines[1]!;
    expect([starboard.shafts[0]!.diameter?.written, starboard.shafts[0]!.material?.value]).toEqual([
      '60 mm',
      'mild-steel-bar',
    ]);
    expect([starboard.shafts[0]!.change, starboard.propeller!.change]).toEqual(['modified', 'replaced']);
    expect([starboard.propeller!.hand?.value, starboard.gear!.aheadClutch?.value]).toEqual(['right', 'B']);
  });

  it('is asked for where its side had none', async () => {
    const single = FOUND.replace(/ {4}shaftline Starboard \{[\s\S]*?\n {4}\}\n/, '');
    const told = shown(
      await checkText(MIRRORED(single, 'retain engine  retain gear  retain shaft  retain propeller')),
    );
    for (const role of ['engine', 'gear', 'shaft', 'propeller'])
      expect(told.join('\n')).toContain(`keeps its ${role}, but Starboard had none`);
  });
});

describe('a line that a revision does not mention', () => {
  const spec = (rest = '') =>
    withStatements(
      FOUND,
      `  arrangement proposed revises existing {\n    shaftline Port { retain engine  retain gear  retain shaft  retain propeller }\n${rest}  }`,
    );

  it('is asked for', async () => {
    const [finding, ...others] = (await checkText(spec())).findings.filter(one => one.problem);
    expect([finding?.code, finding?.severity, others.length]).toEqual([
      'repower/line-not-mentioned',
      'error',
      0,
    ]);
  });

  it('is added as it was, or removed, by the offered ways out', async () => {
    const text = spec();
    const { problem } = (await checkText(text)).findings.find(one => one.problem)!;
    for (const choice of problem!.choices!) {
      const written = `${text.slice(0, choice.start)}${choice.text}${text.slice(choice.end)}`;
      const findings = (await checkText(written)).findings.filter(one => one.problem);
      expect(
        findings.map(one => one.message),
        choice.title,
      ).toEqual([]);
    }
  });

  it('is removed by a statement, and nothing else can be', async () => {
    const { check, findings } = await checkText(spec('    remove shaftline Starboard\n'));
    expect(findings.filter(one => one.problem)).toEqual([]);
    expect(check.vessels[0]!.vessel.arrangements[1]!.lines.map(one => one.name)).toEqual(['Port']);
    const wrong = await checkText(spec('    remove shaftline Starbord\n'));
    expect(wrong.findings.map(one => one.code)).toContain('repower/nothing-to-keep');
  });
});
