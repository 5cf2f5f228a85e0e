import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compareSpecs, isSame } from '@tailshaft/drivetrain';
import { galleryPath, gallerySpecs } from '@tailshaft/language/manual';
import { expect, it } from 'vitest';
import { Bench, type Judged } from './silence/rejudge.js';
import { share } from './support/share.js';

/** A line of a spec that is taken out, and leaves a text that can be read, is told whatever it says. */

const root = join(import.meta.dirname, '..');

function setOf({ check }: Judged) {
  return {
    vessels: check.vessels.map(one => ({ vessel: one.vessel, verdicts: one.verdicts, file: '' })),
    entries: check.entries.map(({ reading }) => ({
      kind: reading.kind,
      name: reading.name,
      facts: reading.facts.fields,
    })),
    unread: check.problems.filter(one => one.severity === 'error').map(one => one.message),
  };
}

it.each(share(gallerySpecs(), 6).map(one => [one.code, join(root, galleryPath(one.code))] as const))(
  '%s: no line of the spec can go unsaid',
  async (_, path) => {
    const bench = new Bench();
    const lines = readFileSync(path, 'utf8').split('\n');
    const set = setOf(await bench.judge(lines.join('\n')));
    const untold: string[] = [];
    for (const [index, line] of lines.entries()) {
      // Comments and descriptions say nothing that is judged.
      if (/^\s*(?:\/\/.*|\/?\*.*)?$/.test(line)) continue;
      const without = await bench.judge(lines.filter((_, at) => at !== index).join('\n'));
      const comparison = compareSpecs(set, setOf(without));
      if (isSame(comparison)) untold.push(`${index + 1}: ${line.trim()}`);
    }
    expect(untold).toEqual([]);
  },
);
