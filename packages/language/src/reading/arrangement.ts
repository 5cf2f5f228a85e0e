import {
  ACTIONS,
  type Action,
  HEADER_ROWS,
  leadOf,
  MODE_VOCABULARY,
  PLACE_VOCABULARY,
  REASONS,
  type Role,
  type Row,
  type Spelling,
  statement,
  statementsIn,
  statementsOf,
} from '@tailshaft/vocabulary';
import { GrammarUtils } from 'langium';
import * as ast from '../generated/ast.js';
import { atomsOf, evidenceOf } from './atoms.js';
import { type BlockReading, keep, readFact, readFacts, startReading } from './block.js';
import { makeHost, placeOfNode, problem, propertyPlace, type ReadContext, stray } from './context.js';
import { Cursor } from './cursor.js';
import { readEvidence } from './evidence.js';
import { unquoted } from './forms/words.js';
import { misplaced } from './misplaced.js';
import { nearest } from './misspelt.js';
import type { Host, Place } from './place.js';
import { kindOfText } from './token.js';

/** A part as a line names it. */
export interface PartReading {
  readonly role: Role;
  readonly action?: Action;
  /** Name of a catalogue entry. */
  readonly name?: string;
  readonly namePlace?: Place;
  readonly host: Host;
  readonly whole: Place;
  readonly facts: BlockReading;
}

/** One way of running a line, as it is written. */
export interface ModeReading {
  readonly name: string;
  readonly namePlace: Place;
  readonly whole: Place;
  readonly facts: BlockReading;
}

export interface LineReading {
  readonly name: string;
  readonly namePlace: Place;
  readonly host: Host;
  readonly whole: Place;
  readonly mirrors?: { readonly name: string; readonly place: Place };
  readonly parts: readonly PartReading[];
  readonly modes: readonly ModeReading[];
  /** `side port`, and `ahead clutch B` that stands by itself. */
  readonly facts: BlockReading;
}

export interface ArrangementReading {
  readonly name: string;
  readonly title?: string;
  readonly namePlace: Place;
  readonly whole: Place;
  readonly revises?: { readonly name: string; readonly place: Place };
  readonly lines: readonly LineReading[];
  /** `remove shaftline Port` */
  readonly removed: readonly { readonly name: string; readonly place: Place; readonly whole: Place }[];
  /** Where a further line is written: in front of the closing brace. */
  readonly linesEnd?: Place;
  readonly reasons: readonly { readonly about: string; readonly text: string; readonly place: Place }[];
  /** Holds a word that is probably a misspelt `shaftline`: which lines it shows cannot be told. */
  readonly unsure?: true;
}

const LINE_WORDS = statementsOf('line');
const LINES: readonly Spelling[] = ['shaftline'];
const MIRRORS: readonly Spelling[] = ['mirrors'];

const LINE_VOCABULARY = { title: 'shaft line', rows: [HEADER_ROWS.side, HEADER_ROWS.ahead], blocks: [] };

export function readArrangement(context: ReadContext, node: ast.Arrangement): ArrangementReading {
  if (node.name === undefined)
    problem(
      context,
      node.$cstNode,
      'text/name-missing',
      'An arrangement needs a name: arrangement existing { ... }.',
      'arrangement'.length,
    );
  const lines: LineReading[] = [];
  const removed: { name: string; place: Place; whole: Place }[] = [];
  const reasons: { about: string; text: string; place: Place }[] = [];
  let unsure = false;
  for (const member of node.members) {
    if (ast.isShaftLine(member)) lines.push(readLine(context, member));
    else if (ast.isRemovedLine(member)) removed.push(...readRemoved(context, member));
    else if (ast.isReason(member)) {
      const about = member.words.join(' ');
      if (!(REASONS as readonly string[]).includes(about))
        problem(
          context,
          member.$cstNode,
          'text/value',
          `A reason is given for one of: ${REASONS.join(', ')}.`,
        );
      else if (!member.text || unquoted(member.text).trim() === '')
        problem(
          context,
          member.$cstNode,
          'text/value-missing',
          `Write the reason in quotes: reason for ${about} "...".`,
        );
      else reasons.push({ about, text: unquoted(member.text), place: placeOfNode(context, member) });
    } else if (ast.isMisplaced(member)) misplaced(context, member, 'an arrangement');
    else {
      stray(context, member, statementsIn('arrangement').map(leadOf), 'an arrangement', MIRRORS);
      unsure ||= nearest(member.text ?? '', LINES) !== undefined;
    }
  }
  return {
    name: node.name ?? '',
    ...(node.title ? { title: unquoted(node.title) } : {}),
    namePlace: node.name === undefined ? placeOfNode(context, node) : propertyPlace(context, node, 'name'),
    whole: placeOfNode(context, node),
    ...joined(context, node, 'revises'),
    lines,
    removed,
    ...(unsure ? { unsure } : {}),
    ...(closingBrace(context, node) ?? {}),
    reasons,
  };
}

