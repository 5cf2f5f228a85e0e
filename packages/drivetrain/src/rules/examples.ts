/** Specs that show a rule; each is complete and is checked by the tests. */
export interface Examples {
  /** Gives this rule's finding, and no other. */
  readonly failing: string;
  /** Gives no finding at all. */
  readonly passing: string;
  /** Gives this rule's `cannot tell`; or the sentence that says why the rule always can. */
  readonly cannotTell: string;
}

/**
 * Examples are read by pages and tests only. A bundle that takes `no-examples.ts` instead of this module carries none of
 * them: the function there is empty, so what is handed to it is left out with it.
 */
export function examples(make: () => Examples): () => Examples {
  return make;
}
