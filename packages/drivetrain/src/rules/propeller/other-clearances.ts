import { percent, tipGapNeeded, type Value } from '@tailshaft/mechanics';
import { hasTipRoom } from '../../analysis/clearance.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { PLACED } from './example-place.js';
import { DEFER_PROPELLER } from './sources.js';

const CHOSEN = changed(PLACED, [
  '  arrangement proposed {',
  '  criteria { rudder clearance at least 12 % }\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'propeller/other-clearances',
  title: 'Clearances to rudder and strut are stated and sufficient',
  mistakes: ['P03'],
  severity: 'warning',
  criterion:
    'clearance of the blades to the rudder and to strut, bracket or skeg: that it is stated, and that it meets ' +
    'the share of the diameter chosen in the criteria, if any',
  source: {
    author: "Lloyd's Register",
    title: 'Rules and Regulations for the Classification of Ships',
    clause: 'Part 3 Chapter 6 Table 6.7.2: blade to rudder 0.12 of the diameter, as one example of a share',
    year: 2000,
    confidence: 'published',
  },
  manual:
    'Tip clearance to the hull does not cover a blade close to the rudder, the strut or the skeg: the flow ' +
    'off them shakes the blade, and a propeller that clears them may still not come off past the rudder. Once one clearance of a propeller is stated, the others are required. They are judged where the criteria choose ' +
    'a share: "rudder clearance at least 12 %", "strut clearance at least 15 %".',
  caution: `${DEFER_PROPELLER} Leave room to draw the propeller, puller and nut too.`,
  limitOf: 'the author’s criterion: there is no usual one',
  examples: examples(() => ({
    failing: changed(CHOSEN, ['rudder clearance 120 mm', 'rudder clearance 70 mm']),
    passing: CHOSEN,
    cannotTell: changed(PLACED, ['  rudder clearance 120 mm', '']),
  })),
};

export const otherClearances: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | Apart<Verdict> | undefined {
  const { line, vessel, analysis } = context;
  const { propeller } = line;
  if (!propeller) return undefined;
  const { rudderClearance, strutClearance } = vessel.criteria ?? {};
  const places = [
    { what: 'rudder', fact: propeller.rudderClearance, wanted: rudderClearance },
    { what: 'strut', fact: propeller.strutClearance, wanted: strutClearance },
  ];
  const asked = hasTipRoom(propeller) || places.some(({ fact, wanted }) => fact || wanted);
  if (!asked) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const given = places.map(one => ({
    ...one,
    value: needs.fact(one.fact, {
      what: `${one.what} clearance of ${nameOf(propeller)}`,
      host: propeller.origin,
      property: `${one.what} clearance`,
    }),
  }));
  const diameter = places.some(one => one.wanted?.value)
    ? needs.fact(propeller.diameter, {
        what: `diameter of ${nameOf(propeller)}`,
        host: home(propeller),
        property: 'diameter',
      })
    : undefined;
  const short = diameter
    ? given.flatMap(one => {
        const needed = one.value && neededOf(one.wanted, diameter);
        return needed && one.value!.si < needed.si ? [{ ...one, value: one.value!, needed }] : [];
      })
    : [];
  if (short.length > 0) {
    return each(short, ({ what, fact, value, needed, wanted }) =>
      say.fails({
        place: fact!.origin,
        capacity: value,
        demand: needed,
        criterion: `${what} clearance at least ${wanted!.written}`,
        workings: [needed],
        related: [{ at: wanted!.origin, message: 'the share chosen' }],
        message: `${line.name}: ${fact!.written} between blade and ${what}, ${percent(value.si / diameter!.si)} of the diameter; at least ${wanted!.written} is required, ${analysis.tell(needed, 3)} here. A smaller diameter, or the ${what} moved, gives it.`,
      }),
    );
  }
  if (needs.any) {
    return waits(say, needs, propeller.origin, `${line.name}: whether the blades clear all around them`);
  }
  const words = given
    .map(
      one =>
        `${one.what} ${one.fact!.written}${one.wanted?.value ? ` (at least ${one.wanted.written})` : ''}`,
    )
    .join(', ');
  return say.holds({
    place: propeller.rudderClearance!.origin,
    message: `${line.name}: clearance of the blades is given: ${words}.`,
  });
}

function neededOf(
  wanted: Quantity<'ratio'> | undefined,
  propellerDiameter: Value<'length'>,
): Value<'length'> | undefined {
  const clearanceShare = wanted?.value;
  return clearanceShare && tipGapNeeded({ propellerDiameter, clearanceShare });
}
