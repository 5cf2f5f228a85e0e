import { RULES } from '@tailshaft/drivetrain';
import { changed } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { Bench, type Told } from '../rejudge.js';

export { changed };

/** The passing example of a rule: a whole spec that gives no finding. */
export function passing(rule: string): string {
  return RULES.find(one => one.id === rule)!.examples().passing;
}

/** What one rule says of a spec. */
export async function saidBy(rule: string, spec: string): Promise<readonly Told[]> {
  const { told, refused } = await new Bench().judge(spec);
  if (refused.length > 0) throw new Error(refused.join('\n'));
  return told.filter(one => one.rule === rule);
}

/** The verdict words of one rule on a spec. */
export async function outcomes(rule: string, spec: string): Promise<readonly string[]> {
  return (await saidBy(rule, spec)).map(one => one.outcome);
}
