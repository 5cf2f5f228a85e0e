import type { Origin } from '@tailshaft/mechanics';
import { VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { Assumption, Requirement, Vessel } from '../model/vessel.js';
import { acceptanceChanges } from './acceptances.js';
import type { SilentChange, StatementChange } from './change.js';
import { type FlatFact, flatFacts } from './facts.js';
import { practiceChanges } from './practices.js';
import { studyFacts } from './study-facts.js';
import { certificateTendency, criterionTendency, dutyTendency } from './tendency.js';
import { trialFacts } from './trial-facts.js';

/** What the vessel's text says beside its lines: duty, criteria, requirements, acceptances, assumptions, trials, reasons. */
export function statementChanges(before: Vessel, after: Vessel): StatementChange[] {
  return [
    ...requirementChanges(before.requirements, after.requirements, after.name),
    ...settingChanges('criterion', before.criteria, after.criteria, after.name),
    ...practiceChanges(before, after),
    ...settingChanges('duty', before.duty, after.duty, after.name),
    ...settingChanges('hull', before.hull, after.hull, after.name),
    ...settingChanges('certificate', before.certificate, after.certificate, after.name),
    ...settingChanges('helm', before.helm, after.helm, after.name),
    ...settingChanges('project', before.project, after.project, after.name),
    ...keyedChanges('assumption', before.assumptions, after.assumptions, ASSUMPTION, after.name),
    ...acceptanceChanges(before.acceptances, after.acceptances, after.name),
    ...keyedChanges('arrangement', reasonsOf(before), reasonsOf(after), REASON, after.name),
    ...factsMoved('trial', trialFacts(before), trialFacts(after), after.name),
    ...factsMoved('study', studyFacts(before), studyFacts(after), after.name),
    ...keyedChanges('revision', before.revisions, after.revisions, REVISION, after.name),
  ];
}

/** A requirement or criterion that asks for less than before is easily taken for a design that does better. */
export function relaxed(changes: readonly StatementChange[]): SilentChange[] {
  return changes
    .filter(one => one.tendency === 'relaxed' && one.about !== 'acceptance')
    .map(one => ({
      kind: 'silent',
      what: 'requirement relaxed',
      subject: one.subject,
      weight: 23,
      words: `what is asked for was relaxed: ${one.words}`,
      ...(one.placeBefore ? { placeBefore: one.placeBefore } : {}),
      ...(one.placeAfter ? { placeAfter: one.placeAfter } : {}),
    }));
}

interface Keyed<T> {
  readonly key: (one: T) => string;
  readonly words: (one: T) => string;
  readonly origin: (one: T) => Origin;
  readonly weight: number;
}

const ASSUMPTION: Keyed<Assumption> = {
  key: one => one.about,
  words: one => `${one.about} ${one.quantity?.written ?? ''} because "${one.because ?? ''}"`,
  origin: one => one.origin,
  weight: 44,
};
const REASON: Keyed<{ key: string; text: string; origin: Origin }> = {
  key: one => one.key,
  words: one => `${one.key}: "${one.text}"`,
  origin: one => one.origin,
  weight: 71,
};
const REVISION: Keyed<Vessel['revisions'][number]> = {
  key: one => one.name,
  words: one =>
    [one.name, one.dated, one.text && `"${one.text}"`, ...signatureWords(one)].filter(Boolean).join(' '),
  origin: one => one.origin,
  weight: 85,
};

/** `prepared by "A" as "naval architect"`, in the order of the record. */
export function signatureWords(revision: Vessel['revisions'][number]): string[] {
  return (['prepared', 'checked', 'approved'] as const).flatMap(what =>
    (revision[what] ?? []).map(({ name, role, dated }) =>
      [`${what} by "${name}"`, role?.value && `as "${role.value}"`, dated?.value].filter(Boolean).join(' '),
    ),
  );
}

function reasonsOf(vessel: Vessel) {
  return vessel.arrangements.flatMap(arrangement =>
    arrangement.reasons.map(reason => ({
      key: `reason for ${reason.about} in ${arrangement.name}`,
      text: reason.text,
      origin: reason.origin,
    })),
  );
}

function keyedChanges<T>(
  about: StatementChange['about'],
  before: readonly T[],
  after: readonly T[],
  keyed: Keyed<T>,
  subject: string,
): StatementChange[] {
  const [old, now] = [mapped(before, keyed.key), mapped(after, keyed.key)];
  const changes: StatementChange[] = [];
  for (const key of new Set([...old.keys(), ...now.keys()])) {
    const [was, is] = [old.get(key), now.get(key)];
    const [from, to] = [was && keyed.words(was), is && keyed.words(is)];
    if (from === to) continue;
    changes.push(
      statement(about, subject, from, to, keyed.weight, was && keyed.origin(was), is && keyed.origin(is)),
    );
  }
  return changes;
}

/** Things by key; a second one of the same key gets a number, so that none is lost. */
function mapped<T>(list: readonly T[], keyOf: (one: T) => string): Map<string, T> {
  const map = new Map<string, T>();
  for (const one of list) {
    const key = keyOf(one);
    let free = key;
    for (let number = 2; map.has(free); number++) free = `${key} (${number})`;
    map.set(free, one);
  }
  return map;
}

/**
 * A requirement is the same one when it is about the same thing under the same condition. Of several of those the ones
 * that ask for the same belong together, so that one that is written beside another is told as added.
 */
function requirementChanges(
  before: readonly Requirement[],
  after: readonly Requirement[],
  subject: string,
): StatementChange[] {
  const about = (one: Requirement) =>
    [one.about, one.bound === 'is' ? '' : one.bound, one.condition, one.mode].filter(Boolean).join(' ');
  const asked = (one: Requirement) => one.word ?? one.quantity?.value?.si ?? 'unknown';
  const words = (one: Requirement) => `${one.written}${one.note ? ` "${one.note}"` : ''}`;
  const whole = (one: Requirement) => `${about(one)} ${asked(one)} ${one.note ?? ''}`;
  const tell = (was: Requirement | undefined, is: Requirement | undefined): StatementChange => {
    const [from, to] = [was && words(was), is && words(is)];
    const made = statement('requirement', subject, from, to, 39, was?.origin, is?.origin);
    const tendency = requirementTendency(was, is);
    return tendency ? { ...made, tendency } : made;
  };
  const changes: StatementChange[] = [];
  let [old, now] = [[...before], [...after]];
  for (const likeness of [whole, (one: Requirement) => `${about(one)} ${asked(one)}`, about]) {
    old = old.filter(was => {
      const at = now.findIndex(is => likeness(is) === likeness(was));
      if (at < 0) return true;
      const [is] = now.splice(at, 1);
      if (likeness !== whole) changes.push(tell(was, is));
      return false;
    });
  }
  return [...changes, ...old.map(one => tell(one, undefined)), ...now.map(one => tell(undefined, one))];
}

function requirementTendency(
  was: Requirement | undefined,
  is: Requirement | undefined,
): StatementChange['tendency'] {
  if (!is) return 'relaxed';
  if (!was) return 'tightened';
  const [old, now] = [was.quantity?.value?.si, is.quantity?.value?.si];
  if (old === now && was.word === is.word) return undefined;
  // Which of two words, or of a word and an open question, asks for less cannot be said.
  if (old === undefined || now === undefined || is.bound === 'is') return 'chosen otherwise';
  return now > old === (is.bound === 'at least') ? 'tightened' : 'relaxed';
}

function settingChanges(
  about: 'criterion' | 'duty' | 'hull' | 'certificate' | 'helm' | 'project',
  before: object | undefined,
  after: object | undefined,
  subject: string,
): StatementChange[] {
  const vocabulary = VESSEL_VOCABULARY[about === 'criterion' ? 'criteria' : about];
  return factsMoved(about, flatFacts(before ?? {}, vocabulary), flatFacts(after ?? {}, vocabulary), subject);
}

function factsMoved(
  about: 'criterion' | 'duty' | 'hull' | 'certificate' | 'helm' | 'project' | 'trial' | 'study',
  old: ReadonlyMap<string, FlatFact>,
  now: ReadonlyMap<string, FlatFact>,
  subject: string,
): StatementChange[] {
  const changes: StatementChange[] = [];
  for (const what of new Set([...old.keys(), ...now.keys()])) {
    const [was, is] = [old.get(what), now.get(what)];
    if (was?.meaning === is?.meaning) continue;
    const words = (fact: FlatFact | undefined) => fact && `${what} ${fact.written}`;
    const weight = about === 'criterion' ? 38 : about === 'project' || about === 'study' ? 86 : 44;
    const made = statement(about, subject, words(was), words(is), weight, was?.origin, is?.origin);
    const tendency = TENDENCIES[about]?.(was, is);
    changes.push(tendency ? { ...made, tendency } : made);
  }
  return changes;
}

const TENDENCIES: Readonly<
  Partial<Record<StatementChange['about'], (was?: FlatFact, is?: FlatFact) => StatementChange['tendency']>>
> = { criterion: criterionTendency, certificate: certificateTendency, duty: dutyTendency };

function statement(
  about: StatementChange['about'],
  subject: string,
  before: string | undefined,
  after: string | undefined,
  weight: number,
  placeBefore: Origin | undefined,
  placeAfter: Origin | undefined,
): StatementChange {
  const words =
    before === undefined
      ? `${about} added: ${after}`
      : after === undefined
        ? `${about} taken out: ${before}`
        : `${about}: ${before} → ${after}`;
  return {
    kind: 'statement',
    about,
    subject,
    before,
    after,
    weight,
    words,
    ...(placeBefore ? { placeBefore } : {}),
    ...(placeAfter ? { placeAfter } : {}),
  };
}
