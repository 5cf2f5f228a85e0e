import { listed } from '@tailshaft/mechanics';
import {
  anyWord,
  DUTY_STEPS,
  HULL_FORMS,
  type Row,
  type SettingsKind,
  type Spelling,
  statement,
  statementsOf,
  UNKNOWN,
  VESSEL_VOCABULARY,
} from '@tailshaft/vocabulary';
import * as ast from '../generated/ast.js';
import { type AcceptanceReading, checkAcceptance, readAcceptance } from './acceptance.js';
import { type ArrangementReading, readArrangement } from './arrangement.js';
import { atomsOf, evidenceOf, tokOf } from './atoms.js';
import { type BlockReading, keep, readFacts, startReading } from './block.js';
import { dateIn, wordsIn } from './clause.js';
import {
  docBefore,
  makeHost,
  placeOfNode,
  problem,
  propertyPlace,
  type ReadContext,
  stray,
} from './context.js';
import { readEvidence } from './evidence.js';
import { unquoted } from './forms/words.js';
import { misplaced } from './misplaced.js';
import { nearest } from './misspelt.js';
import type { Place } from './place.js';
import type { Problem } from './problem.js';
import { type AtomTok, isTok, type Tok } from './token.js';

/** A sentence of a vessel that later stages take apart: `require ...`, `assume ...`. */
export interface SentenceReading {
  readonly place: Place;
  readonly tokens: readonly AtomTok[];
  readonly because?: string;
  /** A reason stands there, or that it is unknown. */
  readonly reasoned?: boolean;
}

export interface VesselReading {
  readonly name: string;
  readonly title?: string;
  readonly doc?: string;
  readonly namePlace: Place;
  readonly whole: Place;
  /** Readings of `duty`, `hull`, `criteria`, `certificate`, `project` by that word. */
  readonly settings: Readonly<Record<string, BlockReading>>;
  readonly arrangements: readonly ArrangementReading[];
  readonly requirements: readonly SentenceReading[];
  readonly assumptions: readonly SentenceReading[];
  readonly acceptances: readonly AcceptanceReading[];
  /** Trial sheets; their blocks stand among the settings too, as `trial 1`. */
  readonly trials: readonly {
    readonly place: Place;
    readonly name: string;
    /** The arrangement that was tried. */
    readonly of?: { readonly name: string; readonly place: Place };
    readonly dated?: string;
    readonly facts: BlockReading;
  }[];
  /** Studies; their blocks stand among the settings too, as `study 1`. */
  readonly studies: readonly StudyReading[];
  readonly revisions: readonly {
    readonly place: Place;
    readonly name: string;
    readonly dated?: string;
    readonly text?: string;
    /** Who prepared, checked and approved it; its block stands among the settings too, as `revision 1`. */
    readonly facts: BlockReading;
  }[];
}

/** A study as it is written. */
export interface StudyReading {
  readonly place: Place;
  readonly name: string;
  readonly namePlace: Place;
  readonly title?: string;
  /** The arrangement whose parts are varied. */
  readonly of?: { readonly name: string; readonly place: Place };
  readonly facts: BlockReading;
}

const MEMBERS = statementsOf('vessel');
const REVISES: readonly Spelling[] = ['revises'];

