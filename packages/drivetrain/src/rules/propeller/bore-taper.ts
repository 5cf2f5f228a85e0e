import { given, taperFitTolerances, taperSmallEnd, type Value } from '@tailshaft/mechanics';
import { asStated } from '@tailshaft/vocabulary';
import { tellLike } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { ofHub, ofShaft, type Seat, seatOf } from './bore.js';
import { BORED } from './example-bore.js';
import { SHOP_PRACTICE } from './sources.js';

const INFO: RuleInfo = {
  id: 'propeller/bore-taper',
  title: 'The propeller bore has the taper of the shaft',
  mistakes: ['P08'],
  severity: 'error',
  criterion: 'taper of the bore against taper of the shaft end, change of diameter per length',
  source: SHOP_PRACTICE,
  manual:
    'Inch shafts taper 1:16 up to 5 1/2 in and 1:12 above by SAE J755, metric ones mostly 1:10, and others ' +
    'exist. A bore of another taper touches at one end only: it frets, works loose and cracks the shaft at the ' +
    'keyway. A bore of the steeper taper has the smaller small end, so it can be opened to the flatter taper ' +
    'while metal allows; the other way there is no metal to cut. Match the two, then blue the hub to the shaft.',
  caution: 'Dimensions do not prove contact: lap, blue and check the key with the propeller on its shaft.',
  examples: examples(() => ({
    failing: changed(BORED, ['bore taper 1:16', 'bore taper 1:12']),
    passing: BORED,
    cannotTell: changed(BORED, ['  taper 1:16', '']),
  })),
};

export const boreTaper: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const seat = seatOf(context);
  if (!seat || !(seat.propeller.boreTaper || seat.shaft?.taper)) return undefined;
  const { propeller, shaft } = seat;
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const bore = ofHub(propeller, propeller.boreTaper, 'bore taper', needs);
  const end = ofShaft(context, shaft, shaft?.taper, 'taper', needs);
  const place = propeller.boreTaper?.origin ?? propeller.origin;
  if (!bore || !end) return waits(say, needs, place, `${line.name}: whether the bore fits its shaft`);
  const related = [{ at: shaft!.taper!.origin, message: `the shaft tapers ${shaft!.taper!.written}` }];
  const both = `propeller ${propeller.boreTaper!.written}, shaft ${shaft!.taper!.written}`;
  if (Math.abs(bore.si - end.si) <= taperFitTolerances.taper) {
    return say.holds({ place, related, message: `${line.name}: one taper: ${both}.` });
  }
  const steeper = bore.si > end.si;
  const words = steeper
    ? `The bore is the steeper one, its small end the smaller${smallEnds(seat, bore, end)}: it can be re-bored if there is enough metal`
    : 'The bore is the flatter one: its small end is too wide already, and re-boring gives no contact there. Fit another propeller or another shaft end';
  return say.fails({
    place,
    related,
    balance: { same: [bore, end], within: taperFitTolerances.taper },
    message: `${line.name}: ${both}: they touch at one end only, fret and work loose. ${words}.`,
    routes: () =>
      steeper
        ? [
            {
              title: `Have the propeller re-bored to ${shaft!.taper!.written}, if there is enough metal: bore and shaft then have one taper`,
              edits: [writeInPlace(propeller, 'bore taper', asStated(shaft!.taper!))],
            },
          ]
        : [],
  });
}

/** `, 1.906 in against 2.047 in`: what the two tapers come to at the end of the hub. */
function smallEnds({ propeller, shaft }: Seat, bore: Value<'ratio'>, end: Value<'ratio'>): string {
  const largeEnd = propeller.boreLargeEnd?.value ?? shaft?.taperLargeEnd?.value ?? shaft?.diameter?.value;
  const taperLength = propeller.hubLength?.value ?? shaft?.taperLength?.value;
  if (!largeEnd || !taperLength) return '';
  const tell = tellLike(largeEnd);
  const small = (taper: Value<'ratio'>) =>
    taperSmallEnd({
      largeEnd,
      taperLength,
      taper: given('taper', 't', 'ratio', taper.si, taper.written ? { written: taper.written } : {}),
    });
  return `, ${tell(small(bore), 4)} against ${tell(small(end), 4)}`;
}
