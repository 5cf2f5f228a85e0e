import type { ModelEdit, NewEntry, NewRequirement, PlacedEdit } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';
import { type NewFact, type NewStatement, spell } from '@tailshaft/vocabulary';
import { HEADER_ONLY } from './property.js';

/** An edit whose values are spelled in the language, for whoever lays them out in the text. */
export type SpelledEdit =
  | { readonly do: 'set'; readonly host: Origin; readonly property: string; readonly text: string }
  /** `isSame` where it says the same in other words, so that what vouches for it stays. */
  | { readonly do: 'replace'; readonly at: Origin; readonly text: string; readonly isSame?: boolean }
  /** A statement of a part in the place of the one there: its header, and what stands in its block. */
  | {
      readonly do: 'state';
      readonly at: Origin;
      readonly header: string;
      readonly facts: readonly string[];
      readonly keeps: boolean;
    }
  | { readonly do: 'declare'; readonly before: Origin; readonly text: string }
  | PlacedEdit<WordChange>;

export interface WordChange {
  readonly at: Origin;
  readonly text: string;
}

/** What an edit of the model writes, in words of the language. */
export function spelledEdit(edit: ModelEdit): SpelledEdit {
  switch (edit.do) {
    case 'set':
      return { do: 'set', host: edit.host, property: edit.property, text: spell(edit.value) };
    case 'add': {
      const { block, name, facts } = edit.block;
      const property = name === undefined ? block : `${block} ${name}`;
      return { do: 'set', host: edit.host, property, text: `{ ${facts.map(factWords).join('  ')} }` };
    }
    case 'replace':
      return { do: 'replace', at: edit.at, text: spell(edit.value), isSame: edit.value.is === 'in unit' };
    case 'state':
      return { do: 'state', at: edit.at, ...statementWords(edit.statement) };
    case 'require':
      return { do: 'replace', at: edit.at, text: requirementWords(edit.requirement) };
    case 'assume': {
      const { about, value, because } = edit.assumption;
      const text = `${spell(value)} because ${spell({ is: 'title', title: because })}`;
      return { do: 'set', host: edit.vessel, property: `assume ${about}`, text };
    }
    case 'declare':
      return { do: 'declare', before: edit.before, text: entryWords(edit.entry) };
    case 'declare like':
    case 'fit anew':
      return { ...edit, changes: edit.changes.map(({ at, value }) => ({ at, text: spell(value) })) };
    default:
      return edit;
  }
}

function factWords(fact: NewFact): string {
  if ('block' in fact) {
    const head = fact.name === undefined ? fact.block : `${fact.block} ${fact.name}`;
    return `${head} { ${fact.facts.map(factWords).join('  ')} }`;
  }
  const evidence = fact.evidence === undefined ? '' : ` [${fact.evidence}]`;
  return `${fact.property} ${spell(fact.value)}${evidence}`;
}

/** What a part says in its header only goes there, the rest into its block. */
function statementWords({ action, role, name, facts }: NewStatement) {
  const inHeader = (fact: NewFact) => 'property' in fact && HEADER_ONLY.includes(fact.property);
  const header = [action, role, name, ...facts.filter(inHeader).map(factWords)].filter(Boolean).join(' ');
  return {
    header,
    facts: facts.filter(fact => !inHeader(fact)).map(factWords),
    keeps: action === 'modify',
  };
}

function requirementWords({ about, bound, quantity, condition, mode, note }: NewRequirement): string {
  return [
    'require',
    about,
    bound,
    quantity.written,
    ...(condition === undefined ? [] : ['at', condition]),
    ...(mode === undefined ? [] : ['in mode', mode]),
    ...(note === undefined ? [] : [`"${note}"`]),
  ].join(' ');
}

function entryWords({ kind, name, title, facts }: NewEntry): string {
  const lines = facts.map(fact => `  ${factWords(fact)}\n`).join('');
  return `${kind} ${name} ${spell({ is: 'title', title })} {\n${lines}}\n`;
}
