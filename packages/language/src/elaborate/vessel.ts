import type {
  Acceptance,
  Arrangement,
  Certificate,
  Criteria,
  Duty,
  Fact,
  Helm,
  Hull,
  PracticeFacts,
  Project,
  Reason,
  ShaftLine,
  Signatures,
  Study,
  Trial,
  UnitConcern,
  Vessel,
} from '@tailshaft/drivetrain';
import type { Value } from '@tailshaft/mechanics';
import { CRITERIA, type SettingsKind, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import { notingAbsence } from '../reading/absent.js';
import type { ArrangementReading } from '../reading/arrangement.js';
import type { BlockReading } from '../reading/block.js';
import { nearest } from '../reading/misspelt.js';
import type { VesselReading } from '../reading/vessel.js';
import { type Tell, tellLines, tellTrials } from './ask.js';
import { catalogueEntry, type EntryTable } from './catalogue.js';
import { makeLine, planLine } from './line.js';
import type { LinePlan } from './plan.js';
import { makeAssumption, makeRequirement, tellTwice } from './sentence.js';

/** A vessel resolved: catalogue facts in place, revised and mirrored lines filled in. Problems go to `tell`. */
export function makeVessel(
  reading: VesselReading,
  table: EntryTable,
  tell: Tell,
  reuse: Reuse = new Map(),
): Vessel {
  tellTrials(tell, reading);
  const blocks = blocksOf(reading);
  const assumptions = reading.assumptions.map(one => makeAssumption(one, tell));
  tellTwice(assumptions, tell);
  const ofRequirements: UnitConcern[] = [];
  return {
    name: reading.name,
    ...(reading.title ? { title: reading.title } : {}),
    ...(reading.doc ? { doc: reading.doc } : {}),
    origin: reading.whole,
    nameOrigin: reading.namePlace,
    ...settings<Duty>(reading, 'duty'),
    ...settings<Hull>(reading, 'hull'),
    ...criteriaOf(reading, table, tell),
    ...settings<Certificate>(reading, 'certificate'),
    ...settings<Helm>(reading, 'helm'),
    ...settings<Project>(reading, 'project'),
    arrangements: makeArrangements(reading, table, tell, reuse),
    requirements: reading.requirements.map(one => makeRequirement(one, tell, it => ofRequirements.push(it))),
    assumptions,
    acceptances: reading.acceptances.map(
      (one): Acceptance => ({
        origin: one.place,
        rule: one.rule,
        on: one.clauses.on ?? reading.name,
        ...(one.clauses.on === undefined ? { placed: false } : {}),
        ...only(one.clauses, 'because', 'by', 'dated', 'until'),
        ...(one.open.length > 0 ? { open: one.open } : {}),
      }),
    ),
    ...(reading.trials.length > 0
      ? {
          trials: reading.trials.map(({ name, of, dated, facts }) => ({
            ...(facts.fields as unknown as Trial),
            name,
            ...(of ? { of: of.name } : {}),
            ...(dated ? { dated } : {}),
            origin: facts.host,
          })),
        }
      : {}),
    ...(reading.studies.length > 0
      ? {
          studies: reading.studies.map(({ name, of, facts }) => ({
            ...(facts.fields as unknown as Study),
            name,
            ...(of ? { studied: of.name } : {}),
            origin: facts.host,
          })),
        }
      : {}),
    revisions: reading.revisions.map(({ facts, place, ...one }) => ({
      ...(facts.fields as unknown as Signatures),
      ...one,
      origin: place,
    })),
    unitConcerns: [...blocks.flatMap((block): readonly UnitConcern[] => block.concerns), ...ofRequirements],
    quantities: blocks.flatMap(one => onceOf(QUANTITIES, one, quantitiesOf)),
    openQuestions: blocks.flatMap(one => onceOf(OPEN_QUESTIONS, one, openQuestionsOf)),
  };
}

/** Arrangements that were made already, by their readings. */
export type Reuse = Map<ArrangementReading, Made>;

interface Made {
  readonly arrangement: Arrangement;
  readonly plans: ReadonlyMap<string, LinePlan>;
  /** The arrangement that the revisions begin with. */
  readonly found: Arrangement | undefined;
}

function makeArrangements(reading: VesselReading, table: EntryTable, tell: Tell, made: Reuse): Arrangement[] {
  const byName = new Map<string, ArrangementReading>();
  for (const one of reading.arrangements) {
    if (!byName.has(one.name)) byName.set(one.name, one);
    else if (one.name !== '')
      tell({
        code: 'text/twice',
        start: one.namePlace.start,
        end: one.namePlace.end,
        severity: 'error',
        message: `Two arrangements of this vessel are called ${one.name}: give each its own name. A reference to that name means the first.`,
      });
  }
  const underway = new Set<ArrangementReading>();

  const make = (one: ArrangementReading): Made => {
    const had = made.get(one);
    if (had) return had;
    underway.add(one);
    const earlier = reading.arrangements.slice(0, reading.arrangements.indexOf(one));
    const base =
      one.revises && baseOf(one.revises, byName, earlier, underway, tell, `arrangement ${one.name}`);
    const before = base && make(base);
    const found = before?.found ?? before?.arrangement;
    const plans = new Map<string, LinePlan>();
    const lines: ShaftLine[] = [];
    for (const { line, of } of inMirrorOrder(one, tell)) {
      const mirrored = of === undefined ? undefined : plans.get(of);
      const plan = planLine(line, one.name, table, before?.plans.get(line.name), mirrored, tell);
      if (!plans.has(line.name)) plans.set(line.name, plan);
    }
    for (const line of one.lines) {
      const plan = plans.get(line.name);
      if (plan && plan.reading === line)
        lines.push(
          makeLine(
            plan,
            table,
            found?.lines.find(old => old.name === line.name),
          ),
        );
      else if (plan)
        tell({
          code: 'text/twice',
          start: line.namePlace.start,
          end: line.namePlace.end,
          severity: 'error',
          message: `Two shaft lines of this arrangement are called ${line.name}: give each its own name.`,
        });
    }
    tellLines(tell, one, [...(before?.plans.values() ?? [])]);
    const arrangement: Arrangement = {
      name: one.name,
      ...(one.title ? { title: one.title } : {}),
      path: one.name,
      origin: one.whole,
      nameOrigin: one.namePlace,
      ...(one.revises ? { revises: base?.name ?? one.revises.name } : {}),
      ...(found ? { before: found } : {}),
      lines,
      reasons: one.reasons.map(reason => ({
        about: reason.about as Reason['about'],
        text: reason.text,
        origin: reason.place,
      })),
    };
    underway.delete(one);
    const result: Made = { arrangement, plans, found };
    made.set(one, result);
    return result;
  };
  return reading.arrangements.map(one => make(one).arrangement);
}

/**
 * Lines in such an order that a mirrored one comes before its mirror, with the name of that one. Where the name is not
 * there, or is no line, the nearest one is taken: one mistake is told of, and not what would follow if there were none.
 */
function inMirrorOrder(one: ArrangementReading, tell: Tell) {
  const plain = one.lines.filter(line => !line.mirrors);
  const mirrors = one.lines.filter(line => line.mirrors);
  for (const line of mirrors) {
    const name = line.mirrors!.name;
    if (name === '' || plain.some(other => other.name === name)) continue;
    const meant = nearest(
      name,
      plain.map(other => other.name),
    );
    tell({
      code: 'text/unknown-name',
      start: line.mirrors!.place.start,
      end: line.mirrors!.place.end,
      severity: 'error',
      message: `${line.name} mirrors ${name}, but ${name === line.name ? 'a line cannot mirror itself' : one.lines.some(other => other.name === name) ? 'that one is a mirror too' : 'no shaft line of this arrangement has that name'}.`,
      ...(meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
    });
  }
  const named = plain.map(other => other.name);
  const of = ({ name }: { name: string }) =>
    named.includes(name) ? name : (nearest(name, named) ?? (named.length === 1 ? named[0] : undefined));
  return [
    ...plain.map(line => ({ line, of: undefined })),
    ...mirrors.map(line => ({ line, of: line.mirrors && of(line.mirrors) })),
  ];
}

function baseOf(
  revises: { name: string; place: { start: number; end: number } },
  byName: ReadonlyMap<string, ArrangementReading>,
  earlier: readonly ArrangementReading[],
  underway: ReadonlySet<ArrangementReading>,
  tell: Tell,
  who: string,
): ArrangementReading | undefined {
  const base = byName.get(revises.name);
  if (base && !underway.has(base)) return base;
  const meant = nearest(revises.name, byName.keys());
  // What is told here is one mistake; read as if nothing were revised, it would look like many.
  const guess = base ? undefined : ((meant ? byName.get(meant) : undefined) ?? earlier.at(-1));
  const likely = guess && !underway.has(guess) ? guess : undefined;
  if (revises.name === '') return likely;
  tell({
    code: base ? 'text/cycle' : 'text/unknown-name',
    start: revises.place.start,
    end: revises.place.end,
    severity: 'error',
    message: base
      ? `${who} revises itself, by way of ${revises.name}: one of them must be the starting point.`
      : `${who} revises ${revises.name}, but this vessel has no arrangement of that name.`,
    ...(!base && meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
  });
  return likely;
}

/**
 * The criteria of the vessel, and those of its practice where it chooses none: one that the vessel leaves open is not
 * chosen, and takes nothing away from what the practice asks.
 */
function criteriaOf(
  reading: VesselReading,
  table: EntryTable,
  tell: Tell,
): Pick<Vessel, 'criteria' | 'leftOpen' | 'practice'> {
  const [entry, second] = table.entries('practice');
  const own = settings<Criteria>(reading, 'criteria').criteria;
  if (!entry) return own ? { criteria: own } : {};
  if (second)
    tell({
      code: 'text/twice',
      start: reading.namePlace.start,
      end: reading.namePlace.end,
      severity: 'error',
      message: `Vessel ${reading.name} imports two practices, ${entry.name} and ${second.name}; the first applies. Import only the one that applies.`,
    });
  const practice = catalogueEntry<PracticeFacts>(entry);
  const said = (one: unknown) => one !== undefined && (!Array.isArray(one) || one.length > 0);
  const chosen = Object.entries(own ?? {}).filter(([, one]) => said(one));
  const theirs = CRITERIA.rows
    .map(row => [row.field, practice.facts[row.field]] as const)
    .filter(([, one]) => said(one));
  if (theirs.length + chosen.length === 0) return { practice };
  const set = new Set<string>(theirs.map(([field]) => field));
  const isOpen = ([field, one]: readonly [string, unknown]) =>
    set.has(field) && [one].flat().every(fact => (fact as Fact<unknown>).value === undefined);
  const leftOpen = chosen.filter(isOpen);
  const settled = chosen.filter(one => !isOpen(one));
  const criteria = { origin: practice.origin, ...Object.fromEntries([...theirs, ...settled]) };
  return {
    criteria: criteria as Criteria,
    ...(leftOpen.length > 0 ? { leftOpen: Object.fromEntries(leftOpen) as Partial<Criteria> } : {}),
    practice,
  };
}

function settings<T>(reading: VesselReading, kind: SettingsKind): Partial<Record<string, T>> {
  const block = reading.settings[kind];
  if (!block) return {};
  const fields = { ...block.fields, origin: block.host };
  // A criterion that is not chosen has its default: only facts of the vessel are missed.
  const told = kind === 'criteria' ? fields : notingAbsence(fields, VESSEL_VOCABULARY[kind]!);
  return { [kind]: told as T };
}

/** All fact blocks of the vessel's own text. */
export function blocksOf(reading: VesselReading): BlockReading[] {
  const top = [
    ...Object.values(reading.settings),
    ...reading.arrangements.flatMap(arrangement =>
      arrangement.lines.flatMap(line => [
        line.facts,
        ...line.parts.map(part => part.facts),
        ...line.modes.map(mode => mode.facts),
      ]),
    ),
  ];
  return top;
}

/** A block and all blocks inside it. */
export function* withNested(block: BlockReading): Generator<BlockReading> {
  yield block;
  for (const nested of block.nested) if (nested.host.reading) yield* withNested(nested.host.reading);
}

/** Every quantity that a block and the blocks inside it state, both ends of ranges and both numbers of points. */
export function quantitiesOf(block: BlockReading): Vessel['quantities'] {
  return [...withNested(block)].flatMap(one =>
    one.facts.flatMap(({ row, fact }) =>
      fact ? numbersIn(fact.value).map(value => ({ property: row.words, value, origin: fact.origin })) : [],
    ),
  );
}

const QUANTITIES = new WeakMap<BlockReading, Vessel['quantities']>();
const OPEN_QUESTIONS = new WeakMap<BlockReading, Vessel['openQuestions']>();

/** A block is gone through once, however many vessels are made of it. */
function onceOf<T>(kept: WeakMap<BlockReading, T>, block: BlockReading, find: (block: BlockReading) => T): T {
  const had = kept.get(block);
  if (had) return had;
  const found = find(block);
  kept.set(block, found);
  return found;
}

function numbersIn(value: unknown): Value[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('si' in value) return [value as Value];
  return Object.values(value).flatMap(one =>
    typeof one === 'object' && one !== null && 'si' in one ? [one as Value] : [],
  );
}

function openQuestionsOf(block: BlockReading): Vessel['openQuestions'] {
  return [...withNested(block)].flatMap(one =>
    one.facts.flatMap(found =>
      found.fact && (found.fact.value === undefined || found.fact.open)
        ? [
            {
              what: `${[...(found.fact.open ?? []), found.row.words].join(' of ')} of ${one.host.vocabulary.title}`,
              origin: found.fact.origin,
            },
          ]
        : [],
    ),
  );
}

function only(clauses: Readonly<Record<string, string>>, ...names: string[]): Record<string, string> {
  return Object.fromEntries(
    names.flatMap(name => (clauses[name] === undefined ? [] : [[name, clauses[name]]])),
  );
}
