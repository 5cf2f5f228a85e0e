import {
  type Dimension,
  given,
  inputPower,
  percent,
  renamed,
  USUAL_EFFICIENCY,
  type Value,
} from '@tailshaft/mechanics';
import type { EngineRating } from '../model/engine.js';
import type { Gear, Transfer } from '../model/gear.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';

/** Where nothing else is declared. */
const USUAL = USUAL_EFFICIENCY.find(one => one.what === 'reverse-reduction gear')!;
const USUAL_REASON = `${percent(USUAL.value)}: ${USUAL.source.title}; nothing else is declared or assumed`;

/** What the vessel's text assumes of something: `assume gear efficiency 97 % because ...`. */
export function assumedOf<D extends Dimension>(
  vessel: Vessel,
  about: string,
  dimension: D,
): Value<D> | undefined {
  const assumption = vessel.assumptions.find(one => one.about === about);
  const value = assumption?.quantity?.value;
  if (!assumption || !value) return undefined;
  return given(about, value.symbol, dimension, value.si, {
    origin: assumption.origin,
    ...(value.written ? { written: value.written } : {}),
    assumed: assumption.because ?? 'assumed in the vessel, no reason given',
  });
}

/** Output power over input power of a gear: its own, or else what the vessel assumes, or the usual one. */
export function gearEfficiency(gear: Gear, vessel: Vessel): Value<'ratio'> {
  return stageEfficiency(gear, 'gear efficiency', vessel);
}

/** Output power over input power of a V-drive box, belt or chain stage. */
export function transferEfficiency(transfer: Transfer, vessel: Vessel): Value<'ratio'> {
  return stageEfficiency(transfer, 'transfer efficiency', vessel);
}

function stageEfficiency(stage: Gear | Transfer, about: string, vessel: Vessel): Value<'ratio'> {
  // An assumption stands in for what is not known: it never puts a figure of the maker aside.
  const known = stage.efficiency?.value ?? assumedOf(vessel, about, 'ratio');
  if (known) return renamed(known, about, 'η');
  return given(about, 'η', 'ratio', USUAL.value, {
    assumed: USUAL_REASON,
    replaceWith: `assume ${about}`,
  });
}

/**
 * Power at the crankshaft of a rating. One declared at the propeller shaft has the loss of the gear put back, so that
 * the shaft gets the declared power and the loss is not taken twice. Where the point is not stated, that is also the
 * heavier reading of the two, for the gear as for the shaft.
 */
export function crankshaftPower(
  declared: Value<'power'>,
  rating: EngineRating,
  line: ShaftLine,
  vessel: Vessel,
): Value<'power'> {
  if (rating.measuredAt?.value === 'crankshaft') return declared;
  const efficiency = line.gear
    ? gearEfficiency(line.gear, vessel)
    : given('gear efficiency', 'η', 'ratio', 1, { assumed: '100 %: no gear in the line' });
  const power =
    rating.measuredAt?.value === 'propeller shaft'
      ? declared
      : {
          ...declared,
          assumed:
            'taken at the propeller shaft: the point of measurement is not stated, and this loads more',
        };
  return renamed(inputPower({ outputPower: power, efficiency }), 'rated power at the crankshaft', 'P');
}
