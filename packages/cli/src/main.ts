import { isMainThread, workerData } from 'node:worker_threads';
import { runProgram } from './program.js';
import { SHARE } from './study/threads.js';
import { ioOf, processStreams, type Streams } from './terminal/io.js';

async function main(): Promise<number> {
  let streams: Streams;
  try {
    streams = processStreams();
  } catch {
    process.stderr.write('tailshaft: the folder that this was started in is gone\n');
    return 2;
  }
  return runProgram(process.argv.slice(2), ioOf(streams));
}

if (isMainThread)
  main().then(status => {
    process.exitCode = status;
  });
// A thread of the program searches its share of a study, or judges what the first thread sends it.
else if (workerData?.[SHARE])
  import('./study/search-share.js').then(one => one.searchShare(workerData[SHARE]));
else import('./threads/check-thread.js').then(one => one.answerFirstThread());
