import {
  apparentSlip,
  DEMAND_EXPONENT,
  DIAMETER_EXPONENT,
  diameterForPower,
  engineTorque,
  formatQuantity,
  formatValue,
  given,
  percent,
  pitchExponent,
  pitchForPower,
  powerDemandByLaw,
  powerFromTorque,
  ratedDemand,
  ratioForSpeed,
  renamed,
  shaftSpeedThroughGear,
  speedForPowerByLaw,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import { isSaid } from '../model/reads.js';
import type { TrialRun } from '../model/trial.js';
import { assumedOf } from './efficiencies.js';
import type { LineAnalysis } from './line.js';
import { fullThrottleTable } from './propulsion/engine-table.js';
import type { Calibration } from './propulsion/propulsion.js';
import { ratioWords } from './telling.js';

/** A figure between two ends, each with its working. */
export interface BackSpan {
  readonly low: Value;
  readonly high: Value;
}

/** What the readings of one run say of the line, worked backwards. */
export interface WorkedBack {
  readonly slip?: Value<'ratio'>;
  /** Power that the propeller would ask at rated speed over rated power, by the named law. */
  readonly demand?: BackSpan;
  /** What would have brought rated speed, everything else as it is. */
  readonly ratio?: BackSpan;
  readonly pitch?: BackSpan;
  readonly diameter?: BackSpan;
  /** Resistance that the run met over that of the method; absent where none predicts it. */
  readonly correlation?: Value<'ratio'>;
  /** The same from the power read at the shaft, with the wake fraction that goes with it. */
  readonly byPower?: Calibration;
  /** What the range comes from, in words. */
  readonly range?: string;
}

/** How well a tachometer that was checked is read; common practice. */
export const READING = 0.01;

/** Works the readings of a run backwards: slip at any point; demand and sizes where full throttle fell short. */
export function workedBack(run: TrialRun, analysis: LineAnalysis): WorkedBack {
  const read = readOf(() => run.engineSpeed);
  const ratio = analysis.overallRatio('ahead').value;
  const shaft =
    readOf(() => run.shaftSpeed) ??
    (read && ratio && shaftSpeedThroughGear({ engineSpeed: renamed(read, 'engine speed', 'ωe'), ratio }));
  const slip = shaft && slipOf(run, shaft, analysis);
  const full = run.at?.value === 'full throttle' && read && ratio ? short(read, ratio, slip, analysis) : {};
  const speed = readOf(() => run.speed);
  const correlation = read && speed && analysis.propulsion?.value?.correlationAt?.(read, speed);
  const power = readOf(() => run.shaftPower);
  const byPower =
    read && speed && power ? analysis.propulsion?.value?.calibrationAt?.(read, speed, power) : undefined;
  return {
    ...(slip ? { slip } : {}),
    ...full,
    ...(correlation ? { correlation } : {}),
    ...(byPower ? { byPower } : {}),
  };
}

function slipOf(
  run: TrialRun,
  shaftSpeed: Value<'rotational speed'>,
  { line }: LineAnalysis,
): Value<'ratio'> | undefined {
  const speed = readOf(() => run.speed);
  const wheel = line.propeller;
  const pitch = wheel && (readOf(() => wheel.effectivePitch) ?? readOf(() => wheel.pitch));
  if (!speed || !pitch || run.at?.value === 'no load') return undefined;
  const slip = apparentSlip({
    vesselSpeed: renamed(speed, 'speed read', 'V'),
    pitch: renamed(pitch, 'pitch', 'P'),
    shaftSpeed: renamed(shaftSpeed, 'shaft speed', 'ω'),
  });
  return Number.isFinite(slip.si) ? slip : undefined;
}

/** What a run at full throttle below rated speed says: the engine gave what its curve has there, if it was let. */
function short(
  read: Value<'rotational speed'>,
  ratio: Value<'ratio'>,
  slip: Value<'ratio'> | undefined,
  analysis: LineAnalysis,
): Omit<WorkedBack, 'slip' | 'correlation' | 'byPower'> {
  const { line, vessel } = analysis;
  const rated = analysis.rated.value;
  if (!rated || !(read.si < rated.speed.si * (1 - READING))) return {};
  const table = fullThrottleTable(line, vessel, rated);
  const torque = table && engineTorque(table, renamed(read, 'engine speed read', 'ωe'));
  if (!torque) return {};
  const power = renamed(
    powerFromTorque({ torque, speed: renamed(read, 'engine speed read', 'ω') }),
    'full-load power at the speed read',
    'Pr',
  );
  const exponents = exponentsOf(analysis);
  const speeds = [1 - READING, 1 + READING].map(share =>
    given('engine speed read', 'ωr', 'rotational speed', read.si * share, {
      assumed: `the reading ${share < 1 ? 'less' : 'and'} ${percent(READING)}, as a checked tachometer is read`,
    }),
  );
  const cases = exponents.flatMap(exponent => speeds.map(speed => ({ exponent, speed })));
  const asked = cases.map(({ exponent, speed }) =>
    powerDemandByLaw({ referencePower: power, referenceSpeed: speed, speed: rated.speed, exponent }),
  );
  const ratios = cases.map(({ exponent, speed }) => {
    const shaftRead = shaftSpeedThroughGear({ engineSpeed: speed, ratio });
    const shaftSpeed = speedForPowerByLaw({
      referencePower: power,
      referenceSpeed: shaftRead,
      power: rated.power,
      exponent,
    });
    return ratioForSpeed({ engineSpeed: rated.speed, shaftSpeed });
  });
  return {
    demand: ends(asked.map(absorbed => ratedDemand({ absorbed, delivered: rated.power }))),
    ratio: ends(ratios),
    ...sizes(asked, rated.power, slip, analysis),
    range: `exponent ${[...new Set(exponents.map(one => one.si))].join(' to ')}, tachometer ${percent(READING)} either way`,
  };
}

function sizes(
  asked: readonly Value<'power'>[],
  power: Value<'power'>,
  slip: Value<'ratio'> | undefined,
  { line }: LineAnalysis,
): Pick<WorkedBack, 'pitch' | 'diameter'> {
  const wheel = line.propeller;
  const referencePitch = wheel && readOf(() => wheel.pitch);
  const referenceDiameter = wheel && readOf(() => wheel.diameter);
  const steep = slip && slip.si > 0 && slip.si < 1 ? [pitchExponent({ slip })] : [];
  const square = given('exponent of the pitch', 'k', 'ratio', 2, { assumed: 'the least change: no advance' });
  const thick = [DIAMETER_EXPONENT['same pitch, least'], DIAMETER_EXPONENT['same pitch, most']].map(one =>
    given('exponent of the diameter', 'm', 'ratio', one, {
      assumed: 'pitch kept: the third power if the blades only lift, the fifth if they only drag',
    }),
  );
  const both = <T>(exponents: readonly Value<'ratio'>[], make: (P: Value<'power'>, x: Value<'ratio'>) => T) =>
    asked.flatMap(referencePower => exponents.map(exponent => make(referencePower, exponent)));
  return {
    // How steeply power goes with the pitch rests on the slip: without a speed it is not said.
    ...(referencePitch && steep.length > 0
      ? {
          pitch: ends(
            both([square, ...steep], (referencePower, exponent) =>
              pitchForPower({ referencePitch, referencePower, power, exponent }),
            ),
          ),
        }
      : {}),
    ...(referenceDiameter
      ? {
          diameter: ends(
            both(thick, (referencePower, exponent) =>
              diameterForPower({ referenceDiameter, referencePower, power, exponent }),
            ),
          ),
        }
      : {}),
  };
}

/** The exponent that the vessel assumes; otherwise that of average boats and that of the propeller law. */
function exponentsOf({ vessel }: LineAnalysis): Value<'ratio'>[] {
  const assumed = assumedOf(vessel, 'propeller exponent', 'ratio');
  if (assumed) return [renamed(assumed, 'exponent of the propeller law', 'n')];
  return (['average boat', 'propeller law'] as const).map(name => {
    const { value, source } = DEMAND_EXPONENT[name];
    return given('exponent of the propeller law', 'n', 'ratio', value, {
      assumed: `${value}: ${source.title}`,
      replaceWith: 'assume propeller exponent',
    });
  });
}

function ends(values: readonly Value[]): BackSpan {
  const sorted = [...values].sort((one, other) => one.si - other.si);
  return { low: sorted[0]!, high: sorted.at(-1)! };
}

function readOf<T>(look: () => { readonly value: T | undefined } | undefined): T | undefined {
  return isSaid(look) ? look()?.value : undefined;
}

/** The sizes with their names, in the units that the propeller is written in, as sentences have them. */
export function spansOf({ ratio, pitch, diameter }: WorkedBack, { line }: LineAnalysis): string[] {
  const in_ = (value: Value, like: Value | undefined) => {
    const unit = like && writtenUnit(like);
    return unit ? formatQuantity(value.si, unit, 3) : formatValue(value, 3);
  };
  const sized = (what: string, span: BackSpan | undefined, like: Value | undefined) =>
    span ? [`a ${what} of ${in_(span.low, like)} to ${in_(span.high, like)}`] : [];
  return [
    ...(ratio ? [`a ratio of ${ratioWords(ratio.low.si, 2)} to ${ratioWords(ratio.high.si, 2)}`] : []),
    ...sized('pitch', pitch, line.propeller?.pitch?.value),
    ...sized('diameter', diameter, line.propeller?.diameter?.value),
  ];
}

/** Every figure that was worked back, for those who open its working. */
export function valuesOf(back: WorkedBack): Value[] {
  const { slip, demand, ratio, pitch, diameter, correlation, byPower } = back;
  return [
    ...(slip ? [slip] : []),
    ...(correlation ? [correlation] : []),
    ...(byPower ? [byPower.correlation, byPower.wakeFraction] : []),
    ...[demand, ratio, pitch, diameter].flatMap(span => (span ? [span.low, span.high] : [])),
  ];
}
