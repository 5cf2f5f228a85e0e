import { searched } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { studiesJson } from '../../packages/cli/src/report/study-json.js';
import { threadsFor } from '../../packages/cli/src/study/threads.js';
import { builtBefore, folders, tailshaftProcess } from '../cli/run.js';
import { exampleWithStudy, studied } from '../support/study.js';

builtBefore();
const folder = folders();

const TEXT = exampleWithStudy(
  'survey-tender/wadebeck.shaft',
  `study s of built {
    vary propeller diameter 16 in .. 22 in by 0.25 in
    vary propeller pitch 10 in .. 20 in by 0.25 in
    vary propeller area ratio 0.5, 0.6, 0.7
    rank by least margin
  }`,
);

it('finds in several threads what one thread finds', async () => {
  const { stdout, stderr } = tailshaftProcess('study boat.shaft --json --today 2026-03-01', {
    cwd: folder({ 'boat.shaft': TEXT }),
  });
  expect(stderr).toBe('');
  const several = JSON.parse(stdout) as ReturnType<typeof studiesJson>;
  const { studies, vessel } = await studied(TEXT);
  const result = searched(studies[0]!);
  expect(result.combinations).toBe(25 * 41 * 3);
  const { seconds } = several.studies[0]!;
  const one = studiesJson([{ vessel: vessel.vessel.name, result, seconds }], undefined);
  expect(several.studies).toEqual(JSON.parse(JSON.stringify(one.studies)));
}, 240_000);

it.each([
  { combinations: 100, processors: 8, threads: 1 },
  { combinations: 3000, processors: 2, threads: 2 },
  { combinations: 10_000, processors: 1, threads: 1 },
  { combinations: 1_000_000, processors: 64, threads: 8 },
])('searches $combinations combinations on $processors processors in $threads', one => {
  expect(threadsFor(one.combinations, one.processors)).toBe(one.threads);
});
