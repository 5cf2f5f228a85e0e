import { merged } from '../edit/text-edit.js';
import type { Offer } from './offer.js';
import { once } from './quick-fixes.js';

/** All open data of one place as open questions at once; nothing where there are not several. */
export function allQuestions(asked: readonly Offer[]): Offer | undefined {
  const each = once(asked);
  const edits = each.length > 1 ? merged(each.flatMap(one => one.edits)) : undefined;
  if (!edits) return undefined;
  return {
    title: `Add all ${each.length} missing data here as open questions`,
    kind: 'quickfix',
    edits,
    asks: true,
  };
}
