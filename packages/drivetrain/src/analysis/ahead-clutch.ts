import type { Needs } from '../judge/needs.js';
import type { Clutch, Gear } from '../model/gear.js';
import { home, nameOf } from '../model/part.js';
import { clutchesOf } from './gear-data.js';

/** The clutch that the line runs ahead in, with every gap that keeps it from being known. */
export function clutchInUse(gear: Gear, needs: Needs): Clutch | undefined {
  const name = nameOf(gear);
  if (!ratioIsSettled(gear, needs)) return undefined;
  const clutches = clutchesOf(gear, gear.variant);
  if (clutches.length === 1 && !gear.aheadClutch) return clutches[0];
  if (clutches.length === 0 && gear.variant?.train) return undefined;
  if (clutches.length === 0 && !gear.aheadClutch) {
    const host = gear.variant?.origin ?? home(gear);
    return needs.miss({ what: `the clutches of ${name}`, host, property: 'clutch' });
  }
  const wanted = needs.fact(gear.aheadClutch, {
    what: `which clutch of ${name} is engaged for ahead`,
    host: gear.origin,
    property: 'ahead clutch',
  });
  if (wanted === undefined) return undefined;
  const clutch = clutches.find(one => one.name === wanted);
  if (!clutch) {
    needs.miss({
      what: `clutch ${wanted} of ${name}`,
      host: gear.variant?.origin ?? home(gear),
      property: `clutch ${wanted}`,
    });
  }
  return clutch;
}

/** A ratio decides what a clutch does wherever ratios have clutches of their own. */
function ratioIsSettled(gear: Gear, needs: Needs): boolean {
  if (gear.variant || !gear.ratios.some(one => one.clutches.length > 0 || one.train)) return true;
  needs.miss(
    { what: `which ratio of ${nameOf(gear)} is fitted`, host: gear.origin, property: 'ratio' },
    gear.ratioUsed?.origin,
  );
  return false;
}
