import { given, percent, type Value } from '@tailshaft/mechanics';
import { amount, quantityOf } from '@tailshaft/vocabulary';
import { type BelowHump, belowHump } from '../../analysis/propulsion/below-hump.js';
import {
  diameterForRated,
  type OtherSize,
  pitchForRated,
  pitchOver,
} from '../../analysis/propulsion/other-size.js';
import type { Propulsion } from '../../analysis/propulsion/propulsion.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { findOffered } from '../capacity/offered-ratios.js';
import { surelyDelivered } from '../capacity/surely-delivered.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { type DemandBand, demandBand, isInBand } from './demand-band.js';
import { PROPELLED } from './example-hull.js';
import { demandWords, fullThrottleWords, knots, methodWords, noRun } from './run-words.js';
import { DEFER_PROPELLER, FULL_THROTTLE_BAND } from './sources.js';

const INFO: RuleInfo = {
  id: 'propeller/absorbed-power',
  title: 'Propeller demand at rated speed is within the accepted band',
  mistakes: [],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'power that the propeller absorbs at rated shaft speed, by a published series at the predicted vessel speed, ' +
    'between 86 and 106 % of the power delivered to it, or as the criteria say; by the propeller law that is 98 to ' +
    '105 % of rated speed',
  source: FULL_THROTTLE_BAND,
  manual:
    'An engine that cannot reach rated speed at full throttle is overloaded over the top of its range: it ' +
    'smokes, runs hot and wears. One that runs past rated speed never gives its full power. Propeller demand ' +
    'follows from the series, the size, shaft speed and the speed of the water at the propeller, and that ' +
    'from the resistance of the hull. Change pitch, diameter or ratio; each fix states the resulting demand ' +
    'and speed; with "axis to hull" declared, one fix gives the best efficiency within the opening. ' +
    '"propeller demand at least" and "at most" in the criteria set another band. A motor by itself is judged by its ' +
    'torque where it first gives its power, or what a mode leaves of it, and uses that power up to its top speed. ' +
    'A planing hull may also stay below its resistance hump: full throttle then ends far under rated speed, whatever ' +
    'the propeller would absorb there.',
  caution:
    `${DEFER_PROPELLER} Series are for open water without cavitation; a trial, loaded and clean, is the proof. ` +
    'Check tachometer, throttle travel, fuel and air before changing a propeller.',
  standsWithout: ['peak torque', 'high idle'],
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(PROPELLED, ['pitch 27 in', 'pitch 34 in']),
    passing: PROPELLED,
    cannotTell: changed(PROPELLED, ['  area ratio 0.72', '']),
  })),
};

export const absorbedPower: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, vessel } = context;
  const result = analysis.propulsion;
  if (!result) return undefined;
  const say = sayFor(INFO, line.path);
  const propulsion = result.value;
  if (!propulsion) {
    const reaches = analysis.propellerPower.value;
    return noRun(say, line, result, 'what the propeller absorbs at rated speed', {
      workings: reaches ? [reaches] : [],
    });
  }
  const band = demandBand(vessel);
  const { least, most, criterion } = band;
  const { rated, available, demand, motor } = propulsion;
  const full = propulsion.full.applies ? [propulsion.full.engineSpeed, propulsion.full.vesselSpeed] : [];
  const said = {
    place: (line.propeller!.pitch ?? line.propeller!).origin,
    criterion,
    workings: [
      ...(motor ? [motor.absorbed] : []),
      rated.power,
      available,
      demand,
      rated.vesselSpeed,
      ...full,
    ],
    explains: ['overload', 'light'].map(kind => ({
      rule: `capacity/retained-propeller-${kind}`,
      subject: line.path,
    })),
  };
  const asks = `${line.name}: ${askedWords(context, propulsion)}`;
  const fullWords = fullThrottleWords(propulsion);
  const ends = `${fullWords ? `; ${fullWords}` : ''}. ${methodWords(propulsion)}`;
  const over = demand.si > most;
  const hump = over ? undefined : belowHump(propulsion);
  if (hump)
    return say.fails({
      ...said,
      over: hump.wanted / hump.speedShare,
      message: `${line.name}: ${humpWords(context, propulsion, hump)}. ${methodWords(propulsion)}`,
      routes: () => routes(context, propulsion, band),
    });
  if (isInBand(propulsion, band)) {
    const needs = new Needs();
    const surely = surelyDelivered(available, context, needs);
    if ((demand.si * available.si) / surely.si <= most)
      return say.holds({ ...said, message: `${asks}${ends}` });
    const waiting = `${line.name}: whether the propeller asks no more than the engine gives`;
    const known = `with the rating taken at the propeller shaft it asks ${percent(demand.si)}, at the crankshaft ${percent((demand.si * available.si) / surely.si)}`;
    return waits(say, needs, said.place, waiting, { workings: said.workings, known });
  }
  if (motor && !over && !motor.powerShare) {
    const needs = new Needs();
    const what = `top speed of ${nameOf(motor.motor)}`;
    needs.miss({ what, host: home(motor.motor), property: 'top speed' }, motor.motor.topSpeed?.origin);
    const waiting = `${line.name}: whether the motor uses its full power below its top speed`;
    return waits(say, needs, said.place, waiting, { workings: said.workings });
  }
  const taken = over ? demand : (motor?.powerShare ?? demand);
  return say.fails({
    ...said,
    over: over ? demand.si / most : least / taken.si,
    // With another power a motor would reach it at another speed, which no reworking of this comparison says.
    ...(isAtRated(propulsion)
      ? {
          balance: over
            ? { more: given('demand at most', 'k', 'ratio', most), less: demand }
            : { more: taken, less: given('demand at least', 'k', 'ratio', least) },
        }
      : {}),
    message: `${asks}: ${offWords(context, propulsion, over)}${ends}`,
    routes: () => routes(context, propulsion, band),
  });
}

