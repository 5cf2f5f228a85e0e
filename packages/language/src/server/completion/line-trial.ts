import { LineAnalysis, RULES, type ShaftLine, type Verdict } from '@tailshaft/drivetrain';
import { signedPercent } from '@tailshaft/mechanics';
import type { JudgedLine } from '../lines.js';

/** How a catalogue part would fare in a line, in words and for sorting. */
export interface Fit {
  readonly words: string;
  readonly rank: number;
}

/** Above this many trials a list is offered without figures: typing must not wait. */
export const MOST_TRIALS = 150;

/** What some rules say of a line as it would be. */
export function tryLine(judged: JudgedLine, line: ShaftLine, wanted: RegExp): Verdict[] {
  const { vessel, catalogue } = judged.judged;
  const context = {
    vessel,
    catalogue,
    today: '',
    arrangement: judged.arrangement,
    line,
    analysis: new LineAnalysis(line, vessel),
    analysisOf: (one: ShaftLine) => new LineAnalysis(one, vessel),
  };
  return RULES.flatMap(rule => {
    const said = rule.scope === 'line' && wanted.test(rule.id) ? rule.check(context) : undefined;
    return said ? [said].flat() : [];
  });
}

/** The verdicts in a few words: what fails, or how much is open, and the least margin. */
export function fitOf(verdicts: readonly Verdict[], how = ''): Fit | undefined {
  if (verdicts.length === 0) return undefined;
  const fails = verdicts.filter(one => one.outcome === 'fails');
  const open = verdicts.filter(one => one.outcome === 'cannot tell').length;
  const margins = verdicts.flatMap(one => (one.margin === undefined ? [] : [one.margin]));
  const least = margins.length > 0 ? Math.min(...margins) : undefined;
  const margin = least === undefined ? '' : `, margin ${signedPercent(least)}`;
  const state = fails[0] ? `fails ${fails[0].rule}` : open > 0 ? `${open} cannot tell` : 'holds';
  return {
    words: `${how ? `${how}: ` : ''}${state}${margin}`,
    rank: -100 * fails.length - 10 * open + (least === undefined ? 0 : Math.min(least, 5)),
  };
}
