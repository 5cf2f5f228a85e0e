import { createHash } from 'node:crypto';
import { findRule } from '@tailshaft/drivetrain';
import type { Finding, Place } from '@tailshaft/language';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { VERSION } from '../version.js';
import { severityOf } from './severity.js';

const LEVELS = { error: 'error', warning: 'warning', note: 'note', information: 'note' } as const;

/** The findings as a SARIF 2.1.0 log (OASIS, 2020), with paths relative to the folder the command ran in. */
export function sarifLog(specs: Specs, files: readonly CheckedSpec[]) {
  const findings = files.flatMap(file => file.findings);
  const codes = [...new Set(findings.map(one => one.code))].sort();
  return {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'tailshaft', version: VERSION, rules: codes.map(ruleOf) } },
        columnKind: 'utf16CodeUnits',
        results: findings.map(finding => resultOf(specs, finding, codes)),
      },
    ],
  };
}

function ruleOf(code: string) {
  const rule = findRule(code);
  if (!rule) return { id: code, shortDescription: { text: 'The text of the spec cannot be read as meant' } };
  return {
    id: code,
    shortDescription: { text: rule.title },
    fullDescription: { text: rule.manual },
    help: { text: `${rule.manual}\n\n${rule.caution}` },
    defaultConfiguration: { level: LEVELS[rule.severity] },
  };
}

function resultOf(specs: Specs, finding: Finding, codes: readonly string[]) {
  const related = finding.related.flatMap(one => {
    const physical = locationOf(specs, one.place);
    return physical ? [{ ...physical, message: { text: one.message } }] : [];
  });
  const location = locationOf(specs, finding.place);
  return {
    ruleId: finding.code,
    ruleIndex: codes.indexOf(finding.code),
    level: LEVELS[severityOf(finding)],
    // A check that waits for data is open, neither passed nor failed.
    kind: severityOf(finding) === 'information' ? 'open' : 'fail',
    message: { text: finding.message },
    locations: location ? [location] : [],
    ...(related.length > 0 ? { relatedLocations: related.map((one, id) => ({ id, ...one })) } : {}),
    partialFingerprints: { meaning: fingerprint(specs, finding) },
  };
}

/** By rule and what it is about, never by line: a block that moved keeps its alert. */
function fingerprint(specs: Specs, finding: Finding): string {
  const path = specs.spot(finding.place)?.shown ?? '';
  const about = finding.verdict
    ? `${finding.vessel?.vessel.name} ${finding.verdict.subject}`
    : finding.message;
  return createHash('sha256').update([finding.code, path, about].join('\n')).digest('hex').slice(0, 32);
}

function locationOf(specs: Specs, place: Place) {
  const spot = specs.spot(place);
  if (!spot) return undefined;
  return {
    physicalLocation: {
      artifactLocation: { uri: spot.shown.split('/').map(encodeURIComponent).join('/') },
      region: {
        startLine: spot.line,
        startColumn: spot.column,
        endLine: spot.endLine,
        endColumn: spot.endColumn,
      },
    },
  };
}
