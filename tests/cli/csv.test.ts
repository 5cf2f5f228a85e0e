import { expect, it } from 'vitest';
import { changed, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './run.js';

const folder = folders();
const today = '--today 2026-03-01';

/** Rows of a table by RFC 4180, section 2: quotes are doubled, and may hold commas and line breaks. */
function rowsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, cell = '', end] of text.matchAll(/("(?:[^"]|"")*"|[^,\r\n]*)(,|\r\n|\n|$)/g)) {
    rows.at(-1)!.push(cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (end === '') break;
    if (end !== ',') rows.push([]);
  }
  return rows.filter(one => one.length > 1);
}

it('gives every verdict as a row, with the margin, the words and the figures of the JSON', () => {
  const spec = changed(TWIN_LINES, ['hand left', 'hand right'], ['low idle 650 rpm', 'low idle unknown']);
  const cwd = folder({ 'a, b.shaft': spec });
  const { stdout, status } = tailshaft(`check . --csv ${today}`, { cwd });
  expect(status).toBe(1);
  const [head, ...rows] = rowsOf(stdout);
  const { files } = JSON.parse(tailshaft(`check . --json ${today}`, { cwd }).stdout);
  const verdicts = [...files[0].vessels, ...files[0].entries].flatMap(one =>
    one.verdicts.map((verdict: object) => ({ of: one.name, ...verdict })),
  );
  expect(rows).toHaveLength(verdicts.length);
  const cell = (row: string[], name: string) => row[head!.indexOf(name)];
  for (const [index, row] of rows.entries()) {
    const one = verdicts[index];
    expect(row).toHaveLength(head!.length);
    expect(cell(row, 'file')).toBe('a, b.shaft');
    expect([cell(row, 'of'), cell(row, 'subject'), cell(row, 'check')]).toEqual([
      one.of,
      one.subject,
      one.rule,
    ]);
    expect(cell(row, 'verdict')).toBe(one.outcome);
    expect(cell(row, 'message')).toBe(one.message);
    expect(cell(row, 'margin (%)')).toBe(one.margin === undefined ? '' : (one.margin * 100).toFixed(1));
    expect(cell(row, 'capacity')).toBe(one.capacity?.text ?? '');
  }
  expect(rows.some(row => cell(row, 'margin (%)') !== '')).toBe(true);
});

it('gives no spreadsheet a formula to run', () => {
  const spec = 'gear A { }\nvessel B { arrangement a { shaftline Port { gear "=cmd|x" } } }\n';
  const cwd = folder({ '=1+1.shaft': spec.replace('"=cmd|x"', 'A') });
  const { stdout } = tailshaft(`check . --csv ${today}`, { cwd });
  expect(stdout).not.toMatch(/^[=+@]|,[=+@]/m);
  expect(stdout).toContain("'=1+1.shaft");
});
