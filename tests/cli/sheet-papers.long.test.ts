import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { PAPER_WORDS } from '@tailshaft/sheet';
import { expect, it } from 'vitest';
import { builtBefore, folders, tailshaft, tailshaftProcess } from './run.js';

const root = resolve(import.meta.dirname, '../..');
const spec = join(root, 'examples/motor-launch/reedmouth.shaft');
const folder = folders();
const day = '--today 2026-03-02';

builtBefore();

it('writes a PDF by its ending, the same bytes each time', () => {
  const cwd = folder();
  for (const name of ['one.pdf', 'two.pdf'])
    expect(tailshaftProcess(`sheet ${spec} --paper summary -o ${name} ${day}`, { cwd }).status).toBe(0);
  const [one, two] = ['one.pdf', 'two.pdf'].map(name => readFileSync(join(cwd, name)));
  expect(one!.subarray(0, 8).toString()).toBe('%PDF-1.7');
  expect(one!.equals(two!)).toBe(true);
});

it('writes the paper that is asked for as a page that names the text by its digest', () => {
  const cwd = folder();
  const { status, stdout } = tailshaft(`sheet ${spec} --paper weights ${day}`, { cwd });
  expect(status).toBe(0);
  expect(stdout).toMatch(/Weight and moments/);
  expect(stdout).toMatch(/reedmouth\.shaft sha256 [0-9a-f]{16}, with \d imported files [0-9a-f]{16}/);
});

it('says which papers there are, and writes nothing, when it is asked for another', () => {
  const cwd = folder();
  const { status, stderr } = tailshaft(`sheet ${spec} --paper drawing -o x.html`, { cwd });
  expect(status).toBe(2);
  expect(stderr).toContain(PAPER_WORDS.join(', '));
  expect(existsSync(join(cwd, 'x.html'))).toBe(false);
});

it('writes drawings and tables beside, and no page unless it is asked for one', () => {
  const cwd = folder();
  const asked = `sheet ${spec} --schematic a.svg --parts parts.csv --margins margins.csv ${day}`;
  const { status, stdout } = tailshaft(asked, { cwd });
  expect([status, stdout]).toEqual([0, '']);
  const read = (name: string) => readFileSync(join(cwd, name), 'utf8');
  expect(read('a.svg')).toMatch(/^<\?xml[^>]*>\n<svg /);
  const [head, ...rows] = read('parts.csv').trimEnd().split('\n');
  expect(head).toBe('arrangement,line,part,name,title,work,fact,as written,converted,evidence,source,where');
  expect(rows.length).toBeGreaterThan(20);
  const margins = read('margins.csv').trimEnd().split('\n').slice(1);
  expect(margins.length).toBeGreaterThan(3);
});

/** DXF Reference, release 12: pairs of a group code and a value; sections end, the file ends with EOF. */
it('writes a DXF of pairs that a drawing program reads', () => {
  const cwd = folder();
  expect(tailshaft(`sheet ${spec} --schematic a.dxf ${day}`, { cwd }).status).toBe(0);
  const lines = readFileSync(join(cwd, 'a.dxf'), 'latin1').trimEnd().split('\r\n');
  expect(lines.length % 2).toBe(0);
  const pairs = lines.flatMap((line, index) =>
    index % 2 === 0 ? [[Number(line), lines[index + 1]!] as const] : [],
  );
  expect(pairs.every(([code]) => Number.isInteger(code))).toBe(true);
  const kinds = pairs.filter(([code]) => code === 0).map(([, value]) => value);
  expect(kinds.at(-1)).toBe('EOF');
  expect(kinds.filter(one => one === 'SECTION')).toHaveLength(3);
  expect(kinds.filter(one => one === 'ENDSEC')).toHaveLength(3);
  expect(kinds.filter(one => one === 'POLYLINE').length).toBe(kinds.filter(one => one === 'SEQEND').length);
  for (const kind of ['LINE', 'POLYLINE', 'CIRCLE', 'TEXT']) expect(kinds).toContain(kind);
  for (const [code, value] of pairs)
    if (code >= 10 && code < 60) expect(Number.isFinite(Number(value)), `${code} ${value}`).toBe(true);
});

it('refuses a drawing in a form that it does not know', () => {
  const { status, stderr } = tailshaft(`sheet ${spec} --schematic a.png`, { cwd: folder() });
  expect([status, stderr]).toEqual([2, expect.stringContaining('.svg or .dxf')]);
});
