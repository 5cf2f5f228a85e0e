import { asStated } from '@tailshaft/vocabulary';
import { handFact, handOf } from '../../analysis/hand.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes, turnWords } from './edits.js';
import { handRoutes } from './hand-routes.js';
import { handFolds } from './pair-folds.js';
import { ALGEBRA, DOCK_CAUTION } from './sources.js';

const VARIANT = `ratio 2.1:1 exact 2.104:1 {
    clutch A output same ahead continuous
    clutch B output opposite ahead continuous`;
const NEAR = `ratio 2.05:1 exact 2.045:1 {
    clutch A output same ahead continuous
    clutch B `;
const REGEARED = changed(REPOWER, ['retain gear', 'replace gear Alder-63 ratio 2.05:1 ahead clutch B']);

const INFO: RuleInfo = {
  id: 'rotation/ratio-flips-output',
  title: 'A change of ratio keeps the output sense',
  mistakes: ['R11'],
  severity: 'error',
  criterion: 'output sense of the ahead clutch at the new ratio against the old one',
  source: ALGEBRA,
  manual:
    'In some gear families the ratio decides the output sense: most ratios keep the engine rotation and one ' +
    'reverses it. Changing the ratio then changes the propeller hand as well. The sense must be read for the ' +
    'exact ratio and never be assumed from the family. Fit the other hand, take a ratio of the same sense, or ' +
    'run ahead on the other clutch where that is allowed.',
  caution: `${DOCK_CAUTION} Read the suffix on the plate: it identifies the ratio that is fitted.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(REGEARED, [VARIANT, `${NEAR}output same ahead continuous`]),
    passing: changed(REGEARED, [VARIANT, `${NEAR}output opposite ahead continuous`]),
    cannotTell: changed(REGEARED, [VARIANT, `${NEAR}ahead continuous`]),
  })),
};

export const ratioFlipsOutput: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, analysisOf } = context;
  const { gear, propeller, before } = line;
  const old = before?.gear;
  if (!gear || !old || gear.change === 'retained' || nameOf(gear) !== nameOf(old)) return undefined;
  const [from, to] = [old.ratioUsed ?? old.variant?.nominalFact, gear.ratioUsed ?? gear.variant?.nominalFact];
  if (!from?.value || !to?.value || from.value.si === to.value.si) return undefined;
  const say = sayFor(INFO, line.path);
  const place = to.origin;
  const [was, is] = [analysisOf(before).rotation, analysis.rotation];
  const clutchGaps = is.missing.filter(gap => gap.property === 'output' && gap.host === is.clutch?.origin);
  if (is.factor === undefined || was.factor === undefined) {
    if (clutchGaps.length === 0) return undefined;
    const needs = new Needs();
    needs.take({ value: undefined, missing: clutchGaps });
    return say.cannotTell(needs, {
      place,
      message:
        `${line.name}: the ratio changes from ${from.written} to ${to.written}, and the output sense of clutch ${is.clutch?.name} at ` +
        `${to.written} is not stated. It may differ from the one at ${from.written}, and the propeller hand with it.`,
      related: [{ at: gear.variant?.origin ?? gear.origin, message: 'the ratio that should say it' }],
      explains: [{ rule: 'rotation/propeller-hand', subject: line.path }],
      routes: () => stubRoutes(needs.missing),
    });
  }
  const hand = handOf(line);
  if (was.factor === is.factor || analysis.hand?.state !== 'wrong' || hand !== handOf(before)) {
    const at = `${line.name}: ${nameOf(gear)}`;
    return say.holds({
      place,
      message:
        was.factor === is.factor
          ? `${at} has the same output sense at ${to.written} as at ${from.written}.`
          : `${at} turns the other way at ${to.written} than at ${from.written}, and the line allows for it.`,
    });
  }
  return say.fails({
    place,
    message:
      `${line.name}: ${nameOf(gear)} ${reverses(was.factor)} the rotation at ${from.written} and ${reverses(is.factor)} it at ${to.written}. ` +
      `The shaft turns ${turnWords(is.ahead!)} ahead, so the ${hand}-hand propeller no longer drives ahead.`,
    related: [
      { at: was.clutch?.output?.origin ?? old.origin, message: `output sense at ${from.written}` },
      { at: is.clutch?.output?.origin ?? gear.origin, message: `output sense at ${to.written}` },
      ...(propeller
        ? [{ at: handFact(propeller)?.origin ?? propeller.origin, message: 'hand of the propeller' }]
        : []),
    ],
    steps: is.steps.map(step => step.text),
    explains: handFolds(line.path, context.arrangement.path),
    routes: () => [
      ...(gear.ratioUsed && is.clutch?.name === was.clutch?.name
        ? [
            {
              title: `Stay at ${from.written}: the shaft then turns ${turnWords(was.ahead!)} ahead, as the ${hand}-hand propeller needs`,
              edits: gearEdits(gear, { ratio: asStated(from) }),
            },
          ]
        : []),
      ...handRoutes(context, { name: gear.entry?.name, ratio: from.value!.si }),
    ],
  });
}

function reverses(factor: 1 | -1): string {
  return factor === 1 ? 'keeps' : 'reverses';
}