/** Reads a vessel; one without a name is still read, so that its findings stay. */
export function readVessel(context: ReadContext, node: ast.Vessel): VesselReading | undefined {
  const namePlace =
    node.name === undefined ? placeOfNode(context, node) : propertyPlace(context, node, 'name');
  if (node.name === undefined)
    problem(
      context,
      node.$cstNode,
      'text/name-missing',
      'A vessel needs a name: vessel Name { ... }.',
      'vessel'.length,
    );
  const settings: Record<string, BlockReading> = {};
  const arrangements: ArrangementReading[] = [];
  const requirements: SentenceReading[] = [];
  const assumptions: SentenceReading[] = [];
  const acceptances: AcceptanceReading[] = [];
  const trials: VesselReading['trials'][number][] = [];
  const studies: StudyReading[] = [];
  const revisions: VesselReading['revisions'][number][] = [];
  for (const member of node.members) {
    if (ast.isSettings(member)) readSettings(context, member, settings);
    else if (ast.isArrangement(member)) arrangements.push(readArrangement(context, member));
    else if (ast.isRequirement(member)) requirements.push(sentence(context, member));
    else if (ast.isAssumption(member)) {
      assumptions.push({
        ...sentence(context, member),
        ...defined('because', wordsIn(context, member, 'because', member.because)),
        reasoned: member.because !== undefined,
      });
    } else if (ast.isAcceptance(member)) acceptances.push(readAcceptance(context, member));
    else if (ast.isRevision(member)) {
      const facts = readBlock(context, 'revision', member);
      revisions.push({
        facts,
        place: placeOfNode(context, member),
        name: member.name ?? '',
        ...defined('dated', dateIn(context, member, 'dated', member.dated)),
        ...(member.text ? { text: unquoted(member.text) } : {}),
      });
      settings[`revision ${revisions.length}`] = facts;
    } else if (ast.isTrial(member)) {
      const facts = readBlock(context, 'trial', member);
      trials.push({
        place: placeOfNode(context, member),
        name: member.name === undefined ? '' : unquoted(member.name),
        ...(member.of === undefined || member.of === UNKNOWN
          ? {}
          : { of: { name: member.of, place: propertyPlace(context, member, 'of') } }),
        ...defined('dated', dateIn(context, member, 'dated', member.dated)),
        facts,
      });
      settings[`trial ${trials.length}`] = facts;
    } else if (ast.isStudy(member)) {
      const study = readStudy(context, member);
      studies.push(study);
      settings[`study ${studies.length}`] = study.facts;
    } else if (ast.isMisplaced(member)) misplaced(context, member, 'a vessel');
    else if (ast.isStray(member)) stray(context, member, MEMBERS, 'a vessel', REVISES);
  }
  for (const one of acceptances) checkAcceptance(context, one, node.name ?? '', arrangements);
  const doc = docBefore(context, node);
  return {
    name: node.name ?? '',
    ...(node.title ? { title: unquoted(node.title) } : {}),
    ...(doc ? { doc } : {}),
    namePlace,
    whole: placeOfNode(context, node),
    settings,
    arrangements,
    requirements,
    assumptions,
    acceptances,
    trials,
    studies,
    revisions,
  };
}

/** The word behind `duty` and `hull`, as if it were a fact of the block. */
const HEAD: Readonly<Partial<Record<string, Row>>> = {
  duty: headRow('duty', 'class'),
  hull: headRow('hull', 'form'),
};

function headRow(words: SettingsKind, field: string): Row {
  const { doc, example } = statement(words, 'vessel')!;
  return { words, field, kind: anyWord(`${words} ${field}`), doc, example: example.split(' {')[0]! };
}

/**
 * A form of hull that there is none of, or a duty class that is probably another one misspelt. Makers have duty words of
 * their own, so that any other word may stand; but one letter off, every rating of the spec would count for nothing.
 */
function doubtOf(kind: SettingsKind, word: string, at: Place): Problem | undefined {
  if (word === 'unknown') return undefined;
  const known: readonly string[] = kind === 'hull' ? HULL_FORMS : DUTY_STEPS.flat();
  if (known.includes(word.toLowerCase())) return undefined;
  const meant = nearest(word, known);
  if (kind === 'duty' && !meant) return undefined;
  const choices = (meant ? [meant] : known).map(one => ({ title: `Write ${one}`, text: one }));
  const what = kind === 'hull' ? 'form of a hull' : 'duty class that another part is rated for';
  return {
    code: 'text/value',
    start: at.start,
    end: at.end,
    severity: 'error',
    message: `"${word}" is no ${what}${meant ? `: did you mean ${meant}?` : `. It is ${listed(known, 'or')}.`}`,
    choices,
  };
}

