import {
  inchShaftEndOf,
  metricShaftEndOf,
  type Source,
  taperFitTolerances,
  type Value,
} from '@tailshaft/mechanics';
import { asStated } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { ofHub, ofShaft, seatOf } from './bore.js';
import { BORED } from './example-bore.js';

const J755: Source = {
  title: 'SAE J755',
  clause: 'dimensions of shaft ends, two copies',
  confidence: 'published',
};

const INFO: RuleInfo = {
  id: 'propeller/keyway',
  title: 'Shaft and hub take the same key',
  mistakes: ['P10'],
  severity: 'error',
  criterion:
    'keyway of the hub against keyway of the shaft, and both against the shaft-end standard for the size',
  source: J755,
  manual:
    'The key carries the torque until the taper grips. Yards and countries have habits of their own: 1/2 in ' +
    'where the shaft-end standard gives 9/16 in for 2 1/4 in. A hub bought to the standard then does not take ' +
    'the key of the shaft. Write the keyway widths of shaft and hub as measured. Where they differ, a shop makes ' +
    'a stepped key, or the hub is made to the shaft. Where both agree with each other but not with the standard, ' +
    'the next stock propeller will not fit.',
  caution: 'Only the width is compared: depth, fit and corner radius are for the shop.',
  examples: examples(() => ({
    failing: changed(BORED, ['keyway width 5/8 in  hub', 'keyway width 1/2 in  hub']),
    passing: BORED,
    cannotTell: changed(BORED, ['keyway width 5/8 in }', 'keyway width unknown }']),
  })),
};

export const keyway: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const seat = seatOf(context);
  if (!seat || !(seat.propeller.keywayWidth || seat.shaft?.keywayWidth)) return undefined;
  const { propeller, shaft } = seat;
  const { line } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const hub = ofHub(propeller, propeller.keywayWidth, 'keyway width', needs);
  const end = ofShaft(context, shaft, shaft?.keywayWidth, 'keyway width', needs);
  const place = propeller.keywayWidth?.origin ?? propeller.origin;
  const standard = standardFor(shaft?.taperLargeEnd ?? shaft?.diameter);
  if (!hub || !end) return waits(say, needs, place, `${line.name}: whether one key fits shaft and hub`);
  const related = [
    { at: shaft!.keywayWidth!.origin, message: `${shaft!.keywayWidth!.written} in the shaft` },
  ];
  const both = `keyway ${propeller.keywayWidth!.written} in the hub, ${shaft!.keywayWidth!.written} in the shaft`;
  const told = standard
    ? ` The shaft-end standard gives ${standard.written} for ${standard.size}.`
    : ' The size is none of the shaft-end standard, so only the two are compared.';
  if (Math.abs(hub.si - end.si) > taperFitTolerances.keywayWidth) {
    return say.fails({
      place,
      related,
      balance: { same: asStandard(hub, end, standard), within: taperFitTolerances.keywayWidth },
      message: `${line.name}: ${both}: one key does not fit both.${told} Fit a stepped key made by the shop, or have the hub made to the shaft.`,
      routes: () => [
        {
          title: `Order the hub with the keyway of its shaft, ${shaft!.keywayWidth!.written}: one key then fits both`,
          edits: [writeInPlace(propeller, 'keyway width', asStated(shaft!.keywayWidth!))],
        },
      ],
    });
  }
  if (standard && (hub.si < standard.least || hub.si > standard.most)) {
    return say.fails({
      place,
      related,
      severity: 'warning',
      message: `${line.name}: ${both}: they agree, but not with the standard.${told} A spare off the shelf does not take this key.`,
    });
  }
  return say.holds({ place, related, message: `${line.name}: ${both}.${told}` });
}

/** Of two that differ, the one that the standard gives is not the one to change. */
function asStandard(
  hub: Value<'length'>,
  end: Value<'length'>,
  standard: Standard | undefined,
): readonly [Value, Value] {
  const stays = (one: Value) => standard && one.si >= standard.least && one.si <= standard.most;
  const fixed = ({ origin: _, ...one }: Value): Value => one;
  return [stays(hub) ? fixed(hub) : hub, stays(end) ? fixed(end) : end];
}

interface Standard {
  readonly size: string;
  readonly written: string;
  readonly least: number;
  readonly most: number;
}

/** The keyway of the shaft-end tables for a diameter that they list. */
function standardFor(size: Quantity<'length'> | undefined): Standard | undefined {
  const value: Value<'length'> | undefined = size?.value;
  if (!size || !value) return undefined;
  const slack = taperFitTolerances.keywayWidth;
  const inch = inchShaftEndOf(value.si);
  if (inch) {
    const { nominal, min = nominal, max = nominal } = inch.keywayWidth;
    const written = `${Number((nominal / 0.0254).toFixed(4))} in`;
    return { size: size.written, written, least: min - slack, most: max + slack };
  }
  const metric = metricShaftEndOf(value.si);
  if (!metric) return undefined;
  const { width } = metric.key;
  return {
    size: size.written,
    written: `${Number((width * 1000).toFixed(1))} mm (from memory)`,
    least: width - slack,
    most: width + slack,
  };
}