function readRemoved(context: ReadContext, node: ast.RemovedLine): ArrangementReading['removed'] {
  if (node.name !== undefined)
    return [
      { name: node.name, place: propertyPlace(context, node, 'name'), whole: placeOfNode(context, node) },
    ];
  problem(
    context,
    node.$cstNode,
    'text/name-missing',
    'State which line is removed: remove shaftline Port.',
    leadOf(statement('remove', 'arrangement')!).length,
  );
  return [];
}

/** Where a line can be added; a block that is still open has no end. */
function closingBrace(context: ReadContext, node: ast.Arrangement): { linesEnd: Place } | undefined {
  const { uri, end } = placeOfNode(context, node);
  const closed = node.open && context.text[end - 1] === '}';
  return closed ? { linesEnd: { uri, start: end - 1, end: end - 1 } } : undefined;
}

/** What a header revises or mirrors. Without a name behind the word it is still known that there is one. */
function joined<W extends 'revises' | 'mirrors'>(
  context: ReadContext,
  node: ast.Arrangement | ast.ShaftLine,
  word: W,
): { readonly [K in W]?: { readonly name: string; readonly place: Place } } {
  if (node.base) return { [word]: { name: node.base, place: propertyPlace(context, node, 'base') } } as never;
  const keyword = GrammarUtils.findNodeForKeyword(node.$cstNode, word);
  if (!keyword) return {};
  // A word that is itself half typed has been told of.
  if (keyword.text === word) problem(context, keyword, 'text/value-missing', NAMELESS[word]);
  const { offset: start, end } = keyword;
  return { [word]: { name: '', place: { uri: context.uri, start, end } } } as never;
}

const NAMELESS = {
  revises: 'State which arrangement this one revises: arrangement proposed revises existing { ... }.',
  mirrors: 'State which line this one mirrors: shaftline Starboard mirrors Port { ... }.',
};

function readLine(context: ReadContext, node: ast.ShaftLine): LineReading {
  if (node.name === undefined)
    problem(
      context,
      node.$cstNode,
      'text/name-missing',
      'A shaft line needs a name: shaftline Port { ... }.',
      'shaftline'.length,
    );
  const namePlace =
    node.name === undefined ? placeOfNode(context, node) : propertyPlace(context, node, 'name');
  const host: Host = { ...namePlace, vocabulary: LINE_VOCABULARY, form: 'line', ...braces(context, node) };
  const unnamed = node.name === undefined ? { unresolved: true } : {};
  const facts = startReading(Object.assign(host, unnamed));
  const parts: PartReading[] = [];
  const modes: ModeReading[] = [];
  /** What a misspelt word in front of the next part probably says of it: told once, and taken so. */
  let meant: PartReading['action'];
  for (const member of node.members) {
    const said = meant;
    meant = undefined;
    if (ast.isPartUse(member)) {
      // `retain` alone: the parser has said what is missing.
      if (!member.role) continue;
      const swallowed = swallowedAction(context, member);
      if (swallowed) meant = swallowed.action;
      parts.push(readPart(context, member, said, swallowed !== undefined || member.name === undefined));
    } else if (ast.isMode(member)) modes.push(readMode(context, member));
    else if (ast.isSideFact(member)) header(context, facts, member, HEADER_ROWS.side, 'side');
    else if (ast.isAheadFact(member)) header(context, facts, member, HEADER_ROWS.ahead, 'clutch');
    else if (ast.isMisplaced(member)) misplaced(context, member, 'a shaft line');
    else {
      stray(context, member, LINE_WORDS, 'a shaft line');
      meant = actionNear(member.text);
      facts.unread.push({ ...placeOfNode(context, member), text: member.text ?? '' });
    }
  }
  context.problems.push(...facts.problems);
  return {
    name: node.name ?? '',
    namePlace,
    host,
    whole: placeOfNode(context, node),
    ...joined(context, node, 'mirrors'),
    parts,
    modes,
    facts,
  };
}

function readMode(context: ReadContext, node: ast.Mode): ModeReading {
  const whole = placeOfNode(context, node);
  const facts = startReading(makeHost(context, node, whole, MODE_VOCABULARY, node.block));
  if (node.block) readFacts(facts, atomsOf(node.block).atoms);
  if (node.name === undefined || !node.block)
    problem(
      context,
      node.$cstNode,
      node.name === undefined ? 'text/name-missing' : 'text/value-missing',
      'A mode needs a name, and what drives the line in it: mode harbour { driven by motor }.',
      'mode'.length,
    );
  context.problems.push(...facts.problems);
  return {
    name: node.name ?? '',
    namePlace: node.name === undefined ? whole : propertyPlace(context, node, 'name'),
    whole,
    facts,
  };
}

