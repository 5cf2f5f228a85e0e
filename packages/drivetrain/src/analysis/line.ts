import type { ShaftLine, Vessel } from '../model/vessel.js';
import { type HandCheck, handCheck } from './hand.js';
import { type RotationAnalysis, rotationOf } from './rotation.js';

/**
 * What follows from the declared facts of one shaft line, each part worked out when first asked for.
 * The getters delegate to one file per subject beside this one.
 */
export class LineAnalysis {
  #rotation: RotationAnalysis | undefined;
  #hand: { readonly check: HandCheck | undefined } | undefined;

  constructor(
    readonly line: ShaftLine,
    readonly vessel: Vessel,
  ) {}

  /** Which way it turns at every station, ahead and astern. */
  get rotation(): RotationAnalysis {
    this.#rotation ??= rotationOf(this.line);
    return this.#rotation;
  }

  /** Whether its propeller drives ahead with the lever ahead. */
  get hand(): HandCheck | undefined {
    this.#hand ??= { check: handCheck(this.line, this.rotation) };
    return this.#hand.check;
  }
}
