import { given, overhangGuides, overhangInDiameters, overhangLimit, renamed } from '@tailshaft/mechanics';
import { sizesAft, thinnest } from '../../analysis/shaft-sections.js';
import { hasSupports } from '../../analysis/shaft-supports.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/overhang',
  title: 'Propeller overhang is within the guide',
  mistakes: ['L08'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'aft end of the last bearing to the propeller hub, in shaft diameters',
  source: overhangGuides[0].source,
  manual:
    'The propeller is carried on the shaft end behind the last bearing. Its weight, off-centre thrust and a bent ' +
    'blade bend the shaft there, with the overhang as lever arm, and a long overhang lowers the whirling speed. ' +
    'The guide is one shaft diameter; another quotation allows one and a half. Choose with "overhang at most ' +
    '1.5" in the criteria. Shorten the shaft or move the bearing aft; leave room for the rope cutter and for ' +
    'drawing the propeller.',
  caution: `${DEFER} The two quotations of the guide disagree.`,
  examples: examples(() => ({
    failing: changed(WITH_BEARINGS, ['overhang 60 mm', 'overhang 160 mm']),
    passing: WITH_BEARINGS,
    cannotTell: changed(WITH_BEARINGS, ['        overhang 60 mm\n', '']),
  })),
};

export const overhang: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, vessel } = context;
  const shaft = line.shafts.at(-1);
  if (!shaft || !line.propeller) return undefined;
  if (!shaft.overhang && !hasSupports(shaft)) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const declared = needs.fact(shaft.overhang, {
    what: 'overhang of the propeller',
    host: shaft.origin,
    property: 'overhang',
  });
  const sizes = sizesAft(shaft, needs);
  const own = vessel.criteria?.overhang?.value;
  const guide = own
    ? renamed(own, 'overhang allowed in diameters', 'g')
    : given('overhang allowed in diameters', 'g', 'ratio', overhangGuides[0].diameters, {
        assumed: `${overhangGuides[0].source.title}; ${overhangGuides[1].diameters} is quoted elsewhere`,
        replaceWith: 'overhang at most',
      });
  const shaftDiameter = sizes && renamed(thinnest(sizes).size.outsideDiameter, 'shaft diameter', 'd');
  const limit = shaftDiameter && needs.found(overhangLimit({ diameter: shaftDiameter, guide }));
  if (!declared || !shaftDiameter || !limit)
    return waits(say, needs, shaft.origin, `${line.name}: whether the propeller overhangs too far`);
  const distance = renamed(declared, 'overhang', 'a');
  const count = overhangInDiameters({ overhang: distance, diameter: shaftDiameter });
  const numbers = `the propeller hub is ${analysis.tell(distance)} behind the last bearing, ${count.si.toFixed(1)} diameters; ${guide.si} ${own ? 'is allowed' : 'is the guide'}`;
  const between = !own && count.si > overhangGuides[0].diameters && count.si <= overhangGuides[1].diameters;
  return say.compare({
    place: shaft.overhang!.origin,
    criterion: {
      said: `${INFO.criterion}: at most ${guide.si}`,
      chosenBy: own ? 'author' : 'default',
    },
    capacity: limit,
    demand: distance,
    workings: [count],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. It bends the shaft and lowers its whirling speed: shorten the shaft or move the bearing aft.${between ? ` Another quotation of the guide allows ${overhangGuides[1].diameters}.` : ''}`,
  });
}
