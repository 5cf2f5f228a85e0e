import { given, type propellerLoad, type Value } from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import { home, nameOf } from '../../model/part.js';
import { isSaid } from '../../model/reads.js';
import type { Propeller } from '../../model/shafting.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { absorbingSize } from './absorbing-size.js';
import { type PropulsionResult, propulsionOf } from './propulsion.js';
import { withSize } from './with-size.js';

/** Whether the pitch of a propeller is set under way, and the spec says within which range. */
export function hasPitchRange(propeller: Propeller): boolean {
  return propeller.kind?.value === 'controllable pitch' && isSaid(() => propeller.pitchRange);
}

/** The propulsion of a line whose propeller is set to take the power that reaches it, as far as its range goes. */
export function atSetPitch(line: ShaftLine, vessel: Vessel): PropulsionResult {
  const needs = new Needs();
  const bounds = rangeOf(line.propeller!, needs);
  if (!bounds) return { value: undefined, missing: needs.missing };
  const at = (si: number) => propulsionOf(withSize(line, { pitch: pitchOf(si) }), vessel);
  const design = at(bounds.within(bounds.design));
  // The methods may not reach to the design pitch, where less of it is what suits.
  const tries = [1, 0.85, 0.7, 0.6, 1.2].map(share => bounds.within(bounds.design * share));
  const start = tries.find(si => at(si).value);
  if (start === undefined) return design;
  // Whatever drives it, the blades are set by what they take at its rated speed.
  const shareAt = (si: number) => {
    const run = at(bounds.within(si)).value;
    return run && { demand: { si: run.rated.power.si / run.available.si } };
  };
  const from = { si: start, demand: shareAt(start)!.demand.si };
  const set = bounds.within(absorbingSize(shareAt, from));
  const found = at(set);
  const { demand } = shareAt(set) ?? { demand: { si: 1 } };
  // Where the blades could go on and the series does not, the pitch that suits is not known.
  const further = demand.si > 1 + FITS ? set * (1 - STEP) : demand.si < 1 - FITS ? set * (1 + STEP) : set;
  if (bounds.within(further) === further && !at(further).value)
    return {
      value: undefined,
      missing:
        needs.miss(
          {
            what: 'a series that covers the pitch that is set',
            host: line.propeller!.origin,
            property: 'series',
          },
          line.propeller!.series?.origin,
        ) ?? needs.missing,
      refusal: `Its blades would be set to a pitch ${demand.si > 1 ? 'below' : 'above'} what the series covers.`,
    };
  return found.value ? { ...found, value: { ...found.value, pitchSet: pitchOf(set) } } : design;
}

/** The pitch at which the propeller takes this power at this shaft speed with the vessel held, by the demand of each. */
export function pitchAtRest(
  propeller: Propeller,
  loadAt: (pitch: Value<'length'>) => ReturnType<typeof propellerLoad> | undefined,
  available: Value<'power'>,
  needs: Needs,
): Value<'length'> | undefined {
  const bounds = rangeOf(propeller, needs);
  if (!bounds) return undefined;
  const run = (si: number) => {
    const load = loadAt(pitchOf(bounds.within(si)));
    return load && { demand: { si: load.power.si / available.si } };
  };
  const first = run(bounds.design);
  if (!first) return pitchOf(bounds.within(bounds.design));
  return pitchOf(bounds.within(absorbingSize(run, { si: bounds.design, demand: first.demand.si })));
}

/** How near the power that it takes comes to that which reaches it, and the step that is looked further. */
const FITS = 2e-3;
const STEP = 0.02;

function rangeOf(propeller: Propeller, needs: Needs) {
  const name = nameOf(propeller);
  const host = home(propeller);
  const range = needs.fact(propeller.pitchRange, {
    what: `range of pitch of ${name}`,
    host,
    property: 'pitch range',
  });
  const design = needs.fact(propeller.pitch, { what: `pitch of ${name}`, host, property: 'pitch' });
  if (!range || !design) return undefined;
  return {
    design: design.si,
    within: (si: number) => Math.min(Math.max(si, range.low.si), range.high.si),
  };
}

function pitchOf(si: number): Value<'length'> {
  return given('pitch that is set', 'P', 'length', si, {
    assumed: 'set to take the power that reaches it, within the range that is declared',
  });
}
