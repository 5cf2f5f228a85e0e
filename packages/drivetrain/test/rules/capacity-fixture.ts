import type { Catalogue, EngineFacts, GearFacts, Rule, Vessel } from '../../src/index.js';
import {
  arrangement,
  count,
  engineEntry,
  gearEntry,
  judged,
  type Plain,
  type PlainLine,
  place,
  quantity,
  ratio,
  rotation,
  sense,
  vessel,
} from '../build.js';

/*
 * One invented line, a 300 kW engine on a 2.043:1 gear, of which tests change what they are about.
 */

/** `300 kW` at `2300 rpm`. */
export const powerAt = (power: string, speed: string) => ({
  y: quantity('power', power),
  x: quantity('rotational speed', speed),
});
export const torqueAt = (torque: string, speed: string) => ({
  y: quantity('torque', torque),
  x: quantity('rotational speed', speed),
});

/** A rating of an engine. */
export function rated(power: string, speed: string, more: object = {}) {
  return {
    duty: 'medium',
    power: powerAt(power, speed),
    measuredAt: 'crankshaft' as const,
    standard: 'ISO-8665',
    hours: count(3000),
    ...more,
  };
}

export const ENGINE: Plain<EngineFacts> = {
  source: { title: 'Kittiwake 9 data sheet', dated: '2025-01-20' },
  rotation: rotation('standard', 'flywheel'),
  fuel: 'diesel',
  ratings: [rated('300 kW', '2300 rpm')],
  lowIdle: quantity('rotational speed', '650 rpm'),
  highIdle: quantity('rotational speed', '2530 rpm'),
  peakTorque: torqueAt('1480 N.m', '1500 rpm'),
};

/** An offered ratio with two clutches. */
export function offered(nominal: string, exact: string | undefined, rating: string, more: object = {}) {
  return {
    nominal: ratio(nominal),
    ...(exact ? { exact: ratio(exact) } : {}),
    clutches: [
      { name: 'A', output: sense('same'), ahead: 'continuous' as const },
      { name: 'B', output: sense('opposite'), ahead: 'continuous' as const },
    ],
    ratings: [{ duty: 'medium', powerPerSpeed: quantity('power per speed', rating) }],
    ...more,
  };
}

export const GEAR: Plain<GearFacts> = {
  layout: { word: 'down-angle' },
  inputRotation: rotation('standard', 'flywheel'),
  inputSpeedMax: quantity('rotational speed', '3000 rpm'),
  inputSpeedMin: quantity('rotational speed', '600 rpm'),
  ratios: [offered('2.04:1', '2.043:1', '0.18 kW/rpm'), offered('2.52:1', '2.524:1', '0.165 kW/rpm')],
};

export interface Changes {
  readonly engine?: Plain<EngineFacts>;
  readonly gear?: Plain<GearFacts>;
  readonly at?: string | undefined;
  readonly ratio?: string;
  readonly ahead?: string;
  readonly propeller?: PlainLine['propeller'];
  readonly line?: Partial<PlainLine>;
}

/** The line with some facts changed; `undefined` takes a fact away. */
export function line(changes: Changes = {}, names = { engine: 'Kittiwake-9', gear: 'Alder-63' }): PlainLine {
  const at = 'at' in changes ? changes.at : 'medium';
  return {
    engine: {
      from: engineEntry(names.engine, { ...ENGINE, ...changes.engine }),
      flywheelFaces: 'aft',
      ...(at ? { at } : {}),
    },
    gear: {
      from: gearEntry(names.gear, { ...GEAR, ...changes.gear }),
      ratio: changes.ratio ?? '2.04:1',
      ahead: changes.ahead ?? 'B',
    },
    propeller: {
      hand: 'right',
      diameter: quantity('length', '26 in'),
      pitch: quantity('length', '24 in'),
      ...changes.propeller,
    },
    ...changes.line,
  } as PlainLine;
}

export const DUTY = {
  origin: place('Ternhaven.duty'),
  class: { value: 'medium', written: 'medium', origin: place('Ternhaven.duty.class') },
};

/** A vessel with these lines. */
export function craft(lines: Readonly<Record<string, PlainLine>>, more: Partial<Vessel> = {}): Vessel {
  return vessel({ duty: DUTY, arrangements: [arrangement('proposed', lines)], ...more });
}

/** A vessel with one line as found and one as planned; parts of the planned one may be `change: 'retained'`. */
export function repower(before: PlainLine, after: PlainLine, more: Partial<Vessel> = {}): Vessel {
  const existing = arrangement('existing', { Centre: before });
  const proposed = arrangement('proposed', { Centre: after }, { before: existing });
  return vessel({ duty: DUTY, arrangements: [existing, proposed], ...more });
}

/** What one rule says of a vessel: outcome, severity, message, margin and the titles of its ways out. */
export function said(rule: Rule, about: Vessel, catalogue: Partial<Catalogue> = {}) {
  return judged(about, [rule], catalogue).map(verdict => ({
    outcome: verdict.outcome,
    severity: verdict.severity,
    message: verdict.message,
    margin: verdict.margin,
    missing: verdict.missing.map(one => one.what),
    routes: verdict.routes().map(one => one.title),
    edits: verdict.routes().map(one => one.edits),
  }));
}

/** The rule of a list with this id. */
export function ruleOf(rules: readonly Rule[], id: string): Rule {
  const found = rules.find(one => one.id === id);
  if (!found) throw new Error(`no rule ${id}`);
  return found;
}
