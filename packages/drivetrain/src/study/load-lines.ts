import { given, listed } from '@tailshaft/mechanics';
import { LineAnalysis } from '../analysis/line.js';
import { ratioWords } from '../analysis/telling.js';
import type { Arrangement } from '../model/vessel.js';
import {
  type Choice,
  choiceAt,
  combinationsOf,
  type LoadLine,
  type LoadLines,
  type LoadPoint,
  type StudyCase,
  type StudyResult,
} from './result.js';

/** So many ratios have a chart, and so many lines stand in one. */
const RATIOS = 4;
const LINES = 5;
/** Points of a load line. */
const POINTS = 9;
/** So many combinations are tried for one that goes together, where none holds. */
const TRIED = 200;

/** A study with its load lines: for each ratio the pitches of it, all else as the best candidate has it. */
export function withLoadLines(of: StudyCase, result: StudyResult): StudyResult {
  const loadLines = loadLinesOf(of, result);
  return loadLines.length > 0 ? { ...result, loadLines } : result;
}

/** What varies of one shaft line, by its place in the arrangement. */
interface Varied {
  readonly at: number;
  readonly name: string;
  readonly ratios: Figures | undefined;
  readonly pitches: Figures | undefined;
}

/** The first thing that varies whose options give different values of a line, with the value of each. */
interface Figures {
  readonly at: number;
  readonly values: readonly (number | undefined)[];
}

function loadLinesOf(of: StudyCase, result: StudyResult): LoadLines[] {
  const best = result.holds[0]?.choice ?? result.unknown[0]?.choice ?? anyThatGoes(of);
  if (!best) return [];
  const held = new Set(result.holds.map(one => one.index));
  const groups = new Map<string, Varied[]>();
  for (const line of variedLines(of, best)) {
    const key = likeness(of, best, line);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()].flatMap(alike => {
    const most = Math.ceil(RATIOS / groups.size);
    const name = listed(alike.map(one => one.name));
    return chartsOf(of, result, { best, held, most, line: { ...alike[0]!, name } });
  });
}

/** The lines of the arrangement in which ratio or pitch varies. */
function variedLines(of: StudyCase, best: Choice): Varied[] {
  const lines = arrangementWith(of, best)?.lines ?? [];
  return lines.flatMap((line, at): Varied[] => {
    const ratios = dimensionOf(of, best, at, one => one.overallRatio('ahead').value?.si);
    const pitches = dimensionOf(of, best, at, one => one.line.propeller?.pitch?.value?.si);
    return ratios || pitches ? [{ at, name: line.name, ratios, pitches }] : [];
  });
}

/** Lines that are alike in this, as those of a twin are, share their charts. */
function likeness(of: StudyCase, best: Choice, { at, ratios, pitches }: Varied): string {
  const line = lineWith(of, best, at);
  const points = line && loadLine(line, '', false)?.points;
  return JSON.stringify([ratios, pitches, points, line && fullLoadOf(line)]);
}

interface Wanted {
  readonly best: Choice;
  readonly held: ReadonlySet<number>;
  /** So many ratios have a chart. */
  readonly most: number;
  readonly line: Varied;
}

function chartsOf(of: StudyCase, result: StudyResult, { best, held, most, line }: Wanted): LoadLines[] {
  const { ratios, pitches } = line;
  if (!pitches) return ratios ? charted(of, best, { line, at: ratios.at, held }) : [];
  if (!ratios) return charted(of, best, { line, at: pitches.at, held });
  const { at, values } = ratios;
  // Of several gears with one ratio one is shown; where candidates hold, their ratios come first.
  const preferred = [best[at]!, ...result.holds.map(one => one.choice[at]!)];
  const shown = new Set<number>();
  const charts = spread(values.length, preferred, most, option => {
    const value = values[option];
    if (value === undefined || shown.has(value)) return [];
    shown.add(value);
    const own = charted(of, best.with(at, option), {
      line,
      at: pitches.at,
      held,
      ratio: ratioWords(value),
    });
    return own.map(one => ({ value, one }));
  });
  return charts.sort((a, b) => a.value - b.value).map(({ one }) => one);
}

interface Chosen {
  readonly line: Varied;
  readonly at: number;
  readonly held: ReadonlySet<number>;
  readonly ratio?: string;
}

