import { changed, SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';

export { SINGLE_LINE };

/** A single line whose propeller has the other hand. */
export const WRONG_HAND = changed(SINGLE_LINE, ['hand right', 'hand left']);

/** Everything that one rule says of a spec, also what is told under another finding. */
export async function ruleOutcomes(spec: string, rule: string) {
  const { check } = await checkText(spec);
  const all = check.vessels.flatMap(one => one.verdicts);
  return all.flatMap(one => [one, ...(one.folds ?? [])]).filter(one => one.rule === rule);
}
