/** `gear input torque`: the rule `capacity/gear-input-torque` as a row of a table calls it. */
export function ruleWords(rule: string): string {
  return rule.split('/').at(-1)!.replaceAll('-', ' ');
}
