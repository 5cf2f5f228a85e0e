import type { Vocabulary } from '@tailshaft/vocabulary';
import { ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { Specs } from '../edit/specs.js';
import { CATALOGUE, VESSEL } from '../server/specs.js';

const problemsOf = async (text: string) =>
  (await Specs.read({ 'negative.shaft': text })).check.problems.map(
    one => `${one.code} at "${text.slice(one.start, one.end)}"`,
  );
const shaft = (facts: string) =>
  problemsOf(`vessel V {\n  arrangement a {\n    shaftline L {\n      shaft { ${facts} }\n    }\n  }\n}\n`);
const engine = (facts: string) => problemsOf(`engine E {\n  ${facts}\n}\n`);
const place = (facts: string) =>
  problemsOf(`vessel V {\n  arrangement a {\n    shaftline L {\n      engine { ${facts} }\n    }\n  }\n}\n`);
const gear = (facts: string) => problemsOf(`gear G {\n  ${facts}\n}\n`);
const hull = (facts: string) => problemsOf(`vessel V {\n  hull planing { ${facts} }\n}\n`);

describe('a number below zero', () => {
  it.each([
    [shaft, 'diameter -80 mm', '-80 mm'],
    [shaft, 'length -3 m', '-3 m'],
    [shaft, 'section s { from 0.4 m  length 1 m  diameter -85 mm }', '-85 mm'],
    [engine, 'mass -905 kg', '-905 kg'],
    [engine, 'cylinders -6', '-6'],
    [engine, 'peak torque -480 N.m at 1400 rpm', '-480 N.m'],
    [engine, 'peak torque 480 N.m at -1400 rpm', '-1400 rpm'],
    [engine, 'rating medium { power -300 kW at 2300 rpm }', '-300 kW'],
    [gear, 'rated medium -0.112 kW/rpm', '-0.112 kW/rpm'],
    [gear, 'oil pressure -20 .. 24 bar', '-20 bar'],
    [gear, 'efficiency -97 %', '-97 %'],
    [hull, 'deadrise -16 deg', '-16 deg'],
    [hull, 'LCG -4 m', '-4 m'],
  ] as const)('is refused where it stands: %#', async (read, facts, at) => {
    const said = await read(facts);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/^text\/number at "-/);
    expect(at.startsWith(said[0]!.slice('text/number at "'.length, -1).split(' ')[0]!)).toBe(true);
  });

  it.each([
    [shaft, 'angle -3 deg  bearing b { at -0.1 m }'],
    [hull, 'LCB -2 %  centre of gravity at -0.4 m  wake fraction -0.02  thrust deduction -0.01'],
    [hull, 'running trim -1 deg'],
    [place, 'air temperature -10 °C'],
    [gear, 'layout down-angle -8 deg'],
    [shaft, 'diameter 80 mm'],
  ] as const)('is taken where the property has two sides: %#', async (read, facts) => {
    expect(await read(facts)).toEqual([]);
  });

  it('gives one problem, and no verdict is reckoned from it', async () => {
    const text = `${CATALOGUE}\n${VESSEL}`.replace('power 300 kW at 2300', 'power -300 kW at 2300');
    const { check } = await Specs.read({ 'negative.shaft': text });
    expect(check.problems.map(one => one.message)).toEqual([
      '"power" is written as -300 kW, and it cannot be below zero, so no check uses it. Write the value without the minus, or "unknown" until it is known.',
    ]);
    expect(check.problems[0]!.choices?.map(one => one.text)).toEqual(['300 kW']);
    const values = check.vessels.flatMap(one => one.verdicts).flatMap(one => [one.capacity, one.demand]);
    expect(values.filter(one => one && one.dimension !== 'length' && one.si < 0)).toEqual([]);
  });

  it('is allowed for places, angles and few other properties', () => {
    const signed = new Set<string>();
    const visit = ({ title, rows, blocks }: Vocabulary): void => {
      for (const row of rows) if (row.signed) signed.add(row.words);
      for (const one of blocks) if (one.block.title !== title) visit(one.block);
    };
    for (const one of [ENTRY_VOCABULARY, PLACE_VOCABULARY, VESSEL_VOCABULARY])
      Object.values(one).forEach(visit);
    expect([...signed].sort()).toEqual([
      'LCB',
      'angle',
      'at',
      'axis height',
      'axis offset',
      'centre of gravity at',
      'down-angle',
      'from',
      'installed angle at most',
      'output drop',
      'output face at',
      'output offset',
      'position',
      'running angle at most',
      'running trim',
      'thrust deduction',
      'wake fraction',
    ]);
  });
});
