import { RULES } from '@tailshaft/drivetrain';
import {
  asSpelling,
  DUTY_MEANINGS,
  HULL_FORMS,
  leadOf,
  partsOf,
  REASONS,
  type Spelling,
  statement,
  statementsIn,
} from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import { gradeOffers } from '../standards/offers.js';
import { keyword, type Offer, value } from './items.js';
import { assumeOffers, requireOffers } from './sentences.js';
import { arrangementSnippets, FILE_SNIPPETS, vesselSnippets } from './snippets.js';
import type { Surroundings } from './surroundings.js';

/** What may stand at the beginning of a file's statement, or go on with the one begun. */
export function fileOffers(typed: readonly Token[]): Offer[] {
  if (typed.length > 0) return asSpelling(typed.at(-1)!.text) === 'shaft' ? [keyword('material')] : [];
  return [
    ...statementsIn('file').map(one =>
      keyword(one.word, one.doc, asSpelling(one.word) === 'import' ? `${one.word} "` : undefined),
    ),
    ...FILE_SNIPPETS,
    ...gradeOffers(),
  ];
}

export function vesselOffers(typed: readonly Token[], around: Surroundings): Offer[] {
  const [first, ...rest] = typed.map(token => token.text);
  const last = asSpelling(rest.at(-1) ?? first);
  switch (asSpelling(first)) {
    case undefined:
      return [...statementsIn('vessel').map(one => keyword(one.word, one.doc)), ...vesselSnippets(around)];
    case 'duty':
      return rest.length === 0 ? around.duties.map(duty => value(duty, undefined, DUTY_MEANINGS[duty])) : [];
    case 'hull':
      return rest.length === 0 ? HULL_FORMS.map(form => value(form)) : [];
    case 'arrangement':
      if (last === 'revises')
        return around.arrangements.filter(one => one !== rest[0]).map(name => value(name, 'arrangement'));
      return rest.length === 1 ? [keyword('revises')] : [];
    case 'require':
      return requireOffers(typed.slice(1), around.modes);
    case 'assume':
      return assumeOffers(typed.slice(1));
    case 'accept':
      return acceptOffers(rest, around);
    case 'revision':
      return last === 'dated' ? [value(around.today, 'today')] : rest.length === 1 ? [keyword('dated')] : [];
    case 'trial':
      return trialOffers(rest, around);
    case 'study':
      return studyOffers(rest, around);
    default:
      return [];
  }
}

export function arrangementOffers(typed: readonly Token[], around: Surroundings): Offer[] {
  const [word, ...rest] = typed.map(token => token.text);
  const first = asSpelling(word);
  if (first === undefined)
    return [
      ...statementsIn('arrangement').map(one => keyword(leadOf(one), one.doc)),
      ...arrangementSnippets(around),
    ];
  if (first === 'reason') {
    if (rest.length === 0) return [keyword('for')];
    return rest.length > 1 ? [] : REASONS.map(reason => value(reason));
  }
  if (first === 'remove') return rest.length === 0 ? [keyword('shaftline')] : [];
  if (rest.length === 0)
    return ['Port', 'Starboard', 'Centre']
      .filter(side => !around.lines.includes(side))
      .map(side => value(side));
  if (asSpelling(rest.at(-1)) === 'mirrors')
    return around.lines.filter(one => one !== rest[0]).map(name => value(name, 'shaft line'));
  return rest.length === 1 ? [keyword('mirrors')] : [];
}

/** `trial "sea trial" of proposed dated 2026-06-12 { }`. */
function trialOffers(rest: readonly string[], around: Surroundings): Offer[] {
  const last = asSpelling(rest.at(-1));
  if (last === undefined)
    return ['dock trial', 'sea trial'].map(name => ({
      label: `"${name}"`,
      kind: CompletionItemKind.Text,
      doc: 'Name of the trial; any name will do.',
    }));
  if (last === 'dated') return [value(around.today, 'today')];
  if (last === 'of') return around.arrangements.map(name => value(name, 'arrangement'));
  const block: Offer = {
    label: '{ }',
    kind: CompletionItemKind.Struct,
    insert: '{\n\t$0\n}',
    snippet: true,
    detail: 'conditions, runs and readings',
  };
  const left = clausesOf('trial').filter(word => !rest.includes(word));
  return [...left.map(word => keyword(word)), block];
}

/** `study wheel of proposed { }`. */
function studyOffers(rest: readonly string[], around: Surroundings): Offer[] {
  const last = rest.at(-1);
  if (last === undefined) return [];
  if (asSpelling(last) === 'of') return around.arrangements.map(name => value(name, 'arrangement'));
  if (!rest.some(one => asSpelling(one) === 'of')) return [keyword('of')];
  return [
    {
      label: '{ }',
      kind: CompletionItemKind.Struct,
      insert: '{\n\tvary $0\n}',
      snippet: true,
      detail: 'what varies, what must hold, what ranks',
    },
  ];
}

function acceptOffers(rest: readonly string[], around: Surroundings): Offer[] {
  if (rest.length === 0)
    return RULES.map(rule => ({
      label: rule.id,
      kind: CompletionItemKind.Reference,
      detail: rule.title,
      doc: `Compared: ${rule.criterion}.`,
    }));
  const last = asSpelling(rest.at(-1));
  if (last === 'on') return around.paths.map(path => value(path));
  if (last === 'dated' || last === 'until') return [value(around.today, 'today')];
  if (last === 'because' || last === 'by') return [];
  return clausesOf('accept')
    .filter(clause => !rest.includes(clause))
    .map(clause => keyword(clause, undefined, QUOTED.has(clause) ? `${clause} "` : clause));
}

/** Clauses that a text in quotes follows. */
const QUOTED: ReadonlySet<string> = new Set<Spelling>(['because', 'by']);

/** The words that go on with a statement, in the order of its form. */
function clausesOf(word: Spelling): string[] {
  return partsOf(statement(word)!)
    .slice(1)
    .flatMap(part => ('word' in part ? [part.word] : []));
}
