import { findRule } from '@tailshaft/drivetrain';
import { citeSource } from '@tailshaft/mechanics';
import { paragraphs } from './markdown.js';

/** The page of a rule. */
export function ruleHover(id: string): string | undefined {
  const rule = findRule(id);
  if (!rule) return undefined;
  return paragraphs(
    `**${rule.id}** · ${rule.title}`,
    rule.manual,
    `Criterion: ${rule.criterion}.`,
    `Source: ${citeSource(rule.source)}`,
    `_${rule.caution}_`,
  );
}
