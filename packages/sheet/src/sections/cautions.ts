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
  'Screening, not certification. Part makers, class, flag, local codes and licensed practice decide; where they differ from this sheet, they take precedence.';

const CAUTIONS: readonly string[] = [
  'This sheet screens a spec. It certifies nothing, claims no compliance with any rule or law, and replaces no data sheet, class approval, flag approval or survey. Makers of the parts, class, flag, local codes and a licensed engineer or naval architect decide.',
  'Only a dock trial proves which way the vessel moves: make fast, keep power low, try one side at a time from every station, and watch the shaft. A clean sheet does not replace it.',
  'Never correct a wrong direction by crossing the shift cables or reversing the lever. It hides the fault and runs the gear ahead in a clutch that may not be rated for it.',
  'Keep clear of shafts and couplings. Never turn a shaft by hand while the engine can start: isolate the starting system, and work in pairs.',
  'Where a shaft, gear or coupling has less capacity than demand, stop. Do not waive it unless a named competent person accepts it with a reason.',
  'A margin under one criterion does not carry over to another: a diameter that suits a private launch may not suit passengers, ice, class or a corroded shaft.',
  'Old shafts mostly fail from pits, cracked keyways, earlier strikes and bad tapers, which no calculation shows. Draw and test them before they are retained.',
  'An engine that does not reach rated speed at full throttle may be overloaded in the upper part of its range for a long time without any other sign.',
  'Give limits on freewheeling, towing and running on one engine to the people who operate the vessel.',
  'Loss of thrust control causes casualties: a gear that stays ahead, a linkage that drops off, no indication at the helm. Test transfer, stopping and alarms on trial.',
  'With its coupling off, a shaft can slide aft, let water in or jam the rudder. Secure it before removing the first bolt.',
  'Figures from hearsay, brochures, sister vessels and memory are marked, and no rotation check passes on them.',
  'Standards and rules change. Citations here are to the edition and date named.',
];
