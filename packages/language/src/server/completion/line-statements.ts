import {
  ACTIONS,
  AHEAD_CLUTCH,
  asSpelling,
  DUTY_MEANINGS,
  HANDS,
  isAction,
  isRole,
  ROLES,
  type Role,
  SIDES,
  type Spelling,
  statement,
  takesRatio,
  UNKNOWN,
} from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import { keyword, type Offer, value } from './items.js';

/** What a statement of a shaft line can name. */
export interface LineNames {
  /** The arrangement revises another: parts are retained, replaced, modified or removed. */
  readonly revising: boolean;
  readonly entries: (role: Role) => Offer[];
  readonly duties: (engine: string | undefined) => readonly string[];
  readonly ratios: (gear: string | undefined) => Offer[];
  readonly clutches: (gear: string | undefined, ratio: string | undefined) => readonly string[];
  /** Roles that the line has already; those that it lacks are offered first. */
  readonly present: ReadonlySet<string>;
  /** The hand that the line needs, when it can be told. */
  readonly neededHand: string | undefined;
}

/** What may stand next in a shaft line. */
export function lineOffers(typed: readonly Token[], names: LineNames): Offer[] {
  const words = typed.map(token => token.text);
  const acted = isAction(words[0]);
  const said = acted ? words[1] : words[0];
  const role = isRole(said) ? said : undefined;
  const last = asSpelling(words.at(-1));
  if (last === undefined) {
    const actions = ACTIONS.map(action => keyword(action, statement(action, 'line')?.doc));
    const roles = [...ROLES]
      .sort((a, b) => Number(names.present.has(a)) - Number(names.present.has(b)))
      .map(one => keyword(one, statement(one, 'line')?.doc));
    const others = [keyword('side'), keyword(AHEAD_CLUTCH.words)];
    return names.revising ? [...actions, ...roles, ...others] : [...roles, ...others];
  }
  if (acted && words.length === 1) return ROLES.map(one => keyword(one, statement(one, 'line')?.doc));
  const name = nameIn(words, role);
  switch (last) {
    case 'side':
      return SIDES.map(side => value(side));
    case 'at':
      return names
        .duties(role === 'engine' ? name : undefined)
        .map(duty => value(duty, undefined, DUTY_MEANINGS[duty]));
    case 'ratio':
      return names.ratios(name);
    case 'ahead':
      return [keyword('clutch')];
    case 'clutch':
      return names.clutches(name, ratioIn(words)).map(clutch => value(clutch, 'clutch'));
    case 'hand':
      return hands(names.neededHand);
  }
  return said === undefined ? [] : headerOffers(role, words, name, names);
}

function headerOffers(
  role: Role | undefined,
  words: readonly string[],
  name: string | undefined,
  names: LineNames,
): Offer[] {
  const left = (word: Spelling) => !words.includes(word);
  const action = isAction(words[0]) ? words[0] : undefined;
  const offers: Offer[] = [];
  const keepsOld = action !== undefined && action !== 'replace';
  if (role && words.at(-1) === role && !keepsOld && role !== 'shaft') offers.push(...names.entries(role));
  if (role === 'engine' && left('at'))
    offers.push({
      ...keyword('at', 'The rating that is used, by its duty class.'),
      goOn: true,
      insert: 'at ',
    });
  if (takesRatio(role)) {
    if (left('ratio')) offers.push({ ...keyword('ratio'), goOn: true, insert: 'ratio ' });
    if (role === 'gear' && left('ahead'))
      offers.push({
        ...keyword(AHEAD_CLUTCH.words),
        goOn: true,
        insert: `${AHEAD_CLUTCH.words} `,
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
  const all = [...HANDS].sort((a, b) => Number(b === needed) - Number(a === needed));
  return [
    ...all.map(
      (hand): Offer => ({
        ...value(hand, hand === needed ? 'as the line needs it' : undefined),
        ...(hand === needed ? { preferred: true } : {}),
      }),
    ),
    keyword(UNKNOWN),
  ];
}

const HEADER: ReadonlySet<string> = new Set<Spelling>(['at', 'ratio', 'ahead', 'hand']);

/** The name of the entry in the header of a part. */
function nameIn(words: readonly string[], role: string | undefined): string | undefined {
  const at = role === undefined ? -1 : words.indexOf(role);
  const next = at < 0 ? undefined : words[at + 1];
  return next === undefined || HEADER.has(next) || next.startsWith('"') ? undefined : next;
}

function ratioIn(words: readonly string[]): string | undefined {
  const at = words.findIndex(word => asSpelling(word) === 'ratio');
  return at < 0 ? undefined : words[at + 1];
}
