import {
  type AcceptancePolicy,
  judgeBeside,
  judgeVessel,
  RULES,
  type Rule,
  type Verdict,
  type Vessel,
} from '@tailshaft/drivetrain';
import type { EntryTable } from '../elaborate/catalogue.js';
import { makeVessel } from '../elaborate/vessel.js';
import type { DocumentReading, EntryReading } from '../reading/document.js';
import type { Problem } from '../reading/problem.js';
import type { VesselReading } from '../reading/vessel.js';
import { tellStudies } from '../study/case.js';
import type { FileCheck, JudgedEntry, JudgedVessel } from './judged.js';

/** A text that nobody wrote yet: what would be wrong with it, and what would be said of it, worked out when asked. */
export interface Supposed {
  readonly problems: readonly Problem[];
  /** What one rule by itself would say of the vessel of that name. */
  readonly said: (rule: Rule, vessel: string) => readonly Verdict[];
  /** What all rules would say. */
  readonly check: () => FileCheck;
}

/** What another text leaves of a vessel. */
export interface Beside {
  readonly standing: JudgedVessel;
  readonly same: ReadonlySet<string>;
}

/** What is known of the text that stands. */
interface Standing {
  readonly problems: readonly Problem[];
  /** A vessel of which everything was judged already. */
  readonly kept: (reading: VesselReading) => JudgedVessel | undefined;
  /** A vessel as it stands, and which arrangements of it stay as they are. */
  readonly beside?: (reading: VesselReading) => Beside | undefined;
  readonly entry: (reading: EntryReading, today: string) => JudgedEntry;
}

export function supposed(
  reading: DocumentReading,
  table: EntryTable,
  today: string,
  policy: AcceptancePolicy,
  { problems: known, kept, beside = () => undefined, entry }: Standing,
): Supposed {
  const problems = [...known];
  const { catalogue } = table;
  const vessels = reading.vessels.map(one => {
    const had = kept(one);
    const vessel = had?.vessel ?? vesselOf(one, table, problem => problems.push(problem));
    return { reading: one, had, vessel };
  });
  const verdictsOn = (vessel: Vessel, of: Beside | undefined) =>
    of
      ? judgeBeside(vessel, { vessel: of.standing.vessel, catalogue, today, policy }, of.same)
      : judgeVessel(vessel, catalogue, today, RULES, policy);
  return {
    problems,
    said: (rule, name) =>
      vessels
        .filter(({ vessel }) => vessel.name === name)
        .flatMap(({ vessel }) => judgeVessel(vessel, catalogue, today, [rule], policy)),
    check: () => ({
      uri: reading.uri,
      problems,
      vessels: vessels.map(
        ({ reading: own, had, vessel }) =>
          had ?? {
            reading: own,
            vessel,
            catalogue,
            today,
            verdicts: verdictsOn(vessel, beside(own)),
          },
      ),
      entries: reading.entries.map(one => entry(one, today)),
    }),
  };
}

/** The vessel of a reading; what cannot be joined is told. */
export function vesselOf(
  reading: VesselReading,
  table: EntryTable,
  tell: (problem: Problem) => void,
): Vessel {
  const vessel = makeVessel(reading, table, tell);
  tellStudies(tell, reading, table);
  return vessel;
}
