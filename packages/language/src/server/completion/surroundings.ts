/** What statements can name that stands elsewhere. */
export interface Surroundings {
  readonly duties: readonly string[];
  readonly arrangements: readonly string[];
  readonly lines: readonly string[];
  /** Ways of running of all lines. */
  readonly modes: readonly string[];
  /** `Port`, `Port.gear`, `proposed.Port`. */
  readonly paths: readonly string[];
  readonly today: string;
}
