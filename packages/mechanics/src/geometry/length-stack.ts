import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';

const LENGTHS: Source = { title: 'sum of lengths along the shaft line', confidence: 'derived' };

/** Total of lengths under any keys; `stackLength` takes a list. m. */
export const lengthSum = /* @__PURE__ */ formula({
  name: 'length of a stack of parts',
  symbol: 'ΣL',
  dimension: 'length',
  inputs: {} as Record<string, 'length'>,
  text: 'ΣL = L₁ + L₂ + …',
  source: LENGTHS,
  range: 'Parts in series; gaps count as parts.',
  compute: si => Object.values(si).reduce((total, length) => total + length, 0),
});

/** Total of parts in a row, each by its own name. m. */
export function stackLength(parts: readonly Value<'length'>[]): Value<'length'> {
  return lengthSum(Object.fromEntries(parts.map((part, i) => [`part ${i + 1}`, part])));
}

/** How far the stack is longer than the room for it, negative when short. m. */
export const lengthLeftOver = /* @__PURE__ */ formula({
  name: 'length left over by the stack',
  symbol: 'ΔL',
  dimension: 'length',
  inputs: { stack: 'length', room: 'length' },
  text: 'ΔL = ΣL − L_room',
  symbols: { stack: 'ΣL', room: 'L_room' },
  source: LENGTHS,
  range: 'Both measured along the shaft line between the same two faces.',
  compute: ({ stack, room }) => stack - room,
});

/** How far aft the coupling face moves when parts are replaced and the engine stays or moves. m, aft positive. */
export const shaftShift = /* @__PURE__ */ formula({
  name: 'shift of the shaft coupling face',
  symbol: 'Δx',
  dimension: 'length',
  inputs: { before: 'length', after: 'length', engineMovedAft: 'length' },
  text: 'Δx = L_after − L_before + Δx_e',
  symbols: { before: 'L_before', after: 'L_after', engineMovedAft: 'Δx_e' },
  source: LENGTHS,
  range: 'Lengths from engine face to coupling face, along the shaft line.',
  compute: ({ before, after, engineMovedAft }) => after - before + engineMovedAft,
});
