import {
  count,
  distanceOnTank,
  fuelForDistance,
  given,
  type OperatingPoint,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { ratingOf } from './engine-points.js';
import { type FuelBurn, fuelBurn } from './fuel-burn.js';
import type { LineAnalysis } from './line.js';
import { uncoveredIn } from './uncovered.js';

/** One line at one speed of the vessel. */
export interface LineRun {
  readonly line: ShaftLine;
  readonly engineSpeed: Value<'rotational speed'>;
  readonly power: Value<'power'>;
  /** Power over rated power. */
  readonly load: number;
  readonly fuel: FuelBurn;
}

/** The vessel at one speed of its profile. */
export interface ProfileRun {
  readonly vesselSpeed: Value<'speed'>;
  readonly hours: Value<'time'>;
  /** Undefined, with the reason, where it cannot be worked out. */
  readonly lines: readonly LineRun[] | undefined;
  readonly why?: string;
  readonly flow?: Value<'volume flow'>;
  readonly perMile?: Value<'volume'>;
  readonly perPassage?: Value<'volume'>;
  readonly range?: Value<'length'>;
  readonly uncertainty?: number;
}

/** What a year of the profile comes to. */
export interface RunningProfile {
  readonly runs: readonly ProfileRun[];
  /** All of these only where every speed can be worked out. */
  readonly perYear?: Value<'volume'>;
  readonly perMile?: Value<'volume'>;
  /** Mean share of rated power, over the hours. */
  readonly meanLoad?: number;
  readonly uncertainty?: number;
  readonly hours: Value<'time'>;
  /** Most hours a year that the rating of an engine allows, the least of the lines. */
  readonly allowed?: Value<'number'>;
}

const NAUTICAL_MILE = 1852;

/** The running profile of a vessel with these lines; undefined where its duty states no hours at speeds. */
export function runningProfile(
  lines: readonly ShaftLine[],
  vessel: Vessel,
  analysisOf: (line: ShaftLine) => LineAnalysis,
): RunningProfile | undefined {
  const wanted = (vessel.duty?.running ?? []).flatMap(({ value }) => (value ? [value] : []));
  if (wanted.length === 0 || lines.length === 0) return undefined;
  const runs = wanted
    .map(({ y, x }) => runAt(lines, vessel, analysisOf, renamed(x, 'vessel speed', 'V'), y))
    .sort((a, b) => a.vesselSpeed.si - b.vesselSpeed.si);
  const hours = given('hours a year', 't', 'time', sum(runs.map(one => one.hours.si)));
  const allowed = lines
    .flatMap(({ engine }) => (engine && ratingOf(engine)?.hours?.value) ?? [])
    .sort((a, b) => a.si - b.si)[0];
  const whole = runs.every(one => one.flow !== undefined);
  if (!whole) return { runs, hours, ...(allowed ? { allowed } : {}) };
  const fuel = sum(runs.map(one => one.flow!.si * one.hours.si));
  const distance = sum(runs.map(one => one.vesselSpeed.si * one.hours.si));
  const said = `${runs.length} speeds of the running profile, each by its hours`;
  return {
    runs,
    hours,
    ...(allowed ? { allowed } : {}),
    perYear: given('fuel a year', 'F', 'volume', fuel, { assumed: said }),
    perMile: given('fuel for each nautical mile', 'F', 'volume', (fuel / distance) * NAUTICAL_MILE, {
      assumed: said,
    }),
    meanLoad: sum(runs.map(one => meanOf(one.lines!.map(line => line.load)) * one.hours.si)) / hours.si,
    uncertainty: Math.max(...runs.map(one => one.uncertainty!)),
  };
}

function runAt(
  lines: readonly ShaftLine[],
  vessel: Vessel,
  analysisOf: (line: ShaftLine) => LineAnalysis,
  vesselSpeed: Value<'speed'>,
  hours: Value<'time'>,
): ProfileRun {
  const found = lines.map(line => lineAt(line, analysisOf(line), vesselSpeed));
  const why = found.find(one => typeof one === 'string');
  if (why !== undefined) return { vesselSpeed, hours, lines: undefined, why: why as string };
  const all = found as LineRun[];
  const flow = given('fuel of all engines', 'q', 'volume flow', sum(all.map(one => one.fuel.flow.si)), {
    assumed: `${count(all.length, 'engine')} together`,
  });
  const mile = given('nautical mile', 's', 'length', NAUTICAL_MILE, { assumed: 'by definition' });
  const passage = vessel.duty?.passage?.value;
  const usableFuel = vessel.hull?.fuelCapacity?.value;
  return {
    vesselSpeed,
    hours,
    lines: all,
    flow,
    perMile: fuelForDistance({ flow, distance: mile, vesselSpeed }),
    ...(passage
      ? { perPassage: fuelForDistance({ flow, distance: renamed(passage, 'passage', 's'), vesselSpeed }) }
      : {}),
    ...(usableFuel
      ? { range: distanceOnTank({ flow, usableFuel: renamed(usableFuel, 'usable fuel', 'F'), vesselSpeed }) }
      : {}),
    uncertainty: Math.max(...all.map(one => one.fuel.uncertainty)),
  };
}

/** How a line drives the vessel at a speed; or why that cannot be told. */
function lineAt(line: ShaftLine, analysis: LineAnalysis, vesselSpeed: Value<'speed'>): LineRun | string {
  const { engine } = line;
  if (!engine || line.motor || line.modes || uncoveredIn(line).length > 0)
    return `${line.name} is not driven by one engine alone, and no profile is worked out for it`;
  const rated = analysis.rated.value;
  const at = analysis.propulsion?.value?.atEngineSpeed;
  if (!rated || !at)
    return `speed against engine speed cannot be predicted for ${line.name}${whyNot(analysis)}`;
  const run = settledAt(speed => at(speed), rated.speed, vesselSpeed.si, analysis.governedSpeed.value);
  if (!run) return `${line.name} does not make this speed, or no method covers it`;
  const { engineSpeed, loadFraction } = run;
  if (loadFraction !== undefined && loadFraction.si > 1.0005)
    return `${line.name} cannot hold this speed: its engine would be loaded over what it can give`;
  const { available } = analysis.propulsion!.value!;
  const power = given(
    'power at the crankshaft',
    'P',
    'power',
    (run.power.si * rated.power.si) / available.si,
    {
      assumed: 'power at the propeller, with the losses and the take-off of rated power in proportion',
    },
  );
  const fuel = fuelBurn(engine, rated, power);
  if (!fuel) return `the sheet of the engine of ${line.name} declares no fuel`;
  return { line, engineSpeed, power, load: power.si / rated.power.si, fuel };
}

/** What keeps speed from being predicted: the refusal of the methods, or what is missing. */
function whyNot({ propulsion, rated }: LineAnalysis): string {
  const full = propulsion?.value?.full;
  const refusal = propulsion?.refusal ?? (full && !full.applies ? full.reason : undefined);
  // The sentence goes on to its full stop.
  if (refusal) return `. ${refusal.replace(/\.$/, '')}`;
  const missing = new Set([...(propulsion?.missing ?? []), ...rated.missing].map(one => one.what));
  return missing.size > 0 ? `: missing ${[...missing].join('; ')}` : '';
}

/** The engine speed at which the vessel makes a speed, halved between a tenth of rated speed and the governor. */
function settledAt(
  at: NonNullable<NonNullable<NonNullable<LineAnalysis['propulsion']>['value']>['atEngineSpeed']>,
  rated: Value<'rotational speed'>,
  wanted: number,
  governed: Value<'rotational speed'> | undefined,
): OperatingPoint | undefined {
  const run = (si: number) => {
    const found = at(given('engine speed', 'ω', 'rotational speed', si));
    return found.applies ? found : undefined;
  };
  let [low, high] = [0.1 * rated.si, Math.max(rated.si, governed?.si ?? 0)];
  const top = run(rated.si);
  if (top && top.vesselSpeed.si >= wanted) high = rated.si;
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2;
    const found = run(middle);
    // Below what a method covers the vessel is slower than there.
    if (!found || found.vesselSpeed.si < wanted) low = middle;
    else high = middle;
  }
  const found = run(high);
  return found && Math.abs(found.vesselSpeed.si / wanted - 1) < 0.005 ? found : undefined;
}

const STEPS = 16;

function sum(values: readonly number[]): number {
  return values.reduce((total, one) => total + one, 0);
}

function meanOf(values: readonly number[]): number {
  return sum(values) / values.length;
}
