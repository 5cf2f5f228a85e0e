import { renamed, tipSpeed } from '@tailshaft/mechanics';
import { derive } from '../../../analysis/derived.js';
import type { LineAnalysis } from '../../../analysis/line.js';
import type { Load } from '../../../analysis/loads.js';
import type { Needs } from '../../../judge/needs.js';
import { home, nameOf } from '../../../model/part.js';
import { named } from './quantity.js';

export const SHAFT_SPEED = named('shaft speed', {
  over: 'line',
  better: 'less',
  of: (analysis, condition) => {
    if (condition === 'idle ahead') return analysis.idleShaftSpeed;
    if (condition === 'full throttle') {
      const result = analysis.propulsion;
      const full = result?.value?.full;
      if (full?.applies) return { value: full.shaftSpeed, missing: [] };
      if (result && !result.value) return { ...result, value: undefined };
    }
    return derive(needs => shaftLoad(analysis, 'rated', needs)?.speed);
  },
});

export const SHAFT_TORQUE = named('shaft torque', {
  over: 'line',
  better: 'less',
  of: (analysis, condition) =>
    derive(needs => shaftLoad(analysis, condition === 'peak torque' ? 'peakTorque' : 'rated', needs)?.torque),
});

export const TIP_SPEED = named('tip speed', {
  over: 'line',
  better: 'less',
  of: analysis =>
    derive(needs => {
      const { propeller } = analysis.line;
      const shaftSpeed = shaftLoad(analysis, 'rated', needs)?.speed;
      const diameter =
        propeller &&
        needs.fact(propeller.diameter, {
          what: `diameter of ${nameOf(propeller)}`,
          host: home(propeller),
          property: 'diameter',
        });
      if (!propeller) missPropeller(analysis, needs);
      if (!shaftSpeed || !diameter) return undefined;
      return tipSpeed({ shaftSpeed, diameter: renamed(diameter, 'propeller diameter', 'D') });
    }),
});

/** A line without a propeller is a question about the line. */
export function missPropeller({ line }: LineAnalysis, needs: Needs): undefined {
  return needs.miss(
    { what: `the propeller of ${line.path}`, host: line.origin, property: 'propeller' },
    line.nameOrigin,
  );
}

function shaftLoad(analysis: LineAnalysis, at: 'rated' | 'peakTorque', needs: Needs): Load | undefined {
  const { line } = analysis;
  if (!line.engine && !line.motor) {
    return needs.miss(
      { what: `the engine or motor of ${line.path}`, host: line.origin, property: 'engine' },
      line.nameOrigin,
    );
  }
  const point = needs.take(analysis[at]);
  const loads = point && analysis.loads(point);
  if (loads && !loads.shaft) needs.take({ value: undefined, missing: loads.missing });
  return loads?.shaft;
}
