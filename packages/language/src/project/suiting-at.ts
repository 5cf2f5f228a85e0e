import { analysesOf, proposalsOf, type Suiting, suiting } from '@tailshaft/drivetrain';
import { hostOf, placeOf } from '../reading/place.js';
import type { FileCheck } from './project.js';

const known = new WeakMap<object, Suiting>();

/** What would suit the part at an offset; undefined where none stands there that is sized. */
export function suitingAt(check: FileCheck, uri: string, offset: number): Suiting | undefined {
  for (const judged of check.vessels) {
    const lines = proposalsOf(judged.vessel).flatMap(arrangement =>
      arrangement.lines.map(line => ({ arrangement, line })),
    );
    for (const { arrangement, line } of lines) {
      const part = line.chain.find(({ origin }) => {
        const place = placeOf(origin);
        const end = hostOf(origin)?.block?.end ?? place.end;
        return place.uri === uri && offset >= place.start && offset <= end;
      });
      if (!part) continue;
      const had = known.get(part);
      if (had) return had;
      const { vessel, catalogue, today } = judged;
      const analysisOf = analysesOf(vessel);
      const made = suiting(part, {
        vessel,
        catalogue,
        today,
        analysisOf,
        arrangement,
        line,
        analysis: analysisOf(line),
      });
      known.set(part, made);
      return made;
    }
  }
  return undefined;
}
