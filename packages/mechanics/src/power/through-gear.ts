import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';

const STAGE: Source = { title: 'energy through a stage: P_out = P_in η', confidence: 'derived' };
const EFFICIENT = {
  condition: 'efficiency above 0, at most 1',
  met: (si: { readonly efficiency: number }) => si.efficiency > 0 && si.efficiency <= 1,
};

/** Torque after a reduction. T N·m; i input speed ÷ output speed, its sign left out; η of the stage. */
export const outputTorque = /* @__PURE__ */ formula({
  name: 'torque after a ratio',
  symbol: 'T_2',
  dimension: 'torque',
  inputs: { inputTorque: 'torque', ratio: 'ratio', efficiency: 'ratio' },
  text: 'T_2 = T_1 |i| η',
  symbols: { inputTorque: 'T_1', ratio: 'i', efficiency: 'η' },
  source: STAGE,
  range: [EFFICIENT, { condition: 'the ratio is not zero', met: ({ ratio }) => ratio !== 0 }],
  compute: ({ inputTorque, ratio, efficiency }) => inputTorque * Math.abs(ratio) * efficiency,
});

/** Power after a stage. */
export const outputPower = /* @__PURE__ */ formula({
  name: 'power after a stage',
  symbol: 'P_2',
  dimension: 'power',
  inputs: { inputPower: 'power', efficiency: 'ratio' },
  text: 'P_2 = P_1 η',
  symbols: { inputPower: 'P_1', efficiency: 'η' },
  source: STAGE,
  range: [EFFICIENT],
  compute: si => si.inputPower * si.efficiency,
});

/** Power before a stage, from what is measured or rated after it. */
export const inputPower = /* @__PURE__ */ formula({
  name: 'power before a stage',
  symbol: 'P_1',
  dimension: 'power',
  inputs: { outputPower: 'power', efficiency: 'ratio' },
  text: 'P_1 = P_2 / η',
  symbols: { outputPower: 'P_2', efficiency: 'η' },
  source: STAGE,
  range: [EFFICIENT],
  compute: si => si.outputPower / si.efficiency,
});

/** Ratio of two stages in series; signs multiply as senses do. */
export const ratioInSeries = /* @__PURE__ */ formula({
  name: 'ratio of two stages in series',
  symbol: 'i',
  dimension: 'ratio',
  inputs: { first: 'ratio', second: 'ratio' },
  text: 'i = i_1 i_2',
  symbols: { first: 'i_1', second: 'i_2' },
  source: { title: 'definition of the ratio, input speed over output speed', confidence: 'derived' },
  range: 'Definition of the ratio.',
  compute: ({ first, second }) => first * second,
});

/** Efficiency of stages in series: the product of theirs; 1 when there are none. */
export function overallEfficiency(stages: readonly Value<'ratio'>[]): Value<'ratio'> {
  const inRange = stages.every(stage => stage.si > 0 && stage.si <= 1);
  return {
    label: 'overall efficiency',
    symbol: 'η',
    dimension: 'ratio',
    si: stages.reduce((product, stage) => product * stage.si, 1),
    working: {
      name: 'overall efficiency',
      text: `η = ${stages.map((_, i) => `η_${i + 1}`).join(' ') || '1'}`,
      inputs: stages,
      keys: stages.map((_, i) => `η_${i + 1}`),
      source: STAGE,
      range: [{ condition: 'each efficiency above 0, at most 1', met: inRange }],
    },
  };
}

/** Efficiencies to assume where nothing is stated, engine flywheel to propeller shaft. */
export const USUAL_EFFICIENCY: readonly {
  readonly what: string;
  readonly value: number;
  readonly source: Source;
}[] = [
  {
    what: 'reverse-reduction gear',
    value: 0.97,
    source: { title: 'rating note of an engine maker, ISO 8665 basis', confidence: 'published' },
  },
  {
    what: 'engine flywheel to shaft',
    value: 0.96,
    source: {
      author: 'D. Gerr',
      title: 'Boat Mechanical Systems Handbook',
      clause: 'formula 1-2',
      confidence: 'published',
    },
  },
  {
    what: 'one gear mesh',
    value: 0.985,
    source: { title: 'gear losses, 1 to 1.5 % a mesh', confidence: 'from memory' },
  },
  {
    what: 'one plain shaft bearing',
    value: 0.99,
    source: { title: 'bearing losses, 0.5 to 1 % each', confidence: 'from memory' },
  },
];
