import type { Change, Part, Role, ShaftLine, Side } from '@tailshaft/drivetrain';
import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import type { LineReading, PartReading } from '../reading/arrangement.js';
import { nearest } from '../reading/misspelt.js';
import type { Host } from '../reading/place.js';
import type { Problem } from '../reading/problem.js';
import type { EntryTable } from './catalogue.js';
import { makePart, type PartLayers, roleOf, withoutHanded } from './part.js';
import { unknownInEntry } from './unknownInEntry.js';

/** A problem that belongs to the file of the vessel. */
export type Tell = (problem: Problem) => void;

/** A line before its parts are made: what a revising or mirroring line builds upon. */
export interface LinePlan {
  readonly reading: LineReading;
  readonly arrangement: string;
  readonly layers: readonly PartLayers[];
}

/** Order of a plain line; a coupling stands where it is written, and so does a shaft before a transfer. */
const ORDER: readonly Role[] = ['engine', 'motor', 'coupling', 'gear', 'transfer', 'shaft', 'propeller'];
const CHANGE: Readonly<Record<string, Change>> = {
  replace: 'replaced',
  retain: 'retained',
  modify: 'modified',
};

/** What a line consists of, with what it keeps from the line before it or takes from the line it mirrors. */
export function planLine(
  reading: LineReading,
  arrangement: string,
  table: EntryTable,
  before: LinePlan | undefined,
  mirrored: LinePlan | undefined,
  tell: Tell,
): LinePlan {
  const layers: PartLayers[] = [];
  const path = (role: string) => `${arrangement}.${reading.name}.${role}`;
  const spoken = new Set<Role>();

  for (const [index, part] of reading.parts.entries()) {
    const role = roleOf(part);
    const fresh = !spoken.has(role);
    spoken.add(role);
    if (part.action === 'remove') continue;
    const entry = part.name === undefined ? undefined : findEntry(part, role, table, tell);
    if (entry) for (const problem of unknownInEntry(part, entry)) tell(problem);
    const own: PartLayers = {
      role,
      change: part.action ? CHANGE[part.action]! : before ? 'replaced' : 'new',
      path: path(role),
      origin: part.host,
      ...(part.name ? { name: part.name } : {}),
      ...(part.namePlace ? { namePlace: part.namePlace } : {}),
      ...(entry ? { entry } : {}),
      facts: [part.facts.fields],
      rank: rankOf(reading.parts, index),
    };
    const kept =
      part.action === 'retain' || part.action === 'modify'
        ? before
        : !part.action && part.name === undefined
          ? mirrored
          : undefined;
    if (
      (part.action === 'retain' || part.action === 'modify') &&
      !before?.layers.some(one => one.role === role)
    ) {
      tell({
        code: 'repower/nothing-to-keep',
        start: part.whole.start,
        end: part.host.end,
        severity: 'error',
        message: `There is no ${role} in this line of the arrangement before, so nothing can be ${CHANGE[part.action]!}. Write what is fitted: replace ${role} ...`,
      });
    }
    const beneath = fresh ? (kept?.layers.filter(one => one.role === role) ?? []) : [];
    if (beneath.length > 0) for (const old of beneath) layers.push(over(own, old, kept === mirrored));
    else {
      if (before && !mirrored && !part.action && before.layers.some(one => one.role === role)) {
        tell({
          code: 'repower/action-missing',
          start: part.whole.start,
          end: part.whole.start + part.role.length,
          severity: 'error',
          message: `The line before has a ${role}: say whether this one replaces it, or whether the old one is retained or modified.`,
          choices: ['replace', 'modify', 'retain'].map(word => ({
            title: `Write ${word} ${role}`,
            text: `${word} ${part.role}`,
          })),
        });
      }
      layers.push(own);
    }
  }
  const silent = mirrored ?? before;
  for (const old of silent?.layers ?? []) {
    if (spoken.has(old.role)) continue;
    if (silent === mirrored)
      layers.push(
        over(
          {
            ...old,
            change: old.change,
            path: path(old.role),
            origin: mirroredHost(reading, old.role),
            facts: [],
          },
          old,
          true,
        ),
      );
    else if (!layers.some(one => one.role === old.role)) {
      tell({
        code: 'repower/part-not-mentioned',
        start: reading.namePlace.start,
        end: reading.namePlace.end,
        severity: 'error',
        message: `${reading.name} does not say what becomes of the ${old.role} it had: retain, modify, replace or remove it.`,
        choices: lineEnd(reading).flatMap(at =>
          ['retain', 'remove'].map(word => ({
            title: `Add ${word} ${old.role}`,
            text: `  ${word} ${old.role}\n`,
            start: at,
            end: at,
          })),
        ),
      });
      spoken.add(old.role);
    }
  }
  const ordered = [...layers].sort((a, b) => a.rank - b.rank);
  return { reading, arrangement, layers: withLineFacts(ordered, reading) };
}

