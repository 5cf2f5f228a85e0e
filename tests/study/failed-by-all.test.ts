import { failedByAllWords, type StudyResult } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';

const result = (more: Partial<StudyResult>): StudyResult =>
  ({ judged: 40, binding: [{ rule: 'shafting/overhang', failed: 40, alone: 2 }], ...more }) as StudyResult;

it('says that every candidate fails only where every one was judged', () => {
  expect(failedByAllWords(result({}))).toContain('Every candidate fails shafting/overhang:');
  expect(failedByAllWords(result({ judged: 41 }))).toBeUndefined();
  expect(failedByAllWords(result({ stoppedAt: 40 }))).toBeUndefined();
});
