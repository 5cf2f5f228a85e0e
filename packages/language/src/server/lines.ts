import {
  type Arrangement,
  LineAnalysis,
  type Part,
  type ShaftLine,
  type Verdict,
} from '@tailshaft/drivetrain';
import { renamed, type Value } from '@tailshaft/mechanics';
import type { LangiumDocument } from 'langium';
import type { JudgedVessel, Project } from '../project/project.js';
import type { LineReading } from '../reading/arrangement.js';
import { samePlace } from './places.js';

/** A shaft line with all that was judged and worked out of it. */
export interface JudgedLine {
  readonly judged: JudgedVessel;
  readonly arrangement: Arrangement;
  readonly line: ShaftLine;
  readonly analysis: LineAnalysis;
  readonly verdicts: readonly Verdict[];
}

const made = new WeakMap<JudgedVessel, JudgedLine[]>();

/** All lines of a judged vessel. Analyses are kept as long as the verdicts are. */
export function linesOf(judged: JudgedVessel): readonly JudgedLine[] {
  const had = made.get(judged);
  if (had) return had;
  const lines = judged.vessel.arrangements.flatMap(arrangement =>
    arrangement.lines.map(line => ({
      judged,
      arrangement,
      line,
      analysis: new LineAnalysis(line, judged.vessel),
      verdicts: judged.verdicts.filter(
        one => one.subject === line.path || one.subject.startsWith(`${line.path}.`),
      ),
    })),
  );
  made.set(judged, lines);
  return lines;
}

/** The judged line of a line as written. */
export function judgedLine(
  project: Project,
  document: LangiumDocument,
  reading: LineReading,
): JudgedLine | undefined {
  for (const judged of project.check(document).vessels) {
    for (const one of linesOf(judged)) if (samePlace(one.line.nameOrigin, reading.namePlace)) return one;
  }
  return undefined;
}

/** The quantities of a line that people ask for, as far as they can be told; the most telling ones first. */
export function derivedValues({ analysis }: JudgedLine): Value[] {
  const values: (Value | undefined)[] = [];
  const rated = analysis.rated.value;
  const loads = rated && analysis.loads(rated);
  values.push(loads?.shaft?.torque && renamed(loads.shaft.torque, 'shaft torque at rated power'));
  values.push(loads?.shaft?.speed && renamed(loads.shaft.speed, 'shaft speed at rated power'));
  values.push(loads?.shaft?.power, rated?.torque, rated?.power);
  values.push(analysis.operatingPoints.find(one => one.name === 'rated power')?.tipSpeed);
  values.push(analysis.peakTorque.value?.torque);
  values.push(analysis.idleShaftSpeed.value, analysis.idleVesselSpeed.value);
  values.push(analysis.governedSpeed.value);
  values.push(analysis.overallRatio('ahead').value, analysis.overallRatio('astern').value);
  return values.filter(one => one !== undefined && Number.isFinite(one.si)) as Value[];
}

/** The verdict with the least margin, among those that have one: of what is proposed, where anything is. */
export function tightest(verdicts: readonly Verdict[]): Verdict | undefined {
  const measured = verdicts.filter(one => one.margin !== undefined);
  const proposed = measured.filter(one => !one.asFound);
  return (proposed.length > 0 ? proposed : measured).reduce<Verdict | undefined>(
    (least, one) => (least === undefined || one.margin! < least.margin! ? one : least),
    undefined,
  );
}

/** Lines of any vessel that use a catalogue entry, by where the entry is declared. */
export function usersOf(lines: Iterable<JudgedLine>, entry: object): { line: JudgedLine; part: Part }[] {
  const users: { line: JudgedLine; part: Part }[] = [];
  for (const line of lines) {
    for (const part of line.line.chain) {
      if (part.entry && samePlace(part.entry.origin, entry as never)) users.push({ line, part });
    }
  }
  return users;
}

/** Judged vessels of this file, and of loaded files that see it. */
export function vesselsThatSee(
  project: Project,
  document: LangiumDocument,
  all: Iterable<LangiumDocument>,
  limit = 50,
): JudgedVessel[] {
  const vessels = [...project.check(document).vessels];
  const seeing = project.affectedBy([document.uri.toString()]);
  for (const other of all) {
    if (vessels.length >= limit) break;
    if (other === document || !seeing.has(other.uri.toString())) continue;
    if (project.summary(other).vessels.length > 0) vessels.push(...project.check(other).vessels);
  }
  return vessels;
}
