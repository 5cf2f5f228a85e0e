import { given, percent, renamed, tipClearanceShare, tipGapNeeded } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { isSaid } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { IN_NOZZLE } from './example-place.js';
import { DEFER_PROPELLER } from './sources.js';

/** Gap over diameter above which a nozzle is said to lose what it was fitted for. */
const USUAL_GAP = 0.01;

const INFO: RuleInfo = {
  id: 'propeller/nozzle-gap',
  title: 'Nozzle tip gap is within the chosen share of the diameter',
  mistakes: [],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'least gap between blade tip and nozzle as a share of the diameter: 1 %, or as the criteria say',
  source: {
    title: 'gap between blade tip and nozzle, some half to one per cent of the diameter',
    confidence: 'common practice',
  },
  manual:
    'A nozzle gives its thrust only while the blades fill it: water that leaks back past the tips is lost, ' +
    'and a propeller that was cut down or fitted from a smaller vessel leaves a nozzle that is mostly drag. ' +
    'Published figures of propellers in nozzles were measured with small gaps. Measure the gap all around ' +
    'with the shaft on its bearings; wear of the stern bearing opens it at the top and closes it at the ' +
    'bottom, until the tips touch. Fit a propeller of the diameter that the nozzle was made for, or have the ' +
    'liner built up. "nozzle gap at most 0.8 %" in the criteria sets another share.',
  caution: `${DEFER_PROPELLER} The maker of the nozzle states the gap that it needs; ice and debris need more.`,
  noCure: 'Whether the propeller or the nozzle is changed, the gap must be measured again.',
  examples: examples(() => ({
    failing: changed(IN_NOZZLE, ['nozzle gap 4 mm', 'nozzle gap 9 mm']),
    passing: IN_NOZZLE,
    cannotTell: changed(IN_NOZZLE, ['  nozzle gap 4 mm', '']),
  })),
};

export const nozzleGap: Rule = { ...INFO, scope: 'line', check };

function check({ line, vessel, analysis }: LineContext): Verdict | undefined {
  const { propeller } = line;
  if (!propeller || !isSaid(() => propeller.nozzle) || propeller.nozzle?.value === 'none') return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(propeller);
  const gap = needs.fact(propeller.nozzleGap, {
    what: `gap between the blade tips of ${name} and the nozzle`,
    host: propeller.origin,
    property: 'nozzle gap',
  });
  const size = needs.fact(propeller.diameter, {
    what: `diameter of ${name}`,
    host: home(propeller),
    property: 'diameter',
  });
  const diameter = size && renamed(size, 'propeller diameter', 'D');
  const place = propeller.nozzleGap?.origin ?? propeller.nozzle!.origin;
  const own = vessel.criteria?.nozzleGap?.value;
  const share = own?.si ?? USUAL_GAP;
  const said = `nozzle gap at most ${own?.written ?? percent(share)} of the diameter`;
  const criterion = own
    ? { said, chosenBy: 'author' as const }
    : { said: `${said} (common practice, no source)`, chosenBy: 'default' as const };
  const allowed =
    diameter &&
    needs.found(
      renamed(
        tipGapNeeded({
          propellerDiameter: diameter,
          clearanceShare: given('share allowed', 'c/D', 'ratio', share, { assumed: criterion.said }),
        }),
        'gap allowed',
      ),
    );
  if (!gap || !diameter || !allowed)
    return waits(say, needs, place, `${line.name}: whether the blades fill the nozzle`);
  const clearance = renamed(gap, 'gap between blade tip and nozzle', 'c');
  const has = tipClearanceShare({ clearance, diameter });
  const leaves = `${line.name}: ${propeller.nozzleGap!.written} between blade tip and nozzle, ${percent(has.si)} of the diameter`;
  if (!(gap.si > 0))
    return say.fails({
      place,
      severity: 'error',
      criterion,
      workings: [has],
      message: `${line.name}: no gap between blade tip and nozzle: the blades touch it.`,
    });
  return say.compare({
    place,
    criterion,
    workings: [has, allowed],
    capacity: allowed,
    demand: clearance,
    message: `${leaves}; at most ${criterion.said.replace('nozzle gap at most ', '')} is allowed.`,
    failMessage: `${leaves}; at most ${analysis.tell(allowed, 2)} is allowed by ${criterion.said}. Water that leaks back past the tips costs the thrust of the nozzle: fit a propeller of the diameter that the nozzle was made for.`,
  });
}
