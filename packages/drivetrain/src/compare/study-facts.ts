import { VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { Vessel } from '../model/vessel.js';
import { type FlatFact, flatFacts } from './facts.js';

/** What each study of a vessel varies, holds and ranks by, by its words: `study wheel: vary`. */
export function studyFacts({ studies = [] }: Vessel): Map<string, FlatFact> {
  const found = new Map<string, FlatFact>();
  for (const study of studies)
    for (const [what, fact] of flatFacts(study, VESSEL_VOCABULARY.study))
      found.set(`${study.name}: ${what}`, fact);
  return found;
}
