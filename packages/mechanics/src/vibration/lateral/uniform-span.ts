import { given, type Value } from '../../core/value.js';

import { type SpanEnds, spanFrequencyNumber } from './span-end-conditions.js';

/** The frequency number β as a value that names the end conditions it stands for. */
export function spanEnds(ends: SpanEnds, mode = 1): Value<'number'> {
  const written = `${ends}, mode ${mode}`;
  return given('frequency number of the span', 'β', 'number', spanFrequencyNumber(ends, mode), { written });
}