function isAtRated({ motor, ratedEngineSpeed }: Propulsion): boolean {
  return !motor || motor.from.si === ratedEngineSpeed.si;
}

/** What it absorbs where the mover first gives its power: at rated speed, or from where a motor with a limit reaches it. */
function askedWords({ analysis }: LineContext, propulsion: Propulsion): string {
  const { rated, available, demand, motor } = propulsion;
  const tell = (value: Value) => analysis.tell(value, 3);
  if (motor && !isAtRated(propulsion))
    return (
      `from ${tell(motor.from)} up the motor gives its ${tell(motor.power)}, and there the propeller absorbs ${tell(motor.absorbed)} ` +
      `of the ${tell(available)} delivered to it, ${percent(demand.si)} of the motor’s ${tell(motor.torque)}`
    );
  const speed = knots(propulsion, 'rated');
  return (
    `at rated speed (${analysis.tell(rated.shaftSpeed)} of shaft speed, about ${speed}) the propeller absorbs ` +
    `${tell(rated.power)} of the ${tell(available)} delivered to it, ${percent(demand.si)}`
  );
}

/** Both balances of a hull that has two, and why the faster one is of no use. */
function humpWords({ analysis }: LineContext, propulsion: Propulsion, { full }: BelowHump): string {
  const { rated, demand } = propulsion;
  return (
    `full throttle ends at about ${analysis.tell(full.engineSpeed, 3)} and ${knots(propulsion, 'full')}, below the resistance hump of the hull. ` +
    `At rated speed (${analysis.tell(rated.shaftSpeed)} of shaft speed) and ${knots(propulsion, 'rated')} the propeller would absorb only ${percent(demand.si)}, ` +
    'but on the way there it asks more than the engine has, so that speed is never reached: less pitch, more ratio, more power or less weight'
  );
}

function offWords({ line, analysis }: LineContext, { motor }: Propulsion, over: boolean): string {
  if (over && motor)
    return 'too much, so its torque holds it below that speed and its power is never reached';
  if (over) return `too much, so the ${line.engine ? 'engine' : 'motor'} does not reach its rated speed`;
  if (!motor?.powerShare || !motor.top) return 'too little, so its full power is never used';
  return `too little: at its top speed of ${analysis.tell(motor.top)} it is ${percent(motor.powerShare.si)}, so its full power is never used`;
}

function routes(context: LineContext, now: Propulsion, band: DemandBand): Route[] {
  const { line, vessel } = context;
  const propeller = line.propeller!;
  const fits = (propulsion: Propulsion | undefined) =>
    propulsion !== undefined && isInBand(propulsion, band) && !belowHump(propulsion);
  const sized = (what: 'pitch' | 'diameter', size: OtherSize | undefined): Route[] =>
    size && fits(size.propulsion)
      ? [
          {
            title: `Change the ${what} of ${line.name} to ${size.written}: the propeller absorbs ${demandWords(size.propulsion)}`,
            edits: [writeInPlace(propeller, what, amount(quantityOf(size.value)))],
          },
        ]
      : [];
  const ratios = findOffered(context, other => fits(other.propulsion?.value)).map(
    ({ ratio, gear, change, other }) => ({
      title: `Use ${ratio}: ${change}, and the propeller absorbs ${demandWords(other.propulsion!.value!)}`,
      edits: gearEdits(line.gear!, gear),
    }),
  );
  // The pitch is no choice where it is set under way: its range is.
  if (now.pitchSet) return ratios;
  const cleared = propeller.tipClearance !== undefined || propeller.axisToHull !== undefined;
  return [
    ...sized('pitch', (belowHump(now) && pitchOver(line, vessel, fits)) || pitchForRated(line, vessel, now)),
    // A diameter changes the clearances with it: where they are declared, they are the first thing to look at.
    ...(cleared ? [] : sized('diameter', diameterForRated(line, vessel, now))),
    ...ratios,
  ];
}
