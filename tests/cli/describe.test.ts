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
    expect(said('describe a.shaft', 'vessel A { duty medium { hours many } }').stdout).toMatch(
      /^NOT READ WHOLE: 1 error/,
    );
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
