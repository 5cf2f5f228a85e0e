import type { ModelEdit } from '@tailshaft/drivetrain';
import { asSpelling } from '@tailshaft/vocabulary';
import { type Host, hostOf, type Place, placeOf } from '../reading/place.js';
import { lineBreakOf } from '../text/tokens.js';
import { allAnew } from './all-anew.js';
import { FactWriter } from './fact-writer.js';
import { beforeStatement, indentAt, startOfLine, statementStart } from './layout.js';
import { declareLike, statementLike } from './like-another.js';
import { removal } from './removal.js';
import { type SpelledEdit, spelledEdit } from './spelled.js';
import { merged, type TextEdit } from './text-edit.js';

/**
 * What edits in terms of the model are in terms of the text. None at all when one of them cannot be written, or two
 * of them want the same words: half a change would say something that nobody meant.
 */
export function textEditsFor(edits: readonly ModelEdit[], textOf: (uri: string) => string): TextEdit[] {
  return textEditsForSpelled(joined(edits).map(spelledEdit), textOf);
}

/** Several changes of one part that is kept are one statement of it. */
function joined(edits: readonly ModelEdit[]): ModelEdit[] {
  const result: ModelEdit[] = [];
  for (const edit of edits) {
    const at = result.findIndex(one => modifiesSame(one, edit));
    const had = result[at];
    if (edit.do !== 'state' || had?.do !== 'state') result.push(edit);
    else {
      const facts = [...had.statement.facts, ...edit.statement.facts];
      result[at] = { ...had, statement: { ...had.statement, facts } };
    }
  }
  return result;
}

function modifiesSame(one: ModelEdit, other: ModelEdit): boolean {
  if (one.do !== 'state' || other.do !== 'state') return false;
  return one.at === other.at && [one, other].every(({ statement }) => statement.action === 'modify');
}

/** The same of edits whose words are those of an author, as the options of a study are. */
export function textEditsForSpelled(
  edits: readonly SpelledEdit[],
  textOf: (uri: string) => string,
): TextEdit[] {
  const writer = new FactWriter(textOf);
  const { made: anew, left } = allAnew(edits, textOf);
  const result: TextEdit[] = [...anew];
  for (const edit of left) {
    const made = madeOf(edit, writer, textOf);
    if (!made) return [];
    result.push(...made);
  }
  const written = writer.finish();
  return (written && merged([...result, ...written])) ?? [];
}

function madeOf(
  edit: SpelledEdit,
  writer: FactWriter,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  switch (edit.do) {
    case 'set':
      return set(writer, edit);
    case 'replace':
      return replaceValue(writer, edit, textOf);
    case 'state':
      return state(writer, edit, textOf);
    case 'swap':
      return swap(placeOf(edit.one), placeOf(edit.other), textOf);
    case 'remove':
      return removal(placeOf(edit.at), textOf);
    case 'declare like':
      return declareLike(edit, textOf);
    case 'fit anew': {
      const words = statementLike(placeOf(edit.like), edit.changes, textOf);
      return words === undefined ? undefined : stated(writer, placeOf(edit.at), words, textOf);
    }
    case 'declare':
      return declare(placeOf(edit.before), edit.text, textOf);
  }
}

function declare(
  { uri, start }: Place,
  entry: string,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const text = textOf(uri);
  const vessel = statementStart(text, 'vessel', start);
  if (vessel === undefined) return undefined;
  return [{ uri, ...beforeStatement(text, vessel, entry) }];
}

/** A place with its block: the whole statement of a part. */
function wholeOf(place: Place): Place {
  const host = hostOf(place);
  return { uri: place.uri, start: place.start, end: Math.max(place.end, host?.block?.end ?? 0) };
}

function set(writer: FactWriter, edit: SpelledEdit & { do: 'set' }): [] | undefined {
  const host = hostOf(edit.host);
  // What is said there is said of each part that the statement keeps.
  if (host && keepsSeveral(host)) return undefined;
  const done = host
    ? writer.set(host, edit.property, edit.text)
    : writer.setInStatement(placeOf(edit.host), edit.property, edit.text);
  return done ? [] : undefined;
}

