import {
  type Cancellation,
  DefaultDocumentValidator,
  type LangiumDocument,
  type ValidationOptions,
} from 'langium';
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import { findingsOf } from '../project/findings.js';
import type { TailshaftServices } from './services.js';

/** Findings of the project as diagnostics; the library's own checks have nothing to say beside them. */
export class ProjectValidator extends DefaultDocumentValidator {
  constructor(private readonly services: TailshaftServices) {
    super(services);
  }

  override async validateDocument(
    document: LangiumDocument,
    _options?: ValidationOptions,
    _token?: Cancellation.CancellationToken,
  ): Promise<Diagnostic[]> {
    const { project, settings, entryFindings } = this.services;
    try {
      await project.load(document);
      return entryFindings.take(document, findingsOf(project.check(document)));
    } catch (error) {
      this.services.log(`checking ${document.uri.path}`, error);
      const href = settings.pageOf(FAILED.code);
      return [href ? { ...FAILED, codeDescription: { href } } : FAILED];
    }
  }
}

/** A file whose checks broke off is never shown as if it had none to fail. */
const FAILED = {
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  severity: DiagnosticSeverity.Error,
  code: 'internal/check-failed',
  source: 'tailshaft',
  message:
    'The checks of this file stopped because of a fault in Tailshaft, so it has no result. The log of the language server shows where.',
} satisfies Diagnostic;
