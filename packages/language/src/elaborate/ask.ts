import { meaningOf, type Role } from '@tailshaft/drivetrain';
import { listed } from '@tailshaft/mechanics';
import type { Action, Spelling } from '@tailshaft/vocabulary';
import type { ArrangementReading, LineReading, PartReading } from '../reading/arrangement.js';
import type { EntryReading } from '../reading/document.js';
import type { Place } from '../reading/place.js';
import type { Problem } from '../reading/problem.js';
import type { VesselReading } from '../reading/vessel.js';
import { type PartLayers, roleOf } from './part.js';
import type { LinePlan } from './plan.js';

const REMOVE = `${'remove' satisfies Action} ${'shaftline' satisfies Spelling}`;

/** A problem that belongs to the file of the vessel. */
export type Tell = (problem: Problem) => void;

const DONE: Readonly<Record<string, string>> = {
  retain: 'retained',
  modify: 'modified',
  remove: 'removed',
};

/** `coupling Elm-4`, or `coupling` where it has no name. */
const wordsOf = ({ role, name }: Pick<PartLayers, 'role' | 'name'>) => (name ? `${role} ${name}` : role);

/** A statement keeps or removes what the line before does not have. */
export function tellNothingToKeep(
  tell: Tell,
  { action, role, name, whole, host }: PartReading,
  olds: readonly PartLayers[],
): void {
  const done = DONE[action!];
  const names = olds.flatMap(one => (one.name ? [one.name] : []));
  const has = names.length > 0 ? `It has ${listed(names)}. ` : '';
  tell({
    code: 'repower/nothing-to-keep',
    start: whole.start,
    end: host.end,
    severity: 'error',
    message:
      olds.length > 0 && name
        ? `The earlier arrangement has no ${role} ${name} left in this line, so it cannot be ${done}. ${has}Write what is fitted: replace ${role} ${name} ...`
        : `The earlier arrangement has no ${olds.length > 0 ? 'other ' : ''}${role} in this line, so nothing can be ${done}. Write what is fitted: replace ${role} ...`,
    choices: names.map(one => ({
      title: `Write ${action} ${role} ${one}`,
      text: `${action} ${role} ${one}`,
    })),
  });
}

/** A mirrored line would keep what its own side does not have. */
export function tellNothingOnThisSide(tell: Tell, reading: LineReading, layers: PartLayers): void {
  tell({
    code: 'repower/nothing-to-keep',
    ...spanOf(reading.namePlace),
    severity: 'error',
    message:
      `${reading.name} mirrors ${reading.mirrors!.name}, which keeps its ${layers.role}, but ${reading.name} had none in the ` +
      `earlier arrangement: a kept part stays on its own side. Write what is fitted here: replace ${layers.role} ...`,
  });
}

/** A part stands where there was one, and nothing says whether it is the same. */
export function tellActionMissing(tell: Tell, part: PartReading): void {
  tell({
    code: 'repower/action-missing',
    start: part.whole.start,
    end: part.whole.start + part.role.length,
    severity: 'error',
    message: `The earlier line has ${part.role === 'engine' ? 'an' : 'a'} ${part.role}: state whether this one replaces it, or whether the old one is retained or modified.`,
    choices: (['replace', 'modify', 'retain'] satisfies Action[]).map(word => ({
      title: `Write ${word} ${part.role}`,
      text: `${word} ${part.role}`,
    })),
  });
}

/** Between the first mover and the propeller, which have one place, a line is read in the order of the text. */
const STAND_BY_ORDER: readonly Role[] = ['motor', 'coupling', 'gear', 'transfer', 'shaft'];

/** A part that is taken to stand elsewhere than it is written: nobody who reads the text would look for it there. */
export function tellOutOfOrder(
  tell: Tell,
  parts: readonly PartReading[],
  rankOf: (index: number) => number,
): void {
  const hasEngine = parts.some(one => one.role === 'engine');
  const placed = parts.flatMap((part, at) => {
    const fitted = part.action === undefined || part.action === 'replace';
    const role = roleOf(part);
    return fitted && STAND_BY_ORDER.includes(role) && (role !== 'motor' || hasEngine)
      ? [{ part, role, rank: rankOf(at) }]
      : [];
  });
  for (const [at, { part, role, rank }] of placed.entries()) {
    const behind = placed.slice(at + 1).findLast(other => other.rank < rank);
    if (!behind) continue;
    tell({
      code: 'text/out-of-order',
      start: part.whole.start,
      end: part.whole.start + part.role.length,
      severity: 'warning',
      message:
        `This ${role} is written ahead of ${wordsOf({ role: behind.role, ...(behind.part.name ? { name: behind.part.name } : {}) })}, and is taken to stand behind it: ` +
        `${role === 'shaft' ? 'a shaft ahead of a gear is read as one only where another follows the gear. ' : ''}Write the parts in the order of the power flow.`,
    });
    return;
  }
}

