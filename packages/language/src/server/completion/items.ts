import { meaningOf } from '@tailshaft/vocabulary';
import {
  type CompletionItem,
  CompletionItemKind,
  InsertTextFormat,
  type Range,
  type TextEdit,
} from 'vscode-languageserver';
import { disarmed } from '../hover/disarm.js';

/** One thing to offer, before it is put in the place of what was typed. */
export interface Offer {
  readonly label: string;
  readonly kind: CompletionItemKind;
  /** Beside the label. */
  readonly detail?: string;
  /** Markdown below. */
  readonly doc?: string;
  /** What is written; the label when absent. */
  readonly insert?: string;
  /** `insert` holds places to fill in. */
  readonly snippet?: boolean;
  /** What the typed letters are compared with; the label when absent. */
  readonly filter?: string;
  /** Start of what is replaced, when it is more than the word at the cursor. */
  readonly from?: number;
  readonly preferred?: boolean;
  /** What must be written elsewhere in the file with it. */
  readonly also?: TextEdit;
  /** Ask for the next thing at once. */
  readonly goOn?: boolean;
}

/** Offers as the protocol wants them, in the order given. */
export function toItems(
  offers: readonly Offer[],
  rangeFrom: (from: number | undefined) => Range,
  snippets: boolean,
): CompletionItem[] {
  return shorterFirst(offers).map((offer, index) => {
    const insert = offer.insert ?? offer.label;
    const asSnippet = offer.snippet === true && snippets;
    return {
      label: offer.label,
      kind: offer.kind,
      ...(offer.detail ? { detail: offer.detail } : {}),
      ...(offer.doc ? { documentation: { kind: 'markdown' as const, value: disarmed(offer.doc) } } : {}),
      sortText: String(index).padStart(4, '0'),
      filterText: offer.filter ?? offer.label,
      insertTextFormat: asSnippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
      textEdit: {
        range: rangeFrom(offer.from),
        newText: offer.snippet && !snippets ? withoutPlaces(insert) : insert,
      },
      ...(offer.also ? { additionalTextEdits: [offer.also] } : {}),
      ...(offer.preferred ? { preselect: true } : {}),
      ...(offer.goOn
        ? { command: { title: 'Offer what comes next', command: 'editor.action.triggerSuggest' } }
        : {}),
    };
  });
}

/** A word that others begin with comes before them: who has typed it whole means it, and not a longer one. */
function shorterFirst(offers: readonly Offer[]): readonly Offer[] {
  const sorted: Offer[] = [];
  for (const offer of offers) {
    const longer = sorted.findIndex(
      one => one.label !== offer.label && one.label.startsWith(`${offer.label} `),
    );
    sorted.splice(longer < 0 ? sorted.length : longer, 0, offer);
  }
  return sorted;
}

/** A snippet as plain text, for clients that know none. */
function withoutPlaces(snippet: string): string {
  return snippet
    .replace(/\$\{\d+\|([^,|}]*)[^}]*\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$\{?\d+\}?/g, '')
    .replace(/\\([$}\\])/g, '$1');
}

export const keyword = (label: string, doc?: string, insert?: string): Offer => {
  const said = doc ?? meaningOf(label);
  return {
    label,
    kind: CompletionItemKind.Keyword,
    ...(said ? { doc: said } : {}),
    ...(insert ? { insert } : {}),
  };
};

export const value = (label: string, detail?: string, doc?: string): Offer => ({
  label,
  kind: CompletionItemKind.EnumMember,
  ...(detail ? { detail } : {}),
  ...(doc ? { doc } : {}),
});

/** What may come next in the value of a property; `done` says that the value may end here. */
export interface NextInValue {
  readonly offers: readonly Offer[];
  readonly done: boolean;
}
