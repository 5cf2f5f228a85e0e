import { describe, expect, it } from 'vitest';
import { changed, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './run.js';

const folder = folders();
const today = '--today 2026-03-01';
const said = (words: string, text: string) =>
  tailshaft(`${words} ${today}`, { cwd: folder({ 'a.shaft': text }), input: text });

describe('describe', () => {
  it('says the same of any order and layout, line by line', () => {
    const { stdout, status } = said('describe a.shaft', TWIN_LINES);
    expect(status).toBe(0);
    const moved = changed(TWIN_LINES.replaceAll('\n', '\n\n'), [
      'blades 4  diameter 26 in',
      'diameter 26 in  blades 4',
    ]);
    expect(said('describe a.shaft', moved).stdout).toBe(stdout);
    expect(said('describe -', TWIN_LINES).stdout).toBe(stdout);
    expect(said('describe a.shaft --in .', TWIN_LINES).stdout).toBe(stdout);
  });

  it('differs in the fact, what follows and the verdict, and in nothing else', () => {
    const lines = (text: string) => said('describe a.shaft', text).stdout.split('\n');
    const [before, after] = [lines(TWIN_LINES), lines(changed(TWIN_LINES, ['hand left', 'hand right']))];
    const gone = before.filter(one => !after.includes(one));
    expect(gone).toContainEqual(
      expect.stringMatching(/fact proposed\.Port propeller, hand: left \[drawing\]/),
    );
    expect(gone).toContainEqual(
      expect.stringMatching(/verdict proposed\.Port: rotation\/propeller-hand: holds/),
    );
    expect(gone.every(one => !one.includes('Starboard'))).toBe(true);
  });

  it('begins with what cannot be read whole', () => {
    const broken = 'vessel A { duty medium { hours many } }';
    const { stdout } = said('describe a.shaft', broken);
    expect(stdout).toMatch(/^NOT READ WHOLE: 1 error/);
    // What is broken is described by nothing else: another text must not read the same.
    expect(stdout).toContain(broken);
  });

  it('tells the entries of a catalogue and what a practice sets, fact by fact', () => {
    const text =
      'coupling Elm-4 { mass 14 kg  torque at most 950 N.m [sheet] }\npractice Office {\n  acceptances of "rotation/" by "class"\n  gravity of "speed/" is error\n}\n';
    expect(
      said('describe a.shaft', text)
        .stdout.split('\n')
        .filter(one => one.includes(', ')),
    ).toEqual([
      'coupling Elm-4 fact, mass: 14 kg',
      'coupling Elm-4 fact, torque at most: 950 N.m [sheet]',
      'practice Office fact, acceptances of rotation/ by: "class"',
      'practice Office fact, acceptances of rotation/: "rotation/"',
      'practice Office fact, gravity of speed/ is: error',
      'practice Office fact, gravity of speed/: "speed/"',
    ]);
  });

  it('tells what stands beside the parts: trials, modes and arrangements', () => {
    const text = changed(TWIN_LINES, [
      '  arrangement proposed',
      '  trial "sea trial" dated 2026-02-24 { run Port at full throttle { engine speed 2290 rpm [measured] } }\n  arrangement proposed',
    ]);
    const { stdout } = said('describe a.shaft', text);
    expect(stdout).toContain(
      'Ternhaven fact trial, "sea trial": Port at full throttle: engine speed: 2290 rpm [measured]',
    );
    expect(stdout).toContain('Ternhaven fact arrangement proposed\n');
  });
});

describe('check', () => {
  it('takes a dash for standard input', () => {
    const answer = said('check -', TWIN_LINES);
    expect(answer.stdout).toMatch(/^Ternhaven {2}holds/);
    expect(answer.status).toBe(0);
  });

  it('prints JUnit with a case for each check, and passes none that cannot tell', () => {
    const wrong = changed(TWIN_LINES, ['hand left', 'hand right'], ['low idle 650 rpm', 'low idle unknown']);
    const { stdout, status } = said('check a.shaft --junit', wrong);
    expect(status).toBe(1);
    const json = JSON.parse(said('check a.shaft --json', wrong).stdout).summary;
    expect(stdout.match(/<failure /g)).toHaveLength(json.fails);
    expect(stdout.match(/<skipped /g)).toHaveLength(json.notChecked);
    expect(stdout).toMatch(/^<\?xml/);
  });
});
