import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

/** Angles count positive when the aft end is the lower one. */
const ANGLES: Source = {
  title: 'sum of angles in the vertical plane of the shaft line',
  confidence: 'derived',
};
const plane =
  'All angles lie in one vertical plane and are measured from the same base line, aft end down positive.';

/** Angle of the shaft behind an engine and a down-angle gear. rad. */
export const shaftAngle = /* @__PURE__ */ formula({
  name: 'shaft angle from engine and gear',
  symbol: 'α_s',
  dimension: 'angle',
  inputs: { engineAngle: 'angle', gearDownAngle: 'angle' },
  text: 'α_s = α_e + α_g',
  symbols: { engineAngle: 'α_e', gearDownAngle: 'α_g' },
  source: ANGLES,
  range: plane,
  compute: ({ engineAngle, gearDownAngle }) => engineAngle + gearDownAngle,
});

/** Down-angle of two boxes behind each other. rad. */
export const downAngleOfTwo = /* @__PURE__ */ formula({
  name: 'down-angle of two boxes together',
  symbol: 'α_g',
  dimension: 'angle',
  inputs: { first: 'angle', second: 'angle' },
  text: 'α_g = α_1 + α_2',
  symbols: { first: 'α_1', second: 'α_2' },
  source: ANGLES,
  range: `${plane} A box whose output looks forward counts the other way round.`,
  compute: ({ first, second }) => first + second,
});

/** Engine angle that closes the stack. rad. */
export const engineAngleNeeded = /* @__PURE__ */ formula({
  name: 'engine angle that the shaft line needs',
  symbol: 'α_e',
  dimension: 'angle',
  inputs: { shaftAngle: 'angle', gearDownAngle: 'angle' },
  text: 'α_e = α_s − α_g',
  symbols: { shaftAngle: 'α_s', gearDownAngle: 'α_g' },
  source: ANGLES,
  range: plane,
  compute: ({ shaftAngle: angle, gearDownAngle }) => angle - gearDownAngle,
});

/** What the declared angles leave open; 0 when they close. rad. */
export const angleLeftOpen = /* @__PURE__ */ formula({
  name: 'angle left open by the stack',
  symbol: 'Δα',
  dimension: 'angle',
  inputs: { engineAngle: 'angle', gearDownAngle: 'angle', shaftAngle: 'angle' },
  text: 'Δα = α_e + α_g − α_s',
  symbols: { engineAngle: 'α_e', gearDownAngle: 'α_g', shaftAngle: 'α_s' },
  source: ANGLES,
  range: plane,
  compute: si => si.engineAngle + si.gearDownAngle - si.shaftAngle,
});

/** Angle of the engine or gear when the vessel trims by the stern under way. rad. */
export const angleUnderWay = /* @__PURE__ */ formula({
  name: 'angle under way',
  symbol: 'α_w',
  dimension: 'angle',
  inputs: { staticAngle: 'angle', trim: 'angle' },
  text: 'α_w = α + θ',
  symbols: { staticAngle: 'α', trim: 'θ' },
  source: ANGLES,
  range: 'Trim by the stern positive.',
  compute: ({ staticAngle, trim }) => staticAngle + trim,
});

/** What is left below an installation limit, negative when over it. rad. */
export const angleInHand = /* @__PURE__ */ formula({
  name: 'angle in hand below its limit',
  symbol: 'Δα',
  dimension: 'angle',
  inputs: { limit: 'angle', angle: 'angle' },
  text: 'Δα = α_max − α',
  symbols: { limit: 'α_max', angle: 'α' },
  source: ANGLES,
  range: 'The limit is the maker’s, for the condition (static or under way) in which the angle is measured.',
  compute: ({ limit, angle }) => limit - angle,
});
