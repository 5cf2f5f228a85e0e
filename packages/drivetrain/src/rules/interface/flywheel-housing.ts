import { compareHousings, flywheelHousing, housingThreads } from '@tailshaft/mechanics';
import { inputCouplings, isDamper } from '../../analysis/couplings.js';
import { boxBefore } from '../../analysis/stages.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { gearsThatCarry } from '../capacity/gear-routes.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, HOUSINGS } from './sources.js';

const INFO: RuleInfo = {
  id: 'interface/flywheel-housing',
  title: 'Engine and gear have the same housing size',
  mistakes: ['I01'],
  severity: 'error',
  criterion: 'housing size of the engine against that of the gear (SAE J617)',
  source: HOUSINGS,
  manual:
    'A gear that bolts to the engine mates with its flywheel housing: pilot bore, bolt circle and holes must be ' +
    'of one size. Sizes run from 00, the largest, to 6; one number apart does not fit. An adapter ring helps ' +
    'where the maker offers one, and moves the gear aft by its thickness, damper included. The same size may ' +
    'have inch or metric holes: a suffix M means metric.',
  caution: `${DEFER} Bore and face run-out of the housing are measured at fitting.`,
  noFigure: 'a size of a standard list',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['  input housing SAE-3\n', '  input housing SAE-4\n']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['  input housing SAE-3\n', '  input housing unknown\n']),
  })),
};

export const flywheelHousingRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const { engine, gear } = line;
  const between = inputCouplings(line).filter(one => !isDamper(one) && !one.flywheelSize && !one.rivetRing);
  const remote =
    between.some(one => one.kind?.value !== undefined) || (gear && boxBefore(line, gear) !== undefined);
  if (!engine || !gear || remote || !(engine.housing || gear.inputHousing)) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const own = needs.fact(engine.housing, {
    what: `flywheel housing of ${nameOf(engine)}`,
    host: home(engine),
    property: 'housing',
  });
  const its = needs.fact(gear.inputHousing, {
    what: `input housing of ${nameOf(gear)}`,
    host: home(gear),
    property: 'input housing',
  });
  const place = gear.nameOrigin ?? gear.origin;
  if (own === undefined || its === undefined) {
    return waits(say, needs, place, `${line.name}: whether ${nameOf(gear)} bolts to ${nameOf(engine)}`);
  }
  const [one, other] = [flywheelHousing(own), flywheelHousing(its)];
  const differs = one && other ? compareHousings(one, other) : own === its ? [] : ['name'];
  const related = [
    { at: engine.housing!.origin, message: `housing of the engine: ${own}` },
    { at: gear.inputHousing!.origin, message: `housing of the gear: ${its}` },
  ];
  if (differs.length === 0) {
    const threads =
      housingThreads(own) === housingThreads(its)
        ? ''
        : ' One says metric holes, the other does not say: compare the threads.';
    return say.holds({
      place,
      related,
      message: `${line.name}: ${nameOf(engine)} and ${nameOf(gear)} are both ${own}.${threads}`,
    });
  }
  // Only a coupling that lets the gear stand by itself makes the housings no matter.
  for (const one of between)
    needs.fact(one.kind, { what: `kind of ${nameOf(one)}`, host: home(one), property: 'kind' });
  if (needs.any) {
    const known = `${nameOf(engine)} has housing ${own}, ${nameOf(gear)} takes ${its}`;
    return waits(say, needs, place, `${line.name}: whether ${nameOf(gear)} bolts to ${nameOf(engine)}`, {
      known,
      related,
    });
  }
  return say.fails({
    place,
    related,
    message: `${line.name}: ${nameOf(engine)} has housing ${own}, ${nameOf(gear)} takes ${its}: they differ in ${differs.join(', ')}. Fit a gear with ${own}, or an adapter ring that the maker offers.`,
    routes: () => routes(context),
  });
}

/** Gears of the catalogue with the right housing that carry the torque. */
function routes(context: LineContext): Route[] {
  const duty = context.vessel.duty?.class?.value;
  return duty === undefined ? [] : gearsThatCarry(context, duty, 'ahead', 0);
}
