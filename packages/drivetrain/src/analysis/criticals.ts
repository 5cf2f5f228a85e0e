import type { Value } from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { Missing } from '../judge/verdict.js';
import { type PropellerWhirl, propellerWhirl } from './lateral.js';
import type { LineAnalysis } from './line.js';
import { greatestShaftSpeed, type SpanWhirl, spanWhirls } from './shaft-supports.js';
import { type TorsionalSystem, torsionalSystem } from './torsional.js';

/** Speeds at which a line may vibrate, beside the speeds at which it runs; and what is missing to tell. */
export interface LineCriticals {
  readonly torsional: TorsionalSystem | undefined;
  readonly torsionalMissing: readonly Missing[];
  /** Plain spans of the aftmost shaft. */
  readonly spans: readonly SpanWhirl[];
  readonly propeller: PropellerWhirl | undefined;
  readonly lateralMissing: readonly Missing[];
  /** Propeller shaft speed from low idle to the governed maximum. */
  readonly shaftFrom: Value<'rotational speed'> | undefined;
  readonly shaftTo: Value<'rotational speed'> | undefined;
}

/** All that the declared facts give; nothing is guessed. */
export function criticalsOf(analysis: LineAnalysis): LineCriticals {
  const { line } = analysis;
  const shaft = line.shafts.at(-1);
  const torsionalNeeds = new Needs();
  const torsional = torsionalSystem(analysis, torsionalNeeds);
  const lateralNeeds = new Needs();
  const propeller = propellerWhirl(line, lateralNeeds);
  const spans = shaft ? spanWhirls(shaft, line.shafts.at(-2), new Needs()) : [];
  const shaftTo = shaft && greatestShaftSpeed(analysis, shaft, lateralNeeds);
  if (shaft && spans.length === 0 && (shaft.bearings ?? []).length === 0)
    lateralNeeds.miss({ what: 'bearings of the shaft', host: shaft.origin, property: 'bearing' });
  return {
    torsional,
    torsionalMissing: torsional ? [] : torsionalNeeds.missing,
    spans,
    propeller,
    lateralMissing: lateralNeeds.missing,
    shaftFrom: analysis.idleShaftSpeed.value,
    shaftTo,
  };
}
