import { asStated, type NewValue } from '@tailshaft/vocabulary';
import type { Clutch, Gear } from '../../model/gear.js';
import type { Vessel } from '../../model/vessel.js';
import { ratioTolerance } from '../planned.js';
import { exactAmount } from './exact-amount.js';

/**
 * An offered ratio as a line should write it: as its sheet sells it, or the exact one where the two differ by so much that the
 * line would mislead whoever reads it.
 */
export function writtenRatio(
  { nominalFact, nominal, exact }: Gear['ratios'][number],
  clutch: Clutch | undefined,
  vessel: Vessel,
): NewValue {
  const turns = clutch?.exact?.value ?? exact?.value;
  const isNear = !turns || Math.abs(nominal.si / turns.si - 1) <= ratioTolerance(vessel).share;
  return isNear ? asStated(nominalFact) : exactAmount(turns);
}
