import { given, renamed, torqueFromPower } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { plainText } from '../src/document/text.js';
import { WorkingsBook } from '../src/sections/workings-book.js';

const here = { at: 'here' };
const book = () => new WorkingsBook(origin => (origin === here ? 'spec:3' : undefined));
const power = (more = {}) =>
  given('rated power', 'P', 'power', 84_000, { written: '84 kW', origin: here, ...more });
const speed = given('rated speed', 'ω', 'rotational speed', (2200 * 2 * Math.PI) / 60, {
  written: '2200 rpm',
  assumed: 'as the sister vessel',
});

describe('the book of workings', () => {
  it('enters a number once, whatever it is called', () => {
    const one = book();
    const torque = torqueFromPower({ power: power(), speed });
    expect(one.refer(torque, 'Port')).toBe(1);
    expect(one.refer(renamed(torque, 'engine torque', 'T_e'), 'Port')).toBe(1);
    expect(one.refer(torqueFromPower({ power: power(), speed }), 'Port')).toBe(1);
    expect(one.refer(torqueFromPower({ power: power({ origin: {} }), speed }), 'Port')).toBe(2);
    expect(one.entries.map(entry => entry.number)).toEqual([1, 2]);
  });

  it('has no entry for what was only declared', () => {
    expect(book().refer(power(), 'Port')).toBeUndefined();
  });

  it('prints formula, inputs with place or assumption, and source', () => {
    const one = book();
    one.refer(torqueFromPower({ power: power(), speed }), 'Port');
    const lines = one.lines(one.entries[0]!).map(plainText);
    expect(lines[0]).toBe('T = P / ω\nT = 84 kW / 2200 rpm = 364.6 N·m');
    expect(lines[1]).toBe('P rated power: 84 kW spec:3');
    expect(lines[2]).toContain('ω rated speed: 2200 rpm');
    expect(lines[2]).toContain('assumed: as the sister vessel');
    expect(lines.at(-1)).toMatch(/^Source: /);
  });

  it('says it when a range is not met', () => {
    const one = book();
    one.refer(torqueFromPower({ power: power(), speed: { ...speed, si: 0 } }), 'Port');
    expect(one.lines(one.entries[0]!).map(plainText).join('\n')).toContain('OUTSIDE ITS RANGE');
  });
});
