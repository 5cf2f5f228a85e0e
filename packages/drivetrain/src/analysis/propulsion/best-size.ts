import {
  findUnit,
  given,
  largestPropeller,
  pitchThatAbsorbs,
  propellerOfBestEfficiency,
  renamed,
  type Value,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { Missing } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { wantedTipShare } from '../clearance.js';
import { LineAnalysis } from '../line.js';
import { absorbingSize } from './absorbing-size.js';
import { isDucted } from './blades.js';
import { rounded, sizingOf } from './other-size.js';
import type { Propulsion } from './propulsion.js';
import { withSize } from './with-size.js';

/** Diameter and pitch of a propeller in the sizes that it is made in, and what follows from them. */
export interface SizedPropeller {
  readonly diameter: Value<'length'>;
  readonly pitch: Value<'length'>;
  readonly propulsion: Propulsion;
  readonly line: ShaftLine;
  /** Diameter and pitch as they were computed, with their working. */
  readonly workings: readonly Value[];
  /** The room for it sets its diameter: a larger one would do better. */
  readonly bounded: boolean;
}

/** A propeller that was found, or what is missing to find one, or why there is none. */
export type Sizing = SizedPropeller | { readonly missing: readonly Missing[]; readonly refusal?: string };

export function isSized(sizing: Sizing): sizing is SizedPropeller {
  return 'propulsion' in sizing;
}

/** The largest diameter that keeps the tip clearance that is wanted, where the height of the hull over the axis is known. */
function roomFor(propeller: Propeller, vessel: Vessel): Value<'length'> | undefined {
  const { tipClearance, diameter, axisToHull } = propeller;
  const axis = axisToHull?.value && renamed(axisToHull.value, 'shaft axis to hull', 's');
  const { share, criterion } = wantedTipShare(vessel);
  const gap = tipClearance?.value;
  const over =
    gap && diameter?.value
      ? given('shaft axis to hull', 's', 'length', gap.si + diameter.value.si / 2, {
          assumed: 'tip clearance and half the diameter, as declared',
        })
      : axis;
  return (
    over &&
    largestPropeller({
      axisToHull: over,
      clearanceShare: given('share required', 'c/D', 'ratio', share, { assumed: criterion.said }),
    })
  );
}

/**
 * The propeller of best open-water efficiency for a line: no larger than its opening allows, with the pitch that absorbs the
 * rated power. The sizes that the propeller has now are not looked at. Vessel speed changes with the size, so that the search is
 * repeated from the speed that it leads to.
 */
export function bestPropeller(line: ShaftLine, vessel: Vessel): Sizing {
  const propeller = line.propeller!;
  const needs = new Needs();
  const largest = roomFor(propeller, vessel);
  if (isDucted(propeller))
    return { missing: [], refusal: 'In a nozzle the nozzle sets the diameter, and no such search is made.' };
  if (propeller.effectivePitch)
    return { missing: [], refusal: 'A cupped blade loads by its effective pitch, which no series gives.' };
  if (!largest)
    needs.miss({
      what: `height of the hull over the shaft axis at ${nameOf(propeller)}: it bounds the diameter`,
      host: propeller.origin,
      property: 'axis to hull',
    });
  const size = largest ?? given('diameter', 'D', 'length', 1);
  const first = settledFrom(line, vessel, size, needs);
  if (needs.any || !largest) return { missing: needs.missing };
  if (!first) return { missing: [], refusal: 'No pitch of its series drives this hull with this engine.' };
  let now = first;
  let best: { readonly si: number; readonly working: Value<'length'>; readonly bounded: boolean } | undefined;
  for (let turn = 0; turn < 4; turn++) {
    const then = propellerOfBestEfficiency(sizingOf(now), largest);
    if (!then.applies) return { missing: [], refusal: then.reason };
    const same = best && Math.abs(then.diameter.si / best.si - 1) < 5e-3;
    best = { si: then.diameter.si, working: then.diameter, bounded: then.bounded };
    if (same) break;
    const next = pitchFor(line, vessel, then.diameter, now);
    if (!next) return { missing: [], refusal: NOT_ABSORBED };
    now = next.propulsion;
  }
  const diameter = rounded(best!.si, modelOf(line), true);
  const made = pitchFor(line, vessel, diameter, now);
  if (!made) return { missing: [], refusal: NOT_ABSORBED };
  return { ...made, workings: [largest, best!.working, ...made.workings], bounded: best!.bounded };
}

const NOT_ABSORBED =
  'No pitch of its series absorbs the rated power at the diameters that the opening allows: another shaft speed is wanted.';

/** The pitch that absorbs the rated power at a diameter. */
export function pitchFor(
  line: ShaftLine,
  vessel: Vessel,
  diameter: Value<'length'>,
  start?: Propulsion,
): Omit<SizedPropeller, 'bounded'> | undefined {
  const first = start ?? settledFrom(line, vessel, diameter, new Needs());
  if (!first) return undefined;
  const { pitch: now, diameter: then } = first.curve.geometry;
  const si = (now.si / then.si) * diameter.si;
  const begun = propulsionWith(line, vessel, diameter, given('pitch', 'P', 'length', si));
  if (!begun) return undefined;
  const guess = pitchThatAbsorbs(sizingOf(begun));
  const found = absorbingSize(
    tried => propulsionWith(line, vessel, diameter, given('pitch', 'P', 'length', tried)),
    { si, demand: begun.demand.si },
    guess.applies ? guess.pitch.si : undefined,
  );
  // At the speed that the vessel then makes, the closed form gives the same pitch, and its working.
  const settled = propulsionWith(line, vessel, diameter, given('pitch', 'P', 'length', found));
  const worked = settled && pitchThatAbsorbs(sizingOf(settled));
  const made = (down: boolean) => {
    const pitch = rounded(found, diameter, down);
    const sized = withSize(line, { diameter, pitch });
    const propulsion = new LineAnalysis(sized, vessel).propulsion?.value;
    return propulsion && { diameter, pitch, propulsion, line: sized };
  };
  // The nearest size may lie just outside the series.
  const size = made(false) ?? made(true);
  return size && { ...size, workings: worked?.applies ? [worked.pitch] : [] };
}

/** A run with some pitch to begin from; what is missing for any is noted. */
function settledFrom(
  line: ShaftLine,
  vessel: Vessel,
  diameter: Value<'length'>,
  needs: Needs,
): Propulsion | undefined {
  for (const ratio of [0.8, 1, 0.65, 1.2]) {
    const pitch = given('pitch', 'P', 'length', ratio * diameter.si);
    const result = new LineAnalysis(withSize(line, { diameter, pitch }), vessel).propulsion;
    if (!result) return undefined;
    if (result.value) return result.value;
    if (result.refusal === undefined) needs.take(result);
    if (needs.any) return undefined;
  }
  return undefined;
}

function propulsionWith(
  line: ShaftLine,
  vessel: Vessel,
  diameter: Value<'length'>,
  pitch: Value<'length'>,
): Propulsion | undefined {
  return new LineAnalysis(withSize(line, { diameter, pitch }), vessel).propulsion?.value;
}

/** A length of the line in whose unit a propeller is sized. */
function modelOf({ propeller, shafts }: ShaftLine): Value<'length'> {
  const { diameter, pitch, axisToHull } = propeller!;
  const found = [diameter, pitch, axisToHull, ...shafts.map(one => one.diameter)].find(one => one?.value);
  return found?.value ?? given('diameter', 'D', 'length', 1, { unit: findUnit('mm')!.symbol });
}
