import type { Verdict } from '@tailshaft/drivetrain';
import { everyFinding } from '@tailshaft/language';
import type { CheckedSpec } from '../specs/specs.js';
import { severityOf } from './severity.js';

/** A suite for each file, a case for each check: what cannot be told is skipped, never passed. */
export function junitSuite(spec: CheckedSpec): string {
  const problems = everyFinding(spec.findings).filter(one => one.problem);
  const cases = [
    ...problems.map(one => testCase(spec.shown, one.code, failureOf(severityOf(one), one.message))),
    ...spec.check.vessels.flatMap(({ vessel, verdicts }) => verdicts.map(one => caseOf(vessel.name, one))),
    ...spec.check.entries.flatMap(({ reading, verdicts }) => verdicts.map(one => caseOf(reading.name, one))),
  ].filter(Boolean);
  const failing = cases.filter(one => one.includes('<failure')).length;
  const skipped = cases.filter(one => one.includes('<skipped')).length;
  const counts = `tests="${cases.length}" failures="${failing}" skipped="${skipped}" errors="0"`;
  return `  <testsuite name="${escaped(spec.shown)}" ${counts}>\n${cases.join('\n')}\n  </testsuite>`;
}

export function junitReport(suites: readonly string[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="tailshaft">\n${suites.join('\n')}\n</testsuites>`;
}

function caseOf(of: string, verdict: Verdict): string {
  const { rule, subject, outcome, severity, asFound, message } = verdict;
  if (outcome === 'does not apply') return '';
  const name = subject === of ? of : `${of}, ${subject}`;
  if (outcome === 'holds') return testCase(name, rule, '');
  if (outcome === 'fails' && !asFound) return testCase(name, rule, failureOf(severity, message));
  const why = outcome === 'fails' ? 'as found' : outcome;
  return testCase(name, rule, `<skipped message="${escaped(`${why}: ${message}`)}"/>`);
}

function failureOf(type: string, message: string): string {
  return `<failure type="${type}" message="${escaped(message)}"/>`;
}

function testCase(of: string, name: string, inside: string): string {
  return `    <testcase classname="${escaped(of)}" name="${escaped(name)}">${inside}</testcase>`;
}

function escaped(text: string): string {
  return (
    text
      .replace(/&/g, '&amp;')
      .replace(/</g, '&lt;')
      .replace(/>/g, '&gt;')
      .replace(/"/g, '&quot;')
      .replace(/[\n\r\t]/g, ' ')
      // biome-ignore lint/suspicious/noControlCharactersInRegex: XML has no place for them
      .replace(/[\x00-\x1f]/g, '')
  );
}