function replace(
  writer: FactWriter,
  at: Place,
  text: string,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const host = hostOf(at);
  if (host?.insertInto) return writer.addStatement(host.insertInto, text) ? [] : undefined;
  const { uri, start, end } = wholeOf(at);
  if (start < 0 || end > textOf(uri).length) return undefined;
  return [{ uri, start, end, text }];
}

/** Another value in the place of one: what vouched for the old value does not vouch for the new one. */
function replaceValue(
  writer: FactWriter,
  { at, text, isSame }: SpelledEdit & { do: 'replace' },
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const made = replace(writer, at as Place, text, textOf);
  const [only, another] = made ?? [];
  if (!only || another || isSame || hostOf(at)) return made;
  const all = textOf(only.uri);
  // The same, or the same with something added, as where it was seen from.
  if (text.startsWith(all.slice(only.start, only.end))) return made;
  const [evidence = ''] = /^[ \t]*\[(?:"[^"\n]*"|[^\]"\n])*\]/.exec(all.slice(only.end)) ?? [];
  return [{ ...only, end: only.end + evidence.length }];
}

/**
 * A statement in the place of one that keeps its part. Where that keeps others of its kind too, each is then said by name,
 * and another part is written where the one before stood in the line.
 */
function stated(
  writer: FactWriter,
  at: Place,
  statement: string,
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const host = hostOf(at);
  if (!host?.keeps) return replace(writer, at, statement, textOf);
  const { names, own, behind } = host.keeps;
  const others = names.filter((_, index) => index !== own);
  if (others.some(one => one === undefined) || new Set(names).size < names.length) return undefined;
  // What a block says there is said of each of them.
  if (others.length > 0 && host.block) return undefined;
  const [action = '', role] = statement.split(/\s+/, 2);
  const modifies = asSpelling(action) === 'modify';
  const text = textOf(at.uri);
  const alone = text.slice(startOfLine(text, at.start), at.start).trim() === '';
  const between = alone ? lineBreakOf(text) + indentAt(text, at.start) : '  ';
  const retained = (name: string | undefined) => `retain ${role} ${name}`;
  // What is only modified stays where it is.
  if (modifies || !behind) {
    const itself = modifies && others.length > 0 ? names[own] : undefined;
    const named = itself === undefined ? statement : statement.replace(`${role}`, `${role} ${itself}`);
    const all = names.map((name, index) => (index === own ? named : retained(name)));
    return replace(writer, at, all.join(between), textOf);
  }
  const { uri, end } = wholeOf(behind);
  const gone =
    others.length > 0 ? replace(writer, at, others.map(retained).join(between), textOf) : removal(at, textOf);
  return gone && [...gone, { uri, start: end, end, text: between + statement }];
}

function keepsSeveral({ keeps }: Host): boolean {
  return keeps !== undefined && keeps.names.length > 1;
}

/** A part that keeps what it says in place has its header written anew, and its facts join those of the block. */
function state(
  writer: FactWriter,
  { at, header, facts, keeps }: SpelledEdit & { do: 'state' },
  textOf: (uri: string) => string,
): TextEdit[] | undefined {
  const host = hostOf(placeOf(at));
  const inside = facts.join('  ');
  if (!keeps || !host?.block || host.insertInto)
    return stated(writer, placeOf(at), facts.length > 0 ? `${header} { ${inside} }` : header, textOf);
  if (keepsSeveral(host)) return undefined;
  if (facts.length > 0 && !writer.addStatement(host, inside)) return undefined;
  return [{ uri: host.uri, start: host.start, end: host.headEnd, text: header }];
}

function swap(one: Place, other: Place, textOf: (uri: string) => string): TextEdit[] | undefined {
  if (hostOf(one)?.insertInto || hostOf(other)?.insertInto) return undefined;
  const [a, b] = [wholeOf(one), wholeOf(other)];
  return [
    { ...a, text: textOf(b.uri).slice(b.start, b.end) },
    { ...b, text: textOf(a.uri).slice(a.start, a.end) },
  ];
}
