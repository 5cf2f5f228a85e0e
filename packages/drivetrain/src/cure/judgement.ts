import type { Verdict } from '../judge/verdict.js';
import type { Catalogue } from '../model/catalogue.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';

/** A vessel as it was judged. */
export interface Judgement {
  readonly vessel: Vessel;
  readonly catalogue: Catalogue;
  readonly today: string;
}

/** The line that a verdict is about, or whose part it is about. */
export function lineOf({ subject }: Verdict, { arrangements }: Vessel): ShaftLine | undefined {
  return arrangements
    .flatMap(one => one.lines)
    .find(one => subject === one.path || subject.startsWith(`${one.path}.`));
}
