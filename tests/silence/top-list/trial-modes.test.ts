import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { HYBRID } from '../../../packages/drivetrain/src/rules/hybrid-specs.js';
import { TRIED } from '../../../packages/drivetrain/src/rules/trial/trial-specs.js';
import { offeredFor } from '../../fixes/offered.js';
import { changed, passing, saidBy } from './verdicts.js';

const TRIAL = /\n {2}trial "sea trial"[\s\S]*?\n {2}}\n/.exec(TRIED)![0];
const RUNS = /\n {4}run[\s\S]*(?=\n {2}}\n)/.exec(TRIAL)![0];
const MODES = /\n {6}mode[\s\S]*?(?=\n {6}shaft)/.exec(HYBRID)![0];

/** A line that an engine or a motor drives, with these modes, tried in this run. */
function tried(run: string, modes = MODES, more = ''): string {
  return changed(
    HYBRID,
    [MODES, modes],
    [
      '  arrangement proposed {',
      `${more}${changed(TRIAL, [RUNS, `\n    ${run}`])}\n  arrangement proposed {`,
    ],
  );
}

const BY_ENGINE = '\n      mode passage { driven by engine }\n      mode quiet { driven by engine }';
const SOLE = '\n      mode passage { driven by engine }';
const full = (facts: string) => `run Centre at full throttle { ${facts} }`;

describe('a run of a line that has several modes', () => {
  it.each([
    // The engine is rated at 2300 rpm, the motor turns 2950 at most and gives its power at 1500.
    ['says none', tried(full('engine speed 2310 rpm')), 'cannot tell', ['mode']],
    [
      'says that nobody knows it',
      tried(full('mode unknown  engine speed 2310 rpm')),
      'cannot tell',
      ['mode'],
    ],
    ['is by the engine', tried(full('mode passage  engine speed 2310 rpm')), 'holds', []],
    ['is by the engine, which is held back', tried(full('mode passage  engine speed 2000 rpm')), 'fails', []],
    ['is by the motor', tried(full('mode harbour  engine speed 1510 rpm')), 'holds', []],
    ['is by both', tried(full('mode boost  engine speed 2310 rpm')), 'cannot tell', ['driven by']],
    ['has modes that come to the same', tried(full('engine speed 2310 rpm'), BY_ENGINE), 'holds', []],
    ['has modes in which it fails alike', tried(full('engine speed 2000 rpm'), BY_ENGINE), 'fails', []],
    // By the motor it would hold. What fails in the plainest mode is not softened by saying less.
    ['fails by the engine and says none', tried(full('engine speed 2000 rpm')), 'fails', []],
    [
      'fails by the engine and says an unknown one',
      tried(full('mode unknown  engine speed 2000 rpm')),
      'fails',
      [],
    ],
    ['has a single mode', tried(full('engine speed 2310 rpm'), SOLE), 'holds', []],
  ])('that %s', async (_, spec, outcome, asked) => {
    const [said] = await saidBy('trial/full-throttle', spec);
    expect([said!.outcome, said!.asked]).toEqual([outcome, asked]);
  });

  it('says that it does not say which', async () => {
    const [said] = await saidBy('trial/full-throttle', tried(full('engine speed 2310 rpm')));
    expect(said!.message).toMatch(/in which mode \(passage, harbour or boost\) Centre was run.*does not say/);
  });

  it('says in which mode it is taken as run where that fails', async () => {
    const [said] = await saidBy('trial/full-throttle', tried(full('engine speed 2000 rpm')));
    expect(said!.message).toMatch(/Taken as run in mode passage: .* does not say in which one it was made/);
  });

  it('names a mode that the line has not', async () => {
    const spec = tried(full('mode silent  engine speed 2310 rpm'));
    expect(await saidBy('trial/full-throttle', spec)).toEqual([]);
    const [said] = await saidBy('trial/conditions', spec);
    expect([said!.outcome, said!.message]).toEqual(['fails', expect.stringMatching(/no such mode/)]);
  });

  it('is held against its prediction where the ratio alone gives it', async () => {
    // 2310 rpm through 2.043:1 are 1131 rpm, in every mode.
    const spec = tried(full('engine speed 2310 rpm  shaft speed 1131 rpm'));
    const said = await saidBy('trial/prediction', spec);
    expect(said.find(one => /shaft speed/.test(one.message))!.outcome).toBe('holds');
  });

  it.each([
    ['in mode passage', 'mode passage', ['holds']],
    ['in mode harbour', 'mode passage', []],
    ['', 'mode passage', ['holds']],
    ['', 'mode harbour', []],
    ['', '', ['cannot tell']],
    ['in mode passage', '', ['cannot tell']],
  ])('answers a requirement %s, run %s', async (required, run, outcomes) => {
    const spec = tried(
      full(`${run}  engine speed 2310 rpm  speed 21 kn`),
      MODES,
      `  require speed at least 20 kn at full power ${required}\n`,
    );
    const said = await saidBy('trial/requirement', spec);
    expect(said.map(one => one.outcome)).toEqual(outcomes);
  });
});

describe('the ways out for a run that does not say its mode', () => {
  it('write it, also where the mode is called as a reading is', async () => {
    const spec = tried(full('engine speed 2310 rpm'));
    const offered = (await offeredFor(spec)).find(one => one.finding.code === 'trial/full-throttle')!;
    const texts = [...offered.cures, ...offered.questions].map(one => [
      one.title,
      applyEdits(spec, one.edits).match(/run Centre[^}]*}/)![0],
    ]);
    expect(texts.map(([title]) => title)).toEqual(
      expect.arrayContaining([expect.stringMatching(/run in mode passage/)]),
    );
    const boost = await saidBy(
      'trial/full-throttle',
      spec.replace('{ engine speed 2310', '{ mode boost  engine speed 2310'),
    );
    expect(boost[0]!.asked).toEqual(['driven by']);
    expect(texts.find(([title]) => /passage/.test(title!))![1]).toMatch(/mode passage/);
  });
});

describe('a pair of runs', () => {
  const pair = (port: string, starboard: string) =>
    changed(
      passing('trial/pair').replaceAll('      shaft {', `${BY_ENGINE.slice(1)}\n      shaft {`),
      ['1800 rpm }', `1800 rpm ${port} }`],
      ['1815 rpm }', `1815 rpm ${starboard} }`],
    );

  it.each([
    ['in one mode', 'mode quiet', 'mode quiet', [['holds', []]]],
    ['in two modes is none', 'mode quiet', 'mode passage', []],
    ['of which one says no mode', 'mode quiet', '', [['cannot tell', ['mode']]]],
  ])('%s', async (_, port, starboard, told) => {
    const said = await saidBy('trial/pair', pair(port, starboard));
    expect(said.map(one => [one.outcome, one.asked])).toEqual(told);
  });
});
