import {
  type AcceptancePolicy,
  type Choice,
  gearsThatTurn,
  LineAnalysis,
  RULES,
  rankingProblem,
  type StudyCase,
  type Vessel,
} from '@tailshaft/drivetrain';
import { HEADER_ROWS } from '@tailshaft/vocabulary';
import type { SpelledEdit } from '../edit/index.js';
import type { Tell } from '../elaborate/ask.js';
import type { EntryTable } from '../elaborate/catalogue.js';
import { makeVessel, type Reuse } from '../elaborate/vessel.js';
import type { ArrangementReading } from '../reading/arrangement.js';
import { nearest } from '../reading/misspelt.js';
import { readOption } from '../reading/option.js';
import { placeOf } from '../reading/place.js';
import type { StudyReading, VesselReading } from '../reading/vessel.js';
import { dimensionsOf, type Option, type ReadDimension, type Writing } from './dimension.js';
import { placesOf } from './places.js';
import { readingWith } from './substitute.js';

/** A study that can be searched, and whose candidates can be written into the text. */
export interface ReadyStudy extends StudyCase {
  /** The edits that write a candidate into its arrangement. */
  readonly editsFor: (choice: Choice) => readonly SpelledEdit[];
}

/** More candidates than a study is searched for. */
const MOST_CANDIDATES = 1_000_000;

/** What cannot be studied as it is written. */
export function tellStudies(tell: Tell, reading: VesselReading, table: EntryTable): void {
  for (const [at, study] of reading.studies.entries()) {
    const twice = study.name !== '' && reading.studies.slice(0, at).some(one => one.name === study.name);
    if (twice)
      tell({
        code: 'text/twice',
        ...spanOf(study.namePlace),
        severity: 'error',
        message: `Two studies of this vessel are called ${study.name}: give each its own name.`,
      });
    tellAsked(tell, study);
    const arrangement = studiedBy(study, reading, tell);
    if (!arrangement) continue;
    const dimensions = dimensionsOf(study, { vessel: reading, arrangement, table, tell });
    tellSize(tell, study, dimensions);
  }
}

/** Makes a study ready; undefined where it cannot be searched, for which its problems give the reason. */
export function readyStudy(
  reading: VesselReading,
  study: StudyReading,
  model: Vessel,
  table: EntryTable,
  judged: { readonly today: string; readonly policy?: AcceptancePolicy },
): ReadyStudy | undefined {
  // What cannot be read would be left out of the search unsaid.
  let wrong = study.facts.problems.length + study.facts.concerns.length + study.facts.unread.length > 0;
  const tell: Tell = () => {
    wrong = true;
  };
  const arrangement = studiedBy(study, reading, tell);
  if (!arrangement) return undefined;
  const read = dimensionsOf(study, { vessel: reading, arrangement, table, tell });
  tellSize(tell, study, read);
  tellAsked(tell, study);
  const studied = model.studies?.find(one => one.origin === study.facts.host);
  if (wrong || !studied || read.length === 0) return undefined;
  const clutches = clutchesBy(read, reading, arrangement, model, table);
  const dimensions = read.map(({ words, choices }) => ({ words, options: choices.map(one => one.text) }));
  const writingsOf = (choice: Choice): Writing[] =>
    read.flatMap(({ choices }, at) => {
      const option = choices[choice[at]!]!;
      return [...option.writings, ...(clutches.get(option) ?? [])];
    });
  const reuse: Reuse = new Map();
  const standing = makeVessel({ ...reading, studies: [] }, table, () => {}, reuse);
  forget(reuse, reading, arrangement);
  return {
    study: studied,
    arrangement: arrangement.name,
    dimensions,
    catalogue: table.catalogue,
    ...judged,
    vesselWith: choice => ({
      ...makeVessel(
        readingWith({ ...reading, requirements: [] }, arrangement, writingsOf(choice)),
        table,
        () => {},
        new Map(reuse),
      ),
      // No option is written into them.
      requirements: standing.requirements,
      unitConcerns: standing.unitConcerns,
    }),
    editsFor: choice => writingsOf(choice).map(editOf),
  };
}

function studiedBy(study: StudyReading, reading: VesselReading, tell: Tell): ArrangementReading | undefined {
  const names = reading.arrangements.map(one => one.name).filter(Boolean);
  const wanted = study.of?.name ?? (names.length === 1 ? names[0] : undefined);
  const found = reading.arrangements.find(one => one.name === wanted);
  if (!found) {
    tell({
      code: study.of ? 'text/unknown-name' : 'text/value-missing',
      ...spanOf(study.of?.place ?? study.namePlace),
      severity: 'error',
      message: study.of
        ? `This vessel has no arrangement ${study.of.name}, so nothing is studied.`
        : `State which arrangement is studied: study ${study.name || 'wheel'} of ${names.at(-1) ?? 'proposed'}.`,
      choices: study.of ? names.map(one => ({ title: `Write ${one}`, text: one })) : [],
    });
    return undefined;
  }
  const revises = found.revises !== undefined;
  const isRevised = reading.arrangements.some(one => one.revises?.name === found.name);
  if (revises || !isRevised) return found;
  tell({
    code: 'text/value',
    ...spanOf(study.of?.place ?? study.namePlace),
    severity: 'error',
    message: `${found.name} is the vessel as found, which is not a choice. Study the arrangement that revises it.`,
  });
  return undefined;
}

