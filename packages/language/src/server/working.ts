import { formatValue, signedPercent, type Value, workingMarkdown } from '@tailshaft/mechanics';
import type { LangiumDocument } from 'langium';
import { placeOf } from '../reading/place.js';
import { disarmed } from './hover/disarm.js';
import { restsOn } from './hover/driven.js';
import { paragraphs, plain } from './hover/markdown.js';
import { derivedValues, type JudgedLine, judgedLine, linesOf, vesselsThatSee } from './lines.js';
import { inside } from './places.js';
import type { TailshaftServices } from './services.js';
import { spotAt } from './spot.js';

export interface WorkingAnswer {
  readonly title: string;
  readonly markdown: string;
}

/** On a value: all that rests on it. On a line, part or vessel: all that was worked out for it. */
export function workingAt(
  services: TailshaftServices,
  document: LangiumDocument,
  offset: number,
): WorkingAnswer | undefined {
  const { project } = services;
  const spot = spotAt(project.reading(document), offset);
  if (!spot) return undefined;
  if (spot.kind === 'fact' && spot.fact.value) {
    const place = { uri: document.uri.toString(), ...spot.fact.value };
    const lines = vesselsThatSee(project, document, services.shared.workspace.LangiumDocuments.all).flatMap(
      linesOf,
    );
    return page(`What ${spot.fact.row.words} ${spot.fact.fact?.written ?? ''} drives`, lines, value =>
      restsOn(value, place),
    );
  }
  if ('part' in spot && 'line' in spot) {
    const line = judgedLine(project, document, spot.line);
    const { host } = spot.part;
    const whole = { uri: host.uri, start: host.start, end: host.block?.end ?? host.headEnd };
    const entry = line?.line.chain.find(one => inside(one.origin, whole))?.entry;
    const places = [whole, ...(entry ? [placeOf(entry.origin)] : [])];
    return (
      line &&
      page(`Workings of ${spot.part.role}, ${line.line.path}`, [line], value =>
        places.some(one => restsOn(value, one)),
      )
    );
  }
  if ('line' in spot && spot.line) {
    const line = judgedLine(project, document, spot.line);
    return line && page(`Workings of ${line.line.path}`, [line], () => true);
  }
  if ('vessel' in spot && spot.vessel) {
    const judged = project.check(document).vessels.find(one => one.reading === spot.vessel);
    return judged && page(`Workings of ${spot.vessel.name}`, linesOf(judged), () => true);
  }
  return undefined;
}

function page(
  title: string,
  lines: readonly JudgedLine[],
  wanted: (value: Value) => boolean,
): WorkingAnswer | undefined {
  const parts = lines.flatMap(line => sectionsOf(line, wanted));
  return parts.length > 0
    ? { title, markdown: disarmed(paragraphs(`# ${plain(title)}`, ...parts)) }
    : undefined;
}

function sectionsOf(line: JudgedLine, wanted: (value: Value) => boolean): string[] {
  const seen = new Set<string>();
  const sections: string[] = [];
  const add = (value: Value) => {
    const key = `${value.label} ${formatValue(value)}`;
    if (!value.working || seen.has(key) || !wanted(value)) return;
    seen.add(key);
    sections.push(`### ${plain(value.label)}: ${plain(formatValue(value))}`, workingMarkdown(value));
  };
  for (const value of derivedValues(line)) add(value);
  for (const verdict of line.verdicts) {
    const values = [verdict.demand, verdict.capacity, ...verdict.workings].filter(one => one !== undefined);
    if (verdict.margin !== undefined && values.some(wanted)) {
      sections.push(
        `**${verdict.rule}**: ${verdict.outcome}, margin ${signedPercent(verdict.margin)}. ${plain(verdict.message)}`,
      );
    }
    for (const value of values) add(value);
  }
  const name = `${line.judged.vessel.name} ${line.line.path}`;
  return sections.length > 0 ? [`## ${plain(name)}`, ...sections] : [];
}
