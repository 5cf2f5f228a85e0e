/** Something in the text that cannot be read as meant; not a judgement of the drivetrain. */
export interface Problem {
  /** Stable and English: `text/unknown-property`. */
  readonly code: string;
  readonly start: number;
  readonly end: number;
  readonly message: string;
  readonly severity: 'error' | 'warning' | 'note';
  /** Mechanical ways out: the text to put in the place of the range. */
  readonly choices?: readonly ProblemChoice[];
}

export interface ProblemChoice {
  readonly title: string;
  readonly text: string;
  /** Other range than the problem's own. */
  readonly start?: number;
  readonly end?: number;
}
