import type { Vocabulary } from '@tailshaft/vocabulary';
import {
  asSpelling,
  ENTRY_VOCABULARY,
  isAction,
  MODE_VOCABULARY,
  PLACE_VOCABULARY,
  statementsOf,
  takesRatio,
  VESSEL_VOCABULARY,
} from '@tailshaft/vocabulary';
import { DEPTH_OF } from '../../text/depth.js';
import { scan, type Token } from '../../text/scan.js';

/** One block that is open at the cursor. */
export interface Frame {
  readonly kind: 'file' | 'vessel' | 'arrangement' | 'line' | 'facts' | 'nowhere';
  /** Words of the statement that opened it: `gear Alder-63 ratio 2.04:1`. */
  readonly header: readonly Token[];
  /** What its facts may be. */
  readonly vocabulary?: Vocabulary;
  readonly start: number;
}

/** Where the cursor stands, found from the text before it alone: half-typed text is the usual case. */
export interface CursorContext {
  /** Open blocks, the file first. */
  readonly frames: readonly Frame[];
  /** Words of the statement being typed, or in a block of facts of its line; without the word at the cursor. */
  readonly statement: readonly Token[];
  /** The word, number or open string that the cursor stands right behind; empty when it stands behind a space. */
  readonly partial: Token;
  /** Inside an evidence mark: the tokens in it. */
  readonly evidence?: readonly Token[];
}

const STARTS: Readonly<Record<Frame['kind'], ReadonlySet<string>>> = {
  file: new Set(statementsOf('file')),
  vessel: new Set(statementsOf('vessel')),
  arrangement: new Set(statementsOf('arrangement')),
  // `ahead clutch` goes on with the header of a gear, unless none is open.
  line: new Set(statementsOf('line').filter(word => asSpelling(word) !== 'ahead')),
  facts: new Set(),
  nowhere: new Set(),
};

export function contextAt(text: string, offset: number): CursorContext | undefined {
  const tokens = scan(text, offset);
  const last = tokens.at(-1);
  if (last?.kind === 'comment' && last.end === offset && !last.text.endsWith('*/')) return undefined;
  const touched = last && last.end === offset && isPartial(last) ? last : undefined;
  const line = touched?.line ?? lineOf(text, offset, last);
  const partial: Token = touched ?? { kind: 'word', text: '', start: offset, end: offset, line };
  const before = tokens.filter(token => token !== touched && token.kind !== 'comment');

  let frames: Frame[] = [{ kind: 'file', header: [], start: 0 }];
  let statement: Token[] = [];
  let evidence: Token[] | undefined;
  let previousLine = -1;
  for (const token of before) {
    const first = token.line !== previousLine;
    previousLine = token.line;
    const depth = first && token.kind === 'word' ? DEPTH_OF[token.text] : undefined;
    if (depth !== undefined && frames.length > depth + 1) {
      frames = frames.slice(0, depth + 1);
      statement = [];
    }
    const here = frames.at(-1)!;
    if (here.kind === 'facts' && statement.at(-1)?.line !== token.line && token.kind !== 'open')
      statement = [];
    if (token.kind === 'open') {
      frames.push(frameOf(here, statement, token));
      statement = [];
    } else if (token.kind === 'close') {
      if (frames.length > 1) frames.pop();
      statement = [];
    } else if (token.kind === 'mark open') evidence = [];
    else if (token.kind === 'mark close') evidence = undefined;
    else if (evidence) evidence.push(token);
    else {
      if (begins(here, token, statement)) statement = [];
      statement.push(token);
    }
  }
  if (evidence?.[0] && evidence[0].line !== line) evidence = undefined;
  if (statement.length > 0 && endsBefore(frames.at(-1)!, statement, line)) statement = [];
  return { frames, statement, partial, ...(evidence ? { evidence } : {}) };
}

function isPartial(token: Token): boolean {
  if (token.kind === 'string') return token.text.length === 1 || !token.text.endsWith('"');
  return token.kind === 'word' || token.kind === 'number' || (token.kind === 'mark' && token.text === '%');
}

function lineOf(text: string, offset: number, last: Token | undefined): number {
  const from = last?.start ?? 0;
  return (last?.line ?? 0) + (text.slice(from, offset).match(/\n/g)?.length ?? 0);
}

/** Whether a token begins another statement. */
function begins(frame: Frame, token: Token, statement: readonly Token[]): boolean {
  if (frame.kind === 'facts' || statement.length === 0) return false;
  if (!STARTS[frame.kind].has(token.text))
    return asSpelling(token.text) === 'ahead' && !hasGear(statement) && frame.kind === 'line';
  const previous = statement.at(-1)!;
  if (frame.kind === 'line') return !isAction(previous.text);
  // `accept` and `require` run over several lines; their words may be those that begin statements elsewhere.
  return token.line !== previous.line;
}

function hasGear(statement: readonly Token[]): boolean {
  return statement.some(token => takesRatio(token.text));
}

/** Whether the line of the cursor is behind the end of what was being said. */
function endsBefore(frame: Frame, statement: readonly Token[], line: number): boolean {
  if (statement.at(-1)!.line === line) return false;
  return !(frame.kind === 'vessel' && asSpelling(statement[0]!.text) === 'accept');
}

function frameOf(outer: Frame, header: readonly Token[], open: Token): Frame {
  const made = (kind: Frame['kind'], vocabulary?: Vocabulary): Frame => ({
    kind,
    header,
    start: open.start,
    ...(vocabulary ? { vocabulary } : {}),
  });
  const [first = '', second = ''] = header.map(token => token.text);
  const opens = asSpelling(first);
  if (outer.kind === 'file') {
    if (opens === 'vessel') return made('vessel');
    const vocabulary = ENTRY_VOCABULARY[opens === 'shaft' ? `shaft ${second}` : first];
    return vocabulary ? made('facts', vocabulary) : made('nowhere');
  }
  if (outer.kind === 'vessel') {
    if (opens === 'arrangement') return made('arrangement');
    const vocabulary = VESSEL_VOCABULARY[first];
    return vocabulary ? made('facts', vocabulary) : made('nowhere');
  }
  if (outer.kind === 'arrangement') return opens === 'shaftline' ? made('line') : made('nowhere');
  if (outer.kind === 'line') {
    const vocabulary =
      opens === 'mode' ? MODE_VOCABULARY : PLACE_VOCABULARY[isAction(first) ? second : first];
    return vocabulary ? made('facts', vocabulary) : made('nowhere');
  }
  const nested = outer.vocabulary && nestedOn(outer.vocabulary, header);
  return nested ? made('facts', nested) : made('nowhere');
}

/** The vocabulary of a block inside a block whose header is being typed on this line. */
export function nestedOn(outer: Vocabulary, header: readonly Token[]): Vocabulary | undefined {
  let found: Vocabulary | undefined;
  header.forEach((_token, index) => {
    for (const row of outer.blocks) {
      const words = row.words.split(' ');
      if (words.every((word, ahead) => header[index + ahead]?.text === word)) found = row.block;
    }
  });
  return found;
}
