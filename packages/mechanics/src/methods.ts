import * as bearing from './bearing/index.js';
import * as clutch from './clutch/index.js';
import type { Formula } from './core/formula.js';
import * as coupling from './coupling/index.js';
import * as geometry from './geometry/index.js';
import * as hull from './hull/index.js';
import * as power from './power/index.js';
import * as propeller from './propeller/index.js';
import * as rotation from './rotation/index.js';
import * as shaft from './shaft/index.js';
import * as tables from './tables/index.js';
import * as train from './train/index.js';
import * as vibration from './vibration/index.js';

/** A subject of the page of methods, with its formulas by name. */
export interface MethodSubject {
  readonly title: string;
  readonly formulas: readonly Formula[];
}

/** Every formula under its subject. Only the page of methods reads this: whoever imports it holds all formulas. */
export function methodSubjects(): readonly MethodSubject[] {
  return Object.entries({
    'Power and torque': power,
    'Rotation and ratio': rotation,
    'Gear trains': train,
    Clutches: clutch,
    'Couplings and flanges': coupling,
    'Shaft strength': shaft,
    Bearings: bearing,
    Vibration: vibration,
    Propellers: propeller,
    'Hull and vessel speed': hull,
    'Geometry and installation': geometry,
    Tables: tables,
  })
    .map(([title, module]) => ({ title, formulas: [...formulasIn(module)].sort(byName) }))
    .filter(({ formulas }) => formulas.length > 0);
}

/** Formulas among the exports of a module, also those kept in groups. */
function formulasIn(value: unknown, found = new Set<Formula>(), depth = 0): Set<Formula> {
  if (typeof value === 'function' && 'spec' in value) found.add(value as Formula);
  else if (typeof value === 'object' && value !== null && depth < 4 && !(value instanceof Map)) {
    for (const inner of Object.values(value)) formulasIn(inner, found, depth + 1);
  }
  return found;
}

const byName = (one: Formula, other: Formula) => (one.spec.name < other.spec.name ? -1 : 1);
