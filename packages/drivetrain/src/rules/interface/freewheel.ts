import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { isSaid } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PART_SHEET } from './sources.js';

const SAILS = changed(
  SINGLE_LINE,
  ['passengers none }', 'passengers none  under way with engine stopped yes }'],
  ['  slip device offered\n', '  slip device offered\n  freewheel "8 h, then run the engine 5 min"\n'],
);

const INFO: RuleInfo = {
  id: 'interface/freewheel',
  title: 'The gear states its rule for freewheeling',
  mistakes: ['I10'],
  severity: 'note',
  criterion: 'a freewheel rule of the gear where the vessel is under way with an engine stopped',
  source: PART_SHEET,
  manual:
    'Sailing, towed, or on one engine of two, the water turns the propeller and with it the output of a gear ' +
    'whose pump stands still. Some gears may freewheel for days, some for hours, some must not. Declare such ' +
    'running with "under way with engine stopped yes" in the duty; the gear then needs the rule from its ' +
    'sheet, and the operator must have it. Where freewheeling is not allowed, fit a shaft lock or brake.',
  caution: `${DEFER} A seal fed by its own engine runs dry meanwhile.`,
  noFigure: 'no number is compared',
  examples: examples(() => ({
    failing: changed(SAILS, ['freewheel "8 h, then run the engine 5 min"', 'freewheel "no"']),
    passing: SAILS,
    cannotTell: changed(SAILS, ['  freewheel "8 h, then run the engine 5 min"\n', '']),
  })),
};

export const freewheel: Rule = { ...INFO, scope: 'line', check };

/** Sheets that forbid it say so in a word. */
const FORBIDDEN = /^(no|never|not allowed|not permitted)\b/i;

function check(context: LineContext): Verdict | undefined {
  const { line, vessel } = context;
  const { gear } = line;
  const stopped = vessel.duty?.underSail;
  if (!gear || stopped?.value === 'no') return undefined;
  // A gear that may not turn so asks whether the vessel is under way so.
  const forbidden = isSaid(() => gear.freewheel) && FORBIDDEN.test(gear.freewheel?.value?.trim() ?? '');
  if (!stopped && !forbidden) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const does = needs.fact(stopped, {
    what: `whether ${vessel.name} is under way with an engine stopped`,
    host: vessel.duty?.origin ?? vessel.origin,
    property: vessel.duty ? 'under way with engine stopped' : 'duty',
  });
  const rule = needs.fact(gear.freewheel, {
    what: `freewheel rule of ${nameOf(gear)}`,
    host: home(gear),
    property: 'freewheel',
  });
  const place = gear.nameOrigin ?? gear.origin;
  if (!does || rule === undefined) {
    return waits(say, needs, place, `${line.name}: whether ${nameOf(gear)} may turn with the engine stopped`);
  }
  if (FORBIDDEN.test(rule.trim())) {
    return say.fails({
      place: gear.freewheel!.origin,
      message: `${line.name}: ${nameOf(gear)} may not turn with the engine stopped, but ${vessel.name} is under way with an engine stopped. Fit a shaft lock or brake, and tell the operator.`,
      related: [{ at: stopped!.origin, message: 'how the vessel is run' }],
    });
  }
  return say.holds({ place, message: `${line.name}: ${nameOf(gear)} with the engine stopped: ${rule}.` });
}
