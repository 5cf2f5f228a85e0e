import {
  addedLevels,
  COMPARISON_CAUTION,
  type Comparison,
  countsOf,
  fleetHeadline,
  headline,
  type Judged,
  levelsOf,
  type SpecChange,
  type Verdict,
  type VesselComparison,
  vesselLevels,
} from '@tailshaft/drivetrain';
import type { Value } from '@tailshaft/mechanics';
import { VERSION } from '../version.js';

/** Grows by one when a reader of the old form would misread the new one. */
export const FORM = 1 as const;

/** A comparison as the schema `compare.schema.json` has it. */
export function comparisonJson(before: string, after: string, comparison: Comparison, marginLost: number) {
  return {
    form: FORM,
    program: 'tailshaft' as const,
    version: VERSION,
    before,
    after,
    headline: fleetHeadline(comparison, marginLost),
    levels: levelsOf(comparison, marginLost),
    unread: comparison.unread,
    vessels: comparison.vessels.map(one => vesselJson(one, marginLost)),
    addedVessels: comparison.addedVessels.map(one => one.key ?? one.vessel.name),
    added: comparison.addedVessels.map(addedJson),
    removedVessels: comparison.removedVessels.map(one => one.key ?? one.vessel.name),
    entries: comparison.entries.map(({ kind, name, fate, from, facts }) => ({
      kind,
      name,
      fate,
      ...(from ? { from } : {}),
      facts,
    })),
    caution: COMPARISON_CAUTION,
  };
}

function vesselJson(comparison: VesselComparison, marginLost: number) {
  const { name, changes, kept, addedLines, removedLines } = comparison;
  return {
    name,
    headline: headline(comparison),
    worse: vesselLevels(comparison, marginLost).length > 0,
    levels: vesselLevels(comparison, marginLost),
    changes: changes.map(changeJson),
    kept: kept.map(one => ({ subject: one.subject, words: one.words })),
    addedLines,
    removedLines,
  };
}

/** There is nothing to compare an added vessel with: it is told by all its verdicts. */
function addedJson(added: Judged) {
  const { key, vessel, file, verdicts } = added;
  return {
    name: key ?? vessel.name,
    ...(file ? { file } : {}),
    levels: addedLevels(added),
    counts: countsOf(verdicts),
    verdicts: verdicts.map(one => ({
      rule: one.rule,
      subject: one.subject,
      severity: one.severity,
      ...(one.asFound ? { asFound: true } : {}),
      ...outcomeJson(one),
    })),
  };
}

function changeJson(change: SpecChange) {
  const { kind, subject, words } = change;
  const base = { kind, subject, words };
  switch (change.kind) {
    case 'verdict':
      return {
        ...base,
        movement: change.movement,
        rule: change.rule,
        severity: change.severity,
        ...(change.before ? { before: outcomeJson(change.before) } : {}),
        ...(change.after ? { after: outcomeJson(change.after) } : {}),
      };
    case 'derived':
      return {
        ...base,
        what: change.what,
        ...(change.before === undefined ? {} : { before: change.before }),
        ...(change.after === undefined ? {} : { after: change.after }),
        ...(change.share === undefined ? {} : { share: change.share }),
        ...(change.valueBefore ? { valueBefore: valueJson(change.valueBefore) } : {}),
        ...(change.valueAfter ? { valueAfter: valueJson(change.valueAfter) } : {}),
      };
    case 'part':
      return {
        ...base,
        role: change.role,
        fate: change.fate,
        ...(change.from ? { from: change.from } : {}),
        facts: change.facts,
      };
    case 'statement':
      return { ...base, about: change.about, ...(change.tendency ? { tendency: change.tendency } : {}) };
    case 'silent':
      return { ...base, what: change.what };
    case 'one-sided':
      return { ...base, changed: change.changed, unchanged: change.unchanged };
    case 'open':
      return { ...base, role: change.role, rules: change.rules };
    case 'rename':
      return { ...base, of: change.of, from: change.from, to: change.to };
    case 'paper':
      return base;
  }
}

function outcomeJson({ outcome, margin, message }: Verdict) {
  return { outcome, message, ...(margin === undefined ? {} : { margin }) };
}

const valueJson = ({ dimension, si }: Value) => ({ dimension, si });
