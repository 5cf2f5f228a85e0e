import type { Missing, Verdict } from './verdict.js';

/**
 * What a check still waits for when its failure is put right: data that its other half, or another mode of the line, waited for already. Undefined where
 * the failure stays, or where something else cannot be told.
 */
export function leftOpen(failed: Verdict, then: Verdict | undefined): readonly Missing[] | undefined {
  if (!then || then.outcome === 'fails') return undefined;
  if (then.outcome !== 'cannot tell') return [];
  const known = new Set(failed.open?.map(one => one.property));
  const waits = then.missing.length > 0 && then.missing.every(one => known.has(one.property));
  return waits ? then.missing : undefined;
}
