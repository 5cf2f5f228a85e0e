import { rotationOf } from '../../analysis/rotation.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { drivenByAlone } from '../../model/running.js';
import { DEFER } from '../capacity/sources.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { HYBRID } from '../hybrid-specs.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';

/** The motor drives beside the engine only. */
const TOGETHER = changed(HYBRID, ['      mode harbour { driven by motor }\n', '']);

const INFO: RuleInfo = {
  id: 'rotation/movers-agree',
  title: 'Movers that drive together turn the shaft the same way',
  mistakes: [],
  severity: 'error',
  criterion:
    'sense of the propeller shaft as each mover of the mode would turn it alone, through the stages behind it',
  source: { title: 'both are on one shaft: it turns one way', confidence: 'derived' },
  manual:
    'An engine turns one way only. A motor or a second engine clutched in beside it must turn the shaft that ' +
    'it sits on the same way, as seen through whatever gears lie between, or the first start breaks its ' +
    'coupling. An electric motor that runs either way follows the engine; a motor built for one way does ' +
    'not, nor does a second engine that faces the other way. Turn the mover end for end, choose one of the ' +
    'opposite rotation, or fit a stage between that reverses the sense.',
  caution: `${DEFER} Try each mover alone first, uncoupled from the other, at the lowest speed.`,
  noFigure: 'a sense, a hand or a clutch',
  noCure: 'Only another mover, or another position for it, reverses its sense.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(TOGETHER, ['rotation either', 'rotation clockwise viewed from aft']),
    passing: changed(TOGETHER, ['rotation either', 'rotation counter-clockwise viewed from aft']),
    cannotTell: changed(TOGETHER, ['rotation either', 'rotation unknown']),
  })),
};

export const moversAgree: Rule = { ...INFO, scope: 'line', check };

function check({ line, analysis }: LineContext): Apart<Verdict> | undefined {
  const { joined } = line;
  const primary = line.engine ?? line.motor;
  if (!joined || !primary) return undefined;
  const say = sayFor(INFO, line.path);
  return each(joined, mover => {
    const needs = new Needs();
    needs.take({ value: undefined, missing: analysis.rotation.missing });
    const alone = rotationOf(drivenByAlone(line, mover));
    needs.take({ value: undefined, missing: alone.missing });
    const place = (mover.rotation ?? mover).origin;
    const what = `${line.name}: whether ${nameOf(mover)} turns the shaft as ${nameOf(primary)} does`;
    if (needs.any) return waits(say, needs, place, what);
    if (alone.either || analysis.rotation.either)
      return say.holds({
        place,
        message: `${line.name}: ${nameOf(mover)} runs either way, so it follows ${nameOf(primary)}.`,
      });
    if (alone.ahead === undefined || analysis.rotation.ahead === undefined)
      return waits(say, needs, place, what);
    const same = alone.ahead === analysis.rotation.ahead;
    const said = { place, related: [{ at: primary.origin, message: `${nameOf(primary)} drives beside it` }] };
    return same
      ? say.holds({
          ...said,
          message: `${line.name}: ${nameOf(mover)} turns the propeller shaft as ${nameOf(primary)} does.`,
        })
      : say.fails({
          ...said,
          message: `${line.name}: ${nameOf(mover)} would turn the propeller shaft against ${nameOf(primary)}, and both are clutched in. Turn it end for end, or choose one of the opposite rotation.`,
        });
  });
}
