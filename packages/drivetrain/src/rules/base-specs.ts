import { REPOWER, SINGLE_LINE, TWIN_LINES } from './example-specs.js';
import { HYBRID } from './hybrid-specs.js';
import { WITH_DAMPER } from './interface/damper-specs.js';
import { WITH_EXCITATION, WITH_INERTIAS } from './interface/torsional-specs.js';
import { RECORDED } from './paper/record-specs.js';
import { BORED } from './propeller/example-bore.js';
import { PROPELLED } from './propeller/example-hull.js';
import { PLACED } from './propeller/example-place.js';
import { HANDED_ENGINES, HANDED_GEARS } from './rotation/exchange-examples.js';
import { WITH_ANGLES } from './shafting/angle-specs.js';
import { WITH_BEARINGS } from './shafting/bearing-specs.js';
import { AFTER_BREAK, MADE_GOOD } from './shafting/damage-specs.js';
import { TRIED } from './trial/trial-specs.js';

/** Specs that examples are made from, by the name and the file that pages and gallery give them. None has a finding. */
export const BASE_SPECS: Readonly<Record<string, string>> = {
  'single line': SINGLE_LINE,
  'twin lines': TWIN_LINES,
  repower: REPOWER,
  'handed engines': HANDED_ENGINES,
  'handed gears': HANDED_GEARS,
  'propeller bore': BORED,
  'hull and propeller': PROPELLED,
  'propeller opening': PLACED,
  'shaft angles': WITH_ANGLES,
  'shaft bearings': WITH_BEARINGS,
  hybrid: HYBRID,
  damper: WITH_DAMPER,
  'torsional system': WITH_INERTIAS,
  'torsional excitation': WITH_EXCITATION,
  'sea trial': TRIED,
  'signed record': RECORDED,
  'damage made good': MADE_GOOD,
  'shaft that broke': AFTER_BREAK,
};
