import { NAMED_QUANTITIES, OWN_RANKINGS, RULES } from '@tailshaft/drivetrain';
import { asSpelling, requirable, UNKNOWN } from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import { VARIED, variedRow, variedRows } from '../../reading/forms/varied.js';
import { formWords } from '../hover/property.js';
import { keyword, type NextInValue, type Offer, value } from './items.js';

/** What comes next behind `vary`: a part, one of its properties, and its values. */
export function nextInVariation(words: readonly string[]): NextInValue {
  const [of, ...rest] = words;
  if (of === undefined) return open([...VARIED.map(one => value(one)), OPEN]);
  if (!VARIED.includes(of)) return { offers: [], done: true };
  const typed = rest.join(' ');
  const begun = variedRows(of).filter(
    row => typed === '' || row.words === typed || row.words.startsWith(`${typed} `),
  );
  const more = begun
    .filter(row => row.words !== typed)
    .map(
      (row): Offer => ({
        label: typed === '' ? row.words : row.words.slice(typed.length + 1),
        kind: CompletionItemKind.Property,
        detail: formWords(row).replace(/`/g, ''),
        doc: row.doc,
      }),
    );
  const complete = typed === '' ? asSpelling(of) !== 'hull' : variedRow(of, typed) !== undefined;
  return { offers: [...(complete ? [ANY] : []), ...more], done: !complete && more.length === 0 };
}

/** What comes next behind `rank by`. */
export function nextInRanking(words: readonly string[]): NextInValue {
  const typed = words.join(' ');
  const known = [
    ...NAMED_QUANTITIES.flatMap(({ name, conditions }) =>
      (conditions.length > 0 ? conditions : ['']).map(one => ({
        text: one ? `${name} at ${one}` : name,
        doc: requirable(name).doc,
      })),
    ),
    ...OWN_RANKINGS.map(({ name, doc }) => ({ text: name, doc })),
  ];
  const offers = known
    .filter(({ text }) => text !== typed && (typed === '' || text.startsWith(`${typed} `)))
    .map(({ text, doc }) => value(typed === '' ? text : text.slice(typed.length + 1), undefined, doc))
    .concat(typed === '' ? [OPEN] : []);
  const whole = known.some(({ text }) => text === typed || text.startsWith(`${typed} at `));
  const orders = whole && typed !== '' ? ['highest first', 'lowest first'].map(one => keyword(one)) : [];
  return { offers: [...offers, ...orders], done: offers.length === 0 };
}

/** The checks that a study can ask for. */
export function ruleOffers(words: readonly string[]): NextInValue {
  if (words.length > 0) return { offers: [], done: true };
  return open([
    OPEN,
    value('every check', undefined, 'No check may fail, be it an error, a warning or a note.'),
    ...RULES.map(
      (rule): Offer => ({
        label: rule.id,
        kind: CompletionItemKind.Reference,
        detail: rule.title,
        doc: rule.manual,
      }),
    ),
  ]);
}

const OPEN = keyword(UNKNOWN);
const ANY = keyword('any', 'Every value that the catalogue, or the property, offers.');

const open = (offers: readonly Offer[]): NextInValue => ({ offers, done: false });
