import { isAsFound } from '@tailshaft/drivetrain';
import type { TextEdit } from '../edit/text-edit.js';
import type { Finding } from '../project/finding.js';
import { placeOf } from '../reading/place.js';

/** Whether edits touch the record of the vessel as found: what was found there is not designed anew. */
export function editsAsFound(edits: readonly TextEdit[], { vessel: judged }: Finding): boolean {
  if (!judged) return false;
  const records = judged.vessel.arrangements
    .filter(one => isAsFound(one, judged.vessel))
    .map(one => placeOf(one.origin));
  return edits.some(edit =>
    records.some(one => edit.uri === one.uri && edit.start >= one.start && edit.end <= one.end),
  );
}
