import { RULES } from '@tailshaft/drivetrain';
import { onDocument, type TailshaftServices } from '@tailshaft/language/server';
import { DocumentState, type LangiumDocument } from 'langium';
import type { CancellationToken } from 'vscode-languageserver';
import { type AboutFile, CHECKED, type Requests } from '../requests.js';

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
    ) => Requests[Name][1] | undefined | Promise<Requests[Name][1] | undefined>,
  ) =>
    connection.onRequest(
      name as string,
      onDocument<Requests[Name][0] & AboutFile, Requests[Name][1]>(services, name, answer) as (
        given: unknown,
        token: CancellationToken,
      ) => Promise<unknown>,
    );

  const more = () => import('./more.js');
  about('tailshaft/sheet', async (document, given) => (await more()).sheetAnswer(services, document, given));
  about('tailshaft/sheetFile', async (document, given) =>
    (await more()).sheetFileAnswer(services, document, given),
  );
  about('tailshaft/studies', async (document, given) =>
    (await more()).studiesAnswer(services, document, given),
  );
  about('tailshaft/candidate', async (document, given) =>
    (await more()).candidateAnswer(services, document, given),
  );
  about('tailshaft/compare', async (document, given) =>
    (await more()).compareAnswer(services, document, given),
  );
  about('tailshaft/marks', async (document, { before }) =>
    (await more()).marksAnswer(services, document, before),
  );
  on('tailshaft/wanted', async texts => (await more()).wantedAnswer(services, texts));
  about('tailshaft/report', async (document, given) =>
    (await more()).reportAnswer(services, document, given),
  );
  on('tailshaft/reportOfText', async given => (await more()).reportOfText(services, given));
  on('tailshaft/coloured', async ({ texts }) => (await more()).coloured(services, texts));
  on('tailshaft/catalogues', async () => (await more()).catalogues(services));
  on('tailshaft/rules', () => RULES.map(({ id, title, severity }) => ({ id, title, severity })));

  DocumentBuilder.onDocumentPhase(DocumentState.Validated, document => {
    void connection.sendNotification(CHECKED, { uri: document.uri.toString() });
  });
}
