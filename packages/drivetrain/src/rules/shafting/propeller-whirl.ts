import { LATERAL_SEPARATION, percent } from '@tailshaft/mechanics';
import { propellerWhirl } from '../../analysis/lateral.js';
import { greatestKnownShaftSpeed, hasSupports } from '../../analysis/shaft-supports.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER } from './sources.js';

const WITH_PROPELLER = changed(
  WITH_BEARINGS,
  [
    '  elastic modulus 193 GPa\n',
    '  elastic modulus 193 GPa\n  tensile yield 725 MPa\n  tensile strength 930 MPa\n',
  ],
  ['area ratio 0.72 }', 'area ratio 0.72  mass 46 kg  inertia 1.1 kg.m2 }'],
);

const INFO: RuleInfo = {
  id: 'shafting/propeller-whirl',
  title: 'The shaft does not whirl with its overhung propeller',
  mistakes: [],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion:
    'first lateral critical of the aftmost span with the overhung propeller in water, against the greatest shaft ' +
    'speed',
  source: {
    author: 'Woytowich',
    title: 'Journal of Ship Research 23(4), pp. 235–241; shaft mass by Dunkerley',
    year: 1979,
    confidence: 'published',
  },
  manual:
    'With the mass of the propeller and of the water that moves with it, the aftmost span whirls well below the ' +
    'speed of the plain span. Where mass and inertia of the propeller, the bearings and the overhang are ' +
    'declared, the first critical is computed twice. With the forward end of the span free to tilt and the shaft ' +
    'mass included it is the lower bound; with that end held it is the upper bound. The critical at blade ' +
    'rate is shown as well. Reduce the overhang, shorten the span, or fit a thicker shaft.',
  caution:
    `${DEFER} Soft struts and worn bearings lower it further; gyroscopic moments are left out; the default ` +
    'margin of 20 % is from memory.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_PROPELLER, ['mass 46 kg  inertia 1.1 kg.m2', 'mass 460 kg  inertia 24 kg.m2']),
    passing: WITH_PROPELLER,
    cannotTell: changed(WITH_PROPELLER, ['  inertia 1.1 kg.m2', '']),
  })),
};

export const propellerWhirlRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, vessel } = context;
  const shaft = line.shafts.at(-1);
  const { propeller } = line;
  if (!shaft || !propeller || !(line.engine || line.motor)) return undefined;
  if (!hasSupports(shaft) || !(shaft.bearings ?? []).length || !(propeller.mass || propeller.inertia))
    return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const whirl = propellerWhirl(line, needs);
  const fastest = greatestKnownShaftSpeed(analysis, shaft, needs);
  if (whirl) needs.found(whirl);
  if (fastest) needs.found(fastest);
  const place = propeller.mass?.origin ?? propeller.inertia!.origin;
  const what = `${line.name}: whether the shaft whirls with its propeller`;
  if (!whirl || !fastest) {
    const known = whirl
      ? `the aftmost span whirls between ${analysis.tell(whirl.least)} and ${analysis.tell(whirl.greatest)}`
      : fastest && `the shaft turns up to ${analysis.tell(fastest)}`;
    return waits(say, needs, place, what, known ? { known } : {});
  }
  const own = vessel.criteria?.bearingSpanMargin?.value;
  const share = own?.si ?? LATERAL_SEPARATION.si;
  const blades = whirl.bladeRate ? `, at blade rate ${analysis.tell(whirl.bladeRate)}` : '';
  const numbers =
    `with its propeller the aftmost span whirls between ${analysis.tell(whirl.least)} and ${analysis.tell(whirl.greatest)} (forward end free and held)${blades}; ` +
    `the shaft turns ${needs.any ? 'at least' : 'up to'} ${analysis.tell(fastest)}, margin of at least ${percent(share)} required`;
  const surely = whirl.greatest.si < fastest.si * (1 + share);
  return judgeKnown(say, needs, {
    place,
    criterion: {
      said: `${INFO.criterion}, margin ${percent(share)}`,
      chosenBy: own ? 'author' : 'default',
    },
    severity: surely ? 'error' : 'warning',
    capacity: whirl.least,
    demand: fastest,
    wanted: share,
    workings: [whirl.least, whirl.greatest, ...(whirl.bladeRate ? [whirl.bladeRate] : [])],
    what,
    numbers,
    remedy: `. ${surely ? 'Even the upper figure is too low' : 'The true figure lies between them: have it calculated'}. Less overhang, a shorter last span or a thicker shaft raises it.`,
  });
}
