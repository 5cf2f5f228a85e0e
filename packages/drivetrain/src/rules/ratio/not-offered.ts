import { percent } from '@tailshaft/mechanics';
import { clutchesOf } from '../../analysis/gear-data.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
import { nameOf } from '../../model/part.js';
import type { Vessel } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { writtenRatio } from './written-ratio.js';

const INFO: RuleInfo = {
  id: 'ratio/not-offered',
  title: 'The gear is offered with the ratio in the line',
  mistakes: [],
  severity: 'error',
  criterion: 'ratio written in the line against the ratios of the catalogue entry',
  source: {
    title: 'the data sheet of the gear, which alone can state its ratios',
    confidence: 'common practice',
  },
  manual:
    'A gear comes only in the ratios of its sheet. Output sense, ahead clutch and rating belong to each ratio, ' +
    'so nothing further can be judged for a ratio that the entry does not have. Choose one that is offered, or ' +
    'add the missing ratio to the entry with its source.',
  caution: 'A neighbouring ratio of the same family may have the other output sense and a lower rating.',
  noFigure: 'a ratio is of a list that the maker offers: the ways out name its members',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['gear Alder-63 ratio 2.04:1', 'gear Alder-63 ratio 2.3:1']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['gear Alder-63 ratio 2.04:1', 'gear Alder-63 ratio unknown']),
  })),
};

export const notOffered: Rule = { ...INFO, scope: 'line', check };

function check({ line, vessel }: LineContext): Verdict | undefined {
  const { gear } = line;
  if (!gear || gear.ratios.length === 0) return undefined;
  const say = sayFor(INFO, line.path);
  const offered = gear.ratios.map(one => one.nominalFact.written).join(', ');
  const place = gear.ratioUsed?.origin ?? gear.origin;
  if (gear.variant) {
    return say.holds({
      place,
      message: `${line.name}: ${nameOf(gear)} is offered with ${gear.variant.nominalFact.written}.`,
    });
  }
  const written = gear.ratioUsed?.value;
  const explains = WAITING.map(rule => ({ rule, subject: line.path }));
  if (!written) {
    const needs = new Needs();
    needs.miss(
      { what: `which ratio of ${nameOf(gear)} is fitted`, host: gear.origin, property: 'ratio' },
      gear.ratioUsed?.origin,
    );
    return say.cannotTell(needs, {
      place,
      message: `${line.name}: ${nameOf(gear)} is offered with ${offered}; the line does not say which is fitted.`,
      explains,
      routes: () => stubRoutes(needs.missing),
    });
  }
  return say.fails({
    place,
    message:
      `${line.name}: ${nameOf(gear)} is not offered with ${gear.ratioUsed!.written}; its entry has ${offered}. ` +
      'Sense, ahead clutch and rating of this ratio are therefore unknown.',
    related: gear.ratios.map(one => ({ at: one.origin, message: `offered: ${one.nominalFact.written}` })),
    explains,
    routes: () => nearestOffered(gear, written.si, vessel),
  });
}

/** Rules that can say nothing more before the ratio is settled. */
const WAITING = [
  'rotation/propeller-hand',
  'rotation/ahead-clutch',
  'rotation/clutch-permission',
  'ratio/nominal-for-exact',
  'ratio/clutch-ratio',
  'capacity/gear-input-torque',
  'capacity/rating-duty',
  'capacity/rating-fuel',
  'capacity/rating-speed',
];

/** The offered ratios on both sides of the written one, the nearest first. */
function nearestOffered(gear: Gear, turns: number, vessel: Vessel): Route[] {
  const clutch = gear.aheadClutch?.value;
  return [...gear.ratios]
    .filter(one => clutch === undefined || clutchesOf(gear, one).some(two => two.name === clutch))
    .sort(
      (a, b) =>
        Number(isTurnedRound(b, turns)) - Number(isTurnedRound(a, turns)) ||
        Math.abs(a.nominal.si - turns) - Math.abs(b.nominal.si - turns),
    )
    .slice(0, 2)
    .map((one, index) => {
      const change = turns / (one.exact?.value?.si ?? one.nominal.si) - 1;
      const ahead = clutchesOf(gear, one).find(two => two.name === clutch);
      return {
        title:
          `Use ${one.nominalFact.written}${isTurnedRound(one, turns) ? ', the same turned round' : index === 0 ? ', the nearest offered' : ''}: the shaft turns ` +
          `${percent(Math.abs(change))} ${change > 0 ? 'faster' : 'slower'} than with ${gear.ratioUsed!.written}`,
        edits: gearEdits(gear, { ratio: writtenRatio(one, ahead, vessel) }),
      };
    });
}

/** Written as shaft speed over engine speed: `1:2.04` for `2.04:1`. */
function isTurnedRound({ nominal }: Gear['ratios'][number], turns: number): boolean {
  return Math.abs(nominal.si * turns - 1) < 0.005 && Math.abs(nominal.si - turns) > 0.01;
}
