import { type NewStatement, spell } from '@tailshaft/vocabulary';
import type {
  Catalogue,
  Clutch,
  EngineFacts,
  GearFacts,
  ModelEdit,
  Route,
  Verdict,
  Vessel,
} from '../../src/index.js';
import { ROTATION_RULES } from '../../src/rules/rotation/index.js';
import {
  engineEntry,
  gearEntry,
  judged,
  nameOfPlace,
  type Plain,
  type PlainLine,
  ratio,
  rotation,
  sense,
} from '../build.js';

/** Engine, gear and lines that the tests on rotation change one fact of. */
export const STANDARD = rotation('standard', 'flywheel');
export const OPPOSITE = rotation('opposite', 'flywheel');

export const engine = (facts: Plain<EngineFacts> = {}, name = 'Kittiwake-9') =>
  engineEntry(name, { rotation: STANDARD, ...facts });

export type PlainClutch = Plain<Clutch>;
export const KEEPS: PlainClutch = { name: 'A', output: sense('same'), ahead: 'continuous' };
export const REVERSES: PlainClutch = { name: 'B', output: sense('opposite'), ahead: 'continuous' };

/** Two clutches, A keeps the rotation and B reverses it, at 2.04:1 unless told otherwise. */
export const gear = (
  facts: Omit<Plain<GearFacts>, 'clutches'> & {
    clutches?: readonly PlainClutch[];
    at?: string;
  } = {},
  name = 'Alder-63',
) => {
  const { clutches = [KEEPS, REVERSES], at = '2.04:1', ...own } = facts;
  return gearEntry(name, {
    layout: { word: 'down-angle' },
    inputRotation: STANDARD,
    ratios: [{ nominal: ratio(at), clutches }],
    ...own,
  });
};

export interface Change {
  readonly engine?: Partial<NonNullable<PlainLine['engine']>>;
  readonly gear?: Partial<NonNullable<PlainLine['gear']>>;
  readonly propeller?: NonNullable<PlainLine['propeller']> | null;
}

/** Standard engine, flywheel aft, ahead on B: clockwise, right-hand. */
export const line = (change: Change = {}): PlainLine => ({
  engine: { from: engine(), flywheelFaces: 'aft', ...change.engine },
  gear: { from: gear(), ratio: '2.04:1', ahead: 'B', ...change.gear },
  ...(change.propeller === null ? {} : { propeller: { hand: 'right', ...change.propeller } }),
});

/** `fails rotation/propeller-hand on proposed.Centre` for every finding of the rotation rules. */
export function findings(about: Vessel, catalogue: Partial<Catalogue> = {}): string[] {
  return found(about, catalogue).map(one => `${one.outcome} ${one.rule} on ${one.subject}`);
}

export function found(about: Vessel, catalogue: Partial<Catalogue> = {}): Verdict[] {
  return judged(about, ROTATION_RULES, catalogue).filter(
    one => one.outcome === 'fails' || one.outcome === 'cannot tell',
  );
}

/** The one finding that there is. */
export function only(about: Vessel, catalogue: Partial<Catalogue> = {}): Verdict {
  const all = found(about, catalogue);
  if (all.length !== 1) throw new Error(`${all.length} findings: ${all.map(one => one.message).join(' | ')}`);
  return all[0]!;
}

/** Titles and edits of the routes out, as text. */
export function routesOf(verdict: Verdict): string[] {
  return verdict.routes().map(show);
}

function show({ title, edits, stub }: Route): string {
  return `${stub ? '(stub) ' : ''}${title} [${edits.map(showEdit).join('; ')}]`;
}

function showEdit(edit: ModelEdit): string {
  if (edit.do === 'set') return `${nameOfPlace(edit.host)}: ${edit.property} ${spell(edit.value)}`;
  if (edit.do === 'remove') return `- ${nameOfPlace(edit.at)}`;
  if (edit.do === 'declare') return `+ ${edit.entry.name}`;
  if (edit.do === 'swap') return `${nameOfPlace(edit.one)} <> ${nameOfPlace(edit.other)}`;
  if (edit.do === 'declare like') return `+ ${edit.name} like ${nameOfPlace(edit.entry)}`;
  if (edit.do === 'fit anew') return `${nameOfPlace(edit.at)} := ${nameOfPlace(edit.like)}`;
  if (edit.do === 'add') return `${nameOfPlace(edit.host)}: + ${edit.block.block}`;
  if (edit.do === 'require') return `${nameOfPlace(edit.at)} := require ${edit.requirement.about}`;
  if (edit.do === 'assume') return `+ assume ${edit.assumption.about}`;
  if (edit.do === 'state') return `${nameOfPlace(edit.at)} := ${stated(edit.statement)}`;
  return `${nameOfPlace(edit.at)} := ${spell(edit.value)}`;
}

function stated({ action, role, name, facts }: NewStatement): string {
  const words = facts.map(one => ('property' in one ? `${one.property} ${spell(one.value)}` : one.block));
  return [action, role, name, ...words].filter(Boolean).join(' ');
}
