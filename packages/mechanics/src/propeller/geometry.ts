import { formula } from '../core/formula.js';
import type { Value } from '../core/value.js';
import { DEFINITION } from './sources.js';

/** What has to be known of a propeller before any series can speak of it. */
export interface PropellerGeometry {
  readonly diameter: Value<'length'>;
  readonly pitch: Value<'length'>;
  readonly blades: Value<'number'>;
  readonly areaRatio: Value<'ratio'>;
  /** Which blade area the ratio counts; makers' lists mix the two. Expanded unless said otherwise. */
  readonly areaIs?: 'expanded' | 'developed';
}

export const pitchRatio = /* @__PURE__ */ formula({
  name: 'pitch ratio',
  symbol: 'P/D',
  dimension: 'ratio',
  inputs: { pitch: 'length', diameter: 'length' },
  text: 'P/D = P / D',
  symbols: { pitch: 'P', diameter: 'D' },
  source: DEFINITION,
  range: 'Definition.',
  compute: ({ pitch, diameter }) => pitch / diameter,
});
