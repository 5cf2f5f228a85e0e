import { VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { Vessel } from '../model/vessel.js';
import { marksOf } from './evidence.js';
import { type FlatFact, flatFacts } from './facts.js';

/** What each study of a vessel varies, holds and ranks by, by its words: `study wheel: vary`. */
export function studyFacts({ studies = [] }: Vessel): Map<string, FlatFact> {
  const found = new Map<string, FlatFact>();
  for (const study of studies) {
    const { studied: written, origin } = study;
    if (written !== undefined)
      found.set(`${study.name}: of`, {
        what: 'of',
        meaning: written,
        written,
        value: undefined,
        marks: marksOf([undefined]),
        origin,
      });
    for (const [what, fact] of flatFacts(study, VESSEL_VOCABULARY.study))
      found.set(`${study.name}: ${what}`, fact);
  }
  return found;
}
