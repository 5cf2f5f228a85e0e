import { OPEN } from '@tailshaft/vocabulary';
import { thrustPath, wantRatedBoxes } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';
import { thrustBearingRoutes } from './thrust-routes.js';

/** An electric motor straight on the shaft, with its own thrust bearing. */
const ELECTRIC = changed(
  SINGLE_LINE,
  [
    'shaft material high-strength-stainless {',
    `motor Teal-120 "permanent-magnet motor" {
  source "Teal 120 sheet" dated 2025-06-01
  rotation either
  power 120 kW at 1200 rpm
  torque 955 N.m
  base speed 1200 rpm
  top speed 1300 rpm
  thrust at most 30 kN
}

shaft material high-strength-stainless {`,
  ],
  [
    '      engine Kittiwake-9 at medium { flywheel aft }\n      gear Alder-63 ratio 2.04:1 ahead clutch B\n',
    '      motor Teal-120\n',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/thrust-path',
  title: 'Propeller thrust is carried where there is no reversing gear',
  mistakes: ['L15'],
  severity: 'error',
  criterion: 'a rated thrust bearing between the propeller and the forward end of the line',
  source: PRACTICE,
  manual:
    'A reversing gear carries propeller thrust in its output bearing, so the thrust is easily forgotten. With ' +
    'the gear taken out, for an electric motor or a direct drive, the thrust falls on motor bearings, mounts or ' +
    'a coupling that were never made for it. In a line without a gear, a thrust bearing in the shaft, a motor or ' +
    'a transfer must declare its thrust rating. Write "bearing thrust { kind thrust  thrust at most 20 kN }" in ' +
    'the shaft, or choose a motor rated for thrust.',
  caution: `${DEFER} The bearing must be tied to the hull: a flexing seat does not carry thrust.`,
  noFigure: 'no number is compared',
  examples: examples(() => ({
    failing: changed(ELECTRIC, ['  thrust at most 30 kN\n', '']),
    passing: ELECTRIC,
    cannotTell: changed(ELECTRIC, ['  thrust at most 30 kN\n', '  thrust at most unknown\n']),
  })),
};

export const thrustPathRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const prime = line.motor ?? line.engine;
  if (!prime || !line.propeller || line.gear) return undefined;
  const say = sayFor(INFO, line.path);
  const path = thrustPath(line);
  const place = prime.nameOrigin ?? prime.origin;
  // A joint that stops the thrust is judged by the rule on joints.
  if (path.stoppedBy) return undefined;
  const needs = new Needs();
  if (path.taker) {
    const limit = needs.fact(path.taker.limit, {
      what: `thrust rating of ${path.taker.name}`,
      host: path.taker.host,
      property: 'thrust at most',
    });
    for (const coupling of path.unsure) {
      needs.fact(coupling.passesThrust, {
        what: `whether ${nameOf(coupling)} passes thrust`,
        host: home(coupling),
        property: 'passes thrust',
      });
    }
    wantRatedBoxes(path, needs);
    if (!limit || needs.any)
      return waits(say, needs, place, `${line.name}: whether the propeller thrust is carried`);
    return say.holds({
      place,
      message: `${line.name}: ${path.taker.name} carries the propeller thrust, up to ${path.taker.limit!.written}.`,
    });
  }
  const before = line.before?.gear ? ' The reversing gear that carried it has been removed.' : '';
  return say.fails({
    place,
    message: `${line.name}: nothing in the line carries the propeller thrust: there is no gear and no thrust bearing, and ${nameOf(prime)} has no thrust rating.${before} Add a thrust bearing, or take a motor rated for thrust.`,
    related: line.before?.gear ? [{ at: line.before.gear.origin, message: 'the gear before' }] : [],
    routes: () => [
      ...thrustBearingRoutes(context, prime),
      ...(line.motor
        ? [
            {
              title: 'Write the thrust that the motor may carry as an open question: its sheet must say',
              edits: [
                { do: 'set' as const, host: home(line.motor), property: 'thrust at most', value: OPEN },
              ],
              stub: true,
            },
          ]
        : []),
    ],
  });
}
