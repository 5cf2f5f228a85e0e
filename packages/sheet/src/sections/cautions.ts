import { type Block, list, section } from '../document/blocks.js';

/** What must go with every sheet. */
export function cautionsSection(): Block {
  return section('cautions', 'Cautions', [list(CAUTIONS)]);
}

/** Said at the end of every report on a drivetrain. */
export const SCREENING =
  'A screening of what the specs declare, not a certificate: where it differs from the maker of a part, from class, flag ' +
  'or local codes, or from a licensed practitioner, they are right. Weight, trim, stability, exhaust, fire and fuel are not ' +
  'checked here at all. No result proves which way the vessel will move: try each side alone, tied up, at low power, ' +
  'watching the shaft.';

/** For a place with room for one sentence only. */
export const CAUTION_LINE =
  'Screening, not certification. Part makers, class, flag, local codes and licensed practice decide; where they differ from this sheet, they are right.';

const CAUTIONS: readonly string[] = [
  'This sheet screens a spec. It certifies nothing, claims no compliance with any rule or law, and replaces no data sheet, class approval, flag approval or survey. Makers of the parts, class, flag, local codes and a licensed engineer or naval architect have the last word.',
  'Which way the vessel really moves is proven at the dock only: make fast, keep the power low, try one side at a time from every station, and look at the shaft. A clean sheet does not replace this.',
  'Never cure a wrong direction by crossing the shift cables or turning the lever round. It hides the fault and runs a gear for years in a clutch that may not be built for it.',
  'Keep clear of shafts and couplings. Nobody turns a shaft by hand while a start is possible: isolate the starting, and work in twos.',
  'Where a shaft, gear or coupling has less capacity than demand, stop. That is not for a waiver, unless a named competent person takes it on with a reason.',
  'A margin under one criterion says nothing under another: a diameter that suits a private launch may not suit passengers, ice, class or a shaft that has started to corrode.',
  'Old shafts mostly fail from pits, cracked keyways, former strikes and bad tapers, none of which a calculation sees. Draw and test them before they are kept.',
  'An engine that does not come up to its rated speed at full throttle is overloaded over the upper part of its range, and gives no other sign of it for a long time.',
  'Take limits on freewheeling, towing and running on one engine to the people who operate the vessel; here they help nobody.',
  'Losing control over thrust is how casualties begin: a gear that stays ahead, a linkage that drops off, no indication at the helm. Try transfer, stopping and alarms on the trial.',
  'With its coupling off a shaft can slide aft, let water in or jam the rudder. Secure it before the first bolt is taken out.',
  'Figures from hearsay, brochures, sister vessels and memory are marked and close no check of rotation.',
  'Standards and rules change. What is cited here is the edition named, on the day named.',
];
