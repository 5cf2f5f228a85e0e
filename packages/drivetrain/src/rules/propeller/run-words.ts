import { formatValue, type OpenWaterCurve, percent } from '@tailshaft/mechanics';
import type { Propulsion, PropulsionResult } from '../../analysis/propulsion/propulsion.js';
import { refusedWords } from '../../judge/cannot-tell-words.js';
import { Needs } from '../../judge/needs.js';
import type { Said, sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { ShaftLine } from '../../model/vessel.js';
import { stubRoutes } from '../rotation/edits.js';

/** `27.4 kn`. */
export function knots(propulsion: Propulsion, at: 'rated' | 'full'): string {
  if (at === 'rated') return knotsOf(propulsion.rated.vesselSpeed.si);
  return propulsion.full.applies ? knotsOf(propulsion.full.vesselSpeed.si) : '';
}

function knotsOf(si: number): string {
  return `${((si * 3600) / 1852).toFixed(1)} kn`;
}

/** What full throttle gives, for titles and messages; empty where it is not known. */
export function fullThrottleWords(propulsion: Propulsion): string {
  const { full } = propulsion;
  return full.applies
    ? `at full throttle about ${formatValue(full.engineSpeed, 3)} and ${knots(propulsion, 'full')}`
    : '';
}

/** By which methods, and how far they hold. */
export function methodWords(propulsion: Propulsion): string {
  const { method, methodDeclared, estimate, curve, seriesDeclared, outside, pitchSet } = propulsion;
  const how = `${curve.series.name} series${seriesDeclared ? '' : ' (assumed; none is named)'}, speed by ${method}${methodDeclared ? '' : ' (assumed; none is named)'}`;
  const weak = estimate ? ' A handbook estimate of speed: good for a first look only.' : '';
  const out =
    outside.length > 0 ? ` Outside the range of the methods, so less reliable: ${outside.join('; ')}.` : '';
  const set = pitchSet ? ` Its blades are set to a pitch of ${formatValue(pitchSet, 3)}.` : '';
  return `By ${how}.${set}${weak}${out}${seriesRemark(curve)}`;
}

/** What a series has to say of its figures, as a sentence that follows others; empty where it is as good as any. */
export function seriesRemark({ series }: OpenWaterCurve): string {
  return series.remark ? ` ${series.remark}.` : '';
}

/** `98 %, at full throttle about 2310 rpm and 22.4 kn`. */
export function demandWords(propulsion: Propulsion): string {
  const full = fullThrottleWords(propulsion);
  return `${percent(propulsion.demand.si)} of the power${full ? `, ${full}` : ''}`;
}

/** The verdict where the run cannot be worked out: what is missing, or why no method applies here. */
export function noRun(
  say: ReturnType<typeof sayFor>,
  line: ShaftLine,
  result: PropulsionResult,
  what: string,
  more: Partial<Said> = {},
): Verdict {
  const needs = new Needs();
  needs.take({ value: undefined, missing: result.missing });
  return say.cannotTell(needs, {
    place: needs.missing[0]?.at ?? line.propeller?.origin ?? line.origin,
    message: refusedWords(`${line.name}: ${what}`, result.refusal, needs.missing),
    routes: () => stubRoutes(needs.missing),
    ...more,
  });
}