/**
 * Place in the chain: by role, but a coupling behind whatever is written before it, a shaft before a later transfer, and
 * a length of shaft behind the length, and the coupling, that is written before it.
 */
function rankOf(parts: readonly PartReading[], index: number): number {
  const role = roleOf(parts[index]!);
  const roles = (some: readonly PartReading[]) => some.filter(one => one.action !== 'remove').map(roleOf);
  if (role === 'coupling') {
    const before = parts.flatMap((one, at) =>
      at < index && one.action !== 'remove' && !['coupling', 'propeller'].includes(one.role)
        ? [rankOf(parts, at) + 0.001]
        : [],
    );
    return Math.max(ORDER.indexOf('coupling'), ...before);
  }
  const transferAt = roles(parts).indexOf('transfer');
  const lengths =
    role === 'shaft' ? roles(parts.slice(0, index)).filter(one => one === 'shaft').length / 100 : 0;
  if (role === 'shaft' && transferAt >= 0 && !roles(parts.slice(0, index)).includes('transfer')) {
    return ORDER.indexOf('transfer') - 0.25 + lengths;
  }
  return ORDER.indexOf(role) + lengths;
}

/** The line itself, from its plan. */
export function makeLine(plan: LinePlan, table: EntryTable, before: ShaftLine | undefined): ShaftLine {
  const { reading } = plan;
  const chain = plan.layers.map(layers => makePart(layers, table));
  const first = <R extends Role>(role: R) => chain.find(part => part.role === role) as Part<R> | undefined;
  const all = (role: Role) => chain.filter(part => part.role === role);
  const side = (reading.facts.fields.side as ShaftLine['side']) ?? sideFromName(reading);
  return {
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
    ...(before ? { before } : {}),
  };
}

function pick(role: string, part: Part | undefined): object {
  return part ? { [role]: part } : {};
}

/** One layer over another; across a mirror the facts that have a hand stay behind. */
function over(own: PartLayers, beneath: PartLayers, mirror: boolean): PartLayers {
  const facts = mirror ? beneath.facts.map(one => withoutHanded(own.role, one)) : beneath.facts;
  const renamed = own.entry !== undefined || (own.name !== undefined && own.name !== beneath.name);
  return {
    ...own,
    change: mirror ? beneath.change : own.change,
    ...(renamed
      ? {}
      : {
          ...(beneath.name ? { name: beneath.name } : {}),
          ...(beneath.namePlace ? { namePlace: beneath.namePlace } : {}),
          ...(beneath.entry ? { entry: beneath.entry } : {}),
        }),
    facts: [...facts, ...own.facts],
    rank: beneath.rank,
  };
}

/** A mirrored part stands nowhere in the text: what is missing of it is written in its line. */
function mirroredHost(reading: LineReading, role: Role): Host {
  return {
    ...reading.namePlace,
    headEnd: reading.namePlace.end,
    vocabulary: PLACE_VOCABULARY[role]!,
    insertInto: reading.host,
    insertAs: role,
  };
}

/** `ahead clutch B` by itself in a line is a fact of its gear. */
function withLineFacts(layers: PartLayers[], reading: LineReading): PartLayers[] {
  const clutch = reading.facts.fields.aheadClutch;
  if (!clutch) return layers;
  return layers.map(one =>
    one.role === 'gear' ? { ...one, facts: [...one.facts, { aheadClutch: clutch }] } : one,
  );
}

function sideFromName(reading: LineReading): ShaftLine['side'] {
  const side = (['port', 'starboard', 'centre'] as Side[]).find(one => one === reading.name.toLowerCase());
  return side && { value: side, written: reading.name, origin: reading.namePlace };
}

function lineEnd(reading: LineReading): number[] {
  return reading.host.block ? [reading.host.block.end - 1] : [];
}

function findEntry(part: PartReading, role: Role, table: EntryTable, tell: Tell) {
  // Which part it will be is an open question, as any value can be: the checks that need its facts say so.
  if (part.name === 'unknown') return undefined;
  const entry = table.find(role, part.name!);
  (part.host as { unresolved?: boolean }).unresolved = entry === undefined;
  if (entry) return entry;
  const names = table.names(role);
  const meant = nearest(part.name!, names);
  const known =
    names.length > 0
      ? ` Known: ${names.slice(0, 8).join(', ')}.`
      : ' No entry of this kind is declared or imported here.';
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
