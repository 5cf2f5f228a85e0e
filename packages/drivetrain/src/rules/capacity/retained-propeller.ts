import type { Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import { scaledDemand, scaledSpeed } from '../../analysis/propeller-law.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';

/** What a retained propeller asks behind the new engine and gear, scaled from what it took before. */
export interface RetainedPropeller {
  /** Power it would ask at the new rated shaft speed. */
  readonly asked: Value<'power'>;
  /** Power that reaches it there. */
  readonly available: Value<'power'>;
  /** asked ÷ available */
  readonly share: number;
  readonly speedBefore: Value<'rotational speed'>;
  readonly speedNow: Value<'rotational speed'>;
  /** Shaft speed at which it asks what is available. */
  readonly balance: Value<'rotational speed'>;
}

/** Where a line keeps its propeller under another engine, gear or ratio; with the gaps when it cannot be scaled. */
export function retainedPropeller(
  context: LineContext,
  analysis: LineAnalysis = context.analysis,
): { readonly needs: Needs; readonly result: RetainedPropeller | undefined } | undefined {
  const { line, analysisOf, vessel } = context;
  if (line.propeller?.change !== 'retained' || !line.before) return undefined;
  if (line.propeller.kind?.value === 'controllable pitch') return undefined;
  const needs = new Needs();
  const before = analysisOf(line.before);
  const powerBefore = needs.take(before.propellerPower);
  const speedBefore = ratedShaftSpeed(before, needs);
  const available = needs.take(analysis.propellerPower);
  const speedNow = ratedShaftSpeed(analysis, needs);
  if (!powerBefore || !speedBefore || !available || !speedNow) return { needs, result: undefined };
  const taken = {
    ...powerBefore,
    assumed:
      'the propeller is taken to have absorbed the rated power of the engine before, at its rated speed',
  };
  const asked = scaledDemand(taken, speedBefore, speedNow, vessel);
  const balance = scaledSpeed(taken, speedBefore, available, vessel);
  return {
    needs,
    result: { asked, available, share: asked.si / available.si, speedBefore, speedNow, balance },
  };
}

/** Shaft speed at rated engine speed. */
export function ratedShaftSpeed(analysis: LineAnalysis, needs: Needs): Value<'rotational speed'> | undefined {
  const point = needs.take(analysis.rated);
  const loads = point && analysis.loads(point);
  if (loads && !loads.shaft) needs.take({ value: undefined, missing: loads.missing });
  return loads?.shaft?.speed;
}
