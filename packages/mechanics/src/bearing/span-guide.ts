import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atMost } from '../geometry/rounding-slack.js';

/** Span counted in diameters, for comparison with the guide of 20 to 40. – ; L, d m. */
export const spanInDiameters = /* @__PURE__ */ formula({
  name: 'bearing span in diameters',
  symbol: 'L/d',
  dimension: 'ratio',
  inputs: { span: 'length', diameter: 'length' },
  text: 'L / d',
  symbols: { span: 'L', diameter: 'd' },
  source: { title: 'definition', confidence: 'derived' },
  range: 'A definition.',
  compute: ({ span, diameter }) => span / diameter,
});

/** Rule of thumb for bearing span in diameters; shorter spans fight the alignment, longer ones whip. */
export const spanDiameterGuide = {
  least: 20,
  /** Quoted as class guidance. */
  middle: 30,
  most: 40,
  source: { title: 'bearing span of 20 to 40 diameters', confidence: 'common practice' },
} as const satisfies { least: number; middle: number; most: number; source: Source };

/** Loading constant c of the empirical span. */
export const lineShaftLoading = {
  'heavily loaded, shock or reversed': 0.82,
  'line shaft or countershaft': 1.1,
  'load close to the bearings': 1.56,
} as const;

const CLASS: Source = {
  title: 'class rules, GL and BKI form',
  clause: 'distance of shaft bearings',
  confidence: 'from memory',
};

/** 350 rpm, where the class form changes. */
const SLOW = (350 * Math.PI) / 30;

/** Longest span by class up to 350 rpm. l, d m; K₁ by bearing (mm form). */
export const classSpanSlow = /* @__PURE__ */ formula({
  name: 'class bearing span up to 350 rpm',
  symbol: 'l_max',
  dimension: 'length',
  inputs: { diameter: 'length', speed: 'rotational speed', slowFactor: 'number' },
  units: { diameter: 'mm', speed: 'rpm' },
  unit: 'mm',
  text: 'l_max = K₁ √d, mm',
  symbols: { diameter: 'd', slowFactor: 'K₁' },
  source: CLASS,
  range: [{ condition: 'speed is at most 350 rpm', met: si => atMost(si.speed, SLOW) }],
  compute: ({ diameter, slowFactor }) => 1e-3 * slowFactor * Math.sqrt(1e3 * diameter),
});

/** Longest span by class over 350 rpm. l, d m; ω rad/s; K₂ by bearing (mm, rpm form). */
export const classSpanFast = /* @__PURE__ */ formula({
  name: 'class bearing span over 350 rpm',
  symbol: 'l_max',
  dimension: 'length',
  inputs: { diameter: 'length', speed: 'rotational speed', fastFactor: 'number' },
  units: { diameter: 'mm', speed: 'rpm' },
  unit: 'mm',
  text: 'l_max = K₂ √(d/n), mm, rpm',
  symbols: { diameter: 'd', speed: 'n', fastFactor: 'K₂' },
  source: CLASS,
  range: [{ condition: 'speed is over 350 rpm', met: si => !atMost(si.speed, SLOW) }],
  compute: ({ diameter, speed, fastFactor }) =>
    1e-3 * fastFactor * Math.sqrt((1e3 * diameter) / ((speed * 30) / Math.PI)),
});

/** K₁ and K₂ by bearing; the two forms meet at 350 rpm (K₂ ≈ K₁ √350). */
export const classSpanFactors = [
  { bearing: 'oil, white metal', slow: { low: 450, high: 450 }, fast: 8400, fastSource: CLASS },
  {
    bearing: 'grease, grey cast iron',
    slow: { low: 280, high: 280 },
    fast: 5200,
    fastSource: { ...CLASS, clause: 'K₂ used in one worked sheet', confidence: 'published' },
  },
  {
    bearing: 'water, rubber',
    slow: { low: 280, high: 350 },
    fast: 5200,
    fastSource: { ...CLASS, clause: 'K₂ used in one worked sheet', confidence: 'published' },
  },
] as const satisfies readonly {
  bearing: string;
  slow: { low: number; high: number };
  fast: number;
  fastSource: Source;
}[];