function actionNear(text: string | undefined): PartReading['action'] {
  const near = text === undefined ? undefined : nearest(text, LINE_WORDS);
  return ACTIONS.find(one => one === near);
}

/** A misspelt word that begins the next line, which the grammar takes for the name of this part: `retain shaft`, `remov propeller`. */
function swallowedAction(
  context: ReadContext,
  node: ast.PartUse,
): { action: PartReading['action'] } | undefined {
  const action = actionNear(node.name);
  const name = GrammarUtils.findNodeForProperty(node.$cstNode, 'name');
  const role = GrammarUtils.findNodeForProperty(node.$cstNode, 'role');
  if (!action || !name || !role || name.range.start.line === role.range.end.line) return undefined;
  context.problems.push({
    code: 'text/stray',
    start: name.offset,
    end: name.end,
    severity: 'error',
    message: `Unknown word "${name.text}". Did you mean "${action}"?`,
    choices: [{ title: `Write ${action}`, text: action }],
  });
  return { action };
}

function readPart(
  context: ReadContext,
  node: ast.PartUse,
  meant: PartReading['action'],
  nameless: boolean,
): PartReading {
  const vocabulary = PLACE_VOCABULARY[node.role]!;
  const host: Host = {
    ...makeHost(context, node, placeOfNode(context, node), vocabulary, node.block),
    form: 'part',
  };
  const facts = startReading(host);
  for (const fact of node.header) {
    if (ast.isAtFact(fact)) header(context, facts, fact, HEADER_ROWS.at, 'duty');
    else if (ast.isRatioFact(fact)) header(context, facts, fact, HEADER_ROWS.ratio, 'ratio');
    else if (ast.isAheadFact(fact)) header(context, facts, fact, HEADER_ROWS.ahead, 'clutch');
    else header(context, facts, fact, HEADER_ROWS.hand, 'hand');
  }
  if (node.block) readFacts(facts, atomsOf(node.block).atoms);
  else if (
    nameless &&
    node.header.length === 0 &&
    node.action !== 'retain' &&
    node.action !== 'remove' &&
    meant === undefined
  ) {
    problem(
      context,
      node.$cstNode,
      'text/value-missing',
      `State which ${node.role}: the name of a catalogue entry, or its facts in braces: ${node.role} { ... }.`,
    );
    Object.assign(host, { unresolved: true });
  }
  context.problems.push(...facts.problems);
  const action = (node.action as PartReading['action']) ?? meant;
  return {
    role: node.role,
    ...(action ? { action } : {}),
    ...(node.name && !nameless ? { name: node.name, namePlace: propertyPlace(context, node, 'name') } : {}),
    host,
    whole: placeOfNode(context, node),
    facts,
  };
}

/** A fact that the grammar itself knows, read with the same forms as those in blocks. */
function header(
  context: ReadContext,
  into: BlockReading,
  node: ast.HeaderFact | ast.SideFact,
  row: Row,
  property: string,
): void {
  const mark = node.evidence && evidenceOf(node.evidence);
  const whole = placeOfNode(context, node);
  const value = (node as unknown as Record<string, unknown>)[property];
  if (value === undefined) {
    problem(
      context,
      node.$cstNode,
      'text/value-missing',
      `"${row.words}" has no value yet: for example "${row.example}".`,
    );
    into.unread.push({ ...whole, text: row.words });
    return;
  }
  const at = propertyPlace(context, node, property);
  const atoms = [
    { kind: kindOfText(String(value)), text: String(value), start: at.start, end: at.end, line: 0 },
  ];
  const cursor = new Cursor(atoms, context.uri, () => false);
  const read = readFact(into, cursor, row, { start: whole.start, end: at.start });
  context.problems.push(...cursor.problems);
  const evidence = mark && readEvidence(mark, context.problems);
  keep(into, {
    ...read,
    ...(mark ? { evidence: { start: mark.start, end: mark.end } } : {}),
    ...(evidence && read.fact ? { fact: { ...read.fact, evidence } } : {}),
  });
}

/** Where a line's header ends, and its braces when it has them. */
function braces(context: ReadContext, node: ast.ShaftLine): Pick<Host, 'block' | 'headEnd'> {
  const open = GrammarUtils.findNodeForProperty(node.$cstNode, 'open');
  const { start, end } = placeOfNode(context, node);
  if (!open) return { headEnd: end };
  const header = context.text.slice(start, open.offset).trimEnd();
  return { headEnd: start + header.length, block: { start: open.offset, end } };
}
