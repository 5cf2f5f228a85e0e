import type { Value } from '../core/value.js';
import type { OpenWaterCurve } from './open-water.js';
import { computed, doesNotApply, type Outcome } from './outcome.js';
import { pitchThatAbsorbs, type SizingCase } from './sizing.js';
import { DEFINITION } from './sources.js';

/** A propeller that absorbs the power, and how well it does. */
export interface BestPropeller {
  readonly diameter: Value<'length'>;
  readonly pitch: Value<'length'>;
  readonly efficiency: number;
  readonly curve: OpenWaterCurve;
  /** The room for it sets its diameter: a larger one would do better. */
  readonly bounded: boolean;
}

/** Diameters tried from the least to the largest, and steps in which the best of them is closed in on. */
const TRIED = 18;
const CLOSING = 9;
/** Below this part of the room nobody would look for a propeller. */
const LEAST_SHARE = 0.25;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Diameter within the room, and pitch, with which a propeller of these blades and area absorbs the power at this shaft speed
 * and speed of advance with the best open-water efficiency. The maps of the series may have several tops, so the whole range is
 * looked at before the best is closed in on.
 */
export function propellerOfBestEfficiency(
  sizing: SizingCase,
  largest: Value<'length'>,
): Outcome<BestPropeller> {
  if (!(largest.si > 0 && Number.isFinite(largest.si)))
    return doesNotApply('There is no room for a propeller.');
  const known = new Map<number, ReturnType<typeof absorbing>>();
  const at = (si: number) => {
    if (!known.has(si)) known.set(si, absorbing(sizing, { ...sizing.geometry.diameter, si }));
    return known.get(si);
  };
  const score = (si: number) => at(si)?.efficiency ?? -1;
  const least = LEAST_SHARE * largest.si;
  const step = (largest.si / least) ** (1 / TRIED);
  let best = largest.si;
  for (let tried = 1; tried <= TRIED; tried++) {
    const si = largest.si / step ** tried;
    if (score(si) > score(best)) best = si;
  }
  if (score(best) < 0)
    return doesNotApply(
      `No diameter within the room absorbs ${(sizing.power.si / 1000).toFixed(1)} kW at this shaft speed within the ${sizing.series} series.`,
    );
  let low = Math.max(least, best / step);
  let high = Math.min(largest.si, best * step);
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  for (let turn = 0; turn < CLOSING; turn++) {
    if (score(left) > score(right)) {
      [high, right] = [right, left];
      left = high - GOLDEN * (high - low);
    } else {
      [low, left] = [left, right];
      right = low + GOLDEN * (high - low);
    }
  }
  const closed = [best, left, right, largest.si].reduce((one, other) =>
    score(other) > score(one) ? other : one,
  );
  const found = at(closed)!;
  const { power, shaftSpeed, speedOfAdvance, density, geometry } = sizing;
  const diameter = computed(
    'diameter of best efficiency within the room',
    'D',
    'length',
    closed,
    {
      name: 'propeller of best efficiency',
      text: 'the D up to D_max, with the P that absorbs PD, at which J KT / (2π KQ) is greatest',
      source: DEFINITION,
    },
    [power, shaftSpeed, speedOfAdvance, density, geometry.areaRatio, geometry.blades, largest],
  );
  return { applies: true, ...found, diameter, bounded: closed > largest.si * (1 - 1e-6) };
}

function absorbing(sizing: SizingCase, diameter: Value<'length'>) {
  const found = pitchThatAbsorbs({ ...sizing, geometry: { ...sizing.geometry, diameter } });
  if (!found.applies) return undefined;
  const j = (2 * Math.PI * sizing.speedOfAdvance.si) / (sizing.shaftSpeed.si * diameter.si);
  if (!found.curve.covers(j).met) return undefined;
  return { pitch: found.pitch, curve: found.curve, efficiency: found.curve.efficiency(j) };
}
