import type { Source } from '../../src/core/source.js';
import { frictionCoefficient } from '../../src/hull/friction-line.js';
import { formula } from './held-formula.js';

const ITTC_57: Source = {
  title: 'ITTC 1957 model-ship correlation line',
  year: 1957,
  confidence: 'published',
};

/** Friction of a smooth hull by the line that all the methods here use. */
export const ittcFrictionCoefficient = /* @__PURE__ */ formula({
  name: 'ITTC-57 friction coefficient',
  symbol: 'CF',
  dimension: 'ratio',
  inputs: { reynoldsNumber: 'number' },
  text: 'CF = 0.075 / (log10 Rn - 2)²',
  symbols: { reynoldsNumber: 'Rn' },
  source: ITTC_57,
  range: [
    {
      condition: 'Reynolds number 1e5 to 1e10',
      met: ({ reynoldsNumber: r }) => r >= 1e5 && r <= 1e10,
    },
  ],
  compute: ({ reynoldsNumber }) => frictionCoefficient(reynoldsNumber),
});
