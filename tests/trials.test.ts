import { join } from 'node:path';
import { vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { readExample, sheetInput } from './sheet/sheet-of.js';
import { applied } from './support/changed-example.js';
import { checkFile } from './support/check.js';

const WORKBOAT = 'workboat/saltmarsh.shaft';
const path = join(import.meta.dirname, '..', 'examples', WORKBOAT);

describe('the trial of the workboat', () => {
  it('stands on the sheet: its state, and each reading beside its prediction', async () => {
    const sheet = vesselSheetMarkdown(sheetInput(await checkFile(path)));
    const trials = sheet.slice(sheet.indexOf('## Trials'));
    expect(trials).toMatch(/\| hull and propeller \| clean \|/);
    // Shaft speed is engine speed over the exact ratio: 2200 / 3.05.
    expect(2200 / 3.05).toBeCloseTo(721.3, 1);
    expect(trials).toMatch(/Centre.*at full throttle|Centre\*\*, full throttle/);
    expect(trials).toMatch(/\| shaft speed \| 721 rpm \| 721\.3 rpm[^|]*\| no difference \|/);
    expect(trials).toMatch(/\| speed \| 8\.1 kn \| 8\.2\d* kn[^|]*\| −1\.8 % \|/);
    expect(trials).toMatch(/\| gear oil temperature \| 64 °C \| not predicted \|/);
  });

  it('answers a requirement beside the prediction', async () => {
    const { check } = await checkFile(path);
    const { vessel, verdicts } = check.vessels[0]!;
    const idle = vessel.requirements.find(one => one.condition === 'idle ahead')!;
    const answers = verdicts.filter(one => one.answers === idle.origin).map(one => [one.rule, one.outcome]);
    expect(answers).toEqual([
      ['speed/idle-in-gear', 'holds'],
      ['trial/requirement', 'holds'],
    ]);
  });

  // What is changed of the trial sheet, and what is found then.
  it.each([
    ['shaft speed 721 rpm', 'shaft speed 653 rpm', 'trial/prediction', 'fails'],
    ['engine speed 2200 rpm', 'engine speed 2100 rpm', 'trial/full-throttle', 'fails'],
    ['engine speed 2200 rpm', 'engine speed 2320 rpm', 'trial/full-throttle', 'fails'],
    ['displacement 19.4 t', 'displacement 17 t', 'trial/conditions', 'fails'],
    ['displacement 19.4 t', '', 'trial/conditions', 'cannot tell'],
    ['dated 2026-02-24', 'dated 2026-04-24', 'trial/conditions', 'fails'],
    ['tachometers checked', 'tachometers not checked', 'trial/conditions', 'fails'],
    ['run Centre  at idle', 'run Port  at idle', 'trial/conditions', 'fails'],
    ['speed 3 kn', 'speed 5.4 kn', 'trial/requirement', 'fails'],
    ['speed 8.1 kn', 'speed 9 kn', 'trial/prediction', 'fails'],
    ['shaft power 73.5 kW', 'shaft power 90 kW', 'trial/prediction', 'fails'],
  ])('"%s" become "%s": %s %s', async (from, to, rule, outcome) => {
    const text = readExample(WORKBOAT);
    expect(text).toContain(from);
    const { check } = await applied(WORKBOAT, text.replace(from, to));
    const found = check.vessels[0]!.verdicts.filter(one => one.rule === rule).map(one => one.outcome);
    expect(found).toContain(outcome);
  });

  it('takes the difference that the criteria allow', async () => {
    const text = readExample(WORKBOAT)
      .replace('speed 8.1 kn', 'speed 9 kn')
      .replace('criteria {', 'criteria { trial difference at most 12 % ');
    const { check } = await applied(WORKBOAT, text);
    const said = check.vessels[0]!.verdicts.filter(one => one.rule === 'trial/prediction');
    expect(said.map(one => one.outcome)).not.toContain('fails');
    expect(new Set(said.map(one => one.criterionChosenBy))).toEqual(new Set(['author']));
  });
});
