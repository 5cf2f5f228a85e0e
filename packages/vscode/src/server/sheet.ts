import {
  behindText,
  type FileCheck,
  failuresOf,
  findingsOf,
  type JudgedVessel,
  type Place,
} from '@tailshaft/language';
import { linesOf, locationOf, type TailshaftServices } from '@tailshaft/language/server';
import { chartsFile, picturesFile, type SheetInput, sheetPanel, vesselSheetHtml } from '@tailshaft/sheet';
import { type LangiumDocument, URI, UriUtils } from 'langium';
import type { AboutVessel, SheetAnswer, SheetFileAnswer } from '../requests.js';

/** The panel of a vessel; nothing where the file holds none. */
export function sheetAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { vessel, choice }: AboutVessel,
): SheetAnswer | undefined {
  const check = services.project.check(document);
  const judged = chosen(check, vessel);
  if (!judged) return undefined;
  const input = sheetInput(services, check, judged);
  return {
    ...sheetPanel(input, choice),
    vessels: check.vessels.map(one => one.vessel.name),
    vessel: judged.vessel.name,
    studies: judged.reading.studies.length,
  };
}

export function sheetFileAnswer(
  services: TailshaftServices,
  document: LangiumDocument,
  { vessel, choice, form }: AboutVessel & { readonly form: 'html' | 'svg' | 'charts' },
): SheetFileAnswer | undefined {
  const check = services.project.check(document);
  const judged = chosen(check, vessel);
  if (!judged) return undefined;
  const { placeKey: _, ...input } = sheetInput(services, check, judged);
  if (form === 'html') return { text: vesselSheetHtml(input) };
  const picture = (form === 'charts' ? chartsFile : picturesFile)(input, choice);
  return picture && { text: picture.svg, width: picture.width, height: picture.height };
}

export function chosen({ vessels }: FileCheck, name: string | undefined): JudgedVessel | undefined {
  return vessels.find(one => one.vessel.name === name) ?? vessels[0];
}

function sheetInput(services: TailshaftServices, check: FileCheck, judged: JudgedVessel): SheetInput {
  const documents = services.shared.workspace.LangiumDocuments;
  const lines = linesOf(judged);
  const where = (place: Place) => {
    const found = locationOf(place, documents);
    return found && `${UriUtils.basename(URI.parse(place.uri))}:${found.range.start.line + 1}`;
  };
  const ofEntries = check.entries.flatMap(one => one.verdicts);
  return {
    vessel: judged.vessel,
    verdicts: [...judged.verdicts, ...ofEntries],
    entryVerdicts: ofEntries,
    failures: failuresOf(findingsOf(check), judged),
    analysisOf: line => lines.find(one => one.line === line)!.analysis,
    today: services.project.today(),
    problems: check.problems.map(one => ({
      message: one.message,
      where: where({ uri: check.uri, start: one.start, end: one.end }) ?? '',
    })),
    behindText: behindText(check),
    placeText: origin => where(origin as Place),
    placeKey: origin => keyOf(services, origin as Place),
  };
}

/**
 * A place for the panel: where a click goes, and how far the thing reaches for the cursor to be in it.
 * `line,character,line,character,line,character@address`.
 */
function keyOf(services: TailshaftServices, place: Place): string | undefined {
  const documents = services.shared.workspace.LangiumDocuments;
  const found = locationOf(place, documents);
  if (!found) return undefined;
  const end = (place as Place & { block?: { end: number } }).block?.end ?? place.end;
  const reach = locationOf({ uri: place.uri, start: place.start, end }, documents)!.range.end;
  const points = [found.range.start, found.range.end, reach];
  return `${points.map(one => `${one.line},${one.character}`).join(',')}@${place.uri}`;
}
