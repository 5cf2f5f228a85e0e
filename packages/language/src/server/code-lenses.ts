import { countsOf, countWords, type Verdict } from '@tailshaft/drivetrain';
import { signedPercent } from '@tailshaft/mechanics';
import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens } from 'vscode-languageserver';
import { placeOf } from '../reading/place.js';
import { linesOf, tightest } from './lines.js';
import { rangeIn } from './places.js';
import type { TailshaftServices } from './services.js';

/** The command of the client that opens the sheet on a vessel or line: address of the file, name, path of the line. */
const SHOW_SHEET = 'tailshaft.showSheet';

/** How the checks of each vessel and line stand, above it; a click opens the sheet there. */
export class CodeLenses implements CodeLensProvider {
  constructor(private readonly services: TailshaftServices) {}

  provideCodeLens(document: LangiumDocument): CodeLens[] {
    if (!this.services.settings.get('lenses.checks')) return [];
    const lens = (place: object, verdicts: readonly Verdict[], vessel: string, line?: string): CodeLens => {
      const least = tightest(verdicts);
      const margin = least ? `, least margin ${signedPercent(least.margin!)}` : '';
      return {
        range: rangeIn(document.textDocument, placeOf(place)),
        command: {
          title: `${countWords(countsOf(verdicts))}${margin}`,
          command: SHOW_SHEET,
          arguments: [document.uri.toString(), vessel, ...(line ? [line] : [])],
        },
      };
    };
    return this.services.project.check(document).vessels.flatMap(judged => {
      const { vessel, verdicts } = judged;
      return [
        lens(vessel.nameOrigin, verdicts, vessel.name),
        ...linesOf(judged).map(one => lens(one.line.nameOrigin, one.verdicts, vessel.name, one.line.path)),
      ];
    });
  }
}
