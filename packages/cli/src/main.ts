import { runProgram } from './program.js';
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

main().then(status => {
  process.exitCode = status;
});
