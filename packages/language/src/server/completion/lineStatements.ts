import { CompletionItemKind } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import { WORDS } from '../hover/words.js';
import { keyword, type Offer, value } from './items.js';

/** What a statement of a shaft line can name. */
export interface LineNames {
  /** The arrangement revises another: parts are retained, replaced, modified or removed. */
  readonly revising: boolean;
  readonly entries: (role: string) => Offer[];
  readonly duties: (engine: string | undefined) => readonly string[];
  readonly ratios: (gear: string | undefined) => Offer[];
  readonly clutches: (gear: string | undefined, ratio: string | undefined) => readonly string[];
  /** Roles that the line has already; those that it lacks are offered first. */
  readonly present: ReadonlySet<string>;
  /** The hand that the line needs, when it can be told. */
  readonly neededHand: string | undefined;
}

const ROLES = ['engine', 'motor', 'coupling', 'gear', 'transfer', 'shaft', 'propeller'];
const ACTIONS = ['replace', 'retain', 'modify', 'remove'];

/** What may stand next in a shaft line. */
export function lineOffers(statement: readonly Token[], names: LineNames): Offer[] {
  const words = statement.map(token => token.text);
  const acted = ACTIONS.includes(words[0] ?? '');
  const role = acted ? words[1] : words[0];
  const last = words.at(-1);
  if (last === undefined) {
    const actions = ACTIONS.map(action => keyword(action, WORDS[action]));
    const roles = [...ROLES]
      .sort((a, b) => Number(names.present.has(a)) - Number(names.present.has(b)))
      .map(one => keyword(one));
    const others = [keyword('side'), keyword('ahead clutch')];
    return names.revising ? [...actions, ...roles, ...others] : [...roles, ...others];
  }
  if (acted && words.length === 1) return ROLES.map(one => keyword(one));
  const name = nameIn(words, role);
  switch (last) {
    case 'side':
      return ['port', 'starboard', 'centre'].map(side => value(side));
    case 'at':
      return names
        .duties(role === 'engine' ? name : undefined)
        .map(duty => value(duty, undefined, WORDS[duty]));
    case 'ratio':
      return names.ratios(name);
    case 'ahead':
      return [keyword('clutch')];
    case 'clutch':
      return names.clutches(name, ratioIn(words)).map(clutch => value(clutch, 'clutch'));
    case 'hand':
      return hands(names.neededHand);
  }
  return role === undefined ? [] : headerOffers(role, words, name, names);
}

function headerOffers(
  role: string,
  words: readonly string[],
  name: string | undefined,
  names: LineNames,
): Offer[] {
  const left = (word: string) => !words.includes(word);
  const offers: Offer[] = [];
  const keepsOld = words[0] === 'retain' || words[0] === 'modify' || words[0] === 'remove';
  if (words.at(-1) === role && !keepsOld && role !== 'shaft') offers.push(...names.entries(role));
  if (role === 'engine' && left('at'))
    offers.push({
      ...keyword('at', 'The rating that is used, by its duty class.'),
      goOn: true,
      insert: 'at ',
    });
  if (role === 'gear' || role === 'transfer') {
    if (left('ratio'))
      offers.push({ ...keyword('ratio', 'The ratio that is fitted.'), goOn: true, insert: 'ratio ' });
    if (role === 'gear' && left('ahead'))
      offers.push({
        ...keyword('ahead clutch', 'The clutch that drives the vessel ahead.'),
        goOn: true,
        insert: 'ahead clutch ',
      });
  }
  if (role === 'propeller' && left('hand') && name === undefined)
    offers.push({ ...keyword('hand'), goOn: true, insert: 'hand ' });
  offers.push({
    label: '{ }',
    kind: CompletionItemKind.Struct,
    insert: '{ $0 }',
    snippet: true,
    detail: 'facts at this place',
  });
  return offers;
}

function hands(needed: string | undefined): Offer[] {
  const all = needed === 'right' ? ['right', 'left'] : ['left', 'right'];
  return [
    ...all.map(
      (hand): Offer => ({
        ...value(hand, hand === needed ? 'as the line needs it' : undefined),
        ...(hand === needed ? { preferred: true } : {}),
      }),
    ),
    keyword('unknown', WORDS.unknown),
  ];
}

const HEADER = new Set(['at', 'ratio', 'ahead', 'hand']);

/** The name of the entry in the header of a part. */
function nameIn(words: readonly string[], role: string | undefined): string | undefined {
  const at = role === undefined ? -1 : words.indexOf(role);
  const next = at < 0 ? undefined : words[at + 1];
  return next === undefined || HEADER.has(next) || next.startsWith('"') ? undefined : next;
}

function ratioIn(words: readonly string[]): string | undefined {
  const at = words.indexOf('ratio');
  return at < 0 ? undefined : words[at + 1];
}
