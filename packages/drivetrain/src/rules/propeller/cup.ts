import { OPEN } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { aside } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { PROPELLED } from './example-hull.js';
import { SHOP_PRACTICE } from './sources.js';

const INFO: RuleInfo = {
  id: 'propeller/cup',
  title: 'Cup is stated, and counted as pitch',
  mistakes: ['P12'],
  severity: 'warning',
  criterion: 'the propeller states its cup; a cupped one states its effective pitch',
  source: SHOP_PRACTICE,
  manual:
    'A cup at the trailing edge loads the engine as an inch or more of extra pitch would. The published series ' +
    'here do not include cup, and shops grade it in their own terms. Once propeller demand is computed, the cup ' +
    'must therefore be stated: "cup none", or the grade with the "effective pitch" that the shop gives for it. ' +
    'The computation uses that pitch.',
  caution: 'Cup grades differ between shops: compare grades of one shop only.',
  noFigure: 'no number is compared',
  noCure: 'Only the shop that cupped the blades can state the effective pitch.',
  standsWithout: 'anything',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(PROPELLED, ['cup none', 'cup medium']),
    passing: PROPELLED,
    cannotTell: changed(PROPELLED, ['  cup none', '']),
  })),
};

export const cup: Rule = { ...INFO, scope: 'line', check };

/** Checks whose only gap may be the cup. */
const WAITING = ['propeller/absorbed-power', 'propeller/blade-area', 'propeller/pitch-rule-of-thumb'];

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, arrangement } = context;
  const { propeller } = line;
  // The cup is a fact of the propeller: what the hull states has no part in it.
  if (!propeller || !aside(() => analysis.propulsion)) return undefined;
  const say = sayFor(INFO, line.path);
  const place = (propeller.cup ?? propeller).origin;
  const explains = [
    ...WAITING.map(rule => ({ rule, subject: line.path })),
    { rule: 'trace/requirement-met', subject: line.path },
    { rule: 'trace/requirement-met', subject: arrangement.path },
  ];
  const needs = new Needs();
  const stated = needs.fact(propeller.cup, {
    what: `cup of ${nameOf(propeller)}`,
    host: home(propeller),
    property: 'cup',
  });
  if (stated === undefined) {
    return waits(say, needs, place, `${line.name}: what load the cup adds, if any`, { explains });
  }
  if (stated === 'none') {
    return say.holds({ place, message: `${line.name}: no cup, so the pitch is used as stated.` });
  }
  const effective = propeller.effectivePitch;
  if (effective?.value) {
    return say.holds({
      place,
      message: `${line.name}: a ${stated} cup, counted as ${effective.written} of pitch.`,
    });
  }
  return say.fails({
    place,
    explains,
    message: `${line.name}: a ${stated} cup adds load as extra pitch does, and no series covers it. Ask the shop for the effective pitch and write it as "effective pitch ...".`,
    routes: () =>
      effective
        ? []
        : [
            {
              title: 'Write the effective pitch as an open question: the sheet then lists it',
              edits: [{ do: 'set', host: home(propeller), property: 'effective pitch', value: OPEN }],
              stub: true,
            },
          ],
  });
}