/** Checks and quantities that there are none of. */
function tellAsked(tell: Tell, { facts }: StudyReading): void {
  for (const found of facts.facts) {
    const value = found.fact?.value;
    if (!found.fact || value === undefined) continue;
    const at = spanOf(placeOf(found.fact.origin));
    if (found.row.field === 'rank') {
      const why = rankingProblem(value as Parameters<typeof rankingProblem>[0]);
      if (why) tell({ code: 'text/value', ...at, severity: 'error', message: why });
    }
    if (found.row.field !== 'hold' || value === 'every check') continue;
    const ids = RULES.map(one => one.id);
    if (ids.includes(value as string)) continue;
    const meant = nearest(value as string, ids);
    tell({
      code: 'text/unknown-name',
      ...at,
      severity: 'error',
      message: `No check is called ${value}.${meant ? ` Did you mean ${meant}?` : ''}`,
      ...(meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
    });
  }
}

function tellSize(tell: Tell, study: StudyReading, read: readonly ReadDimension[]): void {
  const count = read.reduce((product, { many }) => product * many, 1);
  if (count <= MOST_CANDIDATES) return;
  tell({
    code: 'text/value',
    ...spanOf(study.namePlace),
    severity: 'error',
    message: `This study has ${count.toLocaleString('en')} candidates, and ${MOST_CANDIDATES.toLocaleString('en')} is the most that is searched: use wider steps, or vary fewer properties.`,
  });
}

/**
 * The ahead clutch of each line for each gear and ratio: the one that turns the shaft as it turns now and may run ahead
 * continuously. Where a gear has none, the clutch is left as it is, and the checks say what follows. None where the study
 * varies the clutch itself.
 */
function clutchesBy(
  read: readonly ReadDimension[],
  vessel: VesselReading,
  arrangement: ArrangementReading,
  model: Vessel,
  table: EntryTable,
): ReadonlyMap<Option, readonly Writing[]> {
  const found = new Map<Option, readonly Writing[]>();
  if (read.some(one => one.words === `gear ${HEADER_ROWS.ahead.words}`)) return found;
  const lines = model.arrangements.find(one => one.name === arrangement.name)?.lines ?? [];
  const places = placesOfClutch(vessel, arrangement);
  for (const option of read.flatMap(one => one.choices)) {
    const { gear } = option;
    const entry = gear && table.catalogue.gears.find(one => one.name === gear.name);
    if (!entry) continue;
    const writings = lines.flatMap(line => {
      const place = places.find(one => one.at !== 'hull' && one.line.name === line.name);
      const turns = new LineAnalysis(line, model).rotation.ahead;
      const clutch =
        turns &&
        gearsThatTurn(line, turns, [entry]).find(one => one.variant.nominalFact.written === gear!.ratio)
          ?.clutch;
      if (!place || !clutch) return [];
      const at = place.facts.facts.find(one => one.row === HEADER_ROWS.ahead)?.value ?? place.facts.host;
      const { found } = readOption(HEADER_ROWS.ahead, clutch.name, place.facts.host, at);
      return [{ place, found, text: clutch.name }];
    });
    found.set(option, writings);
  }
  return found;
}

function placesOfClutch(vessel: VesselReading, arrangement: ArrangementReading) {
  return placesOf(vessel, arrangement, 'gear', HEADER_ROWS.ahead.words);
}

/** What is varied, and what revises it, is made anew for each candidate. */
function forget(reuse: Reuse, reading: VesselReading, arrangement: ArrangementReading): void {
  const gone = new Set([arrangement]);
  for (let before = 0; before !== gone.size; ) {
    before = gone.size;
    for (const one of reading.arrangements)
      if ([...gone].some(other => other.name === one.revises?.name)) gone.add(one);
  }
  for (const one of gone) reuse.delete(one);
}

function editOf(writing: Writing): SpelledEdit {
  if ('name' in writing) return { do: 'replace', at: writing.place.part.namePlace!, text: writing.name };
  const { place, found, text } = writing;
  return { do: 'set', host: place.facts.host, property: found.row.words, text };
}

function spanOf({ start, end }: { readonly start: number; readonly end: number }) {
  return { start, end };
}
