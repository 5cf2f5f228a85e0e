import { thrustPath } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import type { Coupling } from '../../model/shafting.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';
import { thrustBearingRoutes } from './thrust-routes.js';

/** Two joints between gear and shaft, with a thrust bearing behind them. */
export const WITH_JOINT = changed(
  SINGLE_LINE,
  [
    '  torsional yield 70000 psi\n',
    '  torsional yield 70000 psi\n  elastic modulus 193 GPa\n  density 7890 kg/m3\n',
  ],
  [
    'shaft material high-strength-stainless {',
    `coupling Cardan-12 "shaft with two universal joints" {
  source "Cardan 12 sheet" dated 2024-09-01
  kind joint
  torque at most 3600 N.m
  passes thrust no
}

shaft material high-strength-stainless {`,
  ],
  [
    '      shaft { material high-strength-stainless  diameter 65 mm [drawing] }',
    `      coupling Cardan-12 { joint angle 4 deg  second joint angle 4 deg }
      shaft {
        material high-strength-stainless
        diameter 65 mm [drawing]
        overhang 60 mm
        bearing block { kind thrust  at 1.4 m  lubrication oil  thrust at most 40 kN }
        bearing strut { kind strut  at 2.9 m  length 260 mm  lubrication water }
      }`,
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/joint-thrust',
  title: 'A thrust bearing stands behind a joint that passes no thrust',
  mistakes: ['L14'],
  severity: 'error',
  criterion: 'a part between propeller and joint that carries the thrust',
  source: PRACTICE,
  manual:
    'Universal and constant-velocity joints run at an angle and slide: they cannot pass propeller thrust to the ' +
    'gear. It must be taken behind them, by a thrust bearing tied to the hull. Without one the joint pulls apart ' +
    'or binds. Declare the thrust bearing in the shaft with its thrust rating, or leave out the joint. Only a ' +
    'joint whose maker says so passes thrust: "passes thrust yes".',
  caution: `${DEFER} Plunge, yoke phase and equal angles are for its maker to state.`,
  noFigure: 'no number is compared',
  examples: examples(() => ({
    failing: changed(WITH_JOINT, [
      '        bearing block { kind thrust  at 1.4 m  lubrication oil  thrust at most 40 kN }\n',
      '        bearing block { kind intermediate  at 1.4 m  lubrication oil }\n',
    ]),
    passing: WITH_JOINT,
    cannotTell: changed(
      WITH_JOINT,
      ['passes thrust no', 'passes thrust unknown'],
      [
        '        bearing block { kind thrust  at 1.4 m  lubrication oil  thrust at most 40 kN }\n',
        '        bearing block { kind intermediate  at 1.4 m  lubrication oil }\n',
      ],
    ),
  })),
};

export const jointThrust: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const propeller = line.propeller ? line.chain.indexOf(line.propeller) : -1;
  const joint = line.couplings.find(
    one =>
      stopsThrust(one) &&
      line.chain.indexOf(one) < propeller &&
      line.shafts.some(s => line.chain.indexOf(s) > line.chain.indexOf(one)),
  );
  if (!joint || propeller < 0) return undefined;
  const say = sayFor(INFO, line.path);
  const place = joint.nameOrigin ?? joint.origin;
  const { taker, stoppedBy } = thrustPath(line);
  const name = nameOf(joint);
  if (taker && line.chain.indexOf(taker.part) > line.chain.indexOf(joint)) {
    return say.holds({ place, message: `${line.name}: ${taker.name} carries the thrust behind ${name}.` });
  }
  if (joint.passesThrust && joint.passesThrust.value === undefined) {
    const needs = new Needs();
    needs.fact(joint.passesThrust, {
      what: `whether ${name} passes thrust`,
      host: home(joint),
      property: 'passes thrust',
    });
    return waits(say, needs, place, `${line.name}: whether the thrust is carried behind ${name}`);
  }
  return say.fails({
    place: (stoppedBy?.nameOrigin ?? stoppedBy?.origin ?? place) as object,
    message: `${line.name}: ${name} cannot pass the propeller thrust, and nothing behind it carries it. Add a thrust bearing between it and the propeller, tied to the hull.`,
    related: joint.passesThrust
      ? [{ at: joint.passesThrust.origin, message: 'what its sheet says of thrust' }]
      : [],
    routes: () => thrustBearingRoutes(context, stoppedBy ?? joint),
  });
}

function stopsThrust(coupling: Coupling): boolean {
  if (coupling.passesThrust?.value === 'yes') return false;
  return coupling.kind?.value === 'joint' || coupling.passesThrust !== undefined;
}
