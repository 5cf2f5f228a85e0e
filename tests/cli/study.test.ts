import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { exampleWithStudy } from '../support/study.js';
import { folders, TRACE, tailshaft } from './run.js';

const folder = folders();
const schema = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../packages/cli/schema/study.schema.json'), 'utf8'),
) as object;
const valid = new Ajv({ allErrors: true }).compile(schema);

const TEXT = exampleWithStudy(
  'pilot-cutter/ternhaven.shaft',
  `study wheel of proposed {
    vary gear any
    vary propeller pitch 33 in, 34 in, 35 in
    rank by speed at full power
    rank by least margin
    show 4
  }`,
);
const TODAY = '--today 2026-03-01';

const answer = (text: string, words: string) =>
  tailshaft(`study boat.shaft ${words}`, { cwd: folder({ 'boat.shaft': text }) });

describe('study', () => {
  it('lists the best, what limits each and what rules the others out', () => {
    const { status, stdout } = answer(TEXT, TODAY);
    expect(status).toBe(0);
    expect(
      stdout
        .replace(/in \d+\.\d s/, 'in 1.0 s')
        .split('\n')
        .map(one => one.trimEnd()),
    ).toMatchInlineSnapshot(`
      [
        "Ternhaven, study wheel of proposed: 15 candidates judged in 1.0 s",
        "  3 hold, 0 cannot tell, 12 fail",
        "",
        "The best 3 by speed at full power (highest first), then least margin (highest first); * beaten by no",
        "other in all of them",
        "  nr     gear             propeller pitch  speed at full power  least margin  limit",
        "   1  *  Alder-63 2.04:1  35 in                       28.76 kn         0.6 %  shafting/thrust-capacity of Port",
        "   2     Alder-63 2.04:1  34 in                       27.78 kn         0.6 %  shafting/thrust-capacity of Port",
        "   3     Alder-63 2.04:1  33 in                       26.77 kn         0.6 %  shafting/thrust-capacity of Port, 2 warnings",
        "",
        "What rules candidates out; a failed candidate skips the checks that depend on everything",
        "  check                         fails  alone",
        "  capacity/rating-duty              6      0",
        "  shafting/angle-stack              6      0",
        "  trace/requirement-met             6      0",
        "  speed/idle-in-gear                5      0",
        "  capacity/gear-input-torque        3      0",
        "  rotation/ahead-clutch             3      0",
        "  rotation/propeller-hand           3      0",
        "  rotation/ratio-flips-output       3      0",
        "  rotation/turning-requirement      3      0",
        "",
        "Screening, not certification: each candidate was judged by every check as if it were written in the",
        "arrangement. Write the chosen one with --write and check it.",
        "",
      ]
    `);
  });

  it('answers in JSON as the schema has it', () => {
    const { status, stdout } = answer(TEXT, `wheel --json ${TODAY}`);
    expect(status).toBe(0);
    const json = JSON.parse(stdout) as { studies: { best: { choice: object }[]; held: number }[] };
    expect(valid(json), JSON.stringify(valid.errors)).toBe(true);
    expect(json.studies[0]!.best).toHaveLength(3);
  });

  it('answers in comma-separated values, one line for each candidate that does not fail', () => {
    const { stdout } = answer(TEXT, `--csv ${TODAY}`);
    const lines = stdout.trimEnd().split('\r\n');
    expect(lines[0]).toBe(
      'vessel,study,number,outcome,gear,propeller pitch,speed at full power [kn],least margin [1],limit,subject,warnings,non-dominated',
    );
    expect(lines[1]).toMatch(/^Ternhaven,wheel,1,holds,Alder-63 2.04:1,35 in,\d+\.\d+,/);
    expect(lines).toHaveLength(4);
  });

  it('writes a candidate, of which check then tells the same', () => {
    const cwd = folder({ 'boat.shaft': TEXT });
    const written = tailshaft(`study boat.shaft --write 2 ${TODAY}`, { cwd });
    expect(written.status).toBe(0);
    expect(written.stderr).toContain(
      'wrote candidate 2 into proposed of boat.shaft: gear Alder-63 2.04:1, propeller pitch',
    );
    const text = readFileSync(join(cwd, 'boat.shaft'), 'utf8');
    const changed = text.split('\n').filter((line, at) => line !== TEXT.split('\n')[at]);
    expect(changed.map(one => one.trim())).toEqual([]);
    expect(tailshaft(`check boat.shaft ${TODAY}`, { cwd }).status).toBe(0);
  });

  it('ends with 1 where no candidate holds', () => {
    const none = TEXT.replace(
      'vary propeller pitch 33 in, 34 in, 35 in',
      'vary propeller pitch 60 in, 62 in',
    );
    const { status, stdout } = answer(none, TODAY);
    expect(status).toBe(1);
    expect(stdout).toContain('No candidate holds.');
    expect(stdout).not.toContain('--write');
  });

  it('says which check every candidate fails, where nothing that varies clears it', () => {
    const wrong = TEXT.replaceAll('tip clearance at least 15 %', 'tip clearance at least 40 %').replace(
      'vary gear any',
      'hold every check',
    );
    const { stdout } = answer(wrong, TODAY);
    expect(stdout).toContain(
      'Every candidate fails propeller/tip-clearance: put it right in the arrangement first, vary what it',
    );
    // The choice has nothing to do with it: what it would be stands apart, in text and data, and can be written.
    expect(stdout).toMatch(/Without propeller\/tip-clearance, which every candidate fails: [1-9]\d* hold/);
    expect(stdout.indexOf('No candidate holds.')).toBeLessThan(
      stdout.indexOf('Without propeller/tip-clearance'),
    );
    const data = JSON.parse(answer(wrong, `--json ${TODAY}`).stdout);
    expect(valid(data), JSON.stringify(valid.errors)).toBe(true);
    expect(data.studies[0].without).toMatchObject({ checks: ['propeller/tip-clearance'] });
    expect(data.studies[0].without.best.length).toBeGreaterThan(0);
    expect(answer(TEXT, TODAY).stdout).not.toContain('Every candidate fails');
  });

  it('says what the checks lack that cannot tell', () => {
    const open = TEXT.replace('displacement 11.8 t', 'displacement unknown');
    const { stdout } = answer(open, TODAY);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(
      /Checks that lack data: [^.]*trace\/requirement-met \(displacement/,
    );
    const { stdout: json } = answer(open, `--json ${TODAY}`);
    const [study] = (JSON.parse(json) as { studies: { lacking: { rule: string; data: string[] }[] }[] })
      .studies;
    expect(study!.lacking.find(one => one.rule === 'trace/requirement-met')!.data[0]).toMatch(
      /^displacement/,
    );
  });

  it('names no unit of a column without a figure', () => {
    const none = TEXT.replace('34 in, 35 in', '60 in').replace('pitch 33 in, ', 'pitch 58 in, ');
    const { stdout } = answer(none, `--csv ${TODAY}`);
    expect(stdout).toContain(',speed at full power,least margin,limit,');
  });

  it.each([
    ['no file', '', 'study takes one file'],
    ['another name', 'boat.shaft other', 'holds no study called other: there is wheel'],
    ['a spec without one', 'none.shaft', 'holds no study: write one in the vessel, such as study wheel of'],
    ['a number that is none', 'boat.shaft --write 0', '--write is a whole number from 1'],
    [
      'a number beyond the last',
      `boat.shaft --write 99 ${TODAY}`,
      'there is no candidate 99: they go from 1 to 3',
    ],
    ['two forms', 'boat.shaft --json --csv', 'choose one'],
  ])('says what is wrong with %s', (_, words, said) => {
    const { status, stderr } = tailshaft(`study ${words}`, {
      cwd: folder({ 'boat.shaft': TEXT, 'none.shaft': 'vessel A { }' }),
    });
    expect(status).toBe(2);
    expect(stderr).toContain(said);
    expect(stderr).not.toMatch(TRACE);
  });

  it.each([
    ['vary rudder angle 3 deg', 'A study varies a part of the line or the hull'],
    ['vary propeller diameter 26 in .. 30 in', 'needs its step'],
    ['vary propeller diameter 30 in .. 26 in by 1 in', 'from the smaller value to the greater one'],
    ['vary propeller diameter any', '"any" has no values for "propeller diameter"'],
    ['vary propeller diameter 26, 27', 'unit'],
    ['vary gear Aldr-63', 'No gear is called Aldr-63. Did you mean Alder-63?'],
    ['vary transfer any', 'No line of proposed states a transfer'],
    [
      'vary propeller pitch 0.001 in .. 900 in by 0.001 in',
      'is the most that a study tries for one property',
    ],
    ['rank by speed at breakfast', 'speed is computed at full power'],
    ['rank by beauty', '"beauty" is not a computed quantity'],
    ['hold propeller/beauty', 'No check is called propeller/beauty'],
  ])('says what cannot be studied: %s', (line, said) => {
    const text = TEXT.replace('vary gear any', line);
    const cwd = folder({ 'boat.shaft': text });
    expect(tailshaft(`check boat.shaft ${TODAY}`, { cwd }).stdout.replace(/\s+/g, ' ')).toContain(said);
    const { status, stderr } = tailshaft(`study boat.shaft ${TODAY}`, { cwd });
    expect(stderr).not.toMatch(TRACE);
    expect(status).toBe(line.startsWith('vary') ? 2 : status);
  });
});
