import { given, type Origin, renamed, shaftSpeedThroughGear, type Value } from '@tailshaft/mechanics';
import type { Missing } from '../judge/verdict.js';
import type { Quantity } from '../model/fact.js';
import { isSaid } from '../model/reads.js';
import type { TrialRun } from '../model/trial.js';
import { type Derived, derive } from './derived.js';
import type { LineAnalysis } from './line.js';

/** A reading of the trial beside what the spec says it should be. */
export interface TrialReading {
  /** `engine speed`, `shaft speed`, `speed`, `shaft power`. */
  readonly what: string;
  /** Undefined where the sheet leaves the reading open. */
  readonly measured: Value | undefined;
  readonly origin: Origin;
  readonly predicted: Value | undefined;
  /** What is missing for the prediction; nothing where the spec predicts none at this point. */
  readonly missing: readonly Missing[];
  /** Measured over predicted, less one. */
  readonly difference: Value<'ratio'> | undefined;
}

/** Every reading of one run with its prediction, at the engine speed that was run. */
export function trialReadings(run: TrialRun, analysis: LineAnalysis): TrialReading[] {
  return readingsOf(run, analysis).flatMap(make => make() ?? []);
}

/** What can be predicted of a run, in the order of `readingsOf`. */
export const READINGS = ['engine speed', 'shaft speed', 'speed', 'shaft power'] as const;

/** The same, each to be made by itself: what one reading leaves open says nothing of another. */
export function readingsOf(run: TrialRun, analysis: LineAnalysis): (() => TrialReading | undefined)[] {
  const engine = () => run.engineSpeed?.value ?? predictedEngineSpeed(run, analysis).value;
  return [
    reading(
      'engine speed',
      () => run.engineSpeed,
      () => predictedEngineSpeed(run, analysis),
    ),
    reading(
      'shaft speed',
      () => run.shaftSpeed,
      () => shaftSpeed(engine(), analysis),
    ),
    reading(
      'speed',
      () => run.speed,
      () => vesselSpeed(run, engine(), analysis),
    ),
    reading(
      'shaft power',
      () => run.shaftPower,
      () => shaftPower(engine(), analysis),
    ),
  ];
}

/** Readings that nothing in the spec predicts, to be printed as they are. */
export function bareReadings(run: TrialRun): readonly { what: string; written: string }[] {
  return (
    [
      ['coolant temperature', run.coolantTemperature],
      ['gear oil temperature', run.gearOilTemperature],
      ['exhaust temperature', run.exhaustTemperature],
      ['load', run.load],
      ['fuel rate', run.fuelRate],
      ['boost', run.boost],
      ['gear oil pressure', run.gearOilPressure],
      ['fuel pressure', run.fuelPressure],
      ['intake depression', run.intakeDepression],
      ['smoke', run.smoke],
      ['lever', run.lever],
      ['throttle', run.throttle],
    ] as const
  ).flatMap(([what, fact]) => (fact ? [{ what, written: fact.written }] : []));
}

function reading(
  what: string,
  read: () => Quantity | undefined,
  predict: () => Derived<Value>,
): () => TrialReading | undefined {
  return () => {
    const fact = isSaid(read) ? read() : undefined;
    if (!fact) return undefined;
    const measured = fact.value;
    const { value: predicted, missing } = predict();
    const share = predicted && measured && measured.si / predicted.si - 1;
    const difference =
      share !== undefined && Number.isFinite(share)
        ? given(`difference of ${what}`, 'Δ', 'ratio', share, {
            assumed: 'measured over predicted, less one',
          })
        : undefined;
    return { what, measured, origin: fact.origin, predicted, missing, difference };
  };
}

const NOTHING: Derived<never> = { value: undefined, missing: [] };

function predictedEngineSpeed(run: TrialRun, analysis: LineAnalysis): Derived<Value<'rotational speed'>> {
  switch (run.at?.value) {
    case 'no load':
      return analysis.governedSpeed;
    case 'idle ahead':
      return analysis.idleSpeed;
    case 'rated speed': {
      const { value, missing } = analysis.rated;
      return { value: value?.speed, missing };
    }
    case 'full throttle': {
      const full = analysis.propulsion?.value?.full;
      return full?.applies ? { value: full.engineSpeed, missing: [] } : NOTHING;
    }
    default:
      return NOTHING;
  }
}

function shaftSpeed(
  engineSpeed: Value<'rotational speed'> | undefined,
  analysis: LineAnalysis,
): Derived<Value<'rotational speed'>> {
  if (!engineSpeed) return NOTHING;
  return derive(needs => {
    const ratio = needs.take(analysis.overallRatio('ahead'));
    return ratio && shaftSpeedThroughGear({ engineSpeed: renamed(engineSpeed, 'engine speed', 'ω'), ratio });
  });
}

function vesselSpeed(
  run: TrialRun,
  engineSpeed: Value<'rotational speed'> | undefined,
  analysis: LineAnalysis,
): Derived<Value<'speed'>> {
  if (run.at?.value === 'idle ahead') return analysis.idleVesselSpeed;
  const result = analysis.propulsion;
  if (!result) return NOTHING;
  const { value: propulsion, missing } = result;
  if (!propulsion) return { value: undefined, missing };
  if (run.at?.value === 'full throttle' && propulsion.full.applies)
    return { value: propulsion.full.vesselSpeed, missing: [] };
  const there = engineSpeed && propulsion.atEngineSpeed?.(engineSpeed);
  if (there?.applies) return { value: there.vesselSpeed, missing: [] };
  // A handbook estimate speaks of rated power only.
  if (run.at?.value === 'rated speed' || run.at?.value === 'full throttle')
    return { value: propulsion.rated.vesselSpeed, missing: [] };
  return NOTHING;
}

function shaftPower(
  engineSpeed: Value<'rotational speed'> | undefined,
  analysis: LineAnalysis,
): Derived<Value<'power'>> {
  const result = analysis.propulsion;
  if (!result || !engineSpeed) return NOTHING;
  if (!result.value) return { value: undefined, missing: result.missing };
  const there = result.value.atEngineSpeed?.(engineSpeed);
  if (!there?.applies) return NOTHING;
  return { value: there.power, missing: [] };
}
