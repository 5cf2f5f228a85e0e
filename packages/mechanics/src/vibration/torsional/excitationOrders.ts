import { formula } from '../../core/formula.js';
import type { Source } from '../../core/source.js';

/** One harmonic of a torque that varies as a shaft turns. */
export interface ExcitationOrder {
  readonly label: string;
  readonly kind: 'engine firing' | 'engine minor' | 'propeller blade' | 'shaft';
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
  /** Highest order wanted. */
  readonly highest: number;
  readonly at: string;
  /** Also the minor orders: halves on a four-stroke, whole numbers on a two-stroke. They vanish in an ideal, even engine. */
  readonly minor?: boolean;
}

/** Firing orders of an engine with even intervals: cylinders/2 and multiples (four-stroke), cylinders and multiples (two-stroke). */
export function engineOrders(inputs: EngineOrderInputs): ExcitationOrder[] {
  const { cycle, cylinders, highest, at, minor } = inputs;
  if (!Number.isInteger(cylinders) || cylinders < 1 || !Number.isFinite(highest)) return [];
  const step = cycle === 'four-stroke' ? 0.5 : 1;
  const stepsPerFiring = cylinders;
  const orders: ExcitationOrder[] = [];
  for (let steps = 1; steps * step <= highest; steps++) {
    const firing = steps % stepsPerFiring === 0;
    if (!firing && !minor) continue;
    const order = steps * step;
    orders.push({
      label: firing ? `engine order ${order}` : `engine minor order ${order}`,
      kind: firing ? 'engine firing' : 'engine minor',
      order,
      at,
      source: EVEN_FIRING,
    });
  }
  return orders;
}

/** Blade rate of the propeller and its multiples. */
export function propellerOrders(blades: number, multiples: number, at: string): ExcitationOrder[] {
  if (!Number.isInteger(blades) || blades < 1) return [];
  return Array.from({ length: Math.max(0, Math.floor(multiples)) }, (_, i) => ({
    label: i === 0 ? `blade rate, order ${blades}` : `blade rate × ${i + 1}, order ${blades * (i + 1)}`,
    kind: 'propeller blade',
    order: blades * (i + 1),
    at,
    source: BLADE_RATE,
  }));
}
