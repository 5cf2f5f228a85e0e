import { findRule } from '@tailshaft/drivetrain';
import { citeSource } from '@tailshaft/mechanics';
import { type PageOf, textsOf } from '../rule-texts.js';
import { paragraphs } from './markdown.js';

/** The page of a rule; its texts may have to be fetched. */
export async function ruleHover(id: string, pageOf: PageOf): Promise<string | undefined> {
  const rule = findRule(id);
  if (!rule) return undefined;
  const { manual, caution } = await textsOf(rule, pageOf);
  return paragraphs(
    `**${rule.id}** · ${rule.title}`,
    manual,
    `Criterion: ${rule.criterion}.`,
    `Source: ${citeSource(rule.source)}`,
    caution && `_${caution}_`,
  );
}
