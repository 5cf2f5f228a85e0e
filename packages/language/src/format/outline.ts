import { type AstNode, GrammarUtils, type ParseResult } from 'langium';
import { blocksOf, withNested } from '../elaborate/vessel.js';
import * as ast from '../generated/ast.js';
import type { BlockReading, FactReading, NestedReading } from '../reading/block.js';
import type { DocumentReading } from '../reading/document.js';

/** What the printer must know of a text beyond its tokens. All offsets are those of first characters. */
export interface Outline {
  /** Where statements and facts begin. */
  readonly starts: ReadonlySet<number>;
  /** Statements that are sentences: they keep the author's line breaks. */
  readonly sentences: ReadonlySet<number>;
  /** Facts that stand behind the words of a block, on its line, with the space in front of them. */
  readonly inline: ReadonlyMap<number, string>;
  /** Opening braces of blocks whose contents are understood. */
  readonly statementBlocks: ReadonlySet<number>;
  readonly factBlocks: ReadonlySet<number>;
  /** Places that could not be read: what is around them is left as it is. */
  readonly broken: readonly number[];
  /** Those of them that the grammar itself could not make sense of. */
  readonly syntax: ReadonlySet<number>;
  /** Statements that mean nothing. */
  readonly strays: ReadonlySet<number>;
}

/** Gathers from syntax tree and reading where things begin, and what had better be left alone. */
export function outlineOf(parsed: ParseResult, reading: DocumentReading): Outline {
  const outline = {
    starts: new Set<number>(),
    sentences: new Set<number>(),
    inline: new Map<number, string>(),
    statementBlocks: new Set<number>(),
    factBlocks: new Set<number>(),
    broken: [] as number[],
    syntax: new Set<number>(),
    strays: new Set<number>(),
  };
  statements(outline, (parsed.value as ast.Document).statements);
  const blocks = [...reading.entries.map(entry => entry.facts), ...reading.vessels.flatMap(blocksOf)];
  for (const top of blocks) for (const block of withNested(top)) facts(outline, block);
  for (const problem of reading.problems)
    if (problem.code !== 'text/twice') outline.broken.push(problem.start);
  for (const error of parsed.lexerErrors) outline.syntax.add(error.offset);
  for (const error of parsed.parserErrors) {
    const { token, previousToken } = error as typeof error & { previousToken?: typeof error.token };
    for (const one of [token, previousToken])
      if (one && !Number.isNaN(one.startOffset)) outline.syntax.add(one.startOffset);
  }
  outline.broken.push(...outline.syntax);
  return outline;
}

type Filling = {
  -readonly [K in keyof Outline]: Outline[K] extends ReadonlySet<number>
    ? Set<number>
    : Outline[K] extends ReadonlyMap<number, string>
      ? Map<number, string>
      : number[];
};

function statements(outline: Filling, members: readonly AstNode[]): void {
  for (const member of members) {
    const start = member.$cstNode?.offset;
    if (start === undefined) continue;
    outline.starts.add(start);
    if (ast.isStray(member) || ast.isMisplaced(member)) {
      outline.strays.add(start);
      outline.broken.push(start);
    }
    if (SENTENCES.some(is => is(member))) outline.sentences.add(start);
    if (ast.isVessel(member) || ast.isArrangement(member) || ast.isShaftLine(member)) {
      const open = GrammarUtils.findNodeForProperty(member.$cstNode, 'open');
      if (!open) continue;
      outline.statementBlocks.add(open.offset);
      statements(outline, member.members);
    }
  }
}

const SENTENCES = [
  ast.isRequirement,
  ast.isAssumption,
  ast.isAcceptance,
  ast.isRevision,
  ast.isReason,
  ast.isImport,
];

function facts(outline: Filling, block: BlockReading): void {
  const { host } = block;
  if (host.form === 'line') return;
  const open = host.block?.start;
  if (open !== undefined) outline.factBlocks.add(open);
  const all: (FactReading | NestedReading)[] = [...block.facts, ...block.nested];
  const behindHead = all
    .filter(one => open === undefined || one.words.start < open)
    .sort((a, b) => a.words.start - b.words.start);
  for (const one of all) if (!behindHead.includes(one)) outline.starts.add(one.words.start);
  if (host.form !== 'nested') return;
  for (const [index, one] of behindHead.entries())
    outline.inline.set(
      one.words.start,
      isClause(block) || (index === 0 && staysClose(block, one)) ? ' ' : '  ',
    );
}

/** What reads as one sentence: `checked by "R. Marram" as "checker" dated 2025-11-21`. */
function isClause({ host }: BlockReading): boolean {
  return ['signature', 'open matter', 'right to accept', 'gravity of a rule'].includes(host.vocabulary.title);
}

/** A value without words belongs to the head in front of it; so does what a ratio says of itself. */
function staysClose(block: BlockReading, one: FactReading | NestedReading): boolean {
  return one.words.start === one.words.end || block.host.vocabulary.title === 'gear ratio';
}
