import {
  type Hand,
  handFor,
  meshFactor,
  otherHand,
  type RotationStage,
  relabel,
  type Sense,
  stageFactor,
  turnAtFlywheel,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

const ends = 'each at its own end' as const;
const declared = (
  output: 'same' | 'opposite' | undefined,
  compared: 'seen from aft' | typeof ends | undefined,
  turnsBack: boolean | undefined,
): RotationStage => ({ kind: 'declared', name: 'box', output, compared, turnsBack });
const meshes = (external: number, internal?: number): RotationStage => ({
  kind: 'meshes',
  name: 'box',
  external,
  ...(internal === undefined ? {} : { internal }),
});
const train = (ratio: number): RotationStage => ({ kind: 'train', name: 'box', ratio });

/* What each stage does, with the words that say so: they must not say the one and mean the other. */
describe('what a stage does to the sense, and its words', () => {
  it.each<[RotationStage, Sense | undefined, string]>([
    [{ kind: 'coupling', name: 'c' }, 1, 'a coupling keeps the sense'],
    [{ kind: 'belt', name: 'b' }, 1, 'an open belt'],
    [{ kind: 'belt', name: 'b', crossed: true }, -1, 'a crossed belt reverses'],
    [{ kind: 'chain', name: 'b' }, 1, 'a chain turns both wheels the same way'],
    [{ kind: 'bevel', name: 'b' }, undefined, 'output sense of b'],
    [meshes(0), 1, '0 external meshes keep the sense'],
    [meshes(1), -1, '1 external mesh reverses'],
    [meshes(2), 1, '2 external meshes keep the sense'],
    [meshes(3), -1, '3 external meshes reverse'],
    [meshes(3, 1), -1, '3 external meshes reverse, 1 internal (no effect)'],
    [meshes(2, 3), 1, '2 external meshes keep the sense, 3 internal (no effect)'],
    [meshes(1, 0), -1, '1 external mesh reverses'],
    [meshes(-1), undefined, 'number of meshes'],
    [meshes(1, -1), undefined, 'number of meshes'],
    [meshes(1.5), undefined, 'number of meshes'],
    [meshes(1, 0.5), undefined, 'number of meshes'],
    [train(2.5), 1, 'the train’s ratio is positive: it keeps the sense'],
    [train(0.5), 1, 'the train’s ratio is positive'],
    [train(-0.5), -1, 'the train’s ratio is negative: it reverses'],
    [train(0), undefined, 'ratio of box'],
    [train(Number.NaN), undefined, 'ratio of box'],
    [train(Number.POSITIVE_INFINITY), undefined, 'ratio of box'],
    [declared('same', 'seen from aft', undefined), 1, 'output same as input, seen from aft'],
    [declared('opposite', 'seen from aft', true), -1, 'output opposite to input, seen from aft'],
    [declared('same', undefined, false), 1, 'output same as input; the line runs straight on'],
    [declared('opposite', undefined, false), -1, 'output opposite to input; the line runs straight on'],
    [declared('same', ends, false), 1, 'output same as input; the line runs straight on'],
    [
      declared('same', ends, true),
      -1,
      'output same with each end seen at its own flange; the line turns back, so seen from aft it is opposite',
    ],
    [declared('opposite', ends, true), 1, 'so seen from aft it is the same'],
    [declared(undefined, 'seen from aft', false), undefined, 'output sense of box'],
    [
      declared('same', undefined, undefined),
      undefined,
      'layout of box, or from where its output sense is seen',
    ],
    [declared('same', ends, undefined), undefined, 'layout of box'],
    [declared('same', undefined, true), undefined, 'from where the output sense of box is seen'],
  ])('%j: %s', (stage, factor, words) => {
    const found = stageFactor(stage);
    expect(found.known ? found.value : undefined).toBe(factor);
    if (found.known && !words.includes('so seen from aft it is the same'))
      expect(found.why.startsWith(words)).toBe(true);
    else if (found.known) expect(found.why).toMatch(/so seen from aft it is the same$/);
    else expect(found.missing).toBe(words);
    if (stage.kind === 'meshes') expect(meshFactor(stage.external, stage.internal)).toEqual(found);
  });
});

it.each(['counter-clockwise', 'clockwise'] as const)(
  'the label of an engine that turns %s at its flywheel is the counterpart of the other in every convention',
  turn => {
    const labels = Object.fromEntries(relabel(turn, 'aft').map(one => [one.convention, one.label]));
    const standard = turn === 'counter-clockwise';
    // SAE J824, ISO 1204 and DIN 73021 as in the labels of the standard engine.
    expect(labels).toEqual({
      'SAE J824': standard ? 'standard (counter-clockwise)' : 'opposite (clockwise)',
      'US inboard trade': standard ? 'LH, standard' : 'RH, opposite, reverse',
      'ISO 1204': standard ? 'counter-clockwise (left)' : 'clockwise (right)',
      'DIN 73021': standard ? 'right (clockwise)' : 'left (counter-clockwise)',
      'front end of the engine': standard ? 'clockwise' : 'counter-clockwise',
      'in the vessel, from aft looking forward': turn,
    });
    const found = turnAtFlywheel({ word: turn, view: 'flywheel' });
    expect(found.known && found.why).toBe(`${turn} seen from the flywheel end`);
  },
);

it.each<['port' | 'starboard', 'outward' | 'inward', Hand]>([
  // Common practice, and geometry: tops outboard are a right-hand propeller to starboard, a left-hand one to port.
  ['starboard', 'outward', 'right'],
  ['starboard', 'inward', 'left'],
  ['port', 'outward', 'left'],
  ['port', 'inward', 'right'],
])('to %s, turning %s, the hand is %s', (side, turning, hand) => {
  expect(handFor(side, turning)).toBe(hand);
  expect(otherHand(hand)).not.toBe(hand);
  expect(otherHand(otherHand(hand))).toBe(hand);
});
