import type { Form } from '../forms/form.js';
import { isKnown, type Judged } from '../report/judged.js';
import { counts, type Severity } from '../report/severity.js';
import { addTo, emptyTally, type Tally } from '../report/tally.js';

/** What a run says of one spec, as plain data: it may have been judged in another thread. */
export interface SpecPiece {
  readonly tally: Tally;
  /** Whether it has a finding for which the run ends with status 1. */
  readonly failed: boolean;
  /** What the form of the answer makes of it. */
  readonly said: unknown;
}

export function pieceOf(form: Form, judged: Judged, from: Severity): SpecPiece {
  const tally = emptyTally();
  addTo(tally, judged);
  const failed = judged.spec.findings.some(
    one => !one.verdict?.asFound && !isKnown(judged, one) && counts(one, from),
  );
  return { tally, failed, said: form.pieceOf(judged) };
}
