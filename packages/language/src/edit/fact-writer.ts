import { AHEAD_CLUTCH, ENTRY_VOCABULARY, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { FactReading } from '../reading/block.js';
import type { Host, Place } from '../reading/place.js';
import { lineBreakOf, piecesOf } from '../text/tokens.js';
import { addToBlock, bracesIn, headerEnd, indentAt } from './layout.js';
import { insideStatement, partStatement, planProperty } from './property.js';
import type { TextEdit } from './text-edit.js';

/** What is to be added at one host. */
interface Additions {
  readonly host: Host;
  readonly header: string[];
  readonly facts: string[];
  /** Facts with a block of their own: they go last, since what follows them on a line would be theirs. */
  readonly blocks: string[];
}

/** A part that a mirror line does not write yet, with what is to be written of it. */
interface NewPart {
  readonly into: Host;
  readonly role: string;
  readonly header: string[];
  readonly facts: string[];
}

/** Writes properties where they belong, and gathers those of one host so that they are added together. */
export class FactWriter {
  private readonly edits: TextEdit[] = [];
  private readonly additions = new Map<string, Additions>();
  private readonly newParts = new Map<string, NewPart>();

  constructor(private readonly textOf: (uri: string) => string) {}

  /** Writes a property of a host; false where there is no way to write it. */
  set(host: Host, property: string, text: string): boolean {
    if (host.saidIn) return this.set(host.saidIn.host, `${host.saidIn.words} ${property}`, text);
    if (host.insertInto) return this.setInMirror(host, host.insertInto, property, text);
    const found = host.reading?.facts.find(one => one.row.words === property);
    if (found) return this.replaceValue(host, found, text);
    const half = this.halfTyped(host, property);
    if (half) return this.edit(host.uri, half.start, half.end, `${property} ${text}`);
    const plan = planProperty(host, property);
    if (plan.kind === 'inside' && plan.nested)
      return plan.rest !== '' && this.set(plan.nested.host, plan.rest, text);
    const added = this.at(host);
    if (plan.kind === 'header') added.header.push(`${plan.words} ${text}`);
    else if (plan.kind === 'part') added.facts.push(partStatement(plan.role, text));
    else if (plan.kind === 'inside') added.blocks.push(insideStatement(plan.row, plan.head, plan.rest, text));
    else added.facts.push(`${plan.words} ${text}`);
    return true;
  }

  /** Adds words as they are to a host's block. */
  addStatement(host: Host, text: string): boolean {
    this.at(host).facts.push(text);
    return true;
  }

  /** Writes a property of a statement whose facts are statements of their own: `duty medium` of a vessel. */
  setInStatement(place: Place, property: string, text: string): boolean {
    const all = this.textOf(place.uri);
    const block = bracesIn(all, place);
    if (!block) return false;
    let depth = 0;
    const pieces = piecesOf(all.slice(block.start, block.end)).filter(piece => !piece.comment);
    for (const [index, piece] of pieces.entries()) {
      if (piece.text === '{') depth += 1;
      else if (piece.text === '}') depth -= 1;
      else if (depth === 1 && piece.text === property && !/^[["]/.test(pieces[index + 1]?.text ?? '"')) {
        const next = pieces[index + 1]!;
        const end = next.text === '{' || next.text === '}' ? piece.end : next.end;
        return this.edit(place.uri, block.start + piece.end, block.start + end, ` ${text}`);
      }
    }
    const added = addToBlock(all, block, [`${property} ${text}`], 'first');
    return added !== undefined && this.edit(place.uri, added.start, added.end, added.text);
  }

  /** Everything written; undefined when something could not be. */
  finish(): TextEdit[] | undefined {
    for (const part of this.newParts.values()) {
      const block = part.facts.length > 0 ? ` { ${part.facts.join('  ')} }` : '';
      this.at(part.into).facts.push([part.role, ...part.header].join(' ') + block);
    }
    for (const one of this.additions.values()) if (!this.add(one)) return undefined;
    return this.edits;
  }

  private setInMirror(host: Host, into: Host, property: string, text: string): boolean {
    const role = host.insertAs;
    if (!role) return false;
    if (role === 'gear' && property === AHEAD_CLUTCH.words) return this.set(into, property, text);
    const key = `${keyOf(into)} ${role}`;
    const part = this.newParts.get(key) ?? { into, role, header: [], facts: [] };
    this.newParts.set(key, part);
    const plan = planProperty({ ...host, form: 'part' }, property);
    if (plan.kind === 'header') part.header.push(`${plan.words} ${text}`);
    else if (plan.kind === 'inside') part.facts.push(insideStatement(plan.row, plan.head, plan.rest, text));
    else part.facts.push(`${property} ${text}`);
    return true;
  }

  /** Another value in the place of one; what vouched for the old value does not vouch for the new one. */
  private replaceValue(host: Host, found: FactReading, text: string): boolean {
    const value = found.value;
    if (!value) return this.edit(host.uri, found.words.end, found.words.end, ` ${text}`);
    const same = this.textOf(host.uri).slice(value.start, value.end) === text;
    const end = same ? value.end : (found.evidence?.end ?? value.end);
    return this.edit(host.uri, value.start, end, text);
  }

  /** The words of a header fact that has no value yet. */
  private halfTyped(host: Host, property: string) {
    return host.reading?.unread.find(range => {
      const typed = this.textOf(host.uri).slice(range.start, range.end).trim().replace(/\s+/g, ' ');
      return typed !== '' && (property === typed || property.startsWith(`${typed} `));
    });
  }

  private add({ host, header, facts, blocks }: Additions): boolean {
    const text = this.textOf(host.uri);
    const headEnd = headerEnd(text, host.start, host.headEnd);
    const head = header.map(one => ` ${one}`).join('');
    const all = [...facts, ...blocks];
    if (!host.block) return this.edit(host.uri, headEnd, headEnd, head + this.newBlock(text, host, all));
    if (head && !this.edit(host.uri, headEnd, headEnd, head)) return false;
    // On one line, what is written behind a fact with facts of its own would be read as one of those.
    const onLine = !/[\r\n]/.test(text.slice(host.block.start, host.block.end));
    const open = onLine && host.reading?.nested.some(one => !one.host.block) === true;
    const early = open ? facts : [];
    for (const [words, where] of [
      [early, 'first'],
      [open ? blocks : all, 'last'],
    ] as const) {
      if (words.length === 0) continue;
      const added = addToBlock(text, host.block, words, where);
      if (!added || !this.edit(host.uri, added.start, added.end, added.text)) return false;
    }
    return true;
  }

  /** A block for a host that has none, as its kind is usually written. */
  private newBlock(text: string, host: Host, facts: readonly string[]): string {
    if (facts.length === 0) return '';
    if (host.form === 'nested') return `  ${facts.join('  ')}`;
    const isEntry =
      host.form === undefined &&
      Object.values(ENTRY_VOCABULARY).includes(host.vocabulary) &&
      !Object.values(VESSEL_VOCABULARY).includes(host.vocabulary);
    if (!isEntry) return ` { ${facts.join('  ')} }`;
    const eol = lineBreakOf(text);
    const indent = indentAt(text, host.start);
    return ` {${eol}${facts.map(one => `${indent}  ${one}${eol}`).join('')}${indent}}`;
  }

  private at(host: Host): Additions {
    const key = keyOf(host);
    const had = this.additions.get(key) ?? { host, header: [], facts: [], blocks: [] };
    this.additions.set(key, had);
    return had;
  }

  private edit(uri: string, start: number, end: number, text: string): boolean {
    this.edits.push({ uri, start, end, text });
    return true;
  }
}

function keyOf(host: Host): string {
  return `${host.uri} ${host.start} ${host.headEnd} ${host.vocabulary.title}`;
}
