import { hubSeatShift, renamed, taperFitTolerances } from '@tailshaft/mechanics';
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
import { SHOP_PRACTICE } from './sources.js';

const INFO: RuleInfo = {
  id: 'propeller/bore-large-end',
  title: 'Bore and taper begin at the same diameter',
  mistakes: ['P09'],
  severity: 'error',
  criterion: 'large end of the bore against large end of the shaft taper, within 0.5 mm',
  source: SHOP_PRACTICE,
  manual:
    'A shaft of 1 1/4 in need not have a taper that begins at 1 1/4 in: many were turned down first. A hub bored ' +
    'for the nominal size then slides too far up the taper or never reaches its seat. Measure the large end of ' +
    'the taper itself and have the bore made to it. Half a millimetre of diameter moves the hub 8 mm along a ' +
    '1:16 taper. Do not fit a sleeve.',
  caution: 'Lap and blue the hub to the shaft: dimensions do not prove contact.',
  limitOf: 'the fit of two machined parts',
  noCure: 'The yard decides whether the bore or the shaft end is machined anew.',
  examples: examples(() => ({
    failing: changed(BORED, ['taper large end 2 1/2 in', 'taper large end 2 3/8 in']),
    passing: BORED,
    cannotTell: changed(BORED, ['  taper large end 2 1/2 in', '']),
  })),
};

export const boreLargeEnd: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const seat = seatOf(context);
  if (!seat || !(seat.propeller.boreLargeEnd || seat.shaft?.taperLargeEnd)) return undefined;
  const { propeller, shaft } = seat;
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const bore = ofHub(propeller, propeller.boreLargeEnd, 'bore large end', needs);
  const end = ofShaft(context, shaft, shaft?.taperLargeEnd, 'taper large end', needs);
  const place = propeller.boreLargeEnd?.origin ?? propeller.origin;
  if (!bore || !end) return waits(say, needs, place, `${line.name}: where the hub seats on its taper`);
  const related = [
    { at: shaft!.taperLargeEnd!.origin, message: `the taper begins at ${shaft!.taperLargeEnd!.written}` },
  ];
  const both = `bore ${propeller.boreLargeEnd!.written}, taper ${shaft!.taperLargeEnd!.written} at their large ends`;
  const taper = shaft!.taper?.value;
  const shift =
    taper &&
    hubSeatShift({
      hubLargeEnd: renamed(bore, 'large end of the bore', 'D_hub'),
      shaftLargeEnd: renamed(end, 'large end of the taper', 'd'),
      taper: renamed(taper, 'taper', 't'),
    });
  const workings = shift ? [shift] : [];
  if (Math.abs(bore.si - end.si) <= taperFitTolerances.largeEnd) {
    return say.holds({
      place,
      related,
      workings,
      message: `${line.name}: ${both}: the hub seats where it should.`,
    });
  }
  const away = shift
    ? `the hub seats ${tellLike(bore)({ ...shift, si: Math.abs(shift.si) }, 3)} ${shift.si > 0 ? 'too far forward' : 'too far aft'}`
    : 'the hub does not seat at the large end of its taper';
  const nominal =
    shaft!.diameter?.value && Math.abs(shaft!.diameter.value.si - bore.si) < taperFitTolerances.largeEnd
      ? ` The bore is that of the shaft, ${shaft!.diameter.written}, but the taper is not.`
      : '';
  return say.fails({
    place,
    related,
    workings,
    balance: { same: [bore, end], within: taperFitTolerances.largeEnd },
    message: `${line.name}: ${both}: ${away}.${nominal} Have the bore made to the taper of the shaft, or fit another shaft.`,
  });
}
