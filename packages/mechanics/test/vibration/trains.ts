import {
  given,
  type TorsionalGap,
  type TorsionalGear,
  type TorsionalInertia,
  type TorsionalModel,
  type TorsionalShaft,
  type TorsionalSolution,
} from '@tailshaft/mechanics';
import fc from 'fast-check';

export const J = (name: string, si: number, more: Partial<TorsionalInertia> = {}): TorsionalInertia => ({
  name,
  inertia: given(`inertia of ${name}`, 'J', 'moment of inertia', si),
  ...more,
});

export const K = (name: string, from: string, to: string, si: number): TorsionalShaft => ({
  name,
  from,
  to,
  stiffness: given(`stiffness of ${name}`, 'k', 'torsional stiffness', si),
});

export const G = (
  name: string,
  driver: string,
  driven: string,
  si: number,
  sense: 'same' | 'opposite' = 'opposite',
): TorsionalGear => ({ name, driver, driven, ratio: given(`ratio of ${name}`, 'i', 'ratio', si), sense });

/** The solution, or the reason there is none as the test's failure. */
export function must(result: TorsionalSolution | TorsionalGap): TorsionalSolution {
  if (result.solved) return result;
  throw new Error([...result.missing.map(one => one.sentence), ...result.faults].join('\n'));
}

const logarithmic = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

/** Random trains without loops, of 2 to 9 inertias: in a row, or branched; some links are gears. */
export function trains({ branched }: { branched: boolean }): fc.Arbitrary<TorsionalModel> {
  const link = fc.record({
    parent: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    geared: fc.double({ min: 0, max: 1, noNaN: true }).map(x => x < 0.3),
    stiffness: logarithmic(1e3, 1e7),
    ratio: logarithmic(0.2, 5),
    sense: fc.constantFrom<'same' | 'opposite'>('same', 'opposite'),
    inertia: logarithmic(0.01, 100),
  });
  return fc
    .tuple(logarithmic(0.01, 100), fc.array(link, { minLength: 1, maxLength: 8 }))
    .map(([first, links]) => {
      const inertias = [J('n0', first)];
      const shafts: TorsionalShaft[] = [];
      const gears: TorsionalGear[] = [];
      links.forEach((one, i) => {
        const parent = branched ? Math.floor(one.parent * (i + 1)) : i;
        const name = `n${i + 1}`;
        inertias.push(J(name, one.inertia));
        if (one.geared) gears.push(G(`g${i}`, `n${parent}`, name, one.ratio, one.sense));
        else shafts.push(K(`s${i}`, `n${parent}`, name, one.stiffness));
      });
      return { inertias, shafts, gears };
    });
}
