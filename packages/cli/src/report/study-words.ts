import type { StudyResult } from '@tailshaft/drivetrain';

/** A study that was searched, with the vessel that it stands in. */
export interface SearchedStudy {
  readonly vessel: string;
  readonly result: StudyResult;
  /** Seconds that it took. */
  readonly seconds: number;
}
