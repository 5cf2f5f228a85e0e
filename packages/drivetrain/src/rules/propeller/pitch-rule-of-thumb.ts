import { given, type Value } from '@tailshaft/mechanics';
import { sizeAt } from '../../analysis/propulsion/other-size.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Assumption } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { PROPELLED } from './example-hull.js';
import { noRun } from './run-words.js';
import { DEFER_PROPELLER } from './sources.js';

const ABOUT = 'engine speed per inch of pitch';
const assuming = (spec: string, written: string) =>
  changed(spec, [
    '  arrangement proposed {',
    `  assume ${ABOUT} ${written} because "what the yard always reckons"\n  arrangement proposed {`,
  ]);

const INFO: RuleInfo = {
  id: 'propeller/pitch-rule-of-thumb',
  title: 'A rule of thumb on pitch suits this vessel',
  mistakes: ['P13'],
  severity: 'note',
  criterion:
    'engine speed that an inch of pitch is assumed to cost against what it costs this engine, propeller and hull ' +
    'at full throttle, within a third either way',
  source: {
    title:
      'trade rules: 150 to 200 rpm per inch on fast light petrol boats, 50 to 100 rpm per two inches on slow heavy ones',
    confidence: 'common practice',
  },
  manual:
    'The engine speed that an inch of pitch costs differs several times over between fast light craft and ' +
    'slow heavy ones, so a figure from one hull misleads on another. The assumption "engine speed per inch ' +
    'of pitch" is compared with what the series, the engine and the hull give here for an inch more. Two ' +
    'trials of this vessel with two pitches are the only reliable source.',
  caution:
    `${DEFER_PROPELLER} Near the governor engine speed falls off steeply with load: the cost of pitch is smaller ` +
    'there.',
  limitOf: 'a remark on a rule of thumb, told as one',
  noFigure: 'an assumption is compared with the computed value: no part is to be changed',
  examples: examples(() => ({
    failing: assuming(PROPELLED, '200 rpm'),
    passing: assuming(PROPELLED, '60 rpm'),
    cannotTell: assuming(SINGLE_LINE, '200 rpm'),
  })),
};

export const pitchRuleOfThumb: Rule = { ...INFO, scope: 'line', check };

const WITHIN = 4 / 3;
const INCH = 0.0254;

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const assumption = vessel.assumptions.find(one => one.about === ABOUT);
  const assumed = assumption?.quantity?.value;
  if (!assumption || !line.propeller || !line.engine) return undefined;
  const say = sayFor(INFO, line.path);
  const result = analysis.propulsion;
  const what = 'what an inch of pitch costs here';
  if (assumed?.dimension !== 'rotational speed') {
    return say.fails({
      place: assumption.origin,
      message: `${line.name}: the ${ABOUT} is a speed: write it as "assume ${ABOUT} 60 rpm because ...".`,
    });
  }
  if (!result?.value) {
    const missing = result ?? {
      value: undefined,
      missing: [
        {
          what: 'resistance of the hull at two speeds or more',
          host: vessel.hull?.origin ?? vessel.origin,
          property: vessel.hull ? 'resistance' : 'hull',
          example: 'unknown',
        },
      ],
    };
    return noRun(say, line, missing, what, { related: [{ at: assumption.origin, message: 'assumed here' }] });
  }
  const cost = costOfAnInch(context);
  if (!cost) {
    const needs = new Needs();
    needs.miss({
      what: 'full-load torque of the engine around rated speed',
      host: line.engine.origin,
      property: 'full-load torque',
    });
    return noRun(say, line, { value: undefined, missing: needs.missing }, what);
  }
  return judge(context, assumption, assumed as Value<'rotational speed'>, cost);
}

function judge(
  { line, analysis }: LineContext,
  assumption: Assumption,
  assumed: Value<'rotational speed'>,
  cost: Value<'rotational speed'>,
): Verdict {
  const say = sayFor(INFO, line.path);
  const place = assumption.origin;
  const both = `${line.name}: ${assumed.written} per inch of pitch is assumed; for this engine, propeller and hull it comes to about ${analysis.tell(cost, 2)}`;
  const factor = assumed.si / cost.si;
  const said = { place, workings: [cost] };
  if (factor <= WITHIN && factor >= 1 / WITHIN) return say.holds({ ...said, message: `${both}.` });
  return say.fails({
    ...said,
    message: `${both}. Rules of thumb differ several times over between fast light boats and slow heavy ones: use two trials of this vessel.`,
  });
}

/** Full-throttle engine speed as fitted, less that with an inch more pitch. */
function costOfAnInch({ line, vessel, analysis }: LineContext): Value<'rotational speed'> | undefined {
  const pitch = line.propeller!.pitch?.value;
  const now = analysis.propulsion?.value?.full;
  if (!pitch || !now?.applies) return undefined;
  const size = { ...pitch, si: pitch.si + INCH, written: pitch.written ?? '' };
  const then = sizeAt(line, vessel, 'pitch', size)?.propulsion.full;
  if (!then?.applies || !(then.engineSpeed.si < now.engineSpeed.si)) return undefined;
  const cost = now.engineSpeed.si - then.engineSpeed.si;
  return given('engine speed per inch of pitch', 'Δω', 'rotational speed', cost, {
    assumed: 'full-throttle speed with this pitch less that with an inch more',
  });
}
