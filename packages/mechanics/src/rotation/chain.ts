import { engineSense, type RotationStatement } from './engine-rotation.js';
import type { FlywheelFacing, Sense } from './sense.js';
import { turnFromAft } from './sense.js';
import { type RotationStage, stageFactor } from './stage.js';

/** What turns a shaft line, from the machine to the propeller, in the clutch position asked about. */
export interface RotationLine {
  readonly engine: RotationStatement | undefined;
  readonly facing: FlywheelFacing | undefined;
  readonly stages: readonly RotationStage[];
}

/** One stage of the explanation. `senseAfter` is undefined from the first stage that cannot be told. */
export interface RotationStep {
  readonly stage: string;
  readonly factor: Sense | undefined;
  readonly senseAfter: Sense | undefined;
  readonly why: string;
}

/** The sense of the last shaft, how it came about, and what must be known when there is none. */
export interface LineRotation {
  readonly sense: Sense | undefined;
  readonly steps: readonly RotationStep[];
  readonly missing: readonly string[];
}

/** Follows the rotation from the engine through every stage. Nothing unknown is guessed. */
export function lineRotation(line: RotationLine): LineRotation {
  const steps: RotationStep[] = [];
  const missing: string[] = [];
  const engine = engineSense(line.engine, line.facing);
  let sense = engine.known ? engine.value : undefined;
  if (!engine.known) missing.push(engine.missing);
  steps.push({ stage: 'engine', factor: sense, senseAfter: sense, why: engine.why });
  for (const stage of line.stages) {
    const factor = stageFactor(stage);
    if (!factor.known) missing.push(factor.missing);
    sense = factor.known && sense ? ((sense * factor.value) as Sense) : undefined;
    steps.push({
      stage: stage.name,
      factor: factor.known ? factor.value : undefined,
      senseAfter: sense,
      why: factor.why,
    });
  }
  return { sense, steps, missing };
}

/** The explanation as lines for a person. */
export function explainRotation(rotation: LineRotation): string[] {
  return rotation.steps.map(step => {
    const after = step.senseAfter ? `${turnFromAft(step.senseAfter)} seen from aft` : 'cannot tell';
    return `${step.stage}: ${step.why} → ${after}`;
  });
}

/**
 * Whether the power leaves towards the propeller: an engine that faces aft needs no turning back (or an even number),
 * one that faces forward needs an odd number. Undefined when a layout is not stated.
 */
export function powerLeavesAft(line: Pick<RotationLine, 'facing' | 'stages'>): boolean | undefined {
  if (!line.facing) return undefined;
  let aft = line.facing === 'aft';
  for (const stage of line.stages) {
    if (stage.kind !== 'declared') continue;
    if (stage.turnsBack === undefined) return undefined;
    if (stage.turnsBack) aft = !aft;
  }
  return aft;
}
