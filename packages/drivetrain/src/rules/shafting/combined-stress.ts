import { given, percent, renamed, type Value } from '@tailshaft/mechanics';
import {
  combinedStress,
  KEYWAY_FACTOR,
  type ShaftLoad,
  type StationStress,
} from '../../analysis/combined-stress.js';
import { bollardThrust } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import { marginOf, type Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { type Apart, apart, isSaid } from '../../model/reads.js';
import type { Propeller, Shaft } from '../../model/shafting.js';
import { atLeast, greatestTorqueAt } from '../capacity/greatest-torque.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { editOf, strongerShafts, thickerEnd } from './shaft-routes.js';
import { DEFER } from './sources.js';

/** A stepped shaft with a propeller whose mass is known. */
const STEPPED = changed(
  WITH_BEARINGS,
  [
    '  elastic modulus 193 GPa\n',
    '  elastic modulus 193 GPa\n  tensile yield 725 MPa\n  tensile strength 930 MPa\n',
  ],
  [
    '        bearing tube {',
    '        section middle { from 0.3 m  length 0.9 m  diameter 60 mm }\n        bearing tube {',
  ],
  ['area ratio 0.72 }', 'area ratio 0.72  mass 46 kg  inertia 1.1 kg.m2 }'],
);

const INFO: RuleInfo = {
  id: 'shafting/combined-stress',
  title: 'Combined stress in the propeller shaft is within the allowed stress',
  mistakes: ['L01'],
  severity: 'error',
  criterion: 'allowed shear stress of the ASME shafting code against shear under bending, torsion and thrust',
  source: {
    author: 'R. S. Khurmi, J. K. Gupta',
    title: 'A Textbook of Machine Design',
    clause: 'ASME code with axial load; yield by distortion energy; fatigue by the Soderberg line',
    year: 2005,
    confidence: 'published',
  },
  manual:
    'The diameter formulas count torsion alone and cover the rest by a factor. Where overhang and mass of the ' +
    'propeller are declared, this check combines the loads: greatest engine torque behind the ratio, thrust at the bollard, and ' +
    'the moment of the overhung propeller. It looks at the aftmost bearing, at each section of a stepped ' +
    'shaft, and at taper and coupling end with their keyways. The weakest station is named. The ASME code ' +
    'judges; "shaft yield factor at least 3" in the criteria adds the distortion-energy criterion, and an ' +
    'endurance limit of the grade or "shaft fatigue factor at least 2" adds fatigue. Fit a thicker bar or ' +
    'section or a stronger grade, or reduce the overhang.',
  caution:
    `${DEFER} Off-centre blade forces, waves, ice, fouled ropes, misalignment and torsional vibration are not ` +
    'included. In sea water an unprotected shaft has no endurance limit.',
  limitOf: 'the stress that the code allows',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(
      STEPPED,
      ['  tensile strength 930 MPa\n', '  tensile strength 740 MPa\n'],
      [
        '        overhang 60 mm',
        '        coupling end diameter 51 mm\n        coupling key width 14 mm\n        overhang 60 mm',
      ],
    ),
    passing: STEPPED,
    cannotTell: changed(STEPPED, ['  tensile yield 725 MPa\n', '']),
  })),
};

export const combinedStressRule: Rule = { ...INFO, scope: 'line', check };

/** Published with the worked example of the fatigue formula. */
const FATIGUE_DEFAULT = 2;

function check(context: LineContext): Verdict | Apart<Verdict> | undefined {
  const { line, analysis, vessel } = context;
  const shaft = line.shafts.at(-1);
  const { propeller } = line;
  if (!shaft || !propeller || !(line.engine || line.motor)) return undefined;
  const [hangs, weighs] = [isSaid(() => shaft.overhang), isSaid(() => propeller.mass)];
  if (!hangs && !weighs) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const torque = greatestTorqueAt(analysis, shaft, needs);
  const thrust = bollardThrust(analysis, needs);
  const load = torque &&
    thrust && {
      torque: renamed(torque, 'greatest torque of the shaft', 'T'),
      thrust: renamed(thrust, 'thrust at the bollard', 'F'),
    };
  const { shaftYieldFactor, shaftFatigueFactor } = vessel.criteria ?? {};
  const wantsFatigue = shaftFatigueFactor !== undefined;
  const stresses = combinedStress(line, shaft, propeller, load, wantsFatigue, needs);
  if (!stresses || !load) {
    if (!hangs || !weighs) return undefined;
    return waits(say, needs, shaft.origin, whatOf(line));
  }
  const judging = { context, shaft, propeller, load, stresses, needs };
  // Each of the two is said for other checks as well: alone it asks for nothing, and a shaft that fails without any bending fails.
  if (!hangs || !weighs) {
    const unbent = byCode(judging);
    return unbent.outcome === 'fails' ? unbent : undefined;
  }
  return apart(
    () => byCode(judging),
    () => shaftYieldFactor && byFactor(judging, shaftYieldFactor, 'yield', one => one.yieldFactor),
    () =>
      stresses.every(one => one.fatigueFactor)
        ? byFactor(judging, shaftFatigueFactor, 'fatigue', one => one.fatigueFactor!)
        : undefined,
  );
}

function whatOf({ name }: LineContext['line']): string {
  return `${name}: whether the shaft carries torque, thrust and propeller weight together`;
}

interface Judging {
  readonly context: LineContext;
  readonly shaft: Shaft;
  readonly propeller: Propeller;
  readonly load: ShaftLoad;
  readonly stresses: readonly StationStress[];
  /** What would raise the loads, and is not known. */
  readonly needs: Needs;
}