function readSettings(
  context: ReadContext,
  node: ast.Settings,
  settings: Record<string, BlockReading>,
): void {
  const vocabulary = VESSEL_VOCABULARY[node.kind];
  if (!vocabulary) return;
  if (settings[node.kind]) {
    problem(
      context,
      node.$cstNode,
      'text/twice',
      `This vessel already has a "${node.kind}": keep one.`,
      node.kind.length,
    );
    return;
  }
  const place = placeOfNode(context, node);
  const reading = startReading(makeHost(context, node, place, vocabulary, node.block));
  const head = HEAD[node.kind];
  if (head && node.head !== undefined) {
    const at = propertyPlace(context, node, 'head');
    const mark = node.evidence && evidenceOf(node.evidence);
    const evidence = mark && readEvidence(mark, context.problems);
    const fact = {
      value: node.head === 'unknown' ? undefined : node.head,
      written: node.head,
      origin: at,
      ...(evidence ? { evidence } : {}),
    };
    const doubt = doubtOf(node.kind, node.head, at);
    if (doubt) context.problems.push(doubt);
    keep(reading, {
      row: head,
      words: { start: place.start, end: place.start + node.kind.length },
      value: at,
      ...(mark ? { evidence: { start: mark.start, end: mark.end } } : {}),
      ...(doubt ? {} : { fact }),
    });
  } else if (head)
    problem(
      context,
      node.$cstNode,
      'text/value-missing',
      `Say which: ${head.example}. ${head.doc}`,
      node.kind.length,
    );
  if (node.block) readFacts(reading, atomsOf(node.block).atoms);
  context.problems.push(...reading.problems);
  settings[node.kind] = reading;
}

/** Blocks that a vessel may hold several of; `empty` is what one without its facts is asked for. */
const SEVERAL = {
  revision: undefined,
  trial:
    'A trial needs its readings: trial "sea trial" dated 2026-06-12 { run Port at full throttle { speed 24.3 kn } }.',
  study:
    'A study needs what it varies: study wheel of proposed { vary propeller pitch 30 in .. 36 in by 1 in }.',
} as const;

/** The facts of a revision, a trial or a study. */
function readBlock(
  context: ReadContext,
  kind: keyof typeof SEVERAL,
  node: ast.Revision | ast.Trial | ast.Study,
): BlockReading {
  const place = placeOfNode(context, node);
  const reading = startReading(makeHost(context, node, place, VESSEL_VOCABULARY[kind]!, node.block));
  const empty = SEVERAL[kind];
  if (node.block) readFacts(reading, atomsOf(node.block).atoms);
  else if (empty !== undefined) problem(context, node.$cstNode, 'text/value-missing', empty, kind.length);
  context.problems.push(...reading.problems);
  return reading;
}

/** What a study varies, asks for and ranks by. */
function readStudy(context: ReadContext, node: ast.Study): StudyReading {
  const place = placeOfNode(context, node);
  const facts = readBlock(context, 'study', node);
  if (node.name === undefined)
    problem(
      context,
      node.$cstNode,
      'text/name-missing',
      'A study needs a name: study wheel of proposed { ... }.',
      'study'.length,
    );
  return {
    place,
    name: node.name ?? '',
    namePlace: node.name === undefined ? place : propertyPlace(context, node, 'name'),
    ...(node.title ? { title: unquoted(node.title) } : {}),
    ...(node.of === undefined ? {} : { of: { name: node.of, place: propertyPlace(context, node, 'of') } }),
    facts,
  };
}

function sentence(context: ReadContext, node: ast.Requirement | ast.Assumption): SentenceReading {
  const tokens = withoutSwallowed(context, node.tokens.flatMap(tokOf));
  if (tokens.length === 0)
    problem(context, node.$cstNode, 'text/value-missing', 'This sentence is not finished.');
  const last = tokens.at(-1);
  const place = placeOfNode(context, node);
  return { place: last ? { ...place, end: Math.max(place.start, last.end) } : place, tokens };
}

/** A sentence runs on to the next statement, so a misspelt one would be part of it: it is told, and cut off. */
function withoutSwallowed(context: ReadContext, tokens: Tok[]): Tok[] {
  const at = tokens.findIndex(
    (token, index) =>
      index > 0 &&
      token.line > tokens[index - 1]!.line &&
      token.kind === 'word' &&
      nearest(token.text, MEMBERS) !== undefined,
  );
  if (at < 0) return tokens;
  const { text, start, end, line } = tokens[at]!;
  const meant = nearest(text, MEMBERS)!;
  context.problems.push({
    code: 'text/stray',
    start,
    end,
    severity: 'error',
    message: `Unknown word "${text}". Did you mean "${meant}"?`,
    choices: [{ title: `Write ${meant}`, text: meant }],
  });
  context.strayLine = line;
  return tokens.slice(0, at);
}

function defined<K extends string>(key: K, text: string | undefined): { readonly [P in K]?: string } {
  return text === undefined ? {} : ({ [key]: text } as { [P in K]: string });
}

/** The words of a sentence as one text. */
export function textOf(tokens: readonly AtomTok[]): string {
  return tokens.map(token => (isTok(token) ? token.text : '')).join(' ');
}
