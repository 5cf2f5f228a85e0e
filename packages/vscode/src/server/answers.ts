import { RULES } from '@tailshaft/drivetrain';
import { onDocument, type TailshaftServices } from '@tailshaft/language/server';
import { DocumentState, type LangiumDocument } from 'langium';
import type { CancellationToken } from 'vscode-languageserver';
import { type AboutFile, CHECKED, type Requests } from '../requests.js';
import { catalogues } from './catalogues.js';
import { coloured } from './coloured.js';
import { compareAnswer, marksAnswer, wantedAnswer } from './compare.js';
import { reportAnswer, reportOfText } from './report.js';
import { sheetAnswer, sheetFileAnswer } from './sheet.js';

/** Answers what only this extension asks: sheets, comparisons, the list of rules. */
export function answerExtension(services: TailshaftServices): void {
  const connection = services.shared.lsp.Connection!;
  const { DocumentBuilder } = services.shared.workspace;
  // The library types a handler by what can be cancelled; ours answer from what is built and are quick.
  const on = <Name extends keyof Requests>(
    name: Name,
    answer: (given: Requests[Name][0]) => Requests[Name][1] | Promise<Requests[Name][1]>,
  ) => connection.onRequest(name as string, answer as (given: unknown) => unknown);
  const about = <Name extends keyof Requests>(
    name: Name,
    answer: (
      document: LangiumDocument,
      given: Requests[Name][0] & AboutFile,
    ) => Requests[Name][1] | undefined | Promise<Requests[Name][1]>,
  ) =>
    connection.onRequest(
      name as string,
      onDocument<Requests[Name][0] & AboutFile, Requests[Name][1]>(services, name, answer) as (
        given: unknown,
        token: CancellationToken,
      ) => Promise<unknown>,
    );

  about('tailshaft/sheet', (document, given) => sheetAnswer(services, document, given));
  about('tailshaft/sheetFile', (document, given) => sheetFileAnswer(services, document, given));
  about('tailshaft/compare', (document, given) => compareAnswer(services, document, given));
  about('tailshaft/marks', (document, given) => marksAnswer(services, document, given.before));
  on('tailshaft/wanted', texts => wantedAnswer(services, texts));
  about('tailshaft/report', (document, given) => reportAnswer(services, document, given));
  on('tailshaft/reportOfText', given => reportOfText(services, given));
  on('tailshaft/coloured', ({ texts }) => coloured(services, texts));
  on('tailshaft/catalogues', () => catalogues(services));
  on('tailshaft/rules', () => RULES.map(({ id, title, severity }) => ({ id, title, severity })));

  DocumentBuilder.onDocumentPhase(DocumentState.Validated, document => {
    void connection.sendNotification(CHECKED, { uri: document.uri.toString() });
  });
}
