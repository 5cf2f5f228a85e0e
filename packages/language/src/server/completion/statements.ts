import { RULES } from '@tailshaft/drivetrain';
import { statementsOf } from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import { KEYWORDS, WORDS } from '../hover/words.js';
import { gradeOffers } from '../standards/offers.js';
import { keyword, type Offer, value } from './items.js';
import { assumeOffers, requireOffers } from './sentences.js';
import { arrangementSnippets, FILE_SNIPPETS, vesselSnippets } from './snippets.js';
import type { Surroundings } from './surroundings.js';

/** What may stand at the beginning of a file's statement, or go on with the one begun. */
export function fileOffers(statement: readonly Token[]): Offer[] {
  if (statement.length > 0) return statement.at(-1)!.text === 'shaft' ? [keyword('material')] : [];
  return [
    keyword('import', 'A file or folder beside this one.', 'import "'),
    ...['engine', 'motor', 'gear', 'transfer', 'coupling', 'shaft material', 'propeller'].map(kind =>
      keyword(kind, `A catalogue entry: a ${kind} with its source.`),
    ),
    keyword('vessel'),
    ...FILE_SNIPPETS,
    ...gradeOffers(),
  ];
}

export function vesselOffers(statement: readonly Token[], around: Surroundings): Offer[] {
  const [first, ...rest] = statement.map(token => token.text);
  const last = rest.at(-1) ?? first;
  switch (first) {
    case undefined:
      return [
        ...statementsOf('vessel').map(word => keyword(word, WORDS[word] ?? KEYWORDS[word])),
        ...vesselSnippets(around),
      ];
    case 'duty':
      return rest.length === 0 ? around.duties.map(duty => value(duty, undefined, WORDS[duty])) : [];
    case 'hull':
      return rest.length === 0
        ? ['planing', 'semi-displacement', 'displacement'].map(form => value(form))
        : [];
    case 'arrangement':
      if (last === 'revises')
        return around.arrangements.filter(one => one !== rest[0]).map(name => value(name, 'arrangement'));
      return rest.length === 1 ? [keyword('revises', WORDS.revises)] : [];
    case 'require':
      return requireOffers(statement.slice(1));
    case 'assume':
      return assumeOffers(statement.slice(1));
    case 'accept':
      return acceptOffers(rest, around);
    case 'revision':
      return last === 'dated' ? [value(around.today, 'today')] : rest.length === 1 ? [keyword('dated')] : [];
    case 'trial':
      return trialOffers(rest, around);
    default:
      return [];
  }
}

export function arrangementOffers(statement: readonly Token[], around: Surroundings): Offer[] {
  const [first, ...rest] = statement.map(token => token.text);
  if (first === undefined)
    return [
      keyword('shaftline'),
      keyword('remove shaftline'),
      keyword('reason for'),
      ...arrangementSnippets(around),
    ];
  if (first === 'reason') {
    if (rest.length === 0) return [keyword('for')];
    const typed = rest.slice(1).join(' ');
    const reasons = ['same hand', 'inward turning', 'unequal ratios'];
    return typed ? [] : reasons.map(reason => value(reason, undefined, undefined));
  }
  if (first === 'remove') return rest.length === 0 ? [keyword('shaftline')] : [];
  if (rest.length === 0)
    return ['Port', 'Starboard', 'Centre']
      .filter(side => !around.lines.includes(side))
      .map(side => value(side));
  if (rest.at(-1) === 'mirrors')
    return around.lines.filter(one => one !== rest[0]).map(name => value(name, 'shaft line'));
  return rest.length === 1 ? [keyword('mirrors', WORDS.mirrors)] : [];
}

/** `trial "sea trial" of proposed dated 2026-06-12 { }`. */
function trialOffers(rest: readonly string[], around: Surroundings): Offer[] {
  const last = rest.at(-1);
  if (last === undefined)
    return ['dock trial', 'sea trial'].map(name => ({
      label: `"${name}"`,
      kind: CompletionItemKind.Text,
      doc: 'What the trial is called; any other name does as well.',
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
  const left = ['of', 'dated'].filter(word => !rest.includes(word));
  return [...left.map(word => keyword(word)), block];
}

function acceptOffers(rest: readonly string[], around: Surroundings): Offer[] {
  if (rest.length === 0)
    return RULES.map(rule => ({
      label: rule.id,
      kind: CompletionItemKind.Reference,
      detail: rule.title,
      doc: rule.manual,
    }));
  const last = rest.at(-1)!;
  if (last === 'on') return around.paths.map(path => value(path));
  if (last === 'dated' || last === 'until') return [value(around.today, 'today')];
  if (last === 'because' || last === 'by') return [];
  return ['on', 'because', 'by', 'dated', 'until']
    .filter(clause => !rest.includes(clause))
    .map(clause =>
      keyword(clause, undefined, clause === 'because' || clause === 'by' ? `${clause} "` : clause),
    );
}
