import { uncapital } from '@tailshaft/mechanics';
import { textEditsFor } from '../edit/model-edits.js';
import type { FileCheck } from '../project/project.js';
import { suitingAt } from '../project/suiting-at.js';
import type { Offer, TextOf } from './offer.js';
import { type Judge, thenWorse } from './quick-fixes.js';

/**
 * What would suit the propeller, shaft or gear at an offset: asked by whoever stands there, whether or not anything is wrong.
 * Nothing is offered for the vessel as found, which is a record.
 */
export function whatSuits(
  check: FileCheck,
  uri: string,
  offset: number,
  textOf: TextOf,
  judge: Judge,
): Offer[] {
  const found = suitingAt(check, uri, offset);
  return (found?.routes ?? []).flatMap(route => {
    const edits = textEditsFor(route.edits, textOf);
    if (edits.length === 0) return [];
    const { reads, worse } = judge(edits);
    return reads
      ? [
          {
            title: `What would suit: ${lower(route.title)}${thenWorse(worse)}`,
            kind: 'refactor.rewrite',
            edits,
          },
        ]
      : [];
  });
}

function lower(title: string): string {
  return uncapital(title);
}
