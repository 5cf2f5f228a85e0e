import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed, withStatements } from './spec-of.js';

const GEAR = '      gear Alder-63 ratio 2.04:1 ahead clutch B';
const JACK = '      shaft { material high-strength-stainless  diameter 50 mm  length 1.1 m }';
const between = (parts: string) => changed(SINGLE_LINE, [GEAR, `${parts}\n${GEAR}`]);

async function lineOf(spec: string, arrangement = 'proposed') {
  const { check } = await checkText(spec);
  const { vessel, verdicts } = check.vessels[0]!;
  const line = vessel.arrangements.find(one => one.name === arrangement)!.lines[0]!;
  return { line, verdicts };
}
const rolesIn = async (spec: string, arrangement?: string) =>
  (await lineOf(spec, arrangement)).line.chain.map(one => one.role);

describe('a shaft that is written between engine and gear', () => {
  it('stands there where another one follows the gear', async () => {
    expect(await rolesIn(between(JACK))).toEqual(['engine', 'shaft', 'gear', 'shaft', 'propeller']);
    expect(await rolesIn(between(`${JACK}\n      coupling Lime { kind flexible }`))).toEqual([
      'engine',
      'shaft',
      'coupling',
      'gear',
      'shaft',
      'propeller',
    ]);
  });

  it('goes to the propeller where it is the only one: the order of a file says nothing else', async () => {
    const shaft = /\n {6}shaft \{[^\n]*/.exec(SINGLE_LINE)![0];
    const alone = changed(changed(SINGLE_LINE, [shaft, '']), [GEAR, `${shaft.slice(1)}\n${GEAR}`]);
    expect(await rolesIn(alone)).toEqual(['engine', 'gear', 'shaft', 'propeller']);
  });

  it('carries the torque of the engine, and not what the gear makes of it', async () => {
    const { line, verdicts } = await lineOf(between(JACK));
    const strength = verdicts.filter(one => one.rule === 'shafting/diameter');
    const demands = strength.map(one => one.demand!.si);
    expect(line.shafts).toHaveLength(2);
    // The gear of 2.04:1 doubles the torque, so that the bar behind it has to be thicker.
    expect(demands).toHaveLength(2);
    expect(demands[0]).toBeLessThan(demands[1]!);
  });

  it('stays there when it is kept', async () => {
    const kept = 'retain engine  retain gear  retain shaft  retain propeller';
    const later = withStatements(
      between(JACK),
      `  arrangement later revises proposed { shaftline Centre { ${kept} } }`,
    );
    expect(await rolesIn(later, 'later')).toEqual(['engine', 'shaft', 'gear', 'shaft', 'propeller']);
  });
});
