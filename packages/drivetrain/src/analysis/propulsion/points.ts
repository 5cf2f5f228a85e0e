import type { OperatingPoint, Outcome } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../line.js';

/** Speed of the vessel and load of the engine at one point of its range. */
export interface PredictedPoint {
  /** `idle ahead`, `full load`, `peak torque`, `rated power`. */
  readonly name: string;
  /** What the balance gives there, or why no method applies. */
  readonly run: Outcome<OperatingPoint>;
}

/**
 * Predicted speed and engine load at idle and at each declared point up to rated speed. Empty where resistance against
 * speed is not known.
 */
export function predictedPoints(analysis: LineAnalysis): readonly PredictedPoint[] {
  const at = analysis.propulsion?.value?.atEngineSpeed;
  const rated = analysis.rated.value;
  if (!at || !rated) return [];
  const seen = new Set<number>();
  const speeds = [
    ...(analysis.idleSpeed.value ? [{ name: 'idle ahead', speed: analysis.idleSpeed.value }] : []),
    ...analysis.fullLoad.filter(point => point.speed.si < rated.speed.si),
    rated,
  ];
  return speeds.flatMap(({ name, speed }) => {
    if (seen.has(speed.si)) return [];
    seen.add(speed.si);
    return [{ name, run: at(speed) }];
  });
}
