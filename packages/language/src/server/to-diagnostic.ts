import type { LangiumDocument, LangiumDocuments } from 'langium';
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import type { Finding } from '../project/finding.js';
import { rangeIn, rangeOf } from './places.js';

/** What code actions need to find their finding again. */
export interface DiagnosticData {
  readonly code: string;
  /** `proposed.Port`, where a rule judged. */
  readonly subject?: string;
  readonly outcome?: string;
  /** Offsets in the text that was checked. */
  readonly start: number;
  readonly end: number;
}

const SEVERITY = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
} as const;

/** What stands a second time is shown faint. */
const UNNECESSARY = new Set(['text/twice']);

export function toDiagnostic(
  finding: Finding,
  document: LangiumDocument,
  documents: LangiumDocuments,
  page: string | undefined,
): Diagnostic {
  const { place, verdict } = finding;
  const data: DiagnosticData = {
    code: finding.code,
    ...(verdict ? { subject: verdict.subject, outcome: verdict.outcome } : {}),
    start: place.start,
    end: place.end,
  };
  const related = finding.related.flatMap(one => {
    const range = rangeOf(one.place, documents);
    return range ? [{ location: { uri: one.place.uri, range }, message: one.message }] : [];
  });
  return {
    range: rangeIn(document.textDocument, place),
    severity: SEVERITY[finding.severity],
    code: finding.code,
    ...(page ? { codeDescription: { href: page } } : {}),
    source: 'tailshaft',
    message: finding.message,
    ...(UNNECESSARY.has(finding.code) ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(related.length > 0 ? { relatedInformation: related } : {}),
    data,
  };
}