const codeMargin = (one: StationStress) => marginOf(one.allowed, one.stress) ?? Number.NEGATIVE_INFINITY;

/** What a keyway at the end would leave, by the ASME code. */
const marginIfKeyed = (one: StationStress) => (KEYWAY_FACTOR * one.allowed.si) / one.stress.si - 1;

function byCode(judging: Judging): Verdict {
  const { context, shaft, stresses } = judging;
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  if (stresses.some(one => one.station.keyOpen && marginIfKeyed(one) < 0))
    judging.needs.miss({
      what: 'whether the coupling end is keyed (its coupling key width)',
      host: shaft.origin,
      property: 'coupling key width',
    });
  const weak = least(stresses, codeMargin);
  const byYield = least(stresses, one => one.yieldFactor.si);
  const numbers =
    `${loadWords(judging)} the shaft is weakest at ${weak.station.name}: ${analysis.tell(weak.stress, 3)} of shear, ` +
    `${analysis.tell(weak.allowed, 3)} allowed by the ASME code${weak.station.keyway ? ' with a keyway' : ''}`;
  const other = ` Its factor against yield by distortion energy is ${byYield.yieldFactor.si.toFixed(1)}${byYield === weak ? '' : `, at ${byYield.station.name}`}`;
  return judgeKnown(say, judging.needs, {
    place: placeOf(shaft, weak),
    capacity: weak.allowed,
    demand: weak.stress,
    criterion: { said: `${INFO.criterion}, shock factors 1.5 and 1.0`, chosenBy: 'default' },
    workings: [weak.yieldFactor, ...stresses.filter(one => one !== weak).map(one => one.stress)],
    what: whatOf(line),
    numbers: `${numbers}.${other}`,
    remedy: '. Fit a thicker shaft there or a stronger grade, or reduce the overhang.',
    routes: () => routes(judging, weak, one => Math.min(...one.map(codeMargin))),
  });
}

function byFactor(
  judging: Judging,
  own: Quantity<'ratio'> | undefined,
  what: 'yield' | 'fatigue',
  factorOf: (one: StationStress) => Value<'number'>,
): Verdict {
  const { context, shaft, stresses } = judging;
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const wanted = own?.value
    ? given('factor required', 'n', 'number', own.value.si, { origin: own.origin, written: own.written })
    : given('factor required', 'n', 'number', FATIGUE_DEFAULT, {
        assumed: `${FATIGUE_DEFAULT}: the spec chooses none`,
        replaceWith: 'shaft fatigue factor at least',
      });
  const weak = least(stresses, one => factorOf(one).si);
  const factor = factorOf(weak);
  const by = what === 'yield' ? 'against yield by distortion energy' : 'in fatigue by the Soderberg line';
  const numbers = `${loadWords(judging)} the factor of the shaft ${by} is ${factor.si.toFixed(2)} at ${weak.station.name}; ${wanted.si} is required`;
  return judgeKnown(say, judging.needs, {
    place: placeOf(shaft, weak),
    capacity: factor,
    demand: wanted,
    criterion: {
      said: `factor ${by}, at least ${wanted.si}${own ? '' : ' (of the published example)'}`,
      chosenBy: own ? 'author' : 'default',
    },
    what: whatOf(line),
    numbers,
    remedy: '. Fit a thicker shaft there or a stronger grade, or reduce the overhang.',
    routes: () =>
      routes(judging, weak, others => Math.min(...others.map(one => factorOf(one).si / wanted.si - 1))),
  });
}

function loadWords({ context, shaft, propeller, load }: Judging): string {
  const { analysis } = context;
  const weighs = shaft.overhang?.value && propeller.mass?.value;
  return `under ${atLeast(analysis)}${analysis.tell(load.torque)}, ${analysis.tell(load.thrust, 3)} of thrust and ${weighs ? 'the weight of the propeller' : 'no bending, as its weight or overhang is not known,'}`;
}

function placeOf(shaft: Shaft, { station }: StationStress) {
  return (station.of.section?.diameter ?? shaft.diameter)!.origin;
}

function least(stresses: readonly StationStress[], of: (one: StationStress) => number): StationStress {
  return stresses.reduce((weak, one) => (of(one) < of(weak) ? one : weak));
}

function routes(
  { context, shaft, propeller, load }: Judging,
  weak: StationStress,
  worst: (stresses: readonly StationStress[]) => number,
): Route[] {
  const wantsFatigue = context.vessel.criteria?.shaftFatigueFactor !== undefined;
  const marginOfShaft = (other: Shaft): number | undefined => {
    const stresses = combinedStress(context.line, other, propeller, load, wantsFatigue, new Needs());
    if (!stresses) return undefined;
    const margin = worst(stresses);
    return Number.isFinite(margin) ? margin : undefined;
  };
  const { station } = weak;
  const what = 'margin under all loads';
  const stronger = strongerShafts(context, shaft, marginOfShaft, what, station.of.section);
  const end = station.name === 'the coupling end' ? thickerEnd(shaft, station.of, marginOfShaft) : undefined;
  return [
    ...(end
      ? [
          {
            title: `Leave the coupling end ${end.written} thick: ${what} ${percent(end.margin)}; the half-coupling is bored for it`,
            edits: [editOf(shaft, 'coupling end diameter', shaft.couplingEnd?.origin, end.value)],
          },
        ]
      : []),
    ...stronger,
  ];
}