function charted(of: StudyCase, choice: Choice, { line: varied, at, held, ratio }: Chosen): LoadLines[] {
  const { words, options } = of.dimensions[at]!;
  let shown: LineAnalysis | undefined;
  const lines = spread(options.length, [choice[at]!], LINES, option => {
    const own = choice.with(at, option);
    const line = lineWith(of, own, varied.at);
    const found = line && loadLine(line, options[option]!, held.has(indexOf(of, own)));
    if (!found) return [];
    shown ??= line;
    return [found];
  });
  if (!shown) return [];
  const { mode } = shown.line;
  const name = mode ? `${varied.name} in mode ${mode.name}` : varied.name;
  return [{ ...(ratio ? { ratio } : {}), varied: words, line: name, fullLoad: fullLoadOf(shown), lines }];
}

function fullLoadOf({ rated, fullLoad }: LineAnalysis): LoadPoint[] {
  return [...fullLoad, ...(rated.value ? [rated.value] : [])]
    .map((one): LoadPoint => [one.speed.si, one.power.si])
    .sort((a, b) => a[0] - b[0])
    .filter((one, index, all) => index === 0 || one[0] > all[index - 1]![0] * 1.0001);
}

/** As `running-profile.ts` has it: power at the propeller, with the losses and the take-off of rated power in proportion. */
function loadLine(analysis: LineAnalysis, option: string, holds: boolean): LoadLine | undefined {
  const rated = analysis.rated.value;
  const propulsion = analysis.propulsion?.value;
  const at = propulsion?.atEngineSpeed;
  if (!rated || !at) return undefined;
  const pointAt = (si: number): LoadPoint[] => {
    const run = at(given('engine speed', 'ω', 'rotational speed', si));
    return run.applies ? [[si, (run.power.si * rated.power.si) / propulsion.available.si]] : [];
  };
  const from = Math.min(analysis.idleSpeed.value?.si ?? 0.4 * rated.speed.si, 0.9 * rated.speed.si);
  const full = propulsion.full.applies ? propulsion.full.engineSpeed.si : undefined;
  const step = (Math.max(rated.speed.si, full ?? 0) - from) / (POINTS - 1);
  const points = Array.from({ length: POINTS }, (_, index) => from + index * step).flatMap(pointAt);
  if (points.length < 2) return undefined;
  const [open] = full === undefined ? [] : pointAt(full);
  return { option, holds, points, ...(open ? { full: open } : {}) };
}

function dimensionOf(
  of: StudyCase,
  best: Choice,
  at: number,
  figureOf: (line: LineAnalysis) => number | undefined,
): Figures | undefined {
  for (const [dimension, { options }] of of.dimensions.entries()) {
    const values = options.map((_, option) => {
      const line = lineWith(of, best.with(dimension, option), at);
      return line && figureOf(line);
    });
    if (new Set(values.filter(one => one !== undefined)).size > 1) return { at: dimension, values };
  }
  return undefined;
}

function arrangementWith(of: StudyCase, choice: Choice): Arrangement | undefined {
  return of.vesselWith(choice)?.arrangements.find(one => one.name === of.arrangement);
}

function lineWith(of: StudyCase, choice: Choice, at: number): LineAnalysis | undefined {
  const vessel = of.vesselWith(choice);
  const line = vessel?.arrangements.find(one => one.name === of.arrangement)?.lines[at];
  return vessel && line && new LineAnalysis(line, vessel);
}

function anyThatGoes(of: StudyCase): Choice | undefined {
  const all = combinationsOf(of.dimensions);
  for (let index = 0; index < TRIED && index < all; index += 1) {
    const choice = choiceAt(of.dimensions, index);
    if (of.vesselWith(choice)) return choice;
  }
  return undefined;
}

function indexOf({ dimensions }: StudyCase, choice: Choice): number {
  return dimensions.reduce((index, { options }, at) => index * options.length + choice[at]!, 0);
}

/** Makes something of the preferred options and of others spread over all, until there are so many, in their order. */
function spread<T>(
  count: number,
  preferred: readonly number[],
  most: number,
  make: (option: number) => T[],
): T[] {
  const last = count - 1;
  const even = [0, last, ...[...Array(count).keys()].filter(one => one % Math.ceil(last / (most - 1)) === 0)];
  const made: { readonly option: number; readonly of: readonly T[] }[] = [];
  for (const option of new Set([...preferred, ...even])) {
    if (made.length === most) break;
    const of = make(option);
    if (of.length > 0) made.push({ option, of });
  }
  return made.sort((a, b) => a.option - b.option).flatMap(one => one.of);
}
