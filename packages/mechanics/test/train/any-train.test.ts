import {
  assemblyConditions,
  carriedShares,
  type GearMesh,
  type GearTrain,
  trainMotion,
  trainRatio,
  trainTorques,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/*
 * Any train by what must be true of it, whatever its form: each printed equation holds between the speeds that are given,
 * each printed balance between the torques, what comes in goes out, and what is held stands still.
 */

const teeth = fc.integer({ min: 1, max: 90 });
const names = ['a', 'b', 'c', 'd', 'e'];
const name = fc.constantFrom(...names);
const mesh: fc.Arbitrary<GearMesh> = fc
  .record({
    a: name,
    teethA: teeth,
    b: name,
    teethB: teeth,
    kind: fc.constantFrom('external' as const, 'internal' as const, 'bevel' as const),
    side: fc.constantFrom('near' as const, 'far' as const),
    carrier: fc.option(name, { nil: undefined }),
  })
  .filter(({ a, b, carrier, kind, teethA, teethB }) => {
    if (kind === 'bevel' && carrier === undefined) return false;
    return a !== b && carrier !== a && carrier !== b && !(kind === 'internal' && teethA === teethB);
  });
const trains: fc.Arbitrary<GearTrain> = fc
  .record({
    meshes: fc.array(mesh, { minLength: 1, maxLength: 4 }),
    held: fc.array(name, { maxLength: 2 }),
    locked: fc.array(fc.tuple(name, name), { maxLength: 1 }),
  })
  .map(({ meshes, held, locked }) => {
    const members = new Set(meshes.flatMap(one => [one.a, one.b, ...(one.carrier ? [one.carrier] : [])]));
    return {
      meshes,
      held: [...new Set(held)].filter(one => members.has(one)),
      locked: locked.filter(([one, other]) => one !== other && members.has(one) && members.has(other)),
    };
  });

/** `24 (ω_b − ω_c) = −64 ω_d` as its two sides; `T_a + 16 F1 − T_a-b = 0` as well. */
function sides(equation: string, values: ReadonlyMap<string, number>): number[] {
  const script = equation
    .replaceAll('−', '-')
    .replaceAll(/(\d) (?=[(ωFT])/g, '$1 * ')
    .replaceAll(/ω_\w+|T_\w+(?:-\w+)?|\bF\d+/g, one => `(${values.get(one)})`);
  expect(script).toMatch(/^[\d\s()*+\-.e=]*$/);
  return script.split('=').map(side => new Function(`return ${side}`)() as number);
}

const near = (one: number, other: number, size: number) =>
  expect(Math.abs(one - other)).toBeLessThan(1e-7 * Math.max(1, size));

describe('any train', () => {
  it('turns as its printed equations say, and as it is held and locked', () => {
    let seen = 0;
    fc.assert(
      fc.property(trains, name, name, (train, input, output) => {
        const found = trainRatio(train, input, output);
        if (!found.known) return;
        const motion = trainMotion(train, { [input]: 1 });
        if (!motion.solved) throw new Error(motion.problem);
        seen++;
        near(found.ratio.si * motion.speeds.get(output)!, 1, 1);
        for (const one of train.held!) expect(motion.speeds.get(one)).toBeCloseTo(0, 9);
        const { text, notes, inputs } = found.ratio.working!;
        const equations = text.split('; ');
        expect(equations).toHaveLength(train.meshes.length);
        for (const [at, { a, b, kind, carrier }] of train.meshes.entries()) {
          const speeds = [a, b, ...(carrier ? [carrier] : [])].map(one => motion.speeds.get(one));
          // A bevel planet turns on its arm: its speed is told beside that of the arm.
          if (speeds.includes(undefined)) continue;
          const values = new Map(names.map(one => [`ω_${one}`, motion.speeds.get(one) ?? Number.NaN]));
          const [left, right] = sides(equations[at]!, values) as [number, number];
          near(left, right, Math.abs(left));
          expect(equations[at]!.includes(`ω_${carrier})`), kind).toBe(carrier !== undefined);
        }
        for (const [one, other] of train.locked!) {
          const [was, is] = [motion.speeds.get(one), motion.speeds.get(other)];
          if (was !== undefined && is !== undefined) near(was, is, Math.abs(was));
        }
        expect(notes).toHaveLength(train.held!.length + train.locked!.length);
        const counts = new Set(
          train.meshes.flatMap(one => [`${one.a} ${one.teethA}`, `${one.b} ${one.teethB}`]),
        );
        expect(new Set(inputs.map(one => `${one.label.slice('teeth of '.length)} ${one.si}`))).toEqual(
          counts,
        );
      }),
      { numRuns: 1500 },
    );
    expect(seen).toBeGreaterThan(200);
  });

  it('is in balance: each printed sum is nil, what is not held bears nothing, and no work is lost', () => {
    let seen = 0;
    fc.assert(
      fc.property(trains, name, name, (train, input, output) => {
        const found = trainTorques(train, input, output, 100);
        const shares = carriedShares(train, input, output);
        expect(shares.known).toBe(found.known);
        if (!found.known || !shares.known) return;
        seen++;
        const { torques, locks } = found;
        const size = Math.max(...[...torques.values()].map(Math.abs));
        const outside = new Set([input, output, ...train.held!]);
        for (const [member, torque] of torques) if (!outside.has(member)) expect(torque, member).toBe(0);
        if (input !== output && !train.held!.includes(input)) expect(torques.get(input)).toBe(100);
        const motion = trainMotion(train, { [input]: 1 });
        if (motion.solved && ![...torques.keys()].some(one => motion.speeds.get(one) === undefined)) {
          let work = 0;
          for (const [member, torque] of torques) work += torque * motion.speeds.get(member)!;
          near(work, 0, size);
        }
        for (const [at, one] of shares.shares.entries()) {
          const lock = at - train.held!.length;
          const torque = lock < 0 ? torques.get(one.members[0]!)! : locks[lock]!;
          if (lock >= 0 || !([input, output] as unknown[]).includes(one.members[0]))
            near(100 * one.share.si, torque, size);
        }
        // The tooth forces are not told: those of the first mesh of each member follow from the others.
        const text = shares.shares[0]?.share.working?.text.split('; ') ?? [];
        for (const equation of text) expect(equation).toMatch(/ = 0$/);
        for (const [k, [one, other]] of train.locked!.entries()) {
          const place = (member: string) => text.find((_, at) => [...torques.keys()][at] === member)!;
          expect(place(one)).toContain(`T_${one}-${other}`);
          expect(place(other)).toMatch(new RegExp(`− T_${one}-${other}`));
          expect(
            text.filter(line => line.includes(`T_${one}-${other}`)),
            `lock ${k}`,
          ).toHaveLength(2);
        }
      }),
      { numRuns: 1500 },
    );
    expect(seen).toBeGreaterThan(100);
  });

  const pair: GearMesh = { a: 'a', teethA: 20, b: 'b', teethB: 40, kind: 'external' };
  it.each<[string, GearTrain, string | undefined]>([
    ['one tooth is the least', { meshes: [{ ...pair, teethA: 1 }] }, undefined],
    ['none is too few', { meshes: [{ ...pair, teethA: 0 }] }, 'a needs a whole number of teeth, not 0'],
    ['half a tooth of the second', { meshes: [{ ...pair, teethB: 1.5 }] }, 'b needs a whole number of teeth'],
    ['carried by its first', { meshes: [{ ...pair, carrier: 'a' }] }, 'a cannot be carried by itself'],
    ['carried by its second', { meshes: [{ ...pair, carrier: 'b' }] }, 'b cannot be carried by itself'],
    ['equal teeth outside', { meshes: [{ ...pair, teethB: 20 }] }, undefined],
    ['equal teeth in a ring', { meshes: [{ ...pair, teethB: 20, kind: 'internal' }] }, 'have equal teeth'],
    ['a stranger locked', { meshes: [pair], locked: [['a', 'x']] }, 'x is in no mesh'],
  ])('%s', (_, train, problem) => {
    const motion = trainMotion(train, { a: 1 });
    expect(motion.solved).toBe(problem === undefined);
    const torques = trainTorques(train, 'a', 'b', 1);
    for (const one of [motion, torques])
      if ('problem' in one) expect(one.problem).toContain(problem ?? 'the torques do not balance');
  });

  it('names where its teeth are declared, or what they were assumed by', () => {
    const here = { uri: 'x', start: 1, end: 3 };
    const inputsOf = (more: Partial<GearMesh>) => {
      const found = trainRatio({ meshes: [{ ...pair, ...more }] }, 'a', 'b');
      return found.known ? found.ratio.working!.inputs.map(one => [one.origin, one.assumed]) : [];
    };
    expect(inputsOf({})).toEqual([[undefined, undefined], [undefined, undefined]]); // biome-ignore format: pairs
    expect(inputsOf({ assumed: 'a guess' })).toEqual([[undefined, 'a guess'], [undefined, 'a guess']]); // biome-ignore format: pairs
    expect(inputsOf({ assumed: 'a guess', places: [here, undefined] })).toEqual([[here, undefined], [undefined, 'a guess']]); // biome-ignore format: pairs
  });

  it.each([
    // One planet never meets a neighbour; two lie opposite each other, and meet where Z_S + Z_P <= Z_P + 2.
    [3, 60, 123, 1, true],
    [3, 60, 123, 2, true],
    [2, 60, 122, 2, false],
    // sin 60° (12 + 10) = 19.05 over 12; sin 45° (12 + 30) = 29.7 under 32.
    [12, 10, 32, 3, true],
    [12, 30, 72, 4, false],
  ])('planets of a set %i, %i, %i clear each other, %i of them: %s', (sun, planet, ring, planets, clear) => {
    const conditions = assemblyConditions(sun, planet, ring, planets);
    expect(conditions[2]!.met).toBe(clear);
    expect(conditions[0]!.condition).toContain(`Z_S + 2 Z_P = ${ring}, is ${ring}`);
    expect(conditions[1]!.condition).toContain(`= ${Number(((sun + ring) / planets).toFixed(3))} must`);
  });
});
