import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { given, type Value } from '../core/value.js';
import { HORSEPOWER, INCH, POUND_FORCE } from '../units/constants.js';
import type { OpenWaterCurve } from './open-water.js';
import { computed, doesNotApply, type Outcome } from './outcome.js';
import { type PropellerLoad, propellerLoad } from './propeller-load.js';
import { DEFINITION, handbook } from './sources.js';

/** Thrust and shaft speed at the bollard when a known power reaches the propeller: the series at J = 0. */
export function bollardAtPower(
  curve: OpenWaterCurve,
  power: Value<'power'>,
  density: Value<'density'>,
): Outcome<PropellerLoad & { shaftSpeed: Value<'rotational speed'> }> {
  if (curve.series.lowestAdvanceRatio > 0)
    return doesNotApply(
      `The ${curve.series.name} series starts at advance ratio ${curve.series.lowestAdvanceRatio}; at the bollard it is 0. Use the B-series or a bollard rule.`,
    );
  const torqueCoefficient = curve.torqueCoefficient(0);
  if (!(power.si > 0 && density.si > 0 && torqueCoefficient > 0))
    return doesNotApply('Bollard thrust needs a power and a water density above zero.');
  const diameter = curve.geometry.diameter;
  const turns = Math.cbrt(power.si / (2 * Math.PI * torqueCoefficient * density.si * diameter.si ** 5));
  const shaftSpeed = computed(
    'shaft speed at the bollard',
    'ωs',
    'rotational speed',
    2 * Math.PI * turns,
    { name: 'shaft speed at the bollard', text: 'ω = 2π ∛(PD / (2π KQ0 ρ D⁵))', source: DEFINITION },
    [power, density, diameter, curve.pitchRatio, curve.areaRatio, curve.geometry.blades],
  );
  const still = given('speed of advance', 'VA', 'speed', 0, { assumed: 'held at the bollard' });
  return { applies: true, ...propellerLoad(curve, shaftSpeed, still, density), shaftSpeed };
}

/** The most that any open propeller of a diameter can pull with a power: momentum theory, no losses. */
export const bollardUpperBound = /* @__PURE__ */ formula({
  name: 'upper bound of bollard thrust',
  symbol: 'Tmax',
  dimension: 'force',
  inputs: { density: 'density', diameter: 'length', power: 'power' },
  text: 'Tmax = ∛(π/2 ρ D² PD²)',
  symbols: { density: 'ρ', diameter: 'D', power: 'PD' },
  source: { title: 'axial momentum theory of an open actuator disc', confidence: 'derived' },
  range: [{ condition: 'no nozzle; power zero or more', met: ({ power }) => power >= 0 }],
  compute: ({ density, diameter, power }) => Math.cbrt((Math.PI / 2) * density * diameter ** 2 * power ** 2),
});

/**
 * The most that propeller and nozzle can pull together with a power, when the jet leaves as wide as the disc: momentum theory,
 * no losses.
 */
export const nozzleBollardUpperBound = /* @__PURE__ */ formula({
  name: 'upper bound of bollard thrust in a nozzle',
  symbol: 'Tmax',
  dimension: 'force',
  inputs: { density: 'density', diameter: 'length', power: 'power' },
  text: 'Tmax = ∛(π ρ D² PD²)',
  symbols: { density: 'ρ', diameter: 'D', power: 'PD' },
  source: { title: 'axial momentum theory of a disc in a duct without contraction', confidence: 'derived' },
  range: [{ condition: 'power zero or more', met: ({ power }) => power >= 0 }],
  compute: ({ density, diameter, power }) => Math.cbrt(Math.PI * density * diameter ** 2 * power ** 2),
});

/** A rule for open propellers, before the tenth that hull and rudder take. */
export const bollardByPowerAndDiameter = /* @__PURE__ */ formula({
  name: 'bollard thrust by power and diameter',
  symbol: 'T',
  dimension: 'force',
  inputs: { diameter: 'length', power: 'power' },
  units: { diameter: 'm', power: 'kW' },
  unit: 'kN',
  text: 'T = (D PD)^(2/3) (kN, m, kW)',
  symbols: { diameter: 'D', power: 'PD' },
  source: {
    title:
      "bollard pull, a marine-equipment maker's encyclopedia; multiply by 0.9 for losses, 1.2 to 1.4 in a nozzle",
    confidence: 'published',
  },
  range: [
    { condition: 'open propeller at the bollard', met: ({ diameter, power }) => diameter > 0 && power >= 0 },
  ],
  compute: ({ diameter, power }) => 1000 * (diameter * (power / 1000)) ** (2 / 3),
});

/** The handbook's rule for the same. */
export const handbookBollardThrust = /* @__PURE__ */ formula({
  name: 'bollard thrust, handbook',
  symbol: 'T',
  dimension: 'force',
  inputs: { diameter: 'length', power: 'power' },
  units: { diameter: 'in', power: 'hp' },
  unit: 'lbf',
  text: 'T = 62.72 (SHP D / 12)^0.67 (lbf, hp, in)',
  symbols: { diameter: 'D', power: 'SHP' },
  source: handbook('bollard pull; also in one public answer'),
  range: [
    { condition: 'open propeller at the bollard', met: ({ diameter, power }) => diameter > 0 && power >= 0 },
  ],
  compute: ({ diameter, power }) =>
    62.72 * ((power / HORSEPOWER) * (diameter / INCH / 12)) ** 0.67 * POUND_FORCE,
});

/** Bollard pull per unit of shaft power in use, N/W; ranges from low to high. */
export const BOLLARD_PULL_PER_POWER: readonly {
  readonly propeller: string;
  readonly from: number;
  readonly to: number;
  readonly source: Source;
}[] = [
  {
    propeller: 'open',
    from: (25 * POUND_FORCE) / HORSEPOWER,
    to: (30 * POUND_FORCE) / HORSEPOWER,
    source: { title: 'US Navy figure, as cited in Oilfield Seamanship 8, p. 173', confidence: 'published' },
  },
  {
    propeller: 'in a nozzle',
    from: (30 * POUND_FORCE) / HORSEPOWER,
    to: (35 * POUND_FORCE) / HORSEPOWER,
    source: { title: 'US Navy figure, as cited in Oilfield Seamanship 8, p. 173', confidence: 'published' },
  },
  {
    propeller: 'well-sized tug propeller',
    from: (35 * POUND_FORCE) / HORSEPOWER,
    to: (35 * POUND_FORCE) / HORSEPOWER,
    source: { title: 'bollard pull of tugs', confidence: 'common practice' },
  },
];
