import type { Row } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { formatText } from '../../src/format/format-text.js';
import { nextInValue } from '../../src/server/completion/values.js';
import { scan } from '../../src/text/scan.js';
import { everyRow, readLine } from './read-line.js';
import { withUnknown } from './unknown-parts.js';

const NOTHING_KNOWN = {
  duties: [],
  clutches: [],
  lines: [],
  modes: [],
  materials: () => [],
  sizes: () => [],
  today: '',
};
const END = { kind: 'word', text: '', start: 0, end: 0, line: 0 } as const;

describe.each(everyRow())('%s', (_, vocabulary, row, around) => {
  it('may be unknown, whole and in every part', () => {
    for (const value of withUnknown(row.kind)) {
      const { reading, fact } = readLine(vocabulary, `${row.words} ${value}`);
      expect([...reading.problems, ...reading.concerns], value).toEqual([]);
      expect(reading.facts, value).toHaveLength(1);
      expect(fact, value).toBeDefined();
      expect(fact!.value === undefined || fact!.open?.length, `${value} is an open question`).toBeTruthy();
      expect(fact!.written).toBe(value);
      if (value !== 'unknown') expect(fact!.open, value).toBeTruthy();
    }
  });

  it('leaves the property behind it alone', () => {
    const next = vocabulary.rows.find(one => one !== row && one.kind.form === 'quantity');
    if (!next) return;
    for (const value of withUnknown(row.kind)) {
      const { reading } = readLine(vocabulary, `${row.words} ${value}  ${next.words} unknown`);
      expect(
        reading.facts.map(one => one.row.words),
        value,
      ).toEqual([row.words, next.words]);
    }
  });

  it('is laid out as any other value', () => {
    const lines = withUnknown(row.kind).map(value => `${row.words} ${value}`);
    const text = around(lines.map(line => line.replace(/ (?=unknown)/g, '   ')).join('\n'));
    const done = formatText(text);
    for (const line of lines) expect(done.split('\n').map(one => one.trim())).toContain(line);
    expect(formatText(done)).toBe(done);
  });

  it('is offered wherever it may stand', () => {
    for (const value of withUnknown(row.kind))
      for (const [before, at] of openings(value)) offers(row, before, at);
  });
});

/** The texts before each `unknown` of a value. */
function openings(value: string): [before: string, at: string][] {
  return [...value.matchAll(/unknown/g)].map(found => [value.slice(0, found.index), value]);
}

function offers(row: Row, before: string, whole: string): void {
  const { offers: next } = nextInValue(row, scan(before), END, NOTHING_KNOWN);
  expect(
    next.map(one => one.label),
    `${whole}: behind "${before}"`,
  ).toContain('unknown');
}
