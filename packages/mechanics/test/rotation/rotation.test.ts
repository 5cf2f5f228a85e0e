import {
  engineSense,
  explainRotation,
  type FlywheelFacing,
  type Hand,
  handFor,
  handThatDrivesAhead,
  lineRotation,
  meshFactor,
  type OutputCompared,
  type OutputSense,
  powerLeavesAft,
  type RotationStage,
  type RotationWord,
  relabel,
  senseThatDrivesAhead,
  stageFactor,
  type Turn,
  turnAtFlywheel,
  turning,
  type ViewPoint,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import * as vectors from './vectors.js';

const CLOCKWISE: Record<RotationWord, boolean> = {
  clockwise: true,
  right: true,
  'counter-clockwise': false,
  left: false,
  // SAE J824: standard is counter-clockwise seen from the principal output end.
  standard: false,
  opposite: true,
};

describe('rotation against angular velocity vectors', () => {
  const words: RotationWord[] = ['standard', 'opposite', 'clockwise', 'counter-clockwise', 'left', 'right'];
  const views: ViewPoint[] = ['flywheel', 'front', 'aft', 'forward'];
  const facings: FlywheelFacing[] = ['aft', 'forward'];
  const outputs: OutputSense[] = ['same', 'opposite'];
  const compared: OutputCompared[] = ['seen from aft', 'each at its own end'];
  const transfers: [RotationStage, (omega: vectors.Vector) => vectors.Vector][] = [
    [{ kind: 'shaft', name: 'shaft' }, omega => omega],
    [{ kind: 'meshes', name: 'pair', external: 1 }, vectors.throughExternalMesh],
    [
      { kind: 'meshes', name: 'idler', external: 2 },
      omega => vectors.throughExternalMesh(vectors.throughExternalMesh(omega)),
    ],
    [{ kind: 'meshes', name: 'ring', external: 0, internal: 1 }, vectors.throughInternalMesh],
    [
      { kind: 'meshes', name: 'both', external: 1, internal: 1 },
      omega => vectors.throughInternalMesh(vectors.throughExternalMesh(omega)),
    ],
    [{ kind: 'belt', name: 'belt' }, omega => vectors.throughBelt(omega, false)],
    [{ kind: 'belt', name: 'crossed belt', crossed: true }, omega => vectors.throughBelt(omega, true)],
    [{ kind: 'chain', name: 'chain' }, omega => vectors.throughBelt(omega, false)],
  ];
  let combinations = 0;

  for (const word of words) {
    for (const view of views) {
      if ((word === 'standard' || word === 'opposite') && view !== 'flywheel') continue;
      it(`${word} seen from ${view}: every facing, gear, layout, transfer, hand and side`, () => {
        for (const facing of facings) {
          const flywheel = facing === 'aft' ? vectors.AFTWARD : vectors.FORWARD;
          const crank = vectors.spinSeen(CLOCKWISE[word], vectors.sightFrom(view, flywheel));
          for (const output of outputs) {
            for (const comparison of compared) {
              for (const turnsBack of [false, true]) {
                const powerIn = flywheel;
                const powerOut: vectors.Vector = turnsBack ? [-powerIn[0], 0, 0] : powerIn;
                const upstream = (power: vectors.Vector): vectors.Vector => [-power[0], 0, 0];
                const [sightIn, sightOut] =
                  comparison === 'seen from aft'
                    ? [vectors.FORWARD, vectors.FORWARD]
                    : [upstream(powerIn), upstream(powerOut)];
                const geared = vectors.throughDeclared(crank, output === 'same', sightIn, sightOut);
                for (const [stage, move] of transfers) {
                  const expected = move(geared);
                  const { sense, missing } = lineRotation({
                    engine: { word, view },
                    facing,
                    stages: [
                      { kind: 'declared', name: 'gear', output, compared: comparison, turnsBack },
                      stage,
                    ],
                  });
                  expect(missing).toEqual([]);
                  expect(sense).toBe(vectors.looksClockwise(expected, vectors.FORWARD) ? 1 : -1);
                  for (const hand of ['left', 'right'] as Hand[]) {
                    expect(senseThatDrivesAhead(hand) === sense).toBe(
                      vectors.advance(hand === 'right', expected) > 0,
                    );
                  }
                  for (const side of ['port', 'starboard'] as const) {
                    expect(turning(side, sense!) === 'outward').toBe(
                      vectors.topsMoveOutboard(expected, side),
                    );
                  }
                  combinations++;
                }
              }
            }
          }
        }
      });
    }
  }

  it('went through every combination', () => {
    expect(combinations).toBe((2 + 4 * 4) * 2 * 2 * 2 * 2 * 8);
  });
});

describe('published labels of one crankshaft', () => {
  // SAE J824 (principal output end, standard = CCW), US inboard trade, ISO 1204 (driving end), DIN 73021 (end away from the output).
  it('names the standard engine in every convention', () => {
    const labels = relabel('counter-clockwise', 'aft').map(one => [one.convention, one.view, one.label]);
    expect(labels).toEqual([
      ['SAE J824', 'flywheel', 'standard (counter-clockwise)'],
      ['US inboard trade', 'flywheel', 'LH, standard'],
      ['ISO 1204', 'flywheel', 'counter-clockwise (left)'],
      ['DIN 73021', 'front', 'right (clockwise)'],
      ['front end of the engine', 'front', 'clockwise'],
      ['in the vessel, from aft looking forward', 'aft', 'counter-clockwise'],
    ]);
  });

  it.each<[RotationWord, ViewPoint | undefined, Turn]>([
    ['standard', undefined, 'counter-clockwise'],
    ['opposite', 'flywheel', 'clockwise'],
    ['left', 'flywheel', 'counter-clockwise'],
    ['right', 'front', 'counter-clockwise'],
    ['clockwise', 'front', 'counter-clockwise'],
  ])('%s seen from %s turns %s at the flywheel', (word, view, turn) => {
    const answer = turnAtFlywheel({ word, view });
    expect(answer.known && answer.value).toBe(turn);
  });

  it('reads every label it prints back to the same rotation', () => {
    for (const turn of ['clockwise', 'counter-clockwise'] as Turn[]) {
      for (const facing of ['aft', 'forward'] as FlywheelFacing[]) {
        for (const label of relabel(turn, facing)) {
          const word = /counter-clockwise|clockwise/.exec(label.label)?.[0] as RotationWord | undefined;
          if (!word) continue;
          const answer = turnAtFlywheel({ word, view: label.view }, facing);
          expect(answer.known && answer.value, label.convention).toBe(turn);
        }
      }
    }
  });
});

describe('shaft lines', () => {
  // Recomputed from the definitions of SAE J824 and of propeller hand.
  it('standard engine, flywheel aft, one external mesh ahead: right-hand propeller', () => {
    const line = lineRotation({
      engine: { word: 'standard' },
      facing: 'aft',
      stages: [{ kind: 'meshes', name: 'reduction', external: 1 }],
    });
    expect(handThatDrivesAhead(line.sense!)).toBe('right');
    expect(line.steps.map(step => [step.stage, step.factor, step.senseAfter])).toEqual([
      ['engine', -1, -1],
      ['reduction', -1, 1],
    ]);
    expect(explainRotation(line)).toMatchInlineSnapshot(`
      [
        "engine: standard (SAE J824) is counter-clockwise seen from the flywheel end; counter-clockwise seen from the flywheel end, flywheel aft, is counter-clockwise seen from aft → counter-clockwise seen from aft",
        "reduction: 1 external mesh reverses → clockwise seen from aft",
      ]
    `);
  });

  it('standard engine through a coaxial train that keeps the sense: left-hand propeller', () => {
    const line = lineRotation({
      engine: { word: 'standard' },
      facing: 'aft',
      stages: [{ kind: 'train', name: 'planetary', ratio: 2.9 }],
    });
    expect(handThatDrivesAhead(line.sense!)).toBe('left');
  });

  it('standard engine turned round is clockwise from aft before the gear', () => {
    const engine = engineSense({ word: 'standard' }, 'forward');
    expect(engine.known && engine.value).toBe(1);
  });

  it('the ahead and astern paths differ by one external mesh', () => {
    for (const external of [1, 2, 3, 4]) {
      const ahead = meshFactor(external);
      const astern = meshFactor(external + 1);
      expect(ahead.known && astern.known && ahead.value * astern.value).toBe(-1);
    }
  });

  it('knows whether the power leaves towards the propeller', () => {
    const vdrive = (turnsBack: boolean | undefined): RotationStage => ({
      kind: 'declared',
      name: 'gear',
      output: 'same',
      turnsBack,
    });
    expect(powerLeavesAft({ facing: 'forward', stages: [vdrive(true)] })).toBe(true);
    expect(powerLeavesAft({ facing: 'aft', stages: [vdrive(true)] })).toBe(false);
    expect(powerLeavesAft({ facing: 'aft', stages: [vdrive(false)] })).toBe(true);
    expect(powerLeavesAft({ facing: 'aft', stages: [vdrive(undefined)] })).toBeUndefined();
    expect(powerLeavesAft({ facing: undefined, stages: [] })).toBeUndefined();
  });
});

describe('propellers', () => {
  it('turns outward with a right-hand propeller to starboard and a left-hand one to port', () => {
    expect(handFor('starboard', 'outward')).toBe('right');
    expect(handFor('port', 'outward')).toBe('left');
    expect(handFor('port', 'inward')).toBe('right');
    expect(turning('centre', 1)).toBeUndefined();
  });
});

describe('what cannot be told is never guessed', () => {
  it.each<[string, Parameters<typeof lineRotation>[0], string]>([
    ['no engine rotation', { engine: undefined, facing: 'aft', stages: [] }, 'engine rotation'],
    ['no viewing point', { engine: { word: 'right' }, facing: 'aft', stages: [] }, 'viewing point'],
    ['no facing', { engine: { word: 'standard' }, facing: undefined, stages: [] }, 'flywheel facing'],
    [
      'standard seen from the front',
      { engine: { word: 'standard', view: 'front' }, facing: 'aft', stages: [] },
      'engine rotation in plain words',
    ],
    [
      'gear without output sense',
      {
        engine: { word: 'standard' },
        facing: 'aft',
        stages: [{ kind: 'declared', name: 'gear', output: undefined, turnsBack: false }],
      },
      'output sense of gear',
    ],
    [
      'V-drive without a comparison',
      {
        engine: { word: 'standard' },
        facing: 'forward',
        stages: [{ kind: 'declared', name: 'V', output: 'same', turnsBack: true }],
      },
      'from where the output sense of V is seen',
    ],
    [
      'gear without layout',
      {
        engine: { word: 'standard' },
        facing: 'aft',
        stages: [{ kind: 'declared', name: 'G', output: 'same' }],
      },
      'layout of G, or from where its output sense is seen',
    ],
    [
      'bevel train',
      { engine: { word: 'standard' }, facing: 'aft', stages: [{ kind: 'bevel', name: 'leg' }] },
      'output sense of leg',
    ],
    [
      'train without ratio',
      {
        engine: { word: 'standard' },
        facing: 'aft',
        stages: [{ kind: 'train', name: 'set', ratio: Number.NaN }],
      },
      'ratio of set',
    ],
  ])('%s', (_, line, missing) => {
    const rotation = lineRotation(line);
    expect(rotation.sense).toBeUndefined();
    expect(rotation.missing).toEqual([missing]);
    expect(explainRotation(rotation).at(-1)).toContain('cannot tell');
  });

  it('still explains the stages after the unknown one', () => {
    const rotation = lineRotation({
      engine: { word: 'clockwise' },
      facing: 'aft',
      stages: [{ kind: 'meshes', name: 'pair', external: 1 }],
    });
    expect(rotation.steps[1]).toMatchObject({ factor: -1, senseAfter: undefined });
  });

  it('does not need the layout when both ends are seen from aft', () => {
    const answer = stageFactor({
      kind: 'declared',
      name: 'V',
      output: 'opposite',
      compared: 'seen from aft',
    });
    expect(answer.known && answer.value).toBe(-1);
  });
});
