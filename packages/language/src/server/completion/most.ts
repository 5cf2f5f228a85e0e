import type { Offer } from './items.js';

/** More than anybody reads; a client asks again with every letter while there are more. */
const MOST_OFFERS = 300;

/**
 * The first offers that what is typed may become, when there are more than can be sent with every letter. Letters count in
 * their order, with others between them, as every client compares them.
 */
export function mostOffers(
  offers: readonly Offer[],
  typed: (from: number | undefined) => string,
): { offers: readonly Offer[]; more: boolean } {
  if (offers.length <= MOST_OFFERS) return { offers, more: false };
  const kept: Offer[] = [];
  for (const offer of offers) {
    if (!mayBecome(typed(offer.from), offer.filter ?? offer.label)) continue;
    if (kept.length === MOST_OFFERS) return { offers: kept, more: true };
    kept.push(offer);
  }
  // Fewer letters would bring back what was left out here.
  return { offers: kept, more: true };
}

function mayBecome(typed: string, whole: string): boolean {
  const letters = typed.toLowerCase();
  let at = 0;
  for (const letter of whole.toLowerCase()) if (letter === letters[at]) at += 1;
  return at >= letters.length;
}
