import { problemEdits } from '../edit/problem-edits.js';
import type { TextEdit } from '../edit/text-edit.js';
import type { Finding } from '../project/finding.js';
import { FIX_ALL } from './kinds.js';
import type { Offer, TextOf } from './offer.js';
import { touchesShiftCable } from './shift-cable.js';

/** Which catalogue part is meant is never a matter of spelling alone: two names may differ by one digit. */
const NOT_MECHANICAL = ['text/unknown-name'];

/** All slips of the pen that have exactly one correction, corrected at once. No rule of the drivetrain is touched. */
export function fixAll(findings: readonly Finding[], textOf: TextOf): Offer | undefined {
  const edits: TextEdit[] = [];
  for (const { problem, place } of findings) {
    if (problem?.choices?.length !== 1 || NOT_MECHANICAL.includes(problem.code)) continue;
    for (const edit of problemEdits(problem, problem.choices[0]!, place.uri, textOf(place.uri))) {
      const free = edits.every(one => edit.start >= one.end || edit.end <= one.start);
      if (free && !touchesShiftCable([edit], textOf)) edits.push(edit);
    }
  }
  if (edits.length === 0) return undefined;
  const many = edits.length === 1 ? 'the slip that has' : `all ${edits.length} slips that have`;
  return { title: `Correct ${many} one correction only`, kind: FIX_ALL, edits };
}
