import {
  type Change,
  type Fact,
  inFirstMode,
  type Mode,
  type Part,
  type Role,
  type ShaftLine,
  type Side,
} from '@tailshaft/drivetrain';
import { type Action, type EntryKind, MODE_VOCABULARY } from '@tailshaft/vocabulary';
import { notingAbsence } from '../reading/absent.js';
import type { LineReading, ModeReading, PartReading } from '../reading/arrangement.js';
import { nearest } from '../reading/misspelt.js';
import type { Place } from '../reading/place.js';
import {
  type Tell,
  tellActionMissing,
  tellNothingToKeep,
  tellNotMentioned,
  tellOutOfOrder,
  tellSecond,
} from './ask.js';
import type { EntryTable } from './catalogue.js';
import { keep, over } from './keep.js';
import { inTheirPlaces } from './kept-places.js';
import { withLapsed } from './lapse.js';
import { Mirror } from './mirror.js';
import { Olds } from './olds.js';
import { makePart, type PartLayers, roleOf } from './part.js';
import type { LinePlan } from './plan.js';
import { unknownInEntry } from './unknown-in-entry.js';

const GRADE: EntryKind = 'shaft material';

/** Order of a plain line; a coupling and a transfer stand where they are written, and so does a shaft before a transfer. */
const ORDER: readonly Role[] = ['engine', 'motor', 'coupling', 'gear', 'transfer', 'shaft', 'propeller'];
const CHANGE: Readonly<Record<string, Change>> = {
  replace: 'replaced',
  retain: 'retained',
  modify: 'modified',
};
const KEEPS: readonly (Action | undefined)[] = ['retain', 'modify'];

/** What a line consists of, with what it keeps from the line before it or takes from the line it mirrors. */
export function planLine(
  reading: LineReading,
  arrangement: string,
  table: EntryTable,
  before: LinePlan | undefined,
  mirrored: LinePlan | undefined,
  tell: Tell,
): LinePlan {
  const olds = new Olds(before?.layers ?? []);
  const mirror = mirrored && new Mirror(reading, arrangement, mirrored, before, olds, tell);
  const taken = takeNamed(reading.parts, olds);
  const layers: PartLayers[] = [];
  const spoken = new Set<Role>();

  for (const [index, part] of reading.parts.entries()) {
    const role = roleOf(part);
    const fresh = !spoken.has(role);
    spoken.add(role);
    if (part.action === 'remove') {
      if (!taken.has(part) && takeOlds(part, reading.parts, olds).length === 0)
        tellNothingToKeep(tell, part, olds.ofRole(role));
      continue;
    }
    const entry = part.name === undefined ? undefined : findEntry(part, role, table, tell);
    if (entry) for (const problem of unknownInEntry(part, entry)) tell(problem);
    tellSecondGrade(part, table, tell);
    const own = ownLayers(part, index, reading, arrangement, before, entry);
    if (KEEPS.includes(part.action)) {
      const kept = taken.get(part) ?? takeOlds(part, reading.parts, olds);
      if (kept.length === 0) tellNothingToKeep(tell, part, olds.ofRole(role));
      layers.push(...(kept.length === 0 ? [own] : kept.map(old => keep(own, old, before!))));
      continue;
    }
    const refined = mirror && !part.action && part.name === undefined && fresh ? mirror.of(role) : [];
    if (refined.length > 0) {
      layers.push(...refined.map(one => over(own, one)));
      continue;
    }
    if (olds.take(role) && !part.action && !mirrored) tellActionMissing(tell, part);
    layers.push(own);
  }
  if (mirror) layers.push(...mirror.silent(spoken));
  const left = olds.rest.filter(one => !mirrored?.notMentioned.has(one.role));
  for (const old of left) tellNotMentioned(tell, reading, old, olds.ofRole(old.role).length > 1);
  tellOutOfOrder(tell, reading.parts, index => rankOf(reading.parts, index));
  const ordered = inTheirPlaces([...layers].sort((a, b) => a.rank - b.rank));
  return {
    reading,
    arrangement,
    layers: withLapsed(withLineFacts(ordered, reading), before?.layers ?? []),
    modes:
      reading.modes.length > 0
        ? reading.modes
        : mirrored
          ? mirrored.modes.map(one => openHand(one, reading))
          : (before?.modes ?? []),
    isBase: before === undefined,
    notMentioned: new Set(left.map(one => one.role)),
  };
}

