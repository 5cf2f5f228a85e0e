import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { folders, tailshaft } from './run.js';

const manifest = join(import.meta.dirname, '../../packages/vscode/package.json');
const [matcher] = JSON.parse(readFileSync(manifest, 'utf8')).contributes.problemMatchers;

const folder = folders();

interface Pattern {
  readonly regexp: string;
  readonly [group: string]: number | string;
}

/** The editor's way with a matcher of several lines: each of its patterns takes the next line. */
function problemsIn(text: string): Record<string, string>[] {
  const lines = text.split('\n');
  const patterns = matcher.pattern as readonly Pattern[];
  return lines.flatMap((_, start) => {
    const problem: Record<string, string> = {};
    for (const [index, { regexp, ...groups }] of patterns.entries()) {
      const found = new RegExp(regexp).exec(lines[start + index] ?? '');
      if (!found) return [];
      for (const [name, group] of Object.entries(groups)) problem[name] = found[group as number]!;
    }
    return [problem];
  });
}

it('the matcher of the extension finds what the command line prints', () => {
  const cwd = folder({
    'specs/one.shaft':
      'vessel One {\n  duty medium { hours many }\n  arrangement built { shaftline Port { gear } }\n}\n',
  });
  const { stdout, status } = tailshaft('check .', { cwd });
  expect(status).toBe(1);
  const found = problemsIn(stdout);
  const { files } = JSON.parse(tailshaft('check . --json', { cwd }).stdout);
  const errors = files[0].findings.filter((one: { severity: string }) => one.severity === 'error');
  expect(errors.length).toBeGreaterThan(0);
  for (const one of errors)
    expect(found).toContainEqual(
      expect.objectContaining({ severity: 'error', code: one.code ?? one.rule, file: 'specs/one.shaft' }),
    );
  expect(found.every(one => one.message !== undefined && Number(one.line) > 0)).toBe(true);
});
