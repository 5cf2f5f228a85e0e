import { describe, expect, it } from 'vitest';
import { WITH_TRANSFER } from '../../packages/drivetrain/src/rules/capacity/transfer-torque.js';
import { changed, verdictsBy } from '../silence/top-list/spec-of.js';

const withSide = (facts: string, kind = 'chain') =>
  changed(WITH_TRANSFER, ['  kind chain\n', `  kind ${kind}\n${facts}`]);
const WHEEL = '  input wheel diameter 400 mm\n';
const sides = async (spec: string) =>
  (await verdictsBy(spec, 'capacity/transfer-torque')).filter(one => /side load|sideways/.test(one.message));

describe('the side load of a belt or chain', () => {
  it.each([
    ['of a chain: twice the torque over the wheel', `${WHEEL}  side load at most 20 kN\n`, 'chain', 1],
    [
      'of a belt, by the factor of its maker',
      `${WHEEL}  side load at most 30 kN\n  strand factor 1.5\n`,
      'belt',
      1.5,
    ],
  ])('%s', async (_, facts, kind, factor) => {
    const [side] = await sides(withSide(facts, kind));
    const [torque] = await verdictsBy(withSide(facts, kind), 'capacity/transfer-torque');
    expect(side!.demand!.si).toBeCloseTo((factor * 2 * torque!.demand!.si) / 0.4, 6);
    expect(side!.outcome).toBe('holds');
  });

  it('fails above what the shaft may take', async () => {
    const [side] = await sides(withSide(`${WHEEL}  side load at most 10 kN\n`));
    expect(side!.outcome).toBe('fails');
    expect(side!.message).toMatch(/larger input wheel/);
  });

  it.each([
    ['the wheel', '  side load at most 20 kN\n', 'chain', /diameter of the input wheel/],
    ['what is allowed', WHEEL, 'chain', /side load that the shaft/],
    ['the factor of a belt', `${WHEEL}  side load at most 20 kN\n`, 'belt', /strand factor/],
  ])('cannot be told without %s', async (_, facts, kind, lacks) => {
    const [side] = await sides(withSide(facts, kind));
    expect(side!.outcome).toBe('cannot tell');
    expect(side!.missing.map(one => one.what).join()).toMatch(lacks);
  });

  it('is not looked at where nothing is said of it', async () => {
    expect(await sides(WITH_TRANSFER)).toEqual([]);
  });
});
