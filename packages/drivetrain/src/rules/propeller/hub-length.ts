import { inchShaftEndOf } from '@tailshaft/mechanics';
import { tellLike } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { ofHub, ofShaft, seatOf } from './bore.js';
import { BORED } from './example-bore.js';

const INFO: RuleInfo = {
  id: 'propeller/hub-length',
  title: 'Hub length suits the taper',
  mistakes: ['P11'],
  severity: 'warning',
  criterion:
    'length of the hub against that of the taper: not shorter, and not longer by more than what the shaft-end ' +
    'standard leaves or 15 % of the taper',
  source: {
    title: 'SAE J755',
    clause:
      'small end of the hub bore against small end of the shaft: the hub stands about 1/4 in past the taper; the 15 % is common practice',
    confidence: 'published',
  },
  manual:
    'A hub shorter than the taper lets the nut bottom on the shaft before the hub is tight, and leaves the key ' +
    'standing out. A hub much longer takes thread from the nut, and room from rope cutter and seal. By the ' +
    'shaft-end standard the hub extends about a quarter inch past the small end. Folding and feathering hubs ' +
    'often need a shaft end cut for them. Fit a hub of the right length; a spacer only with the approval of the ' +
    'propeller shop.',
  caution: 'Space for nut, cotter, cutter and seal is not checked here.',
  examples: examples(() => ({
    failing: changed(BORED, ['hub length 7 1/2 in', 'hub length 6 1/4 in']),
    passing: BORED,
    cannotTell: changed(BORED, ['  taper length 7 1/4 in', '']),
  })),
};

export const hubLength: Rule = { ...INFO, scope: 'line', check };

/** Share of the taper that a hub may stand past it where no standard size says more. */
const MOST_PAST = 0.15;
/** What rounding of the two leaves. */
const SLACK = 0.0005;

function check(context: LineContext): Verdict | undefined {
  const seat = seatOf(context);
  if (!seat || !(seat.propeller.hubLength || seat.shaft?.taperLength)) return undefined;
  const { propeller, shaft } = seat;
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const hub = ofHub(propeller, propeller.hubLength, 'hub length', needs);
  const taper = ofShaft(context, shaft, shaft?.taperLength, 'taper length', needs);
  const place = propeller.hubLength?.origin ?? propeller.origin;
  if (!hub || !taper) return waits(say, needs, place, `${line.name}: whether the hub suits its taper`);
  const past = hub.si - taper.si;
  const related = [
    { at: shaft!.taperLength!.origin, message: `the taper is ${shaft!.taperLength!.written} long` },
  ];
  const both = `hub ${propeller.hubLength!.written}, taper ${shaft!.taperLength!.written}`;
  const by = tellLike(hub)({ ...hub, si: Math.abs(past) }, 3);
  if (past < -SLACK) {
    return say.fails({
      place,
      related,
      balance: { more: hub, less: taper },
      message: `${line.name}: ${both}: the hub is ${by} shorter, so the nut bottoms or the key stands out before the hub is tight. Fit a hub of the right length; a spacer only with the propeller shop's approval.`,
    });
  }
  const size = (shaft!.taperLargeEnd ?? shaft!.diameter)?.value;
  const row = size && inchShaftEndOf(size.si);
  const usual = row ? (row.diameter - row.hubBoreSmallEnd) / row.taper - row.taperLength : 0;
  if (past > Math.max(1.5 * usual, MOST_PAST * taper.si)) {
    return say.fails({
      place,
      related,
      balance: { more: taper, less: hub },
      message: `${line.name}: ${both}: the hub stands ${by} past the taper and takes the thread from the nut, and room from cutter and seal. Fit a shorter hub or a longer shaft end.`,
    });
  }
  return say.holds({
    place,
    related,
    message: `${line.name}: ${both}: the hub stands ${by} past the small end.`,
  });
}
