import { ISO_484_2, ISO_484_2_DIAMETERS, type ToleranceClass, toleranceOf } from '@tailshaft/mechanics';
import { newWord } from '@tailshaft/vocabulary';
import { tellLike } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { isAsFound } from '../../model/as-found.js';
import type { Fact } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import { isSaid } from '../../model/reads.js';
import type { Propeller } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { BORED } from './example-bore.js';

const INFO: RuleInfo = {
  id: 'propeller/tolerance-class',
  title: 'A propeller on order has a tolerance class',
  mistakes: ['P14'],
  severity: 'note',
  criterion:
    'a propeller that is ordered with bore, hub or material states its class S, I, II or III of ISO 484',
  source: ISO_484_2,
  manual:
    'A propeller ordered without a class may have a mean pitch 3 % off, or more, and still meet the order. ' +
    'Class S allows 0.5 %, I 0.75 %, II 1 % and III 3 % on the mean pitch of the propeller. Once bore, hub or ' +
    'material of a new propeller are written, which makes it an order, its class is required. Class I suits ' +
    'fast craft, II working vessels.',
  caution:
    'ISO 484-2 is for diameters of 0.80 to 2.50 m; shops use its classes for smaller propellers too. The figures ' +
    'come from trade pages.',
  noFigure: 'no number is compared',
  examples: examples(() => ({
    failing: changed(BORED, ['  tolerance class I }', ' }']),
    passing: BORED,
    cannotTell: changed(BORED, ['tolerance class I }', 'tolerance class unknown }']),
  })),
};

export const toleranceClass: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, arrangement, vessel } = context;
  const { propeller } = line;
  // A propeller that was found is not ordered.
  if (isAsFound(arrangement, vessel)) return undefined;
  if (!propeller || propeller.change === 'retained' || !isOrdered(propeller)) return undefined;
  const say = sayFor(INFO, line.path);
  const fact = propeller.toleranceClass;
  const place = (fact ?? propeller).origin;
  // With nothing known of it but its place it is no order yet.
  if (!fact && ORDERED.some(one => one(propeller)?.value !== undefined)) {
    return say.fails({
      place,
      message: `${line.name}: ${nameOf(propeller)} is specified for order without a tolerance class: its pitch may be 3 % off, ${allowance(propeller, 'III')}or more. Write tolerance class S, I, II or III.`,
      routes: () =>
        (['I', 'II'] as const).map(quality => ({
          title: `Order it to class ${quality}: ${allowance(propeller, quality)}mean pitch within ${quality === 'I' ? '0.75' : '1'} %`,
          edits: [writeInPlace(propeller, 'tolerance class', newWord(quality))],
        })),
    });
  }
  const needs = new Needs();
  const quality = needs.fact(fact, {
    what: `tolerance class of ${nameOf(propeller)}`,
    host: home(propeller),
    property: 'tolerance class',
  });
  if (!quality) return waits(say, needs, place, `${line.name}: how accurate the propeller will be`);
  const [from, to] = ISO_484_2_DIAMETERS;
  const size = propeller.diameter?.value?.si;
  const beyond =
    size !== undefined && (size < from || size > to)
      ? ` The standard itself is for ${from.toFixed(2)} to ${to.toFixed(2)} m.`
      : '';
  return say.holds({
    place,
    message: `${line.name}: class ${quality}${allowance(propeller, quality) ? `: mean pitch ${allowance(propeller, quality).replace(/, $/, '')}` : ''}.${beyond}`,
  });
}

/** Facts that are written for whoever makes the propeller. */
const ORDERED: readonly ((propeller: Propeller) => Fact<unknown> | undefined)[] = [
  one => one.toleranceClass,
  one => one.material,
  one => one.boreTaper,
  one => one.boreLargeEnd,
  one => one.keywayWidth,
  one => one.hubLength,
];

function isOrdered(propeller: Propeller): boolean {
  return ORDERED.some(one => isSaid(() => one(propeller)));
}

/** `± 0.24 in, `, where the pitch is known. */
function allowance(propeller: Propeller, quality: ToleranceClass): string {
  const pitch = propeller.pitch?.value;
  const off = pitch && toleranceOf('pitch', quality, pitch.si);
  return off === undefined ? '' : `± ${tellLike(pitch)({ ...pitch!, si: off }, 2)}, `;
}
