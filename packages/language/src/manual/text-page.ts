import { fenced } from './markdown.js';
import { galleryPath, upFrom } from './places.js';
import type { TextFinding } from './text-findings.js';

/** The page of a finding about the text itself. */
export function textPage(finding: TextFinding): string {
  const up = upFrom(finding.code);
  return `${[
    `# ${finding.title}`,
    `\`${finding.code}\`: ${finding.severity}, about the text${finding.failing === undefined ? '' : `, [a spec that fails](${up}${galleryPath(finding.code)})`}`,
    finding.manual,
    ...(finding.failing === undefined
      ? []
      : [`**Fails:**\n${fenced('tailshaft', [finding.failing.trim()])}`]),
    ...(finding.passing === undefined
      ? []
      : [`**Holds:**\n${fenced('tailshaft', [finding.passing.trim()])}`]),
  ].join('\n\n')}\n`;
}
