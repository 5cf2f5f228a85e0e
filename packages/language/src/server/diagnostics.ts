import { DocumentState, type LangiumDocument, type LangiumDocuments } from 'langium';
import { type Connection, type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import type { Finding } from '../project/finding.js';
import { forgetOutline, keepOutline } from './outline.js';
import { rangeIn, rangeOf } from './places.js';
import type { TailshaftServices } from './services.js';
import { dropTree } from './workspace/builder.js';

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

/** Sends diagnostics with the version of the text they speak of; what was never shown is not cleared. */
export function publishDiagnostics(
  connection: Connection,
  services: TailshaftServices,
  wanted: () => boolean,
): void {
  const { DocumentBuilder, TextDocuments } = services.shared.workspace;
  const shown = new Set<string>();
  const send = (uri: string, diagnostics: Diagnostic[], version?: number) => {
    if (!wanted()) return;
    if (diagnostics.length === 0 && version === undefined && !shown.has(uri)) return;
    if (diagnostics.length > 0) shown.add(uri);
    else shown.delete(uri);
    void connection.sendDiagnostics({ uri, diagnostics, ...(version === undefined ? {} : { version }) });
  };
  DocumentBuilder.onUpdate((_changed, deleted) => {
    for (const uri of deleted) send(uri.toString(), []);
  });
  DocumentBuilder.onDocumentPhase(DocumentState.Validated, document => {
    const uri = document.uri.toString();
    const open = TextDocuments.get(uri);
    send(uri, document.diagnostics ?? [], open && document.textDocument.version);
    if (open) forgetOutline(document);
    else {
      keepOutline(services, document);
      services.project.rest(document);
      dropTree(document);
    }
  });
}
