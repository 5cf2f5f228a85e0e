import { countsOf, type Needed, silentTopics, type Verdict } from '@tailshaft/drivetrain';
import type { Finding, Place } from '@tailshaft/language';
import { formatValue, type Value } from '@tailshaft/mechanics';
import type { CheckedSpec } from '../specs/specs.js';
import type { Spot, Spots } from '../specs/spot.js';
import { VERSION } from '../version.js';
import { CAUTION } from './cautions.js';
import type { Standing } from './judged.js';
import type { Question } from './open-questions.js';
import { gravestFirst, rankOf, severityOf } from './severity.js';
import type { Tally } from './tally.js';

/** Grows by one when a reader of the old form would misread the new one. */
export const FORM = 1 as const;

/** One file as the schema `check.schema.json` has it. */
export function specJson(
  specs: Spots,
  spec: CheckedSpec,
  standings?: ReadonlyMap<Finding, Standing>,
  told?: (finding: Finding) => void,
) {
  return {
    path: spec.shown,
    findings: spec.findings
      .map(finding => ({ finding, rank: rankOf(finding) }))
      .sort((a, b) => gravestFirst(a.rank, b.rank))
      .map(({ finding }) => {
        told?.(finding);
        return findingJson(specs, finding, standings?.get(finding));
      }),
    vessels: spec.check.vessels.map(({ vessel, verdicts }) => ({
      name: vessel.name,
      ...(vessel.title ? { title: vessel.title } : {}),
      arrangements: vessel.arrangements.map(one => ({
        name: one.name,
        ...(one.revises ? { revises: one.revises } : {}),
        lines: one.lines.map(line => ({
          path: line.path,
          ...(line.side?.value ? { side: line.side.value } : {}),
        })),
      })),
      counts: countsOf(verdicts),
      notLookedAt: silentTopics(vessel, verdicts),
      verdicts: verdicts.map(one => verdictJson(specs, one)),
    })),
    entries: spec.check.entries.map(({ reading, verdicts }) => ({
      kind: reading.kind,
      name: reading.name,
      verdicts: verdicts.map(one => verdictJson(specs, one)),
    })),
  };
}

export function checkJson<F extends object, Q extends object>(
  files: readonly F[],
  failures: readonly string[],
  tally: Tally,
  today: string,
  openQuestions: readonly Q[],
) {
  const { smallest, ...numbers } = tally;
  return {
    form: FORM,
    program: 'tailshaft' as const,
    version: VERSION,
    today,
    summary: {
      ...numbers,
      ...(smallest?.margin !== undefined
        ? { smallestMargin: { rule: smallest.rule, subject: smallest.subject, margin: smallest.margin } }
        : {}),
    },
    couldNotRun: failures,
    openQuestions,
    files,
    caution: CAUTION,
  };
}

function findingJson(specs: Spots, finding: Finding, baseline: Standing | undefined) {
  return {
    code: finding.code,
    severity: severityOf(finding),
    message: finding.message,
    ...placeJson(specs, finding.place),
    ...(finding.verdict ? { subject: finding.verdict.subject } : {}),
    ...(finding.verdict?.asFound ? { asFound: true as const } : {}),
    ...(baseline ? { baseline } : {}),
    related: finding.related.map(one => ({ message: one.message, ...placeJson(specs, one.place) })),
    waysOut: [
      ...(finding.verdict?.routes() ?? []).map(one => one.title),
      ...(finding.problem?.choices ?? []).map(one => one.title),
    ],
    ...(finding.folded ? { folded: finding.folded.map(one => foldedJson(specs, one)) } : {}),
  };
}

/** A finding that is told under another of the same cause. */
function foldedJson(specs: Spots, finding: Finding) {
  return {
    code: finding.code,
    severity: severityOf(finding),
    message: finding.message,
    ...placeJson(specs, finding.place),
    ...(finding.verdict ? { subject: finding.verdict.subject } : {}),
  };
}

/** A missing datum with the checks that wait for it. */
export function questionJson({ what, property, spot, written, waiting }: Question) {
  return { what, property, written, checks: [...waiting], ...(spot ? spotJson(spot) : {}) };
}

function verdictJson(specs: Spots, verdict: Verdict) {
  const { capacity, demand, margin, criterion, criterionChosenBy } = verdict;
  return {
    rule: verdict.rule,
    subject: verdict.subject,
    outcome: verdict.outcome,
    severity: verdict.severity,
    ...(verdict.asFound ? { asFound: true as const } : {}),
    message: verdict.message,
    ...(criterion ? { criterion } : {}),
    ...(criterionChosenBy ? { criterionChosenBy } : {}),
    ...(margin === undefined ? {} : { margin }),
    ...(capacity ? { capacity: valueJson(capacity) } : {}),
    ...(demand ? { demand: valueJson(demand) } : {}),
    missing: verdict.missing.map(one => ({
      what: one.what,
      property: one.property,
      ...placeJson(specs, (one.at ?? one.host) as Place),
    })),
    ...(verdict.needed ? { needed: verdict.needed.map(one => neededJson(specs, one)) } : {}),
    ...(verdict.byAnswer ? { byAnswer: verdict.byAnswer } : {}),
    ...placeJson(specs, verdict.place as Place),
  };
}

function neededJson(specs: Spots, { quantity, property, of, bound, si, written, now, at }: Needed) {
  const { dimension } = now;
  const stands = now.written ?? formatValue(now);
  return {
    ...{ quantity, property, of, bound, dimension, si, written, now: stands },
    ...placeJson(specs, at as Place),
  };
}

/** A number that is not finite has no JSON; its absence says so, and the text says why. */
function valueJson(value: Value) {
  return {
    label: value.label,
    dimension: value.dimension,
    ...(Number.isFinite(value.si) ? { si: value.si } : {}),
    text: formatValue(value),
    ...(value.written ? { written: value.written } : {}),
  };
}

/** Lines and columns from 1, columns in UTF-16 code units; the end stands behind the last one. */
function placeJson(specs: Spots, place: Place) {
  const spot = specs.spot(place);
  return spot ? spotJson(spot) : {};
}

function spotJson({ shown: path, line, column, endLine, endColumn }: Spot) {
  return { place: { path, line, column, endLine, endColumn } };
}
