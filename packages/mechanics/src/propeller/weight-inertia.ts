import { formula } from '../core/formula.js';

import { INCH, POUND } from '../units/constants.js';
import { handbook } from './sources.js';

/** A rough weight of a bronze propeller; low confidence, for first weight sums only. */
export const propellerMassEstimate = /* @__PURE__ */ formula({
  name: 'propeller mass estimate, handbook',
  symbol: 'm',
  dimension: 'mass',
  inputs: { diameter: 'length', blades: 'number' },
  units: { diameter: 'in' },
  unit: 'lb',
  text: 'm = k D^3.05 (lb, in); k = 0.00241 for 3 blades, 0.00323 for 4',
  symbols: { diameter: 'D' },
  tabulated: ({ blades }) => ({ k: blades >= 4 ? 0.00323 : 0.00241 }),
  source: handbook('weight of bronze propellers; low confidence'),
  range: [{ condition: '3 or 4 blades', met: ({ blades: z }) => z === 3 || z === 4 }],
  compute: ({ diameter, blades }) => (blades >= 4 ? 0.00323 : 0.00241) * (diameter / INCH) ** 3.05 * POUND,
});
