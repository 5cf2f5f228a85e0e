import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './cli/run.js';

const folder = folders();
const [, vessel] = SINGLE_LINE.split(/^(?=vessel )/m) as [string, string];
const [catalogue] = SINGLE_LINE.split(/^(?=vessel )/m) as [string, string];

/** Codes and messages of the errors of a spec that imports these files. */
function errors(files: Readonly<Record<string, string>>, imports = Object.keys(files), own = ''): string[] {
  const spec = `${imports.map(one => `import "${one.replace('.shaft', '')}"\n`).join('')}${own}${vessel}`;
  const cwd = folder({ ...files, 'spec.shaft': spec });
  const { files: found } = JSON.parse(
    tailshaft('check spec.shaft --json --today 2026-03-01', { cwd }).stdout,
  );
  return found[0].findings
    .filter((one: { severity: string }) => one.severity === 'error')
    .map((one: { code: string; message: string }) => `${one.code}: ${one.message}`);
}

describe('a name that two imported files give to different things', () => {
  const other = (from: string, to: string) => {
    expect(catalogue).toContain(from);
    return catalogue.replace(from, to);
  };

  it.each([
    ['an engine', 'power 300 kW', 'power 90 kW', 'engine Kittiwake-9'],
    ['a gear', 'rated medium 0.18 kW/rpm', 'rated medium 0.28 kW/rpm', 'gear Alder-63'],
    ['a material', '70000 psi', '90000 psi', 'shaft material high-strength-stainless'],
  ])('is an error where the vessel uses it: %s', (_what, from, to, name) => {
    const files = { 'parts/a.shaft': catalogue, 'parts/b.shaft': other(from, to) };
    for (const imports of [['parts/a', 'parts/b'], ['parts']])
      expect(errors(files, imports)).toEqual([
        `text/twice: There are two of ${name}, in parts/a.shaft and in parts/b.shaft, and they differ: the first counts. Import the one that is meant, or give each its own name.`,
      ]);
  });

  it('is none where they agree, or where nothing names it', () => {
    expect(errors({ 'a.shaft': catalogue, 'b.shaft': catalogue.replace('300 kW', '300.0 kW') })).toEqual([]);
    const spare = 'engine Spare { fuel diesel }\n';
    expect(errors({ 'a.shaft': catalogue + spare, 'b.shaft': spare.replace('diesel', 'petrol') })).toEqual(
      [],
    );
  });
});

it('says where it is imported that criteria outside of a vessel count nowhere', () => {
  const files = { 'a.shaft': catalogue, 'office.shaft': 'criteria { tip speed at most 20 m/s }\n' };
  expect(errors(files)).toEqual([expect.stringMatching(/^text\/import: "office.shaft" has a statement/)]);
});
