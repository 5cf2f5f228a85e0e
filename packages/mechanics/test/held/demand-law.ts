import { formula } from './held-formula.js';

/** Demand of a propeller that turns a stated share faster at the same power while the hull is clean. */
export const lightRunningDemand = /* @__PURE__ */ formula({
  name: 'propeller power demand with light running margin',
  symbol: 'P',
  dimension: 'power',
  inputs: {
    referencePower: 'power',
    referenceSpeed: 'rotational speed',
    speed: 'rotational speed',
    lightRunningMargin: 'ratio',
  },
  text: 'P = Pr (ω / ωr)³ / (1 + LRM)³',
  symbols: { referencePower: 'Pr', referenceSpeed: 'ωr', speed: 'ω', lightRunningMargin: 'LRM' },
  source: {
    title: 'installation manual of a slow-speed engine licensor; 4 to 7 % is usual',
    year: 2021,
    confidence: 'published',
  },
  range: [
    { condition: 'light running margin 0 to 10 %', met: ({ lightRunningMargin: m }) => m >= 0 && m <= 0.1 },
    { condition: 'both speeds above zero', met: si => si.referenceSpeed > 0 && si.speed > 0 },
  ],
  compute: ({ referencePower, referenceSpeed, speed, lightRunningMargin }) =>
    (referencePower * (speed / referenceSpeed) ** 3) / (1 + lightRunningMargin) ** 3,
});

const MARGINS = { seaMargin: 'ratio', engineMargin: 'ratio' } as const;

const USUAL_MARGINS = [
  {
    condition: 'sea margin 0 to 50 %, engine margin 0 to 30 %',
    met: ({ seaMargin: s, engineMargin: e }: { readonly seaMargin: number; readonly engineMargin: number }) =>
      s >= 0 && s <= 0.5 && e >= 0 && e <= 0.3,
  },
] as const;

/** Calm-water trial power as a share of rated, when the sea margin is reckoned on the trial power. */
export const trialPointSeaMarginOnTrial = /* @__PURE__ */ formula({
  name: 'trial power share, sea margin on trial power',
  symbol: 'P/MCR',
  dimension: 'ratio',
  inputs: MARGINS,
  text: 'P/MCR = (1 - EM) / (1 + SM)',
  symbols: { seaMargin: 'SM', engineMargin: 'EM' },
  source: { title: 'engine-selection manual of a slow-speed engine licensor', confidence: 'published' },
  range: USUAL_MARGINS,
  compute: ({ seaMargin, engineMargin }) => (1 - engineMargin) / (1 + seaMargin),
});

/** The other convention: both margins taken off in turn. Say which one is meant; they differ by 2 %. */
export const trialPointMarginsInTurn = /* @__PURE__ */ formula({
  name: 'trial power share, both margins taken off',
  symbol: 'P/MCR',
  dimension: 'ratio',
  inputs: MARGINS,
  text: 'P/MCR = (1 - EM) (1 - SM)',
  symbols: { seaMargin: 'SM', engineMargin: 'EM' },
  source: { title: "load diagram of a related licensor's manual", confidence: 'published' },
  range: USUAL_MARGINS,
  compute: ({ seaMargin, engineMargin }) => (1 - engineMargin) * (1 - seaMargin),
});
