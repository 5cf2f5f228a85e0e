import type { Evidence } from '@tailshaft/drivetrain';
import { EVIDENCE_KINDS } from '@tailshaft/vocabulary';
import { unquoted } from './forms/words.js';
import type { Problem } from './problem.js';
import type { EvidenceTok } from './token.js';

/** `[measured 2026-01-14]`, `[drawing "S-201 rev C"]`. */
export function readEvidence(mark: EvidenceTok, problems: Problem[]): Evidence | undefined {
  const words = mark.tokens.filter(token => token.kind === 'word').map(token => token.text);
  const kind = EVIDENCE_KINDS.find(one => words.join(' ').startsWith(one));
  if (!kind) {
    problems.push({
      code: 'text/evidence',
      start: mark.start,
      end: mark.end,
      severity: 'error',
      message: `Evidence is one of: ${EVIDENCE_KINDS.join(', ')}; with a date or document after it, as in [measured 2026-01-14].`,
    });
    return undefined;
  }
  const date = mark.tokens.find(token => token.kind === 'date');
  const note = mark.tokens.find(token => token.kind === 'string');
  return { kind, ...(date ? { dated: date.text } : {}), ...(note ? { note: unquoted(note.text) } : {}) };
}
