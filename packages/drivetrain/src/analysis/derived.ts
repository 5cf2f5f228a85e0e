import { Needs } from '../judge/needs.js';
import type { Missing } from '../judge/verdict.js';

/** Something worked out from declared facts; or, without it, what is missing for it. */
export interface Derived<T> {
  readonly value: T | undefined;
  readonly missing: readonly Missing[];
}

/** Works something out; the gaps that the work met explain an absent result. */
export function derive<T>(work: (needs: Needs) => T | undefined): Derived<T> {
  const needs = new Needs();
  const value = work(needs);
  return { value, missing: value === undefined ? needs.missing : [] };
}