/** A mode of the other side, with what has a hand as an open question: nothing gives it to this side unsaid. */
function openHand(mode: ModeReading, { namePlace }: LineReading): ModeReading {
  const fields = { ...mode.facts.fields };
  for (const { field, handed } of MODE_VOCABULARY.rows)
    if (handed && fields[field]) fields[field] = { value: undefined, written: 'unknown', origin: namePlace };
  return { ...mode, facts: { ...mode.facts, fields } };
}

/** Old parts that statements name: `retain coupling Elm-4` beside `remove coupling Elm-6`. */
function takeNamed(parts: readonly PartReading[], olds: Olds): Map<PartReading, readonly PartLayers[]> {
  const taken = new Map<PartReading, readonly PartLayers[]>();
  for (const part of parts) {
    if (part.name === undefined || !(KEEPS.includes(part.action) || part.action === 'remove')) continue;
    const old = olds.take(roleOf(part), part.name);
    if (old) taken.set(part, [old]);
  }
  return taken;
}

/**
 * What a statement without a name is about: all that is left of its role where it is the only one, else the next of them,
 * in the order of the text. One that modifies may give the only part that is left another name.
 */
function takeOlds(part: PartReading, parts: readonly PartReading[], olds: Olds): readonly PartLayers[] {
  const role = roleOf(part);
  const left = olds.rest.filter(one => one.role === role);
  if (part.name !== undefined) {
    if (part.action !== 'modify' || left.length !== 1) return [];
    return olds.takeAll(role);
  }
  const others = parts.filter(
    one =>
      one !== part &&
      roleOf(one) === role &&
      (one.name === undefined || one.action === 'replace' || one.action === undefined),
  );
  if (others.length === 0) return olds.takeAll(role);
  const next = olds.take(role);
  return next ? [next] : [];
}

function ownLayers(
  part: PartReading,
  index: number,
  reading: LineReading,
  arrangement: string,
  before: LinePlan | undefined,
  entry: PartLayers['entry'],
): PartLayers {
  const stated = part.action ? CHANGE[part.action]! : before ? 'replaced' : 'new';
  return {
    role: roleOf(part),
    change: stated,
    stated,
    path: `${arrangement}.${reading.name}.${part.role}`,
    origin: part.host,
    ...(part.name ? { name: part.name } : {}),
    ...(part.namePlace ? { namePlace: part.namePlace } : {}),
    ...(entry ? { entry } : {}),
    facts: [part.facts.fields],
    said: part.facts.fields,
    // Parts of one place keep the order in which they were first written, in whatever order they are kept.
    rank: rankOf(reading.parts, index) + index * 1e-6,
  };
}

/** Where a box stands that is written ahead of the gear; what else is written there comes about it in the order of the text. */
const AHEAD_OF_GEAR = ORDER.indexOf('gear') - 0.5;

/**
 * Place in the chain: by role, but a coupling or a transfer behind whatever is written before it, a shaft before a later
 * transfer or, where another one follows, a later gear, a transfer before a later gear, and
 * a length of shaft behind the length, and the coupling, that is written before it.
 */
function rankOf(parts: readonly PartReading[], index: number): number {
  const role = roleOf(parts[index]!);
  const roles = (some: readonly PartReading[]) => some.filter(one => one.action !== 'remove').map(roleOf);
  const before = (step: number, ...but: readonly Role[]) =>
    parts.flatMap((one, at) =>
      at < index && one.action !== 'remove' && !but.includes(roleOf(one)) ? [rankOf(parts, at) + step] : [],
    );
  if (role === 'coupling') {
    // In front of a motor beside an engine it stands where it is written: it does not carry what the motor gives.
    const motorBehind =
      roles(parts.slice(0, index)).includes('engine') && roles(parts.slice(index)).includes('motor');
    return Math.max(motorBehind ? 0 : ORDER.indexOf('coupling'), ...before(0.001, 'coupling', 'propeller'));
  }
  // A motor beside an engine stands where it is written: at the input of the gear, behind it, or on the shaft.
  if (role === 'motor' && roles(parts).includes('engine'))
    return Math.max(ORDER.indexOf('engine'), ...before(0.002, 'propeller'));
  const later = roles(parts.slice(index + 1));
  const gearFollows = later.includes('gear');
  if (role === 'transfer')
    return Math.max(
      gearFollows ? AHEAD_OF_GEAR : ORDER.indexOf('transfer'),
      ...before(0.003, 'coupling', 'propeller'),
    );
  if (role !== 'shaft') return ORDER.indexOf(role);
  const lengths = roles(parts.slice(0, index)).filter(one => one === 'shaft').length / 100;
  // One between engine and gear stands there where another is written behind the gear, or a box between the two; a lone one
  // goes to the propeller.
  const gearAt = later.lastIndexOf('gear');
  if (gearFollows && (later.lastIndexOf('shaft') > gearAt || later.slice(0, gearAt).includes('transfer')))
    return ORDER.indexOf('gear') - 0.25 + lengths;
  if (later.includes('transfer'))
    return Math.max(ORDER.indexOf('transfer') - 0.25, ...before(0.05, 'coupling', 'propeller')) + lengths;
  return ORDER.indexOf(role) + lengths;
}

