import type { Verdict } from '@tailshaft/drivetrain';
import { everyFinding } from '@tailshaft/language';
import { isKnown, type Judged } from '../report/judged.js';
import { severityOf } from '../report/severity.js';
import type { Form } from './form.js';

/** A suite for each file, a case for each check: a check that cannot tell is skipped, never passed. */
export class JunitForm implements Form<string> {
  private readonly suites: string[] = [];

  pieceOf(judged: Judged): string {
    const { spec } = judged;
    const known = new Set(
      everyFinding(spec.findings.filter(one => isKnown(judged, one))).map(one => one.verdict ?? one.problem),
    );
    const cases = [
      ...everyFinding(spec.findings).flatMap(one => {
        if (!one.problem) return [];
        const inside = known.has(one.problem)
          ? skipped('in the baseline', one.message)
          : failureOf(severityOf(one), one.message);
        return [testCase(spec.shown, one.code, inside)];
      }),
      ...spec.check.vessels.flatMap(({ vessel, verdicts }) =>
        verdicts.map(one => caseOf(vessel.name, one, known.has(one))),
      ),
      ...spec.check.entries.flatMap(({ reading, verdicts }) =>
        verdicts.map(one => caseOf(reading.name, one, known.has(one))),
      ),
    ].filter(Boolean);
    const failing = cases.filter(one => one.includes('<failure')).length;
    const waiting = cases.filter(one => one.includes('<skipped')).length;
    const counts = `tests="${cases.length}" failures="${failing}" skipped="${waiting}" errors="0"`;
    return `  <testsuite name="${escaped(spec.shown)}" ${counts}>\n${cases.join('\n')}\n  </testsuite>`;
  }

  take(suite: string): void {
    this.suites.push(suite);
  }

  text(): string {
    const body = this.suites.join('\n');
    return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="tailshaft">\n${body}\n</testsuites>`;
  }
}

function caseOf(of: string, verdict: Verdict, known: boolean): string {
  const { rule, subject, outcome, severity, asFound, message } = verdict;
  if (outcome === 'does not apply') return '';
  const name = subject === of ? of : `${of}, ${subject}`;
  if (outcome === 'holds') return testCase(name, rule, '');
  if (outcome === 'fails' && !asFound && !known) return testCase(name, rule, failureOf(severity, message));
  const why = outcome !== 'fails' ? outcome : asFound ? 'as found' : 'in the baseline, fails';
  return testCase(name, rule, skipped(why, message));
}

function skipped(why: string, message: string): string {
  return `<skipped message="${escaped(`${why}: ${message}`)}"/>`;
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
