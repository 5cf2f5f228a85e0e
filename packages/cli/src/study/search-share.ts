import { resolve } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { combinationsOf, search } from '@tailshaft/drivetrain';
import { Specs } from '../specs/specs.js';
import { type Answer, claiming, type Share } from './share.js';

/** Searches a share in this thread. */
export async function searchShare(share: Share): Promise<void> {
  parentPort!.postMessage({ ...(await answerTo(share)) } satisfies Answer);
}

async function answerTo({
  cwd,
  path,
  today,
  policy,
  root,
  combinations,
  next,
  setAside,
  ...at
}: Share): Promise<Answer> {
  const specs = new Specs({
    cwd,
    today,
    ...(policy ? { policy } : {}),
    ...(root === undefined ? {} : { root }),
  });
  const spec = await specs.check(resolve(cwd, path));
  const vessel = spec.check.vessels[at.vessel];
  const reading = vessel?.reading.studies[at.study];
  const ready = vessel && reading && specs.studyOf(spec, vessel, reading);
  if (!ready || combinationsOf(ready.dimensions) !== combinations) return {};
  const steps = search(setAside ? { ...ready, setAside } : ready, claiming(next));
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return { found: step.value };
}