/** The line itself, from its plan. */
export function makeLine(plan: LinePlan, table: EntryTable, before: ShaftLine | undefined): ShaftLine {
  const { reading } = plan;
  const chain = plan.layers.map(layers => makePart(layers, table));
  const first = <R extends Role>(role: R) => chain.find(part => part.role === role) as Part<R> | undefined;
  const all = (role: Role) => chain.filter(part => part.role === role);
  const side = (reading.facts.fields.side as ShaftLine['side']) ?? sideFromName(reading);
  return inFirstMode({
    name: reading.name,
    path: `${plan.arrangement}.${reading.name}`,
    arrangement: plan.arrangement,
    origin: reading.host,
    nameOrigin: reading.namePlace,
    ...(side ? { side } : {}),
    ...(reading.mirrors ? { mirrors: reading.mirrors.name } : {}),
    ...pick('engine', first('engine')),
    ...pick('motor', first('motor')),
    ...pick('gear', first('gear')),
    ...pick('propeller', first('propeller')),
    couplings: all('coupling') as ShaftLine['couplings'],
    transfers: all('transfer') as unknown as ShaftLine['transfers'],
    shafts: all('shaft') as ShaftLine['shafts'],
    chain,
    ...(plan.modes.length > 0 ? { modes: plan.modes.map(makeMode) } : {}),
    ...(before ? { before } : {}),
  });
}

function makeMode({ name, namePlace, facts }: ModeReading): Mode {
  const fields = { ...facts.fields, name, origin: facts.host, nameOrigin: namePlace };
  return notingAbsence(fields as Mode, MODE_VOCABULARY);
}

function pick(role: string, part: Part | undefined): object {
  return part ? { [role]: part } : {};
}

/** `ahead clutch B` by itself in a line is a fact of its gear. */
function withLineFacts(layers: PartLayers[], reading: LineReading): PartLayers[] {
  const clutch = reading.facts.fields.aheadClutch;
  if (!clutch) return layers;
  return layers.map(one =>
    one.role === 'gear'
      ? { ...one, facts: [...one.facts, { aheadClutch: clutch }], said: { ...one.said, aheadClutch: clutch } }
      : one,
  );
}

function sideFromName(reading: LineReading): ShaftLine['side'] {
  const side = (['port', 'starboard', 'centre'] as Side[]).find(one => one === reading.name.toLowerCase());
  return side && { value: side, written: reading.name, origin: reading.namePlace };
}

/** The grade that a shaft names. */
function tellSecondGrade(part: PartReading, table: EntryTable, tell: Tell): void {
  const material = part.facts.fields.material as Fact<string> | undefined;
  const grade = part.role === 'shaft' && material?.value ? table.find(GRADE, material.value) : undefined;
  if (grade)
    tellSecond(tell, `${GRADE} ${grade.name}`, grade, table.second(grade), material!.origin as Place);
}

function findEntry(part: PartReading, role: Role, table: EntryTable, tell: Tell) {
  // Which part it will be is an open question, as any value can be: the checks that need its facts say so.
  if (part.name === 'unknown') return undefined;
  const entry = table.find(role, part.name!);
  (part.host as { unresolved?: boolean }).unresolved = entry === undefined;
  if (entry) {
    tellSecond(tell, `${role} ${entry.name}`, entry, table.second(entry), part.namePlace!);
    return entry;
  }
  const names = table.names(role);
  const meant = nearest(part.name!, names);
  const known =
    names.length > 0
      ? ` Known: ${names.slice(0, 8).join(', ')}.`
      : ' No entry of this kind is declared or imported.';
  tell({
    code: 'text/unknown-name',
    start: part.namePlace!.start,
    end: part.namePlace!.end,
    severity: 'error',
    message: `No ${role} is called ${part.name}.${meant ? ` Did you mean ${meant}?` : known}`,
    ...(meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
  });
  return undefined;
}
