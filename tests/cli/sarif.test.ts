import { createRequire } from 'node:module';
import { Ajv } from 'ajv';
import addFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { examplesFolder } from '../support/examples.js';
import { folders, tailshaft } from './run.js';

const folder = folders();
const today = '--today 2026-03-01';

/** The schema of the standard (OASIS SARIF 2.1.0, schema 2.1.0-rtm.5), as a package of matchers carries it. */
const { id, $schema, ...schema } = createRequire(import.meta.url)(
  '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json',
);
const ajv = new Ajv({ allErrors: true, strict: false, unicodeRegExp: false });
addFormats.default(ajv);
const valid = ajv.compile(schema);

function faults(log: unknown): string[] {
  valid(log);
  return (valid.errors ?? []).map(one => `${one.instancePath} ${one.message}`);
}

const log = (files: Record<string, string>, words = '.', cwd = folder(files)) =>
  JSON.parse(tailshaft(`check ${words} --sarif ${today}`, { cwd }).stdout);

const THIN: [string, string] = ['diameter 65 mm', 'diameter 40 mm'];
const ACCEPTED = changed(TWIN_LINES, THIN, [
  '  arrangement proposed',
  '  accept shafting/diameter on proposed.Port because "trial runs" by "surveyor" dated 2026-01-10 until 2027-01-01\n  arrangement proposed',
]);

describe('a SARIF log keeps to the schema of the standard', () => {
  it('of this version', () => {
    expect([id, $schema]).toEqual([
      expect.stringContaining('sarif-2.1.0-rtm.5'),
      // What it says in draft 04 and the validator reads as draft 07 is the same, but for its two head words.
      'http://json-schema.org/draft-04/schema#',
    ]);
  });

  it.each([
    ['nothing to say', SINGLE_LINE],
    ['a failure', changed(SINGLE_LINE, ['hand right', 'hand left'])],
    ['what waits for data', changed(SINGLE_LINE, ['hand right', 'hand unknown'])],
    ['a failure that is accepted', ACCEPTED],
    ['a text that cannot be read', changed(SINGLE_LINE, ['vessel', 'vesel'])],
  ])('with %s', (_, text) => {
    const made = log({ 'å b/c#d.shaft': text });
    expect(faults(made)).toEqual([]);
    expect(made.runs).toHaveLength(1);
  });

  it('with a baseline', () => {
    const cwd = folder({ 'a.shaft': changed(SINGLE_LINE, THIN) });
    tailshaft(`check . --write-baseline base.json ${today}`, { cwd });
    const made = log({}, '. --baseline base.json', cwd);
    expect(made.runs[0].results[0].baselineState).toBe('unchanged');
    expect(faults(made)).toEqual([]);
  });

  it('for mistakes of the gallery', () => {
    const made = log({}, 'mistakes/paper-*.shaft', examplesFolder);
    expect(made.runs[0].results.length).toBeGreaterThan(5);
    expect(faults(made)).toEqual([]);
  });

  it('which refuses another level, a line 0 and a word that it does not know', () => {
    const made = log({ 'a.shaft': changed(SINGLE_LINE, ['hand right', 'hand left']) });
    const [result] = made.runs[0].results;
    result.level = 'fatal';
    result.locations[0].physicalLocation.region.startLine = 0;
    result.gravity = 1;
    expect(faults(made)).toEqual([
      '/runs/0/results/0 must NOT have additional properties',
      '/runs/0/results/0/level must be equal to one of the allowed values',
      '/runs/0/results/0/locations/0/physicalLocation/region/startLine must be >= 1',
    ]);
  });
});
