import { MISTAKES } from '@tailshaft/drivetrain';
import { type Block, list, paragraph, section } from '../document/blocks.js';

export const CHECKLIST_ID = 'checklist';

/** What no spec can prove: to be ticked by whoever saw it. */
export function checklistSection(): Block {
  return section(CHECKLIST_ID, 'What a spec cannot prove', [
    paragraph(
      'None of the following was checked here. Tick each item that a competent person has inspected or calculated, and note where it is recorded.',
    ),
    list(ITEMS, 'boxes'),
  ]);
}

/** Mistakes that only show at the delivery and on trial, then what lies outside every check. */
const ITEMS: readonly string[] = [
  ...MISTAKES.flatMap(one => (one.toSee ? [`${one.toSee} (${one.number})`] : [])),
  'Shafts that stay: drawn, cleaned, straightness measured, keyways and tapers crack-tested, pits and earlier strikes looked for',
  'Propellers that stay: pitch and diameter measured rather than read from the stamp; bore, taper, key and nut fitted to the shaft',
  'Alignment of engine, gear and shaft, afloat and loaded; again after the first hours; movement of soft mounts under full thrust ahead and astern',
  'Weight, centre of gravity, trim, stability and the records that a change of weight makes stale',
  'Exhaust: size, back-pressure, rise above the waterline, carbon monoxide in the accommodation',
  'Cooling water, fuel feed and return, combustion air and ventilation of the engine space',
  'Fire protection, electrical supply, starting, alarms and emergency stops',
  'Controls: travel, neutral start, response after loss of power or of a cable, transfer between stations, indication of shaft direction at the helm',
  'Steering and rudders with the new shaft speed, turning and propeller wash',
  'Structure: beds, bearers, struts, tube, hull openings, lift points',
  'Torsional vibration as the class society, the engine maker or the gear maker requires it, from their own data',
  'Limits that the operator must know: freewheeling, towing, running on one engine, full power astern, overload signs; handed over in writing',
  'Papers: class, flag, insurer, emissions, certificates and the trial sheet with signatures',
];