/** A part of the line before of which the revision says nothing. */
export function tellNotMentioned(tell: Tell, reading: LineReading, old: PartLayers, several: boolean): void {
  const words = several ? wordsOf(old) : old.role;
  tell({
    code: 'repower/part-not-mentioned',
    ...spanOf(reading.namePlace),
    severity: 'error',
    message: `${reading.name} does not account for the ${words} of the earlier line: retain, modify, replace or remove it.`,
    choices: lineEnd(reading).flatMap(at =>
      (['retain', 'remove'] satisfies Action[]).map(word => ({
        title: `Add ${word} ${words}`,
        text: `  ${word} ${words}\n`,
        start: at,
        end: at,
      })),
    ),
  });
}

/** What a revision says of the lines before it: one that it neither shows nor removes is asked for like a part. */
export function tellLines(tell: Tell, one: ArrangementReading, before: readonly LinePlan[]): void {
  if (one.unsure) return;
  const told = (name: string) => one.lines.some(line => line.name === name);
  for (const { name, place } of one.removed) {
    if (before.some(plan => plan.reading.name === name) && !told(name)) continue;
    tell({
      code: 'repower/nothing-to-keep',
      ...spanOf(place),
      severity: 'error',
      message: told(name)
        ? `${name} is both removed and described in this arrangement: delete one of the two.`
        : `The earlier arrangement has no shaft line ${name}, so it cannot be removed.`,
    });
  }
  for (const { reading, layers } of before) {
    const { name } = reading;
    if (!name || told(name) || one.removed.some(line => line.name === name)) continue;
    const kept = layers.map(
      layer => `      retain ${several(layers, layer) ? wordsOf(layer) : layer.role}\n`,
    );
    const at = one.linesEnd;
    tell({
      code: 'repower/line-not-mentioned',
      ...spanOf(one.namePlace),
      severity: 'error',
      message: `${one.name} does not account for shaft line ${name}: describe it here, with the parts it retains, or remove it.`,
      choices: (at === undefined ? [] : [at.start]).flatMap(end => [
        {
          title: `Add shaftline ${name} as it was`,
          text: `  shaftline ${name} {\n${kept.join('')}    }\n  `,
          start: end,
          end,
        },
        { title: `Add ${REMOVE} ${name}`, text: `  ${REMOVE} ${name}\n  `, start: end, end },
      ]),
    });
  }
}

/** Which of several arrangements a trial was run with, and whether there is one of that name. */
export function tellTrials(tell: Tell, { trials, arrangements }: VesselReading): void {
  const names = arrangements.map(one => one.name).filter(Boolean);
  for (const { of, place } of trials) {
    if (of ? names.includes(of.name) : names.length < 2) continue;
    const at = of ? of.place : headOf(place);
    tell({
      code: of ? 'text/unknown-name' : 'text/value-missing',
      ...spanOf(at),
      severity: 'error',
      message: of
        ? `This vessel has no arrangement ${of.name}, so the trial is compared with nothing.`
        : `State which arrangement was tried: trial "..." of ${names.at(-1)}. With several arrangements the trial is not compared with any until this is stated.`,
      choices: of ? names.map(one => ({ title: `Write ${one}`, text: one })) : [],
    });
  }
}

/** The word `trial`. */
function headOf({ uri, start }: Place): Place {
  return { uri, start, end: start + 'trial'.length };
}

function several(layers: readonly PartLayers[], { role }: PartLayers): boolean {
  return layers.filter(one => one.role === role).length > 1;
}

function lineEnd(reading: LineReading): number[] {
  return reading.host.block ? [reading.host.block.end - 1] : [];
}

function spanOf({ start, end }: Pick<Place, 'start' | 'end'>) {
  return { start, end };
}

/** A name that two files give to different things: the one that is imported first would count, and nobody would see it. */
export function tellSecond(
  tell: Tell,
  what: string,
  first: EntryReading,
  second: EntryReading | undefined,
  place: { readonly start: number; readonly end: number },
): void {
  if (!second || meaningOf(first.facts.fields) === meaningOf(second.facts.fields)) return;
  const file = (entry: EntryReading) => entry.host.uri.split('/').slice(-2).join('/');
  tell({
    code: 'text/twice',
    start: place.start,
    end: place.end,
    severity: 'error',
    message: `There are two of ${what}, in ${file(first)} and in ${file(second)}, and they differ: the first counts. Import the one that is meant, or give each its own name.`,
  });
}
