import { formula } from '../../core/formula.js';
import type { Source } from '../../core/source.js';

/** One harmonic of a torque that varies as a shaft turns. */
export interface ExcitationOrder {
  readonly label: string;
  readonly kind: 'engine firing' | 'propeller blade' | 'shaft';
  /** Oscillations per turn of the shaft that the inertia below turns with. */
  readonly order: number;
  /** Name of an inertia at whose speed the order counts. */
  readonly at: string;
  readonly source: Source;
}

/** q' = q i: an order of a shaft, counted per turn of the shaft behind a reduction i, which turns slower. */
export const orderBehindGear = /* @__PURE__ */ formula({
  name: 'order seen behind a gear',
  symbol: 'q′',
  dimension: 'number',
  inputs: { q: 'number', i: 'ratio' },
  text: 'q′ = q i',
  source: { title: 'Definition of an order: oscillations per turn of the shaft', confidence: 'derived' },
  range: [{ condition: 'the ratio is positive', met: ({ i }) => i > 0 }],
  compute: ({ q, i }) => q * i,
});

const EVEN_FIRING: Source = {
  title:
    'Even firing intervals: a cylinder fires once in two turns of a four-stroke, once a turn of a two-stroke',
  confidence: 'derived',
};

const BLADE_RATE: Source = { title: 'A blade passes the hull once a turn', confidence: 'derived' };

export interface EngineOrderInputs {
  readonly cycle: 'two-stroke' | 'four-stroke';
  readonly cylinders: number;
  /** How many of them. Not "up to some order": how many that makes would depend on what the author wrote. */
  readonly multiples: number;
  readonly at: string;
}

/** Firing orders of an engine with even intervals: cylinders/2 and multiples (four-stroke), cylinders and multiples (two-stroke). */
export function engineOrders({ cycle, cylinders, multiples, at }: EngineOrderInputs): ExcitationOrder[] {
  if (!Number.isInteger(cylinders) || cylinders < 1) return [];
  const firing = cycle === 'four-stroke' ? cylinders / 2 : cylinders;
  return Array.from({ length: multiples }, (_, i) => ({
    label: `engine order ${firing * (i + 1)}`,
    kind: 'engine firing',
    order: firing * (i + 1),
    at,
    source: EVEN_FIRING,
  }));
}

/** Blade rate of the propeller and its multiples. */
export function propellerOrders(blades: number, multiples: number, at: string): ExcitationOrder[] {
  if (!Number.isInteger(blades) || blades < 1) return [];
  return Array.from({ length: multiples }, (_, i) => ({
    label: i === 0 ? `blade rate, order ${blades}` : `blade rate × ${i + 1}, order ${blades * (i + 1)}`,
    kind: 'propeller blade',
    order: blades * (i + 1),
    at,
    source: BLADE_RATE,
  }));
}
