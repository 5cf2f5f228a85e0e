import { LineAnalysis } from '../analysis/line.js';
import type { Verdict } from '../judge/verdict.js';
import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';

/** A vessel with everything judged of it. */
export interface Judged {
  /** What it is compared by, where its name alone does not tell it from another of its set. */
  readonly key?: string;
  /** The file that holds it, as both sides call it. */
  readonly file?: string;
  readonly vessel: Vessel;
  readonly verdicts: readonly Verdict[];
  /** Where the host keeps analyses; made anew when absent. */
  readonly analysisOf?: (line: ShaftLine) => LineAnalysis;
}

/** One line under the name that it is compared by. */
export interface SideLine {
  readonly key: string;
  readonly line: ShaftLine;
  readonly analysis: LineAnalysis;
}

/** One of the two things that are compared: everything in it by identity, nothing by place or order. */
export interface Side {
  readonly vessel: Vessel;
  readonly lines: ReadonlyMap<string, SideLine>;
  readonly arrangements: ReadonlyMap<string, Arrangement>;
  /** Verdicts under the subject that they are compared by. */
  readonly verdicts: readonly { readonly subject: string; readonly verdict: Verdict }[];
}

/** A whole vessel; its lines go by arrangement and name. */
export function sideOfVessel(judged: Judged): Side {
  return {
    vessel: judged.vessel,
    lines: linesOf(judged, judged.vessel.arrangements, line => line.path),
    arrangements: new Map(judged.vessel.arrangements.map(one => [one.name, one])),
    verdicts: judged.verdicts.map(verdict => ({ subject: verdict.subject, verdict })),
  };
}

/** One arrangement; its lines go by their name alone, so that they meet those of another arrangement. */
export function sideOfArrangement(judged: Judged, arrangement: Arrangement): Side {
  const inside = `${arrangement.path}.`;
  return {
    vessel: judged.vessel,
    lines: linesOf(judged, [arrangement], line => line.name),
    arrangements: new Map([[WHOLE, arrangement]]),
    verdicts: judged.verdicts.flatMap(verdict => {
      if (verdict.subject === arrangement.path) return [{ subject: WHOLE, verdict }];
      return verdict.subject.startsWith(inside)
        ? [{ subject: verdict.subject.slice(inside.length), verdict }]
        : [];
    }),
  };
}

/** What an arrangement as a whole is called where it is compared with another. */
const WHOLE = 'arrangement';

function linesOf(
  judged: Judged,
  arrangements: readonly Arrangement[],
  keyOf: (line: ShaftLine) => string,
): Map<string, SideLine> {
  const analysisOf = judged.analysisOf ?? (line => new LineAnalysis(line, judged.vessel));
  const lines = new Map<string, SideLine>();
  for (const arrangement of arrangements) {
    for (const line of arrangement.lines) {
      lines.set(keyOf(line), { key: keyOf(line), line, analysis: analysisOf(line) });
    }
  }
  return lines;
}
