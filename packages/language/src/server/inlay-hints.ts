import {
  formatValue,
  naturalUnit,
  signedPercent,
  type Value,
  workingMarkdown,
  writtenUnit,
} from '@tailshaft/mechanics';
import type { Role } from '@tailshaft/vocabulary';
import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import { type InlayHint, InlayHintKind, type InlayHintParams } from 'vscode-languageserver';
import type { LineReading } from '../reading/arrangement.js';
import { placeOf } from '../reading/place.js';
import { disarmed } from './hover/disarm.js';
import { rotationHover } from './hover/line.js';
import { plain, shortened } from './hover/markdown.js';
import { type JudgedLine, linesOf, tightest } from './lines.js';
import type { TailshaftServices } from './services.js';

/** Computed figures beside the text: shaft speed and torque, needed hand, least margin, SI values. */
export class InlayHints implements InlayHintProvider {
  constructor(private readonly services: TailshaftServices) {}

  getInlayHints(document: LangiumDocument, { range }: InlayHintParams): InlayHint[] {
    const { project } = this.services;
    const hints: InlayHint[] = [];
    const from = document.textDocument.offsetAt(range.start);
    const to = document.textDocument.offsetAt(range.end);
    for (const judged of project.check(document).vessels) {
      for (const line of linesOf(judged)) {
        const reading = judged.reading.arrangements
          .find(one => one.name === line.arrangement.name)
          ?.lines.find(one => one.namePlace.start === placeOf(line.line.nameOrigin).start);
        if (reading && overlaps(reading.whole, from, to))
          this.ofLine(line, reading, (offset, label, tooltip) =>
            hints.push(hint(document, offset, label, tooltip)),
          );
      }
      if (this.services.settings.get('hints.siUnits')) {
        for (const { value, origin } of judged.vessel.quantities) {
          if (needsSI(value)) hints.push(hint(document, placeOf(origin).end, formatValue(value)));
        }
      }
    }
    return hints.filter(
      ({ position }) => position.line >= range.start.line && position.line <= range.end.line,
    );
  }

  private ofLine(
    line: JudgedLine,
    reading: LineReading,
    add: (offset: number, label: string, tooltip?: string) => void,
  ) {
    const { settings } = this.services;
    const beside = (...roles: Role[]) => {
      const part = roles.map(role => reading.parts.find(one => one.role === role)).find(one => one);
      return part ? part.host.headEnd : reading.namePlace.end;
    };
    const rated = line.analysis.rated.value;
    const shaft = rated && line.analysis.loads(rated).shaft;
    const show = (what: string, value: Value | undefined, offset: number) => {
      if (value && Number.isFinite(value.si))
        add(offset, `${what} ${line.analysis.tell(value)}`, shortened(workingMarkdown(value), 20));
    };
    if (settings.get('hints.shaftSpeed')) show('turns', shaft?.speed, beside('shaft', 'gear'));
    if (settings.get('hints.shaftTorque')) show('carries', shaft?.torque, beside('shaft', 'gear'));
    const hand = line.analysis.rotation.neededHand;
    if (settings.get('hints.propellerHand') && hand)
      add(beside('propeller'), `needs ${hand} hand`, rotationHover(line));
    const least = settings.get('hints.margins') && tightest(line.verdicts);
    if (least)
      add(
        reading.namePlace.end,
        `least margin ${signedPercent(least.margin!)}`,
        `${least.rule}: ${plain(least.message)}`,
      );
  }
}

function overlaps(place: { start: number; end: number }, from: number, to: number): boolean {
  return place.start <= to && place.end >= from;
}

function hint(document: LangiumDocument, offset: number, label: string, tooltip?: string): InlayHint {
  return {
    position: document.textDocument.positionAt(offset),
    label,
    kind: InlayHintKind.Type,
    paddingLeft: true,
    ...(tooltip ? { tooltip: { kind: 'markdown', value: disarmed(tooltip) } } : {}),
  };
}

/** A quantity in a unit of US or imperial tradition. */
function needsSI(value: Value): boolean {
  const system = writtenUnit(value)?.system;
  return (
    (system === 'US' || system === 'imperial') && naturalUnit(value).symbol !== writtenUnit(value)?.symbol
  );
}
