import { findRule } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from './support/check.js';

/** The gear's ahead clutch with these plates, in a whole spec. */
function spec(plates: string): string {
  const text = findRule('capacity/clutch-holding')!.examples().passing;
  const made = text.replace(
    /clutch B output opposite ahead continuous \{[^}]*\}/,
    `clutch B output opposite ahead continuous { ${plates} }`,
  );
  expect(made).not.toBe(text);
  return made;
}

async function holding(plates: string): Promise<{ worn: number; fresh: number }> {
  const { check } = await checkText(spec(plates));
  const verdict = check.vessels[0]!.verdicts.find(one => one.rule === 'capacity/clutch-holding')!;
  const fresh = verdict.workings.find(one => one.working?.name === 'clutch holding torque, uniform pressure');
  return { worn: verdict.capacity!.si, fresh: fresh!.si };
}

describe('published plate clutches from text to verdict', () => {
  it('V. B. Bhandari, Design of Machine Elements, Ex 11.8: 5 steel and 4 bronze plates hold 119.282 N·m', async () => {
    const plates =
      'steel plates 5  friction plates 4  outer diameter 150 mm  inner diameter 75 mm  friction 0.1  clamp force 2650.72 N';
    expect((await holding(plates)).worn).toBeCloseTo(119.282, 3);
  });

  it('R. S. Khurmi, J. K. Gupta, Theory of Machines, Ex 10.29: 3 and 2 discs, 1403.5 N hold 151.58 N·m', async () => {
    const plates =
      'steel plates 3  friction plates 2  outer diameter 240 mm  inner diameter 120 mm  friction 0.3  clamp force 1403.5 N';
    expect((await holding(plates)).worn).toBeCloseTo(151.58, 2);
  });

  it('U. C. Jindal, Machine Design, Ex 22-5: 4 and 3 plates, 1031.1 N hold 102.31 N·m by uniform pressure', async () => {
    const plates =
      'steel plates 4  friction plates 3  outer diameter 160 mm  inner diameter 100 mm  friction 0.25  clamp force 1031.1 N';
    expect((await holding(plates)).fresh).toBeCloseTo(102.31, 1);
  });
});
