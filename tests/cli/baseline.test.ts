import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, put, tailshaft } from './run.js';

const folder = folders();
const today = '--today 2026-03-01';
const WRONG_HAND = changed(TWIN_LINES, ['hand left', 'hand right']);
const THIN = changed(WRONG_HAND, ['diameter 65 mm', 'diameter 40 mm']);
const THINNER = changed(WRONG_HAND, ['diameter 65 mm', 'diameter 38 mm']);

/** A folder whose baseline was written from the first text, and which holds the second. */
function baselined(before: string, now: string): string {
  const cwd = folder({ 'specs/a.shaft': before });
  const written = tailshaft(`check specs --write-baseline base.json ${today}`, { cwd });
  expect(written.status, written.stderr).toBe(0);
  put(cwd, 'specs/a.shaft', now);
  return cwd;
}

describe('check --baseline', () => {
  it.each([
    ['nothing changed', THIN, THIN, 0],
    ['moved in the text', THIN, `// moved\n\n${THIN}`, 0],
    ['an old one put right', THIN, WRONG_HAND, 0],
    ['a margin that grew and still fails', THINNER, THIN, 0],
    ['a margin that shrank', THIN, THINNER, 1],
    ['a new one', WRONG_HAND, THIN, 1],
    [
      'an open question that turns out to fail',
      changed(TWIN_LINES, ['hand left', 'hand unknown']),
      WRONG_HAND,
      1,
    ],
    ['a second vessel that fails alike', WRONG_HAND, `${WRONG_HAND}\n${again(WRONG_HAND)}`, 1],
    ['text that cannot be read', WRONG_HAND, changed(WRONG_HAND, ['low idle', 'low idel']), 1],
    ['the same slip in the text once more', slips(1), slips(2), 1],
    ['the same slips in the text', slips(2), slips(2), 0],
  ])('%s', (_, before, now, status) => {
    const cwd = baselined(before, now);
    const answer = tailshaft(`check specs --baseline base.json ${today}`, { cwd });
    expect(answer.status, answer.stdout + answer.stderr).toBe(status);
  });

  it('tells what it knows, as not accepted, and counts no vessel better for it', () => {
    const { stdout } = tailshaft(`check specs --baseline base.json ${today}`, { cwd: baselined(THIN, THIN) });
    expect(stdout.split('\n')[0]).toMatch(/^Ternhaven {2}fails/);
    expect(stdout).toMatch(/^In the baseline of 2026-03-01: \d+ findings, known and not accepted$/m);
    expect(stdout).toMatch(/^known error {2}rotation\/propeller-hand/m);
    expect(stdout).toContain('no new error');
  });

  it('says what got worse, and what is there no more', () => {
    const worse = tailshaft(`check specs --baseline base.json ${today}`, { cwd: baselined(THIN, THINNER) });
    expect(worse.stdout).toContain('worse than in the baseline');
    const { stdout } = tailshaft(`check specs --baseline base.json ${today}`, {
      cwd: baselined(THIN, WRONG_HAND),
    });
    expect(stdout).toMatch(/\d+ findings? of the baseline (is|are) gone: write it again/);
  });

  it('is the same file whatever folder the command runs in, and whatever it is written from', () => {
    const cwd = baselined(THIN, THIN);
    mkdirSync(join(cwd, '.git'));
    tailshaft(`check specs --write-baseline base.json ${today}`, { cwd });
    const text = readFileSync(join(cwd, 'base.json'), 'utf8');
    tailshaft(`check a.shaft --write-baseline ../base.json ${today}`, { cwd: join(cwd, 'specs') });
    expect(readFileSync(join(cwd, 'base.json'), 'utf8')).toBe(text);
  });

  it('stands in every form', () => {
    const cwd = baselined(THIN, changed(THIN, ['hand right', 'hand left']));
    put(cwd, 'specs/a.shaft', THIN.replace('low idle 650 rpm', 'low idle 650'));
    const said = (form: string) =>
      tailshaft(`check specs --baseline base.json --${form} ${today}`, { cwd }).stdout;
    const { files, summary } = JSON.parse(said('json'));
    const standings = files[0].findings.map((one: { baseline: string }) => one.baseline);
    expect(standings).toContain('known');
    expect(standings).toContain('new');
    expect(summary.known).toBeGreaterThan(0);
    const states = JSON.parse(said('sarif')).runs[0].results.map(
      (one: { baselineState: string }) => one.baselineState,
    );
    expect(states).toContain('unchanged');
    expect(states).toContain('new');
    expect(said('junit')).toMatch(/<skipped message="in the baseline, fails: /);
    expect(said('annotations').match(/^::error file=specs\/a\.shaft,line=\d+,/gm)).toHaveLength(
      files[0].findings.filter(
        (one: { baseline: string; severity: string }) => one.baseline !== 'known' && one.severity === 'error',
      ).length,
    );
  });

  it.each([
    ['{}', /is not a baseline/],
    ['[', /is not a baseline/],
    ['{"form":1,"program":"tailshaft","written":"x","findings":[{"id":1}]}', /is not a baseline/],
  ])('refuses %s', (text, why) => {
    const cwd = folder({ 'a.shaft': SINGLE_LINE, 'base.json': text });
    const answer = tailshaft('check a.shaft --baseline base.json', { cwd });
    expect(answer.stderr).toMatch(why);
    expect(answer.status).toBe(2);
  });

  it('is not written where anything could not be read, nor over a spec', () => {
    const cwd = folder({ 'a.shaft': SINGLE_LINE });
    expect(tailshaft('check a.shaft b.shaft --write-baseline base.json', { cwd }).status).toBe(2);
    expect(tailshaft('check a.shaft --write-baseline a.shaft', { cwd }).status).toBe(2);
    expect(readFileSync(join(cwd, 'a.shaft'), 'utf8')).toBe(SINGLE_LINE);
    expect(tailshaft('check a.shaft --baseline base.json', { cwd }).stderr).toContain('base.json');
  });
});

describe('SARIF', () => {
  const accepted = changed(
    TWIN_LINES,
    ['diameter 65 mm', 'diameter 40 mm'],
    [
      '  arrangement proposed',
      '  accept shafting/diameter on proposed.Port because "trial runs" by "surveyor" dated 2026-01-10 until 2027-01-01\n  arrangement proposed',
    ],
  );
  const results = (text: string) =>
    JSON.parse(tailshaft(`check . --sarif ${today}`, { cwd: folder({ 'a.shaft': text }) }).stdout).runs[0]
      .results;

  it('holds an accepted failure as suppressed in the source, with who, why and until when', () => {
    const suppressed = results(accepted).filter((one: { suppressions?: object[] }) => one.suppressions);
    expect(suppressed.length).toBeGreaterThan(0);
    for (const one of suppressed) {
      expect(one.ruleId).toBe('shafting/diameter');
      expect(one.suppressions).toEqual([
        expect.objectContaining({
          kind: 'inSource',
          status: 'accepted',
          justification: 'trial runs, by surveyor, dated 2026-01-10, until 2027-01-01',
        }),
      ]);
      const { region } = one.suppressions[0].location.physicalLocation;
      expect(accepted.split('\n')[region.startLine - 1]).toContain('accept shafting/diameter');
    }
  });

  it('gives every result a fingerprint of its own, whatever moves or changes its figures', () => {
    const prints = (text: string) =>
      results(text).map(
        (one: { partialFingerprints: { meaning: string } }) => one.partialFingerprints.meaning,
      );
    const [one, moved, thinner] = [THIN, `\n\n${THIN}`, THINNER].map(prints);
    expect(new Set(one).size).toBe(one!.length);
    expect(moved).toEqual(one);
    expect(thinner).toEqual(one);
    const twice = prints(slips(2));
    expect(new Set(twice).size).toBe(twice.length);
  });

  // SARIF 2.1.0 (OASIS, 2020), 3.27.10: a result of any kind but "fail" has the level "none".
  it('gives what waits for data no level', () => {
    const open = results(changed(TWIN_LINES, ['hand left', 'hand unknown'])).filter(
      (one: { kind: string }) => one.kind !== 'fail',
    );
    expect(open.length).toBeGreaterThan(0);
    for (const one of open) expect(one.level).toBe('none');
  });
});

/** The vessel of a spec again, under another name. */
function again(spec: string): string {
  return spec.slice(spec.indexOf('vessel ')).replaceAll('Ternhaven', 'Ollersea');
}

/** The same unknown word so many times. */
function slips(times: number): string {
  return `vessel A {\n${'  duty { hurs 3 }\n'.repeat(times)}}\n`;
}
