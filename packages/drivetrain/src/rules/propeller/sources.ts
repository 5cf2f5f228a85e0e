import type { Source } from '@tailshaft/mechanics';

export const DEFER_PROPELLER =
  'A screening by declared data. The propeller maker, class, flag and the responsible engineer decide.';

/** Where the propeller of an engine at full throttle should let it turn. */
export const FULL_THROTTLE_BAND: Source = {
  title:
    'full throttle, loaded and clean, at or slightly above rated speed; a foundry rule caps overspeed at 103 to 105 %',
  confidence: 'common practice',
};

/** Trade practice on bores, hubs and orders. */
export const SHOP_PRACTICE: Source = {
  title: 'practice of propeller shops',
  confidence: 'common practice',
};
